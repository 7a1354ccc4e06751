#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/painting.h"
#include "app/command_line/profiles.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "app/poster/bundle_html.h"
#include "app/poster/day.h"
#include "core/audit/audit.h"
#include "core/files/bundle_csv.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"

namespace stopwalk::app {
namespace {

struct Options : RoundOptions {
  std::string from, to, out, font;
  std::string paper = "a4";
};

// The audit as of now, with what the records say.
files::FiledReport reportFor(const Inspected& all, const audit::Profile& profile,
                             const inspection::Now& now) {
  const auto failed = planning::withoutRemoved(
      inspection::failedDevices(all.records(), profile.inspection, all.asOf(now)), *all.input.layout);
  const auto used = files::recordsUsed(all.read.file, all.read.log, failed,
                                       planning::notInLayout(failed, *all.input.layout));
  return {all.input.file, all.layoutNow().sha256,
          audit::audit(*all.input.layout, all.input.kinds, profile, floor::Hours::Open, failed), used};
}

Exit writePdf(const Options& options, const Inspected& all, const audit::Profile& profile,
              const inspection::Bundle& bundle, const files::FiledReport& filed, Session& session) {
  startPainting();
  const auto family = familyOf(options.font, session);
  if (!family) return Exit::Wrong;
  const inspection::Date today = nowOf(session.console).date;
  const poster::Shop shop(*all.input.layout, all.input.kinds, profile, filed.sha256, bundle.failed);
  const poster::ReportMatter report{shop,          all.input.kinds,     profile, filed.report, filed.file,
                                    filed.records, poster::dayOf(today)};
  QString why;
  const QByteArray pdf = poster::bundlePdf({report, bundle, all.read.log}, poster::planWithWalks(report),
                                           *poster::paperOf(options.paper), *family, why);
  if (why.isEmpty()) return writeResult(pdf.toStdString(), options.out, session);
  session.console.err << "stopwalk: " << why.toStdString() << "\n";
  return Exit::NoFile;
}

std::string writtenText(const inspection::Bundle& bundle, const std::string& file) {
  return "Bundle of " + inspection::dateText(bundle.from) + " to " + inspection::dateText(bundle.to) + ": " +
         counted(bundle.rounds.size(), "round") + ", " + counted(bundle.checks.size(), "check") +
         "; failed and open now: " + std::to_string(bundle.failed.size()) +
         ", still to be done: " + std::to_string(bundle.open_actions.size()) + ". Written to " +
         files::printable(file, "") + "\n";
}

Exit bundle(const Options& options, Session& session) {
  std::ostream& err = session.console.err;
  const auto from = inspection::parseDate(options.from), to = inspection::parseDate(options.to);
  if (!from || !to || *to < *from) {
    err << "stopwalk: --from " << options.from << " --to " << options.to
        << ": two dates as 2026-03-02 are expected, the earlier first\n";
    return Exit::Wrong;
  }
  const bool pdf = options.out.ends_with(".pdf");
  if (!pdf && !options.out.ends_with(".csv")) {
    err << "stopwalk: --out " << options.out << ": a name that ends in .pdf or .csv is expected\n";
    return Exit::Wrong;
  }
  if (wouldReplaceInput(options.layout, options.out, session)) return Exit::Wrong;
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  if (!all.read.there) {
    err << "stopwalk: there are no records: " << all.read.file << " does not exist\n";
    return Exit::NoFile;
  }
  const ChosenProfile chosen = Profiles(session).of(all.input);
  if (!chosen.profile) return chosen.exit;
  const audit::Profile profile = audit::withHouseRules(*chosen.profile, all.input.layout->house_rules);
  const inspection::Now now = nowOf(session.console);
  const files::FiledReport report = reportFor(all, profile, now);
  const inspection::Bundle bundle =
      planning::bundleOf(all.records(), all.schedule, *from, *to, all.asOf(now), *all.input.layout);
  const Exit written = pdf ? writePdf(options, all, profile, bundle, report, session)
                           : writeResult(files::bundleCsv(bundle, report), options.out, session);
  if (written != Exit::Done) return written;
  return writeResult(
      options.json() ? files::bundleJson(bundle, options.out) + "\n" : writtenText(bundle, options.out), "",
      session);
}

}  // namespace

void addRoundBundle(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c =
      *round.add_subcommand("bundle", "Write the records of a period, with the audit and what is open");
  addRoundOptions(c, *options);
  c.add_option("--from", options->from, "The first day, such as 2026-01-01")->required();
  c.add_option("--to", options->to, "The last day")->required();
  c.add_option("--paper", options->paper, "The sheet of a PDF")
      ->check(CLI::IsMember({"a4", "letter"}))
      ->capture_default_str();
  c.add_option("--font", options->font, "The family of the letters of a PDF; default: the system's own");
  c.add_option("--out", options->out,
               "What to write, whole or not at all: NAME.pdf is a document, NAME.csv a table of the same")
      ->required();
  setExample(
      c,
      "stopwalk round bundle shop.layout.yaml --from 2026-01-01 --to 2026-12-31 --out records.pdf\n\n"
      "Ends with 0 if it was written, whatever it says, 2 if input or usage is wrong, 3 if a file cannot be "
      "read\nor written, or there are no records.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return bundle(*options, session); }; });
}

}  // namespace stopwalk::app
