#include <algorithm>
#include <filesystem>
#include <memory>
#include <regex>
#include <set>
#include <sstream>
#include <thread>

#include "app/command_line/audit_layout.h"
#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/layout_files.h"
#include "app/command_line/output.h"
#include "app/command_line/progress.h"
#include "app/command_line/round_input.h"
#include "app/records/records_file.h"
#include "core/files/in_order.h"

namespace stopwalk::app {
namespace {

// Neither a plan nor the shop's own rules must be lost to a slip of the fingers.
bool wouldReplaceInput(const std::vector<std::string>& layouts, const AuditOptions& options,
                       Session& session) {
  const auto replaces = [&](const std::string& what, const std::string& file) {
    if (options.out.empty() || file.empty() || file == "-" || !isSameFile(file, options.out)) return false;
    session.console.err << "stopwalk: --out " << options.out << " is the " << what << " " << file
                        << " itself; name another file for the report\n";
    return true;
  };
  for (const std::string& file : layouts) {
    if (replaces("layout", file)) return true;
    for (const std::string& name : records::recordFilesOf(file))
      if (replaces("file of inspection records", name)) return true;
    for (const char* name : {kKindsFile, kTemplatesFile})
      if (replaces("shop's own file", fileBesideLayout(file, name))) return true;
  }
  return replaces("profile", options.profile) || replaces("file of kinds", options.kinds) ||
         wouldReplaceKept(options.out, session);
}

TableStyle styleFor(const AuditOptions& options, const Session& session) {
  const bool to_screen = options.out.empty() || options.out == "-";
  return {to_screen ? session.console.columns : 100, to_screen && session.console.colour};
}

std::size_t atOnce(const AuditOptions& options) {
  return options.at_once > 0 ? options.at_once : std::max(1u, std::thread::hardware_concurrency());
}

bool beginsRemark(const std::string& line) {
  static const std::regex place(":[0-9]+:[0-9]+: (error|warning|fault): ");
  return line.starts_with("stopwalk: ") || std::regex_search(line, place);
}

// What was told, one by one; the line of the file that is shown below a remark goes with it.
std::vector<std::string> remarks(const std::string& told) {
  std::vector<std::string> all;
  std::istringstream lines(told);
  for (std::string line; std::getline(lines, line);) {
    if (all.empty() || beginsRemark(line)) all.emplace_back();
    all.back() += line + "\n";
  }
  return all;
}

// Puts together what the layouts leave, in the order of the line.
class Collector {
 public:
  Collector(std::size_t all, const ReportPages& pages, const AuditOptions& options, Session& session)
      : pages_(pages), session_(session), output_(options.out, session), progress_(all, session) {
    progress_.show(0);
  }

  // False: nothing more can be written.
  bool take(const Audited& audited) {
    progress_.hide();
    tell(audited);
    worst_ = std::max(worst_, audited.exit);
    in_the_way_ = audited.in_the_way;
    if (in_the_way_) return false;
    lines_.push_back(audited.line);
    const bool good = !audited.line.counts || write(pages_.before(!any_) + audited.page);
    any_ = any_ || audited.line.counts;
    progress_.show(lines_.size());
    return good;
  }

  Exit finish() {
    progress_.hide();
    if (in_the_way_) return worst_;
    if (any_) write(pages_.end(lines_));
    return std::max(worst_, output_.finish());
  }

 private:
  bool write(const std::string& text) { return text.empty() || output_.write(text); }

  // What is wrong with a file that several layouts share is told once.
  void tell(const Audited& audited) {
    for (const std::string& one : remarks(audited.told))
      if (one.starts_with(audited.line.file + ":") || told_.insert(one).second) session_.console.err << one;
  }

  const ReportPages& pages_;
  Session& session_;
  Output output_;
  Progress progress_;
  std::vector<SummaryLine> lines_;
  std::set<std::string> told_;
  bool any_ = false, in_the_way_ = false;
  Exit worst_ = Exit::Done;
};

Exit audit(const AuditOptions& options, Session& session) {
  audit::Profile probe = audit::defaultProfile();
  if (!applyLimits(probe, options, session)) return Exit::Wrong;
  if (asksForInputTwice(options.layouts, session)) return Exit::Wrong;
  const LayoutFiles layouts = layoutFiles(options.layouts, session);
  if (wouldReplaceInput(layouts.files, options, session)) return Exit::Wrong;
  ChosenProfile asked;
  if (!options.profile.empty()) {
    asked = chooseProfile(options.profile, session);
    if (!asked.profile) return asked.exit;
  }

  const ReportPages pages(options.format, layouts.several, styleFor(options, session),
                          nowOf(session.console).date);
  Collector collector(layouts.files.size(), pages, options, session);
  files::inOrder<Audited>(
      layouts.files.size(), atOnce(options),
      [&](std::size_t i) { return auditLayout(layouts.files[i], options, asked.profile, pages, session); },
      [&](const Audited& audited) { return collector.take(audited); });
  return std::max(layouts.exit, collector.finish());
}

}  // namespace

void addAudit(CLI::App& program, Session& session) {
  const auto options = std::make_shared<AuditOptions>();
  CLI::App& c = *program.add_subcommand("audit", "Hold one or many layouts against the rules");
  c.add_option("LAYOUT", options->layouts,
               "Layout files; a folder: every *.layout.yaml in it and below; - is standard input")
      ->required();
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
  c.add_option(
       "--format", options->format,
       "What to write; summary: only a line a layout; csv: a row a station, findings-csv: a row a finding")
      ->check(CLI::IsMember({"table", "summary", "json", "csv", "findings-csv"}))
      ->capture_default_str();
  c.add_option("--out", options->out, "File to write, whole or not at all; default: standard output")
      ->check(saysSomething("the name of a file"));
  c.add_option("--at-once", options->at_once,
               "How many layouts are audited at the same time; default: as many as there are processor cores")
      ->check(CLI::Range(1, 1024));
  setExample(
      c,
      "stopwalk audit sample-layouts/tram-depot.layout.yaml --limit stop-too-far=4\n"
      "  stopwalk audit sample-layouts --format summary\n\n"
      "Ends with 0 if no failing rule is broken, 1 if one is, 2 if input or usage is wrong, 3 if a file\n"
      "cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return audit(*options, session); }; });
}

}  // namespace stopwalk::app
