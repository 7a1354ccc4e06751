#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/output.h"
#include "app/command_line/point_text.h"
#include "app/command_line/round_input.h"
#include "app/command_line/text_columns.h"
#include "core/audit/measure.h"
#include "core/audit/wording.h"
#include "core/files/report_json.h"
#include "core/layout/units.h"
#include "core/planning/round_plan.h"

namespace stopwalk::app {
namespace {

// Wider than any room has a use for.
constexpr double kMostClearance_mm = 100000;

struct Options {
  std::string layout;
  std::string from;
  std::string to;
  std::string kinds;
  std::string clearance;
  std::string format = "table";
};

std::string markHint(const std::string& text) {
  return layout::hasCurlyMarks(text) ? "; type the plain marks ' and \" for feet and inches" : "";
}

// An id, or `x,y` in the layout's unit.
std::optional<audit::End> endOf(const std::string& text, layout::LengthUnit unit, Session& session) {
  if (text.find(',') == std::string::npos) return audit::End(text);
  if (const auto point = pointOf(text, unit)) return audit::End(*point);
  session.console.err << "stopwalk: `" << text << "` is neither an id nor a point x,y in "
                      << layout::unitName(unit) << markHint(text) << "\n";
  return std::nullopt;
}

std::optional<double> clearanceOf(const std::string& text, Session& session) {
  if (text.empty()) return floor::kMeasuringClearance_mm;
  const auto mm = layout::parseLength(text, layout::LengthUnit::Millimetre);
  if (mm && *mm >= 0 && *mm <= kMostClearance_mm) return mm;
  session.console.err << "stopwalk: --clearance " << text << ": a length in mm from 0 to "
                      << layout::numberText(kMostClearance_mm) << " is expected" << markHint(text) << "\n";
  return std::nullopt;
}

std::string sentence(const Options& options, const audit::Measured& m, layout::LengthUnit unit) {
  const std::string ends = printable(options.from + " to " + options.to) + ": ";
  if (!m.walk.found()) return ends + m.why_not + "\n";
  return ends + audit::lengthText(m.walk.length_mm / 1000, unit) + " to walk" +
         (m.walk.status == floor::WalkStatus::Narrow ? ", through a gap; clear width " : "; clear width ") +
         audit::lengthText(2 * m.walk.clearance_mm / 1000, unit) + "\n";
}

// An end that failed and has not passed since is measured all the same, and said to have failed.
void tellFailed(const Options& options, const Input& input, Session& session) {
  if (input.file == "-") return;
  const auto read = readRecordsOf(input.file, session);
  for (const inspection::FailedDevice& f : inspection::failedDevices(
           read->log.records, {}, planning::asOf(*input.layout, input.kinds, nowOf(session.console))))
    if (f.device == options.from || f.device == options.to)
      session.console.err << "stopwalk: " << f.device << " failed on " << inspection::dayText(f.on)
                          << " and has not passed since (" << read->file << ")\n";
}

Exit measure(const Options& options, Session& session) {
  const auto clearance = clearanceOf(options.clearance, session);
  if (!clearance) return Exit::Wrong;
  const Input input = LayoutInput(options.kinds, session).read(options.layout);
  if (!input.layout) return input.exit;
  const auto from = endOf(options.from, input.layout->unit, session),
             to = endOf(options.to, input.layout->unit, session);
  if (!from || !to) return Exit::Wrong;
  const audit::Measured m = audit::measure(*input.layout, input.kinds, *from, *to, *clearance);
  if (!m.unknown.empty()) {
    session.console.err << "stopwalk: " << m.unknown << "\n";
    return Exit::Wrong;
  }
  tellFailed(options, input, session);
  const bool json = options.format == "json";
  if (!m.why_not.empty() && json) session.console.err << "stopwalk: " << m.why_not << "\n";
  const Exit written = writeResult(
      json ? files::walkJson(options.from, options.to, m.walk) : sentence(options, m, input.layout->unit), "",
      session);
  return std::max(m.walk.found() ? Exit::Done : Exit::Failed, written);
}

}  // namespace

void addMeasure(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("measure", "Walking distance between two places");
  c.add_option("LAYOUT", options->layout, "A layout file; - is standard input")->required();
  c.add_option("--from", options->from,
               "A station (lathe-1/operator), device or phone, or x,y in the file's unit")
      ->required()
      ->check(saysSomething("a place"));
  c.add_option("--to", options->to, "The same; for a device or phone, where its user stands")
      ->required()
      ->check(saysSomething("a place"));
  c.add_option("--clearance", options->clearance, "Distance kept from walls and machines, in mm; default 305")
      ->check(saysSomething("a length in mm"));
  addKindsOption(c, options->kinds);
  c.add_option("--format", options->format, "What to write")
      ->check(CLI::IsMember({"table", "json"}))
      ->capture_default_str();
  setExample(
      c,
      "stopwalk measure sample-layouts/tram-depot.layout.yaml --from lathe-1/operator --to 3000,500\n\n"
      "Doors are as in opening hours. Ends with 0 if there is a way, 1 if there is none, 2 if input or usage "
      "is\n"
      "wrong, 3 if a file cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return measure(*options, session); }; });
}

}  // namespace stopwalk::app
