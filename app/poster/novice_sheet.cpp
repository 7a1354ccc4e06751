#include "app/poster/novice_sheet.h"

#include <algorithm>
#include <span>

#include "app/poster/block.h"
#include "app/poster/colours.h"
#include "app/poster/plan_frame.h"
#include "app/poster/plan_picture.h"
#include "app/poster/table.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr double kHeader_mm = 24;
constexpr double kCap_mm = 4.2;
constexpr double kSentence_mm = 8;    // read from two metres: ASR A1.3
constexpr double kBox_mm = 3.4;       // of the emergency box
constexpr double kLeastPlan_mm = 60;  // of height

// What the page tells, gathered from the audit.
struct Facts {
  Group own;
  std::vector<Listed> for_others;  // on the machine, and do not stop it
  std::vector<Listed> not_stops;
  std::optional<std::size_t> station;  // the operator's, else the machine's first
  audit::Way next;                     // to a stop that is not the machine's own
  std::optional<Listed> next_here;     // where it is in the same room
};

class SheetMaker {
 public:
  SheetMaker(const Shop& shop, std::size_t machine, const Wish& wish)
      : shop_(shop),
        open_(shop.open()),
        machine_(shop.layout().machines[machine]),
        index_(machine),
        wish_(wish),
        letters_(wish.family),
        size_((std::string(wish.paper.key) == "letter" ? *paperOf("letter") : *paperOf("a4")).size(false)) {}

  Sheet make() {
    const auto room = open_.machine_rooms[index_];
    if (!room || open_.plan.rooms[*room].empty())
      return {{}, QStringLiteral("%1 is in no room that can be built").arg(name()), {}};
    content_ = shop_.content(*room, std::nullopt);
    gather();
    standAtStation();
    page_.size = size_;
    header();
    put(stops());
    put(next());
    Block foot =
        footOf(content_, shop_.about(), wish_.languages, letters_, width(), 0.55 * kHeader_mm, Sizes{});
    foot.marks.push_back(footCode(content_, shop_.about(), width()));
    const Block box = emergencyBox(content_, shop_.about(), wish_.languages, letters_, width(), kBox_mm);
    const double bottom = size_.height() - kMargin_mm - foot.height - box.height - 2;
    if (bottom - y_ < kLeastPlan_mm)
      sheet_.shortfalls.push_back(QStringLiteral("%1: so many stops leave no room for a plan").arg(name()));
    else
      plan(QRectF(kMargin_mm, y_, width(), bottom - y_ - 8));
    if (y_ > bottom)
      return {{}, QStringLiteral("%1: its stops and their words do not fit on one page").arg(name()), {}};
    putAt(box, bottom);
    putAt(foot, size_.height() - kMargin_mm - foot.height);
    sheet_.page = std::move(page_);
    return std::move(sheet_);
  }

 private:
  QString name() const { return QString::fromStdString(open_.name(machine_)); }
  double width() const { return size_.width() - 2 * kMargin_mm; }

  void putAt(Block block, double y) {
    if (wish_.languages.front().rightToLeft()) mirror(block.marks, width(), letters_);
    shift(block.marks, {kMargin_mm, y});
    page_.marks.insert(page_.marks.end(), block.marks.begin(), block.marks.end());
  }
  void put(const Block& block) {
    putAt(block, y_);
    y_ += block.height + 3;
  }

  void gather() {
    for (const Group& g : content_.groups)
      for (const Listed& l : g.stops)
        if (isOwn(l.id)) (l.span.own ? facts_.own.stops : facts_.for_others).push_back(l);
    for (const Listed& l : content_.not_stops)
      if (isOwn(l.id)) facts_.not_stops.push_back(l);
    for (std::size_t s = 0; s < open_.stations.size(); ++s)
      if (open_.stations[s].machine == index_ &&
          (!facts_.station || open_.stations[s].station->role == layout::Role::Operator)) {
        facts_.station = s;
        if (open_.stations[s].station->role == layout::Role::Operator) break;
      }
    if (!facts_.station) return;
    std::vector<std::size_t> others;
    for (const std::size_t d : open_.relation.candidates(index_))
      if (open_.devices[d].machine != index_ && open_.mayUse(*facts_.station, d)) others.push_back(d);
    facts_.next = open_.nearestOf(*facts_.station, others);
    if (!facts_.next.found()) return;
    for (const Group& g : content_.groups)
      for (const Listed& l : g.stops)
        if (l.id == open_.devices[*facts_.next.index].id) facts_.next_here = l;
  }

  // The plan and the box tell of the ways from where the operator works.
  void standAtStation() {
    content_.viewer.up_deg = 90;
    content_.phone_after_hours.reset();
    if (!facts_.station) return;
    content_.viewer.at = open_.stations[*facts_.station].at;
    content_.phone = phoneWay(open_);
    if (const PhoneWay late = phoneWay(shop_.afterHours()); late != content_.phone)
      content_.phone_after_hours = late;
  }

  bool isOwn(const std::string& id) const { return id.starts_with(machine_.id + "/"); }

  void header() {
    Block block;
    const double cap = 0.42 * kHeader_mm;
    block.marks.push_back(
        filled(rectanglePath({-kMargin_mm, 0, size_.width(), kHeader_mm}), inks().stop_sign));
    double large = cap;
    while (large > kCap_mm && letters_.width(name(), large, true) > width()) large *= 0.95;
    block.marks.push_back(
        Text{letters_.cut(name(), width(), large, true), {0, 4 + large}, large, true, kPaperWhite});
    const QString room = letters_.cut(QString::fromStdString(content_.room_name), width(), 3.6);
    block.marks.push_back(Text{room, {0, kHeader_mm - 2.8}, 3.6, false, kPaperWhite});
    putAt(block, 0);
    y_ = kHeader_mm + 4;
  }

  void heading(Block& block, const char* text) {
    Writer(block, letters_)
        .paragraph(sayEach(wish_.languages, text).join(" / "), 0, width(), kCap_mm * 1.2, true);
    block.height += 1.5;
  }

  // One stop is shown large, several a little smaller.
  Block stops() {
    Block block;
    heading(block, texts::kHowItStops);
    const std::vector<Listed> told = withoutRepeats(facts_.own.stops);
    const std::size_t count = told.size();
    const double side = count <= 1 ? 36 : count == 2 ? 22 : 16, cap = count <= 2 ? kSentence_mm : 5;
    for (const Listed& l : told) row(block, l, side, cap);
    if (count == 0)
      for (const QString& text : sayEach(wish_.languages, texts::kNoOwnStop))
        Writer(block, letters_).paragraph(text, 0, width(), kSentence_mm, true, inks().stop_sign);
    if (!machine_.after_stop.empty())
      Writer(block, letters_)
          .paragraph(
              wish_.languages.front().say(texts::kAfter).arg(QString::fromStdString(machine_.after_stop)), 0,
              width(), kCap_mm * 1.2, true);
    for (const Listed& l : facts_.for_others) row(block, l, 12, kCap_mm);
    for (const Listed& l : facts_.not_stops) row(block, l, 12, kCap_mm);
    return block;
  }

  // Two buttons that are pressed alike are one picture; the plan shows both.
  static std::vector<Listed> withoutRepeats(const std::vector<Listed>& stops) {
    std::vector<Listed> told;
    for (const Listed& l : stops)
      if (std::ranges::none_of(told, [&](const Listed& t) { return toldAlike(t, l); })) told.push_back(l);
    return told;
  }

  void row(Block& block, const Listed& l, double side, double cap) {
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

  Block next() {
    Block block;
    heading(block, texts::kIfOutOfReach);
    Writer writer(block, letters_);
    for (const Language& language : wish_.languages)
      writer.paragraph(nextText(language) + lateText(language), 0, width(), kCap_mm * 1.1);
    return block;
  }

  // Of the same stop when doors are shut.
  QString lateText(const Language& language) const {
    if (!facts_.station || !facts_.next.found()) return {};
    const std::size_t device = *facts_.next.index;
    const audit::Way late = shop_.afterHours().nearestOf(*facts_.station, std::span(&device, 1));
    return late.found() ? QString() : " " + language.say(texts::kNotAfterHours);
  }

  QString nextText(const Language& language) const {
    if (!facts_.station) return language.say(texts::kNotMeasured);
    const audit::Way& way = facts_.next;
    if (!way.found())
      return language.say(way.status != audit::Status::None ? texts::kNotMeasured
                          : facts_.own.stops.empty()        ? texts::kNothingStopsIt
                                                            : texts::kNoNextStop);
    const audit::DeviceEntry& device = open_.devices[*way.index];
    QString what = language.say(device.kind->label);
    if (device.machine)
      what = language.say(texts::kOfMachine)
                 .arg(what, QString::fromStdString(open_.name(shop_.layout().machines[*device.machine])));
    if (way.status == audit::Status::AtHand) return language.say(texts::kNextStopAtHand).arg(what);
    const QString walk = walkText(way.walk_m * 1000, language);
    const auto room =
        device.machine ? open_.machine_rooms[*device.machine] : open_.placed[*way.index].standing.room;
    if (!room || *room == content_.room) return language.say(texts::kNextStop).arg(what, walk);
    return language.say(texts::kNextStopIn).arg(what, walk, QString::fromStdString(open_.roomName(*room)));
  }

  // The room with this machine's stops, the next one and the phone; the dot is where its operator works.
  void plan(const QRectF& area) {
    Content shown = content_;
    shown.groups = {facts_.own, {{}, facts_.for_others, {}, {}}};
    if (facts_.next_here) shown.groups.push_back({{}, {*facts_.next_here}, {}, {}});
    shown.not_stops = facts_.not_stops;
    shown.marked = machine_.id;
    shown.on_the_spot = true;
    const auto& outline = shop_.layout().rooms[content_.room].outline;
    for (const double sign : {10.0, 8.0, kLeastSign_mm * 1.02}) {
      Sizes sizes;
      sizes.sign = sign;
      const QSizeF ring = ringOf(sizes) * 2;
      const int scale = scaleFor(turnedSize(outline, 90), area.size() - ring);
      if (scale == 0) continue;
      PlanPicture picture = planPicture(shown, shop_.layout(), wish_.languages, letters_, area, scale, sizes);
      if (!picture.signs_placed) continue;
      page_.marks.insert(page_.marks.end(), picture.marks.begin(), picture.marks.end());
      return;
    }
    sheet_.shortfalls.push_back(
        QStringLiteral("%1: the plan of the room does not fit on the sheet").arg(name()));
  }

  // As the audit has it, from the station.
  PhoneWay phoneWay(const audit::Context& context) const {
    PhoneWay way;
    const audit::Way& audited = context.phone_ways[*facts_.station];
    way.status = audited.status;
    if (!audited.found()) return way;
    way.phone = context.phoneName(*audited.index);
    way.length_mm = audited.walk_m * 1000;
    way.path = audited.path;
    way.through = roomsWalkedInto(context, audited.path, content_.room);
    return way;
  }

  const Shop& shop_;
  const audit::Context& open_;
  const layout::Machine& machine_;
  std::size_t index_;
  const Wish& wish_;
  Lettering letters_;
  QSizeF size_;
  Content content_;
  Facts facts_;
  Sheet sheet_;
  Page page_;
  double y_ = 0;
};

}  // namespace

Sheet noviceSheet(const Shop& shop, std::size_t machine, const Wish& wish) {
  return SheetMaker(shop, machine, wish).make();
}

}  // namespace stopwalk::poster
