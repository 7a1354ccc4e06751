#include <algorithm>
#include <filesystem>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/output.h"
#include "app/command_line/painting.h"
#include "app/command_line/point_text.h"
#include "app/command_line/profiles.h"
#include "app/command_line/used_records.h"
#include "app/poster/novice_sheet.h"
#include "app/poster/shop.h"
#include "app/poster/texts.h"
#include "app/poster/write_pages.h"
#include "core/files/nearest.h"
#include "core/files/printable.h"
#include "core/files/sha256.h"
#include "core/layout/units.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::string layout, kinds;
  std::string room;
  bool all = false;
  bool sheet = false;
  std::string viewer_up, at;
  std::string paper = "a3";
  std::string language = "en";
  std::string format = "pdf";
  int dpi = poster::kDpi;
  std::string font;
  std::string out;
};

constexpr double kFarFromWall_mm = 3000;  // a slip of the hand, or another room

// The pages of one room, or of all in one file.
struct Made {
  std::string room;  // id; empty: of all
  poster::Document document;
};

class PosterRun {
 public:
  PosterRun(const Options& options, Session& session) : options_(options), session_(session) {}

  Exit run() {
    const auto wish = wishOf();
    if (!wish) return Exit::Wrong;
    const Input input = LayoutInput(options_.kinds, session_).read(options_.layout);
    if (!input.layout) return input.exit;
    if (wouldReplaceInput(input, options_.out, session_)) return Exit::Wrong;
    Profiles profiles(session_);
    const ChosenProfile& chosen = profiles.of(input);
    if (!chosen.profile) return chosen.exit;
    const auto rooms = roomsOf(*input.layout);
    if (rooms.empty()) return Exit::Wrong;
    const audit::Profile profile = audit::withHouseRules(*chosen.profile, input.layout->house_rules);
    const UsedRecords records = recordsOf(input, profile.inspection, session_);
    if (!records.good) return Exit::NoFile;
    const poster::Shop shop(*input.layout, input.kinds, profile, files::sha256(input.text), records.failed);
    if (options_.sheet) return sheets(shop, rooms, *wish);
    std::vector<Made> made;
    for (const std::size_t room : rooms) {
      const Exit exit = add(made, shop, *input.layout, room, *wish);
      if (exit != Exit::Done) return exit;
    }
    if (made.empty()) return wrong("no room has anything to show; nothing was written");
    return write(made);
  }

 private:
  Exit wrong(const std::string& text) const {
    session_.console.err << "stopwalk: " << text << "\n";
    return Exit::Wrong;
  }

  std::optional<poster::Wish> wishOf() const {
    poster::Wish wish;
    wish.paper = *poster::paperOf(options_.paper);
    const auto languages = languagesOf(options_.language, session_);
    if (!languages) return std::nullopt;
    wish.languages = *languages;
    const auto family = familyOf(options_.font, session_);
    if (!family) return std::nullopt;
    wish.family = *family;
    return wish;
  }

  std::vector<std::size_t> roomsOf(const layout::Layout& layout) const {
    std::vector<std::size_t> rooms;
    std::vector<std::string_view> ids;
    for (std::size_t r = 0; r < layout.rooms.size(); ++r) {
      ids.push_back(layout.rooms[r].id);
      if (options_.all ? !layout.rooms[r].outdoors : layout.rooms[r].id == options_.room) rooms.push_back(r);
    }
    if (rooms.empty())
      wrong(options_.all ? "the layout has no room indoors"
                         : "there is no room `" + options_.room + "`" +
                               (ids.empty() ? std::string("; the layout has none")
                                : files::didYouMean(options_.room, ids).empty()
                                    ? "; there is " + files::anyOf(ids)
                                    : files::didYouMean(options_.room, ids)));
    return rooms;
  }

  // False: it was asked for in words that mean no place.
  bool viewerOf(const layout::Layout& layout, std::size_t room, std::optional<poster::Viewer>& viewer) const {
    if (!options_.viewer_up.empty()) {
      const layout::Number up = layout::parseNumber(options_.viewer_up);
      if (!up.ok() || std::abs(up.value) > 360) {
        wrong("--viewer-up " + options_.viewer_up +
              ": degrees from -360 to 360 are expected, 90 for up the plan");
        return false;
      }
      viewer = poster::viewerLooking(layout, room, up.value);
    }
    if (!options_.at.empty()) {
      const auto at = pointOf(options_.at, layout.unit);
      if (!at) {
        wrong("--at " + options_.at + ": a place x,y in the file's unit is expected, such as 3000,1200");
        return false;
      }
      viewer = poster::viewerNear(layout, room, *at);
      if (viewer && geometry::distance(viewer->at, *at) > kFarFromWall_mm) {
        wrong("--at " + options_.at + " is more than 3 m from where a poster can hang on the walls of " +
              options_.room);
        return false;
      }
    }
    return true;
  }

  Exit add(std::vector<Made>& made, const poster::Shop& shop, const layout::Layout& layout, std::size_t room,
           const poster::Wish& wish) const {
    const std::string name = files::printable(shop.open().roomName(room));
    if (const QString why = shop.whyNot(room); !why.isEmpty()) {
      session_.console.err << "stopwalk: no poster of " << name << ": " << why.toStdString() << "\n";
      return options_.all ? Exit::Done : Exit::Wrong;
    }
    std::optional<poster::Viewer> viewer;
    if (!viewerOf(layout, room, viewer)) return Exit::Wrong;
    poster::Poster poster = shop.poster(room, viewer, wish);
    for (const poster::Shortfall& s : poster.shortfalls)
      session_.console.err << "stopwalk: " << name << ": " << s.text.toStdString() << "\n";
    if (!poster.document) return Exit::Wrong;
    made.push_back({layout.rooms[room].id, std::move(*poster.document)});
    return Exit::Done;
  }

  // A page for each machine of the rooms, in the order of the file.
  Exit sheets(const poster::Shop& shop, const std::vector<std::size_t>& rooms,
              const poster::Wish& wish) const {
    poster::Document document;
    document.family = wish.family;
    document.language = QString::fromStdString(wish.languages.front().key());
    document.heading = wish.languages.front().say(poster::texts::kHowItStops);
    document.of = QString::fromStdString(shop.layout().site.name);
    for (std::size_t m = 0; m < shop.layout().machines.size(); ++m) {
      const auto room = shop.open().machine_rooms[m];
      if (!room || std::ranges::find(rooms, *room) == rooms.end()) continue;
      poster::Sheet sheet = poster::noviceSheet(shop, m, wish);
      if (!sheet.page) return wrong(sheet.why_not.toStdString());
      for (const QString& text : sheet.shortfalls)
        session_.console.err << "stopwalk: " << text.toStdString() << "\n";
      document.pages.push_back(std::move(*sheet.page));
    }
    if (document.pages.empty()) return wrong("there is no machine there, so no sheet; nothing was written");
    std::vector<Made> made{{"", std::move(document)}};
    return write(made);
  }

  Exit write(std::vector<Made>& made) const {
    if (options_.format == "pdf") return writePdf(made);
    const std::size_t pages =
        std::ranges::count_if(made, [](const Made& m) { return m.document.pages.size() > 1; });
    const bool named = made.size() > 1;
    if ((named || pages > 0) && (options_.out == "-" || options_.out.empty()))
      return wrong("there are several pages and " + options_.format +
                   " has one each: --out needs the name of a file, from which theirs are made");
    for (const Made& m : made)
      for (std::size_t p = 0; p < m.document.pages.size(); ++p) {
        const poster::Bytes bytes = options_.format == "svg" ? poster::svgOf(m.document, p)
                                                             : poster::pngOf(m.document, p, options_.dpi);
        std::string suffix = named ? "-" + m.room : "";
        if (m.document.pages.size() > 1) suffix += "-" + std::to_string(p + 1);
        if (const Exit exit = put(bytes, fileWith(suffix)); exit != Exit::Done) return exit;
      }
    return Exit::Done;
  }

  Exit writePdf(std::vector<Made>& made) const {
    std::vector<poster::Document> documents;
    for (Made& m : made) documents.push_back(std::move(m.document));
    return put(poster::pdfOf(poster::joined(std::move(documents))), options_.out);
  }

  std::string fileWith(const std::string& suffix) const {
    const std::filesystem::path out = options_.out;
    return suffix.empty()
               ? options_.out
               : (out.parent_path() / (out.stem().string() + suffix + out.extension().string())).string();
  }

  Exit put(const poster::Bytes& bytes, const std::string& file) const {
    if (!bytes.why.isEmpty()) {
      session_.console.err << "stopwalk: " << bytes.why.toStdString() << "\n";
      return Exit::NoFile;
    }
    return writeResult(bytes.bytes.toStdString(), file, session_);
  }

  const Options& options_;
  Session& session_;
};

std::vector<std::string> paperKeys() {
  std::vector<std::string> keys;
  for (const poster::Paper& paper : poster::papers()) keys.emplace_back(paper.key);
  return keys;
}

}  // namespace

void addPoster(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("poster", "Stop-location poster of a room, to hang on its wall");
  c.add_option("LAYOUT", options->layout, "A layout file; - is standard input")->required();
  auto* rooms = c.add_option_group("rooms", "Which rooms");
  rooms->add_option("--room", options->room, "The room's id")->check(saysSomething("the id of a room"));
  rooms->add_flag("--all", options->all, "Every room indoors that has something to show");
  rooms->require_option(1);
  c.add_flag(
      "--sheet", options->sheet,
      "Instead of posters a page for each machine of the rooms: how it stops, where the next stop and the "
      "phone are; A4, or Letter with --paper letter");
  auto* up = c.add_option(
      "--viewer-up", options->viewer_up,
      "What the reader faces, in degrees counter-clockwise from the plan's right: up on the poster");
  c.add_option(
       "--at", options->at,
       "x,y in the file's unit: the poster hangs on the wall nearest to there; default: on the longest free "
       "stretch of wall")
      ->excludes(up);
  c.add_option("--paper", options->paper, "The sheet")
      ->check(CLI::IsMember(paperKeys()))
      ->capture_default_str();
  c.add_option("--language", options->language, "en, es or de; two with a comma between: both on one poster")
      ->capture_default_str();
  c.add_option("--format", options->format, "What to write; svg and png: a file a page")
      ->check(CLI::IsMember({"pdf", "svg", "png"}))
      ->capture_default_str();
  c.add_option("--dpi", options->dpi, "Of png: pixels an inch")
      ->check(CLI::Range(36, poster::kMostDpi))
      ->capture_default_str();
  c.add_option("--font", options->font, "The family of the letters; default: the system's own");
  addKindsOption(c, options->kinds);
  c.add_option("--out", options->out, "File to write, whole or not at all; - is standard output")
      ->required()
      ->check(saysSomething("the name of a file"));
  setExample(
      c,
      "stopwalk poster sample-layouts/tram-depot.layout.yaml --room hall --at 7000,0 --out hall.pdf\n"
      "  stopwalk poster sample-layouts/tram-depot.layout.yaml --all --paper a2 --language en,es --out "
      "posters.pdf\n\n"
      "What a poster cannot do as it should is told on standard error. Ends with 0 if it was written, 2 if "
      "input\n"
      "or usage is wrong or the room does not fit on the paper, 3 if a file cannot be read or written.");
  c.callback([options, &session] {
    session.command = [options, &session] {
      if (!options->at.empty() && options->all) {
        session.console.err
            << "stopwalk: --at is a place on one room's wall: it goes with --room, not with --all\n";
        return Exit::Wrong;
      }
      startPainting();
      return PosterRun(*options, session).run();
    };
  });
}

}  // namespace stopwalk::app
