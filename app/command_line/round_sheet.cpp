#include "app/poster/round_sheet.h"

#include <algorithm>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/painting.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_devices.h"
#include "app/command_line/table_rows.h"
#include "app/poster/write_pages.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"

namespace stopwalk::app {
namespace {

struct Options : RoundScope {
  RoundOptions of;
  WalkOptions walk;
  std::string paper = "a4", language = "en", font, out;
  std::size_t round = 0;
};

std::optional<poster::Wish> wishOf(const Options& options, Session& session) {
  poster::Wish wish;
  wish.paper = *poster::paperOf(options.paper);
  const auto family = familyOf(options.font, session);
  if (!family) return std::nullopt;
  wish.family = *family;
  wish.languages = {poster::Language(options.language)};
  return wish;
}

// What is walked: the round's own list, or what a round opened now would have; none: wrong, and told.
std::optional<poster::RoundSheetMatter> matterOf(const Options& options, const Inspected& all,
                                                 Session& session) {
  const inspection::Moment now = nowOf(session.console);
  poster::RoundSheetMatter matter{*all.input.layout,
                                  all.input.kinds,
                                  all.input.file,
                                  all.layoutNow().sha256,
                                  {},
                                  {},
                                  {},
                                  inspection::failedDevices(all.records(), all.schedule, all.asOf(now)),
                                  now.date};
  if (options.round == 0) {
    const auto order = devicesIn(options, options.walk, all, now, session);
    if (!order) return std::nullopt;
    matter.devices = order->devices;
    matter.walk = options.walk.how();
    matter.found = order->walk;
    matter.of = options.text();
    return matter;
  }
  const inspection::Round* round = all.records().findRound(options.round);
  if (!round) {
    session.console.err << "stopwalk: --round " << options.round << ": there is no such round\n";
    return std::nullopt;
  }
  matter.devices = round->devices;
  matter.of = round->of;
  matter.round = *round;
  matter.walk = round->walk;
  planning::RoundOrder found =
      planning::asWalked(round->devices, round->walk, *all.input.layout, all.input.kinds);
  if (found.devices == round->devices) matter.found = std::move(found.walk);
  return matter;
}

std::string writtenText(const Options& options, const poster::RoundSheetMatter& matter, std::size_t pages,
                        layout::LengthUnit unit) {
  std::string text = "Sheet of " + counted(matter.devices.size(), "device") + " (" + matter.of + "), " +
                     counted(pages, "page") + ", written to " + files::printable(options.out, "") + "\n";
  if (!matter.found)
    return text + "The order is that of the round: on the plan as it is now another may be shorter.\n";
  return text + walkText(*matter.found, planning::hoursOf(matter.walk), unit) + "\n" +
         leftOutText(*matter.found);
}

Exit sheet(const Options& options, Session& session) {
  if (options.round != 0 && (!options.room.empty() || options.due || options.walk.said())) {
    session.console.err << "stopwalk: --round " << options.round
                        << " has its own list of devices and its own walk: leave --room and --due out, and "
                           "--start, --closed and --hours\n";
    return Exit::Wrong;
  }
  startPainting();
  const auto wish = wishOf(options, session);
  if (!wish || wouldReplaceInput(options.of.layout, options.out, session)) return Exit::Wrong;
  const Inspected all = readInspected(options.of, session);
  if (all.exit) return *all.exit;
  const auto matter = matterOf(options, all, session);
  if (!matter) return Exit::Wrong;
  if (matter->devices.empty()) {
    session.console.err << "stopwalk: no sheet: " << options.whyNone() << "\n";
    return Exit::Failed;
  }
  const poster::RoundSheet made = poster::roundSheet(*matter, *wish);
  for (const QString& text : made.shortfalls)
    session.console.err << "stopwalk: " << text.toStdString() << "\n";
  const poster::Bytes pdf = poster::pdfOf(made.document);
  if (!pdf.why.isEmpty()) {
    session.console.err << "stopwalk: " << pdf.why.toStdString() << "\n";
    return Exit::NoFile;
  }
  const Exit written = writeResult(pdf.bytes.toStdString(), options.out, session);
  if (written != Exit::Done || options.out == "-") return written;
  return writeResult(options.of.json()
                         ? files::sheetJson({options.out, matter->of, made.document.pages.size(),
                                             matter->devices, matter->walk, matter->found}) +
                               "\n"
                         : writtenText(options, *matter, made.document.pages.size(), all.input.layout->unit),
                     "", session);
}

}  // namespace

void addRoundSheet(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("sheet", "The paper to walk a round with, in the order of the walk");
  addRoundOptions(c, options->of);
  c.add_option("--round", options->round, "The devices of this round, in its order")
      ->check(saysNumberOf("a round"));
  addScopeOptions(c, *options);
  addWalkOptions(c, options->walk);
  c.add_option("--paper", options->paper, "The sheet")
      ->check(CLI::IsMember({"a4", "letter"}))
      ->capture_default_str();
  c.add_option("--language", options->language, "Of its words")
      ->check(CLI::IsMember({"en", "es", "de"}))
      ->capture_default_str();
  c.add_option("--font", options->font, "The family of the letters; default: the system's own");
  c.add_option("--out", options->out, "The PDF to write, whole or not at all; - is standard output")
      ->required()
      ->check(saysSomething("the name of a file"));
  setExample(c,
             "stopwalk round sheet shop.layout.yaml --room metal --out round.pdf\n\n"
             "Opens no round; says what it wrote, unless that is standard output. Ends with 0 if it was "
             "written, 1 if there is no such device, 2 if input or usage is "
             "wrong,\n3 if a file cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return sheet(*options, session); }; });
}

}  // namespace stopwalk::app
