#include "core/audit/context.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting&, std::size_t d) {
  const std::optional<inspection::FailedDevice>& failed = c.failures[d];
  if (!failed) return {};
  Finding f = c.aboutDevice(d);
  // The next check that fails, on the same day too, is another matter.
  f.which =
      layout::whichWord("check " + std::to_string(failed->check) + ", " + inspection::dayText(failed->on));
  f.text = withCapital(c.deviceName(d)) + ": failed on " + inspection::dayText(failed->on) +
           " and has not passed since";
  if (c.devices[d].kind->counts_as_stop)
    f.text += c.profile.inspection.failed_stops_count
                  ? "; the profile counts it as a stop all the same"
                  : "; it is not counted as a stop, and each station is shown with its next one";
  f.text += "; have it mended, and check it again.";
  return {std::move(f)};
}

}  // namespace

const Rule& failedCheck() {
  static const Rule rule{
      .id = "failed-check",
      .severity = Severity::Fail,
      .limits = {},
      .basis = {BasisKind::CommonPractice, ""},
      .finds = "a device that failed a check and has not passed one since",
      .meaning =
          "From the inspection records beside the layout. Such a device counts as no stop in all rules, "
          "unless the "
          "profile has `failed_stops_count: true` under `inspection`.",
      .mend = "Have it mended by whoever may, then check it again and record that it passed.",
      .find = {{Each::Device, find}},
      .names_which = true};
  return rule;
}

}  // namespace stopwalk::audit
