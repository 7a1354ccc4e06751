#include "app/command_line/round_input.h"

#include <algorithm>
#include <charconv>

#include "app/command_line/profiles.h"
#include "core/audit/profile.h"
#include "core/files/sha256.h"
#include "core/floor/plan.h"
#include "core/inspection/person.h"

namespace stopwalk::app {
namespace {

constexpr std::size_t kMostOffered = 3;

void tellBad(const records::ReadRecords& read, const std::string& layout_file, Session& session) {
  std::ostream& err = session.console.err;
  if (!read.log.bad.empty()) {
    const files::BadLine& first = read.log.bad.front();
    err << "stopwalk: " << read.file << ":" << first.line << ": " << first.why
        << "; no pass counts up to line " << read.log.records.unsure_to << "; see stopwalk round verify "
        << layout_file << "\n";
    if (const std::string unread = files::unreadText(read.log); !unread.empty())
      err << "stopwalk: " << read.file << ": " << unread << "\n";
  }
  if (!read.log.torn.empty())
    err << "stopwalk: " << read.file << ":" << read.log.lines + 1
        << ": a record that was never finished, or cut or changed later, is left out: a failure may be "
           "in it; the next record puts it aside into "
        << records::tornFileOf(read.file) << "\n";
}

}  // namespace

void addRoundOptions(CLI::App& command, RoundOptions& options) {
  command.add_option("LAYOUT", options.layout, "A layout file; the records stand beside it")
      ->required()
      ->check(saysSomething("a layout file"));
  addKindsOption(command, options.kinds);
  command.add_option("--format", options.format, "What to write")
      ->check(CLI::IsMember({"text", "json"}))
      ->capture_default_str();
}

inspection::LayoutThen Inspected::layoutNow() const {
  return planning::layoutThen(*input.layout, files::sha256(input.text));
}

std::optional<records::ReadRecords> readRecordsOf(const std::string& layout_file, Session& session) {
  if (layout_file == "-") {
    session.console.err << "stopwalk: records stand beside a layout file: name one, not standard input\n";
    return std::nullopt;
  }
  records::ReadRecords read = records::readRecords(layout_file);
  if (!read.unreadable.empty())
    session.console.err << "stopwalk: cannot read " << read.file << ": " << read.unreadable << "\n";
  if (read.there && !read.also_of.empty())
    session.console.err << "stopwalk: " << read.file << " has the records of " << read.also_of
                        << " too: what fails in one fails in both; give one of them another name\n";
  session.log.debug("read {} ({} records)", read.file, read.log.lines);
  tellBad(read, layout_file, session);
  return read;
}

Inspected readInspected(const RoundOptions& options, Session& session) {
  Inspected all;
  auto read = readRecordsOf(options.layout, session);
  if (!read) return all.exit = Exit::Wrong, all;
  if (!read->unreadable.empty()) return all.exit = Exit::NoFile, all;
  all.read = std::move(*read);
  all.input = LayoutInput(options.kinds, session).read(options.layout);
  if (!all.input.layout) return all.exit = all.input.exit, all;
  const ChosenProfile chosen = Profiles(session).of(all.input);
  if (!chosen.profile) return all.exit = chosen.exit, all;
  all.schedule = chosen.profile->inspection;
  all.devices = planning::inspectedDevices(*all.input.layout, all.input.kinds,
                                           floor::buildPlan(*all.input.layout, floor::Hours::Open));
  return all;
}

std::string nearestDevice(const std::string& asked, const Inspected& all) {
  const std::vector<std::string> near = audit::nearestNames(asked, all.ids(), kMostOffered);
  if (near.empty()) return audit::nearestName(asked, all.ids());
  std::string text;
  for (const std::string& id : near)
    text += (text.empty() ? ": did you mean `" : " or `") + id + "` (" + all.find(id)->kind + ")";
  return text + "?";
}

std::string sinceText(const inspection::FailedDevice& failed) {
  return failed.since == failed.on ? "" : ", and first on " + inspection::dayText(failed.since);
}

std::string goneText(const inspection::FailedDevice& failed) {
  return failed.device + ": failed on " + inspection::dayText(failed.on) + sinceText(failed) + " (check " +
         std::to_string(failed.check) +
         ") and has not passed since; the layout has no device of this id: what stands in its place counts "
         "as a stop";
}

inspection::Moment nowOf(const Console& console) {
  return console.now ? console.now() : records::momentNow();
}

void tellClock(const Inspected& all, const inspection::Moment& now, Session& session) {
  const inspection::Moment* last = nullptr;
  const auto see = [&](const auto& records) {
    for (const auto& r : records) {
      const inspection::Moment& written = writtenAt(r);
      if (!last || instantOf(*last) < instantOf(written)) last = &written;
    }
  };
  see(all.records().rounds);
  see(all.records().checks);
  if (last && instantOf(now) < instantOf(*last))
    session.console.err << "stopwalk: is the clock of this computer right? It says " << momentText(now)
                        << ", and there is a record that was written at " << momentText(*last) << "\n";
}

Exit tellAppended(const records::Appended& appended, const std::string& file, Session& session) {
  std::ostream& err = session.console.err;
  if (!appended.set_aside.empty())
    err << "stopwalk: a record that was never finished stood at the end of " << file << "; it is kept in "
        << appended.set_aside << "\n";
  switch (appended.written) {
    case records::Written::Yes:
      return Exit::Done;
    case records::Written::Busy:
      err << "stopwalk: not recorded: " << file << " is being written by " << appended.why << "; try again\n";
      break;
    case records::Written::No:
      if (appended.corrected_by != 0)
        return err << "stopwalk: not recorded: that check was corrected meanwhile, by "
                   << appended.corrected_by << ": correct that\n",
               Exit::Wrong;
      if (appended.failed_by != 0)
        return err << "stopwalk: not recorded: " << appended.why << "\n", Exit::Wrong;
      err << "stopwalk: not recorded: cannot write " << file << ": " << appended.why << "\n";
      break;
    case records::Written::Unsure:
      err << "stopwalk: it is not sure that this was recorded in " << file << ": " << appended.why
          << "; look with stopwalk round show before recording it again\n";
      break;
  }
  return Exit::NoFile;
}

CLI::Validator saysNumberOf(const std::string& what) {
  return {[what](const std::string& text) -> std::string {
            std::size_t number = 0;
            const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
            if (error == std::errc() && end == text.data() + text.size() && number > 0) return "";
            return "the number of " + what +
                   " is expected, a whole one from 1, as stopwalk round show has it, not `" + text + "`";
          },
          ""};
}

CLI::Validator saysName() {
  return {[](std::string& text) -> std::string {
            if (text.find_first_of("\r\n") != std::string::npos) return "a name is expected, on one line";
            text = inspection::nameOf(text);
            return text.empty() ? "a name is expected" : "";
          },
          ""};
}

}  // namespace stopwalk::app
