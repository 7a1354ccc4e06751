#include <algorithm>
#include <cctype>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/layout_files.h"
#include "app/command_line/output.h"
#include "app/command_line/profiles.h"
#include "app/command_line/text_columns.h"
#include "app/command_line/used_records.h"
#include "app/poster/shop.h"
#include "core/audit/wording.h"
#include "core/files/faults.h"
#include "core/files/printable.h"
#include "core/files/sha256.h"
#include "core/floor/plan.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::vector<std::string> layouts;
  std::string kinds;
  std::string poster;
};

constexpr std::size_t kLeastDigits = 8;  // of a hash, so that another layout's is not taken for it

// As typed from the wall: in either case, with spaces or dashes between; empty: that is no hash.
std::string hashDigits(const std::string& typed) {
  std::string digits;
  for (const char c : typed) {
    if (c == ' ' || c == '-') continue;
    if (!std::isxdigit(static_cast<unsigned char>(c))) return {};
    digits += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  return digits.size() < kLeastDigits || digits.size() > 64 ? std::string() : digits;
}

// Whether a poster with this hash shows the layout as it is now, and what of it is out of order.
Exit comparePoster(const Input& input, const audit::Profile& chosen, const std::string& digits,
                   Session& session) {
  const audit::Profile profile = audit::withHouseRules(chosen, input.layout->house_rules);
  const UsedRecords records = recordsOf(input, profile.inspection, session);
  if (!records.good) return Exit::NoFile;
  const std::string sha256 = files::sha256(input.text);
  const poster::Shop shop(*input.layout, input.kinds, profile, sha256, records.failed);
  const poster::About about = shop.about();
  const bool same = poster::posterHash(about).starts_with(digits);
  std::string said = ": the poster shows another layout, or another state of this one";
  if (same)
    said = ": the poster shows this layout as it is";
  else if (sha256.starts_with(digits))
    said = ": the poster does not show what failed and has not passed since, " +
           audit::listed(about.out_of_order);
  if (!same) said += ": print it anew and take the old one down";
  const Exit written = writeResult(files::printable(input.file) + said + "\n", "", session);
  return std::max(same ? Exit::Done : Exit::Failed, written);
}

Exit checkOne(const std::string& file, const std::string& poster, LayoutInput& layouts, Profiles& profiles,
              Session& session) {
  const Input input = layouts.read(file);
  if (!input.layout) return input.exit;
  const ChosenProfile& chosen = profiles.of(input);
  const floor::Plan plan = floor::buildPlan(*input.layout, floor::Hours::Open);
  print(files::faultsAt(input.text, file, plan.faults), session);
  session.log.debug("checked {}: {} faults", file, plan.faults.size());
  if (!chosen.profile) return chosen.exit;
  const std::string found = plan.faults.empty()
                                ? "can be read and built\n"
                                : "can be read; drawing faults: " + std::to_string(plan.faults.size()) + "\n";
  const Exit written = writeResult(printable(file) + ": " + found, "", session);
  const Exit compared = poster.empty() ? Exit::Done : comparePoster(input, *chosen.profile, poster, session);
  return std::max({plan.faults.empty() ? Exit::Done : Exit::Failed, written, compared});
}

Exit check(const Options& options, Session& session) {
  if (asksForInputTwice(options.layouts, session)) return Exit::Wrong;
  const LayoutFiles found = layoutFiles(options.layouts, session);
  const std::string poster = hashDigits(options.poster);
  if (!options.poster.empty() && poster.empty()) {
    session.console.err << "stopwalk: --poster " << options.poster << ": the " << kLeastDigits
                        << " or more digits 0-9 and a-f after `Layout` at a poster's foot are expected\n";
    return Exit::Wrong;
  }
  LayoutInput layouts(options.kinds, session);
  Profiles profiles(session);
  Exit worst = found.exit;
  for (const std::string& file : found.files)
    worst = std::max(worst, checkOne(file, poster, layouts, profiles, session));
  return worst;
}

}  // namespace

void addCheck(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("check", "Read layouts and say what is wrong with the drawing");
  c.add_option("LAYOUT", options->layouts,
               "Layout files; a folder: every *.layout.yaml in it and below; - is standard input")
      ->required();
  c.add_option("--poster", options->poster,
               "The hash at the foot of a poster: says whether it shows the layout as it is now")
      ->check(saysSomething("the hash at the foot of a poster"));
  addKindsOption(c, options->kinds);
  setExample(c,
             "stopwalk check sample-layouts/tram-depot.layout.yaml\n\n"
             "Ends with 0 if all is well, 1 on a drawing fault or if the poster is of another state, 2 if a "
             "file is no layout, 3 if it cannot be read.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return check(*options, session); }; });
}

}  // namespace stopwalk::app
