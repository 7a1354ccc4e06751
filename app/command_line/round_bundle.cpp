#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/profiles.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "core/audit/audit.h"
#include "core/files/bundle_csv.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::string layout, kinds, from, to, out;
};

// The audit as of now, with what the records say.
std::optional<files::FiledReport> reportFor(const Inspected& all, Session& session) {
  const ChosenProfile chosen = Profiles(session).of(all.input);
  if (!chosen.profile) return std::nullopt;
  const audit::Profile profile = audit::withHouseRules(*chosen.profile, all.input.layout->house_rules);
  const auto failed = inspection::failedDevices(all.records(), profile.inspection);
  files::RecordsUsed used{all.read.file, all.read.log.lines, all.read.log.head(), {}};
  for (const inspection::FailedDevice& f : failed) used.failed.push_back(f.device);
  return files::FiledReport{
      all.input.file, all.layoutNow().sha256,
      audit::audit(*all.input.layout, all.input.kinds, profile, floor::Hours::Open, failed), used};
}

Exit bundle(const Options& options, Session& session) {
  std::ostream& err = session.console.err;
  const auto from = inspection::parseDate(options.from), to = inspection::parseDate(options.to);
  if (!from || !to || *to < *from) {
    err << "stopwalk: --from " << options.from << " --to " << options.to
        << ": two dates as 2026-03-02 are expected, the earlier first\n";
    return Exit::Wrong;
  }
  if (!options.out.ends_with(".csv")) {
    err << "stopwalk: --out " << options.out << ": a name that ends in .csv is expected\n";
    return Exit::Wrong;
  }
  const Inspected all = readInspected({options.layout, options.kinds, "text"}, session);
  if (all.exit) return *all.exit;
  if (!all.read.there) {
    err << "stopwalk: there are no records: " << all.read.file << " does not exist\n";
    return Exit::NoFile;
  }
  const auto report = reportFor(all, session);
  if (!report) return Exit::Wrong;
  return writeResult(files::bundleCsv(inspection::bundleOf(all.records(), all.schedule, *from, *to), *report),
                     options.out, session);
}

}  // namespace

void addRoundBundle(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c =
      *round.add_subcommand("bundle", "Write the records of a period, with the audit and what is open");
  c.add_option("LAYOUT", options->layout, "A layout file; the records stand beside it")
      ->required()
      ->check(saysSomething("a layout file"));
  addKindsOption(c, options->kinds);
  c.add_option("--from", options->from, "The first day, such as 2026-01-01")->required();
  c.add_option("--to", options->to, "The last day")->required();
  c.add_option("--out", options->out, "The table to write, whole or not at all: NAME.csv")->required();
  setExample(c, "stopwalk round bundle shop.layout.yaml --from 2026-01-01 --to 2026-12-31 --out records.csv");
  c.callback(
      [options, &session] { session.command = [options, &session] { return bundle(*options, session); }; });
}

}  // namespace stopwalk::app
