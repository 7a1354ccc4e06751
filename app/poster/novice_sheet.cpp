#include "app/poster/novice_sheet.h"

#include <algorithm>

#include "app/poster/block.h"
#include "app/poster/colours.h"
#include "app/poster/plan_frame.h"
#include "app/poster/plan_picture.h"
#include "app/poster/sheet_facts.h"
#include "app/poster/table.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr double kHeader_mm = 24;
constexpr double kSentence_mm = 8;    // read from two metres: ASR A1.3
constexpr double kManyStops_mm = 5;   // the same, of more than two
constexpr double kLeastPlan_mm = 60;  // of height
constexpr double kScaleBar_mm = 8;    // below the plan

// Of how it stops at most, of all else, of the emergency box.
struct LetterSizes {
  double most_sentence_mm, words_mm, box_mm;
};
// The first in which all fits is taken: how it stops stays large for the longest.
constexpr double kLeastWords_mm = kLeastTableLetter_mm * 1.02, kLeastBox_mm = 2.6;
constexpr LetterSizes kLetterSizes[] = {{kSentence_mm, 4.2, 3.4},
                                        {kSentence_mm, kLeastWords_mm, kLeastBox_mm},
                                        {kManyStops_mm, kLeastWords_mm, kLeastBox_mm},
                                        {kLeastWords_mm, kLeastWords_mm, kLeastBox_mm}};

// Two buttons that are pressed alike are one picture; the plan shows both.
std::vector<Listed> withoutRepeats(const std::vector<Listed>& stops) {
  std::vector<Listed> told;
  for (const Listed& l : stops)
    if (std::ranges::none_of(told, [&](const Listed& t) { return toldAlike(t, l); })) told.push_back(l);
  return told;
}

class SheetMaker {
 public:
  SheetMaker(const Shop& shop, std::size_t machine, std::size_t room, const Wish& wish,
             const LetterSizes& sizes)
      : shop_(shop),
        open_(shop.open()),
        machine_(shop.layout().machines[machine]),
        wish_(wish),
        letters_(wish.family),
        facts_(sheetFacts(shop, machine, room)),
        own_(withoutRepeats(facts_.own.stops)),
        sizes_(sizes),
        sentence_cap_(std::min(sizes.most_sentence_mm, own_.size() <= 2 ? kSentence_mm : kManyStops_mm)) {
    page_.size = paperOf(wish.paper.key == std::string("letter") ? "letter" : "a4")->size(false);
  }

  Sheet make() {
    const double name_cap = header();
    put(stops());
    put(next());
    put(apart());
    const Block box =
        emergencyBox(facts_.content, shop_.about(), wish_.languages, letters_, width(), sizes_.box_mm);
    for (const double sign : {10.0, 8.0, kLeastSign_mm * 1.02, 0.0}) {
      const Block foot = footFor(name_cap, sign);
      const double foot_top = page_.size.height() - kMargin_mm - foot.height;
      const double box_top = foot_top - box.height - 2;
      if (sign > 0 && !plan(QRectF(kMargin_mm, y_, width(), box_top - y_ - kScaleBar_mm), sign)) continue;
      if (y_ > box_top)
        return {{},
                Told::tr("%1: its stops and their words do not fit on one page; one language alone, or fewer "
                         "words, may")
                    .arg(name()),
                {}};
      if (sign == 0) sheet_.shortfalls.push_back(Told::tr("%1: there is no room for a plan").arg(name()));
      putAt(box, box_top);
      putAt(foot, foot_top);
      break;
    }
    if (own_.size() <= 2 && sentence_cap_ < kSentence_mm)
      sheet_.shortfalls.push_back(
          Told::tr("%1: how it stops is in letters of %2 mm only, so that all of it fits on one page")
              .arg(name())
              .arg(sentence_cap_));
    tellFailed();
    sheet_.page = std::move(page_);
    return std::move(sheet_);
  }

 private:
  QString name() const { return QString::fromStdString(open_.name(machine_)); }
  double width() const { return page_.size.width() - 2 * kMargin_mm; }

  void putAt(Block block, double y) {
    if (wish_.languages.front().rightToLeft()) mirror(block.marks, width(), letters_);
    shift(block.marks, {kMargin_mm, y});
    page_.marks.insert(page_.marks.end(), block.marks.begin(), block.marks.end());
  }
  void put(const Block& block) {
    if (block.marks.empty()) return;
    putAt(block, y_);
    y_ += block.height + 3;
  }

  // Returns the height of the name's letters.
  double header() {
    Block block;
    block.marks.push_back(
        filled(rectanglePath({-kMargin_mm, 0, page_.size.width(), kHeader_mm}), inks().stop_sign));
    double cap = 0.42 * kHeader_mm;
    while (cap > sizes_.words_mm && letters_.width(name(), cap, true) > width()) cap *= 0.95;
    block.marks.push_back(
        Text{letters_.cut(name(), width(), cap, true), {0, 4 + cap}, cap, true, kPaperWhite});
    const QString room = letters_.cut(QString::fromStdString(facts_.content.room_name), width(), 3.6);
    block.marks.push_back(Text{room, {0, kHeader_mm - 2.8}, 3.6, false, kPaperWhite});
    putAt(block, 0);
    y_ = kHeader_mm + 4;
    return cap;
  }

  Block footFor(double name_cap, double sign) const {
    const QString sizes =
        sizesText(texts::kSheetSizes, name_cap, sentence_cap_, sign, wish_.languages.front());
    Block foot = footOf(facts_.content, shop_.about(), wish_.languages, letters_, width(), sizes);
    foot.marks.push_back(footCode(facts_.content, shop_.about(), width()));
    return foot;
  }

  void heading(Block& block, const char* text) const {
    Writer(block, letters_)
        .paragraph(sayEach(wish_.languages, text).join(" / "), 0, width(), sizes_.words_mm * 1.2, true);
    block.height += 1.5;
  }

  // One stop is shown large, several a little smaller.
  Block stops() const {
    Block block;
    heading(block, texts::kHowItStops);
    const double side = sentence_cap_ < kSentence_mm ? 16 : own_.size() == 2 ? 22 : 36;
    for (const Listed& l : own_) row(block, l, side, sentence_cap_);
    Writer writer(block, letters_);
    if (own_.empty())
      for (const QString& text : sayEach(wish_.languages, texts::kNoOwnStop))
        writer.paragraph(text, 0, width(), sentence_cap_, true, inks().stop_sign);
    if (!machine_.after_stop.empty())
      writer.paragraph(
          wish_.languages.front().say(texts::kAfter).arg(QString::fromStdString(machine_.after_stop)), 0,
          width(), sizes_.words_mm * 1.2, true);
    return block;
  }

  // What is on the machine and must not be taken for its stop.
  Block apart() const {
    Block block;
    const auto list = [&](const char* text, const std::vector<Listed>& listed) {
      for (const Listed& l : listed) {
        if (text) heading(block, std::exchange(text, nullptr));
        row(block, l, 12, sizes_.words_mm);
      }
    };
    std::vector<Listed> not_its = facts_.for_others;
    not_its.insert(not_its.end(), facts_.not_stops.begin(), facts_.not_stops.end());
    list(texts::kOutOfOrder, facts_.out_of_order);
    list(texts::kDoNotStopIt, not_its);
    return block;
  }

  void row(Block& block, const Listed& l, double side, double cap) const {
    const double top = block.height, left = side + 6;
    block.marks.push_back(Sign{l.symbol, l.ground, QRectF(0, top, side, side)});
    block.height += std::max(0.0, side / 2 - Lettering::lineOf(cap));
    Writer writer(block, letters_);
    QStringList said;
    for (const Language& language : wish_.languages) said << wordsOf(l, language).join(' ');
    said.removeDuplicates();
    for (const QString& words : said)
      writer.paragraph(words, left, width(), cap, said.size() == 1 || words == said[0]);
    block.height = std::max(block.height, top + side) + 2;
  }

  Block next() const {
    Block block;
    heading(block, own_.empty() ? texts::kWhatStopsIt : texts::kIfOutOfReach);
    Writer writer(block, letters_);
    for (const Language& language : wish_.languages)
      writer.paragraph(nextText(language) + lateText(language), 0, width(), sizes_.words_mm * 1.1);
    return block;
  }

  QString nextText(const Language& language) const {
    if (!facts_.station) return language.say(texts::kNotMeasured);
    if (facts_.next.found()) return wayText(facts_.next, language);
    return language.say(facts_.next.status != audit::Status::None ? texts::kNotMeasured
                        : own_.empty()                            ? texts::kNothingStopsIt
                                                                  : texts::kNoNextStop);
  }

  // What is otherwise when doors are shut.
  QString lateText(const Language& language) const {
    const audit::Way &way = facts_.next, &late = facts_.next_late;
    if (!way.found() || (late.index == way.index && late.walk_m == way.walk_m)) return {};
    return ' ' + (late.found() ? language.say(texts::kAfterHours).arg(wayText(late, language))
                               : language.say(texts::kNotAfterHours));
  }

  QString wayText(const audit::Way& way, const Language& language) const {
    const audit::DeviceEntry& device = open_.devices[*way.index];
    QString what = language.say(device.kind->label);
    if (device.machine)
      what = language.say(texts::kOfMachine)
                 .arg(what, QString::fromStdString(open_.name(shop_.layout().machines[*device.machine])));
    if (way.status == audit::Status::AtHand) return language.say(texts::kNextStopAtHand).arg(what);
    const QString walk = walkText(way.walk_m * 1000, language);
    const auto room =
        device.machine ? open_.machine_rooms[*device.machine] : open_.placed[*way.index].standing.room;
    const QString said =
        !room || *room == facts_.content.room
            ? language.say(texts::kNextStop).arg(what, walk)
            : language.say(texts::kNextStopIn).arg(what, walk, QString::fromStdString(open_.roomName(*room)));
    return way.status == audit::Status::Narrow ? said + ' ' + language.say(texts::kNarrow) : said;
  }

  // The room with this machine's stops, the next one and the phone; the dot is where its operator works.
  // False: it does not fit.
  bool plan(const QRectF& area, double sign) {
    if (area.height() < kLeastPlan_mm) return false;
    Content shown = facts_.content;
    shown.groups = {facts_.own, {{}, facts_.for_others, {}, {}}};
    if (facts_.next_here) shown.groups.push_back({{}, {*facts_.next_here}, {}, {}});
    shown.out_of_order = facts_.out_of_order;
    shown.not_stops = facts_.not_stops;
    shown.marked = machine_.id;
    Sizes sizes;
    sizes.sign = sign;
    const auto& outline = shop_.layout().rooms[shown.room].outline;
    const int scale = scaleFor(turnedSize(outline, shown.viewer.up_deg), area.size() - ringOf(sizes) * 2);
    if (scale == 0) return false;
    PlanPicture picture = planPicture(shown, shop_.layout(), wish_.languages, letters_, area, scale, sizes);
    if (!picture.signs_placed) return false;
    page_.marks.insert(page_.marks.end(), picture.marks.begin(), picture.marks.end());
    return true;
  }

  void tellFailed() {
    std::vector<const Listed*> own;
    for (const auto* list : {&facts_.own.stops, &facts_.for_others, &facts_.out_of_order})
      for (const Listed& l : *list) own.push_back(&l);
    for (const QString& text : shop_.failedOf(own))
      sheet_.shortfalls.push_back(Told::tr("%1: %2").arg(name(), text));
  }

  const Shop& shop_;
  const audit::Context& open_;
  const layout::Machine& machine_;
  const Wish& wish_;
  Lettering letters_;
  const SheetFacts facts_;
  const std::vector<Listed> own_;  // its stops, those told alike once
  const LetterSizes sizes_;
  const double sentence_cap_;  // of how it stops
  Sheet sheet_;
  Page page_;
  double y_ = 0;
};

}  // namespace

Sheet noviceSheet(const Shop& shop, std::size_t machine, const Wish& wish) {
  const auto room = shop.open().machine_rooms[machine];
  if (room && !shop.open().plan.rooms[*room].empty()) {
    Sheet sheet;
    for (const LetterSizes& sizes : kLetterSizes)
      if (sheet = SheetMaker(shop, machine, *room, wish, sizes).make(); sheet.page) break;
    return sheet;
  }
  const std::string name = shop.open().name(shop.layout().machines[machine]);
  return {{}, Told::tr("%1 is in no room that can be built").arg(QString::fromStdString(name)), {}};
}

}  // namespace stopwalk::poster
