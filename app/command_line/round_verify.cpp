#include <algorithm>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::string layout, head, format = "text";
};

using files::LogVerdict;

std::string verdictText(const LogVerdict& v, const std::string& file, const files::InspectionLog& log,
                        const std::string& head) {
  if (v.line != 0) return file + ":" + std::to_string(v.line) + ": " + v.why + "\n";
  std::string text = file + ": " +
                     (log.lines == 0 ? "it is empty: nothing was recorded yet"
                                     : counted(log.lines, "record") + ", each as it was written, in order");
  if (!head.empty())
    text += v.since == 0
                ? "; nothing was cut since the head that was kept"
                : "; unchanged up to the head that was kept, " + counted(v.since, "record") + " since";
  return text + "\n" + log.head() + " " + std::to_string(log.lines) + "\n";
}

Exit verify(const Options& options, Session& session) {
  const std::string file = records::recordsFileOf(options.layout);
  if (file.empty()) {
    session.console.err << "stopwalk: records stand beside a layout file: name one, not standard input\n";
    return Exit::Wrong;
  }
  const records::ReadRecords read = records::readRecords(options.layout);
  if (!read.there || !read.unreadable.empty()) {
    session.console.err << "stopwalk: cannot read " << file << ": "
                        << (read.there ? read.unreadable : "there are no records") << "\n";
    return Exit::NoFile;
  }
  std::string head = options.head;
  std::ranges::transform(head, head.begin(),
                         [](char c) { return c >= 'A' && c <= 'F' ? static_cast<char>(c + 32) : c; });
  const LogVerdict v = files::verifyLog(read.log, head);
  const std::string text = options.format == "json"
                               ? files::verdictJson(v, file, read.log) + "\n"
                               : files::printable(verdictText(v, file, read.log, head), "\n");
  return std::max(v.line == 0 ? Exit::Done : Exit::Failed, writeResult(text, "", session));
}

std::string notAHash(const std::string& text) {
  const bool good =
      text.size() == 64 && text.find_first_not_of("0123456789abcdefABCDEF") == std::string::npos;
  return good ? "" : "a hash of 64 hexadecimal digits is expected";
}

}  // namespace

void addRoundVerify(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c =
      *round.add_subcommand("verify", "Say whether any record was changed, removed or put in later");
  c.add_option("LAYOUT", options->layout, "A layout file; the records stand beside it")
      ->required()
      ->check(saysSomething("a layout file"));
  c.add_option("--head", options->head,
               "The head hash that was kept, such as on paper: shows lines that were cut too")
      ->check(CLI::Validator(notAHash, ""));
  c.add_option("--format", options->format, "What to write")
      ->check(CLI::IsMember({"text", "json"}))
      ->capture_default_str();
  setExample(
      c,
      "stopwalk round verify shop.layout.yaml\n\n"
      "Ends with 0, and the head hash and the number of records on the last line; with 1 and the first "
      "line\nthat is not as it was written; with 3 if there are no records or they cannot be read.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return verify(*options, session); }; });
}

}  // namespace stopwalk::app
