#include <algorithm>
#include <filesystem>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/output.h"
#include "app/command_line/profiles.h"
#include "app/command_line/table.h"
#include "app/command_line/text_columns.h"
#include "app/shop_files/shop_files.h"
#include "core/audit/audit.h"
#include "core/files/faults.h"
#include "core/files/report_csv.h"
#include "core/files/report_json.h"
#include "core/files/sha256.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::vector<std::string> layouts;
  std::string profile;
  std::string kinds;
  std::string hours = "open";
  std::vector<std::string> limits;
  std::string format = "table";
  std::string out;
};

bool applyLimits(audit::Profile& profile, const Options& options, Session& session) {
  bool good = true;
  for (const std::string& limit : options.limits) {
    const std::string wrong = audit::applyLimit(profile, limit);
    if (!wrong.empty()) session.console.err << "stopwalk: --limit " << limit << ": " << wrong << "\n";
    good = good && wrong.empty();
  }
  return good;
}

void printFaults(const Input& input, const audit::Report& report, Session& session) {
  std::vector<floor::Fault> faults;
  for (const audit::Finding& f : report.findings)
    if (f.rule == "drawing-fault") faults.push_back({f.subject, f.room, f.text});
  if (!faults.empty()) print(files::faultsAt(input.text, input.file, faults), session);
}

class Progress {
 public:
  Progress(std::size_t all, Session& session) : all_(all), session_(session) {}
  ~Progress() { show(""); }
  void next(const std::string& file) {
    show("auditing " + std::to_string(++at_) + " of " + std::to_string(all_) + ": " + file);
  }

 private:
  void show(const std::string& text) {
    if (session_.console.progress && all_ > 1)
      session_.terminal << "\r\033[K" << printable(text) << std::flush;
  }
  std::size_t all_, at_ = 0;
  Session& session_;
};

std::string formatted(const std::vector<files::FiledReport>& reports, const Options& options,
                      Session& session) {
  if (options.format == "json") return files::reportJson(reports, options.layouts.size() > 1);
  if (options.format == "csv") return files::reportCsv(reports);
  const bool to_screen = options.out.empty() || options.out == "-";
  return auditTable(reports,
                    {to_screen ? session.console.columns : 100, to_screen && session.console.colour});
}

// Neither a plan nor the shop's own rules must be lost to a slip of the fingers.
bool wouldReplaceInput(const Options& options, Session& session) {
  const auto replaces = [&](const std::string& what, const std::string& file) {
    std::error_code none;
    if (options.out.empty() || file.empty() || file == "-" ||
        !std::filesystem::equivalent(file, options.out, none))
      return false;
    session.console.err << "stopwalk: --out " << options.out << " is the " << what << " " << file
                        << " itself; name another file for the report\n";
    return true;
  };
  for (const std::string& file : options.layouts) {
    if (replaces("layout", file)) return true;
    for (const char* name : {kKindsFile, kTemplatesFile})
      if (replaces("shop's own file", fileBesideLayout(file, name))) return true;
  }
  return replaces("profile", options.profile) || replaces("file of kinds", options.kinds);
}

Exit audit(const Options& options, Session& session) {
  if (wouldReplaceInput(options, session)) return Exit::Wrong;
  audit::Profile probe = audit::defaultProfile();
  if (!applyLimits(probe, options, session)) return Exit::Wrong;
  if (asksForInputTwice(options.layouts, session)) return Exit::Wrong;
  ChosenProfile asked;
  if (!options.profile.empty()) {
    asked = chooseProfile(options.profile, session);
    if (!asked.profile) return asked.exit;
  }

  Exit worst = Exit::Done;
  std::vector<files::FiledReport> reports;
  {
    LayoutInput layouts(options.kinds, session);
    Profiles profiles(session);
    Progress progress(options.layouts.size(), session);
    for (const std::string& file : options.layouts) {
      progress.next(file);
      const Input input = layouts.read(file);
      worst = std::max(worst, input.exit);
      if (!input.layout) continue;
      ChosenProfile chosen = asked.profile ? asked : profiles.of(input);
      worst = std::max(worst, chosen.exit);
      if (!chosen.profile || !applyLimits(*chosen.profile, options, session)) continue;
      const floor::Hours hours = options.hours == "after" ? floor::Hours::After : floor::Hours::Open;
      audit::Report report = audit::audit(*input.layout, input.kinds, *chosen.profile, hours);
      session.log.debug("audited {} by {}: {} findings", file, report.profile, report.findings.size());
      printFaults(input, report, session);
      if (report.count(audit::Severity::Fail) > 0) worst = std::max(worst, Exit::Failed);
      reports.push_back({file, files::sha256(input.text), std::move(report)});
    }
  }
  if (reports.empty()) return worst;
  return std::max(worst, writeResult(formatted(reports, options, session), options.out, session));
}

}  // namespace

void addAudit(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("audit", "Hold one or many layouts against the rules");
  c.add_option("LAYOUT", options->layouts, "Layout files; - is standard input")->required();
  c.add_option("--profile", options->profile,
               "A bundled profile or a profile file; default: the layout's, else teaching-shop")
      ->check(saysSomething("the name of a profile"));
  addKindsOption(c, options->kinds);
  c.add_option("--hours", options->hours, "Doors as in opening hours, or after them")
      ->check(CLI::IsMember({"open", "after"}))
      ->capture_default_str();
  c.add_option("--limit", options->limits,
               "RULE=VALUE or RULE.NAME=VALUE: another limit (m, s, %); may be repeated")
      ->expected(1)
      ->take_all()
      ->allow_extra_args(false);
  c.add_option("--format", options->format, "What to write")
      ->check(CLI::IsMember({"table", "json", "csv"}))
      ->capture_default_str();
  c.add_option("--out", options->out, "File to write, whole or not at all; default: standard output")
      ->check(saysSomething("the name of a file"));
  setExample(
      c,
      "stopwalk audit sample-layouts/tram-depot.layout.yaml --limit stop-too-far=4\n\n"
      "Ends with 0 if no failing rule is broken, 1 if one is, 2 if input or usage is wrong, 3 if a file\n"
      "cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return audit(*options, session); }; });
}

}  // namespace stopwalk::app
