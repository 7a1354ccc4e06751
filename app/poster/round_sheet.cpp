#include "app/poster/round_sheet.h"

#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>

#include "app/poster/colours.h"
#include "app/poster/poster_shortfalls.h"
#include "app/poster/round_block.h"
#include "app/poster/round_plan_picture.h"
#include "app/poster/round_texts.h"
#include "app/poster/texts.h"
#include "core/audit/stop_relation.h"
#include "core/audit/wording.h"
#include "core/planning/inspected_devices.h"

namespace stopwalk::poster {
namespace {

constexpr double kEdge_mm = 10;  // common practice: every printer reaches so far
constexpr double kTitle_mm = 5, kShop_mm = 3.4, kWords_mm = 2.4, kSmall_mm = kLeastLetter_mm * 1.02;
constexpr double kPlan_mm = 68, kLargePlan_mm = 130;
constexpr std::size_t kManyDevices = 12;  // more need a larger plan

QString text(const std::string& utf8) {
  return QString::fromStdString(utf8);
}

template <class Things>
QString nameIn(const Things& things, const std::string& id) {
  for (const auto& thing : things)
    if (thing.id == id && !thing.name.empty()) return text(thing.name);
  return text(id);
}

class SheetMaker {
 public:
  SheetMaker(const RoundSheetMatter& matter, const Wish& wish)
      : m_(matter),
        language_(wish.languages.front()),
        letters_(wish.family),
        size_(wish.paper.size(false)),
        inspected_(planning::inspectedDevices(
            matter.layout, matter.kinds, floor::buildPlan(matter.layout, planning::hoursOf(matter.walk)))),
        way_(planning::wayPast(matter.devices, matter.walk, matter.layout, matter.kinds)),
        entries_(audit::devicesOf(matter.layout, matter.kinds)) {
    sheet_.document.family = wish.family;
    sheet_.document.language = text(language_.key());
    sheet_.document.heading = title();
    sheet_.document.subject = say(texts::kCaution);
  }

  RoundSheet make() {
    Block head = firstHead();
    std::vector<NumberedStop> stops;
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < m_.devices.size(); ++i) {
      const planning::InspectedDevice* device = find(m_.devices[i]);
      if (device) stops.push_back({static_cast<int>(i + 1), device});
      blocks.push_back(blockOf(i, device));
    }
    add(head, walkBlock());
    add(head, roundPlan(m_.layout, stops, way_.legs, language_, letters_, width(),
                        m_.devices.size() > kManyDevices ? kLargePlan_mm : kPlan_mm));
    const std::vector<std::vector<Block>> pages = paged(head, blocks);
    for (std::size_t p = 0; p < pages.size(); ++p)
      page(p == 0 ? head : goesOn(), pages[p], p + 1, pages.size());
    if (const QString boxes = emptyBoxes(sheet_.document); !boxes.isEmpty()) sheet_.shortfalls << boxes;
    return std::move(sheet_);
  }

 private:
  QString say(const char* english) const { return language_.say(english); }
  double width() const { return size_.width() - 2 * kEdge_mm; }
  QString title() const { return say(texts::kSheet) + ": " + text(m_.layout.site.name); }

  const planning::InspectedDevice* find(const std::string& id) const {
    const auto at = std::ranges::find(inspected_, id, &planning::InspectedDevice::id);
    return at == inspected_.end() ? nullptr : &*at;
  }

  static void add(Block& block, Block more) {
    shift(more.marks, {0, block.height});
    block.marks.insert(block.marks.end(), more.marks.begin(), more.marks.end());
    block.height += more.height;
  }

  Block firstHead() const {
    Block head;
    Writer writer(head, letters_);
    titleLine(writer);
    writer.paragraph(letters_.cut(scope() + "   |   " + identity(), width(), kWords_mm), 0, width() + 5,
                     kWords_mm);
    if (m_.round)
      writer.paragraph(
          letters_.cut(say(texts::kRoundNumber)
                           .arg(QString::number(m_.round->number),
                                text(inspection::dateText(m_.round->at.date)), text(m_.round->by)),
                       width(), kShop_mm, true),
          0, width() + 5, kShop_mm, true);
    linesToFill(head);
    writer.gap(2.5);
    writer.paragraph(say(texts::kHowToFill), 0, width(), kWords_mm);
    writer.paragraph(say(texts::kMustRest), 0, width(), kWords_mm, true);
    writer.gap(1);
    writer.paragraph(say(texts::kHowToEnter).arg(recordCommand(), newCommand()), 0, width(), kSmall_mm);
    writer.gap(2);
    return head;
  }

  // How long the walk is, how good its order, and what it does not lead to.
  Block walkBlock() const {
    Block block;
    Writer writer(block, letters_);
    writer.paragraph(walkText(), 0, width(), kWords_mm);
    QStringList numbers;
    for (std::size_t i = 0; i < m_.devices.size(); ++i)
      if (isNotReached(m_.devices[i]))
        numbers << QStringLiteral("%1 (%2)").arg(i + 1).arg(text(m_.devices[i]));
    if (!numbers.isEmpty())
      writer.paragraph(say(texts::kNoWayTo).arg(numbers.join(", ")), 0, width(), kWords_mm, true);
    writer.gap(1);
    return block;
  }

  QString walkText() const {
    if (!m_.found) return say(texts::kOwnOrder);
    QStringList said{say(m_.walk.after_hours ? texts::kWalkAfterHours : texts::kWalkInHours)
                         .arg(text(audit::lengthText(m_.found->length_mm / 1000, m_.layout.unit)))};
    if (!m_.walk.start.empty()) said << say(texts::kBeginsAt).arg(text(m_.walk.start));
    if (m_.walk.closed) said << say(texts::kLeadsBack);
    const auto gap = planning::gapPercent(*m_.found);
    said << (!gap        ? say(texts::kGapUnknown)
             : *gap <= 0 ? say(texts::kNoneShorter)
                         : say(texts::kNoneShorterBy).arg(text(audit::decimal(*gap, 1))));
    return said.join(' ');
  }

  bool isNotReached(const std::string& id) const {
    return std::ranges::find(way_.not_reached, id) != way_.not_reached.end();
  }

  // Of a long name smaller, and only then cut.
  void titleLine(Writer& writer) const {
    double cap = kTitle_mm;
    while (cap > kShop_mm && letters_.width(title(), cap, true) > width()) cap *= 0.97;
    writer.paragraph(letters_.cut(title(), width(), cap, true), 0, width() + 5, cap, true);
  }

  void linesToFill(Block& head) const {
    const double half = width() / 2;
    const auto line = [&](const char* words, double left, double right) {
      lineToFill(head, say(words), left, right, head.height, letters_);
    };
    head.height += 9;
    line(texts::kDate, 0, half * 0.55);
    line(texts::kBegunAt, half * 0.58, half - 3);
    if (m_.round)
      line(texts::kInspector, half, width());
    else
      line(texts::kRoundToFill, half, width());
    head.height += 9;
    line(m_.round ? texts::kSecondPerson : texts::kInspector, 0, half - 3);
    if (!m_.round) line(texts::kSecondPerson, half, width());
  }

  QString scope() const {
    static const std::string due_in = "due in ";
    const int count = static_cast<int>(m_.devices.size());
    if (m_.of == "all" || m_.of.empty()) return say(texts::kSheetOfAll).arg(count);
    if (m_.of == "due") return say(texts::kSheetOfDue).arg(count);
    const bool due = m_.of.starts_with(due_in);
    return say(due ? texts::kSheetOfDueInRoom : texts::kSheetOfRoom)
        .arg(QString::number(count), nameIn(m_.layout.rooms, due ? m_.of.substr(due_in.size()) : m_.of));
  }

  QString identity() const {
    QStringList parts;
    if (const auto& r = m_.layout.revision)
      parts << say(texts::kRevision).arg(r->number) + (r->date.empty() ? QString() : ", " + text(r->date));
    else
      parts << say(texts::kNoRevision);
    parts << say(texts::kLayout).arg(text(m_.sha256.substr(0, kShortHash)))
          << say(texts::kPrinted).arg(text(inspection::dateText(m_.today)));
    return parts.join("   |   ");
  }

  // As a shell takes it, whatever stands in it.
  QString fileName() const {
    QString name = QFileInfo(text(m_.file)).fileName();
    static const QRegularExpression plain("^[\\w.][\\w.-]*$", QRegularExpression::UseUnicodePropertiesOption);
    if (plain.match(name).hasMatch()) return name;
    if (name.startsWith('-')) name.prepend("./");
    return "'" + name.replace("'", "'\\''") + "'";
  }
  QString recordCommand() const {
    return QStringLiteral(
               "stopwalk round record %1 --round %2 --device ID --result ... --by ... --at \"%3 10:30\"")
        .arg(fileName(), m_.round ? QString::number(m_.round->number) : QStringLiteral("N"),
             text(inspection::dateText(m_.today)));
  }
  QString newCommand() const {
    return QStringLiteral("stopwalk round new %1 --by ... --at \"%2 10:00\"")
        .arg(fileName(), text(inspection::dateText(m_.today)));
  }

  Block blockOf(std::size_t place, const planning::InspectedDevice* device) {
    SheetDevice d;
    d.number = static_cast<int>(place + 1);
    d.name = text(m_.devices[place]);
    const auto entry = std::ranges::find(entries_, m_.devices[place], &audit::DeviceEntry::id);
    if (device && entry != entries_.end())
      describe(d, *device, *entry);
    else
      d.where = say(texts::kNotOnPlan);
    SheetBlock made = deviceBlock(d, language_, letters_, width());
    if (made.cut)
      sheet_.shortfalls
          << Told::tr("%1: its words are too long for the sheet; they are cut").arg(text(m_.devices[place]));
    return std::move(made.block);
  }

  void describe(SheetDevice& d, const planning::InspectedDevice& device,
                const audit::DeviceEntry& entry) const {
    const bool is_stop = entry.kind->counts_as_stop && !device.machines.empty();
    const QString kind = language_.say(device.kind);
    d.name = entry.machine
                 ? say(texts::kOnMachine).arg(machineName(m_.layout.machines[*entry.machine].id), kind)
                 : QStringLiteral("%1 (%2)").arg(kind, text(device.id));
    d.is_stop = device.is_stop;
    d.where = where(device, entry);
    if (isNotReached(device.id)) d.no_way = say(texts::kNoWayHere);
    d.stops = whatItStops(device, entry);
    const std::string& own = entry.device->instruction;
    const QString how = own.empty() ? language_.say(entry.kind->instruction) : text(own);
    d.how = say(is_stop ? texts::kToTest : texts::kToLookAt).arg(how);
    d.symbol = entry.kind->symbol.empty() ? "plain" : entry.kind->symbol;
    d.ground = is_stop || !entry.kind->counts_as_stop ? plan::groundOf(*entry.kind) : plan::Ground::Plain;
    const auto failed = std::ranges::find(m_.failed, device.id, &inspection::FailedDevice::device);
    if (failed != m_.failed.end())
      d.failed = say(texts::kFailedOn)
                     .arg(failedOnText(failed->on, language_),
                          isFinderKnown(*failed) ? text(failed->found_by) : say(texts::kNameUnread));
  }

  QString machineName(const std::string& id) const { return nameIn(m_.layout.machines, id); }

  QString where(const planning::InspectedDevice& device, const audit::DeviceEntry& entry) const {
    const QString room = device.room.empty() ? say(texts::kNoRoom) : nameIn(m_.layout.rooms, device.room);
    QString where = entry.machine ? room : say(texts::kOnAWall).arg(room);  // the name says the machine
    if (entry.device->height)
      where = say(texts::kAboveFloor)
                  .arg(where, text(audit::lengthText(*entry.device->height / 1000, m_.layout.unit)));
    return where + "   |   " + text(device.id);
  }

  // All of them by name: each is to be seen to stop.
  QString whatItStops(const planning::InspectedDevice& device, const audit::DeviceEntry& entry) const {
    if (!entry.kind->counts_as_stop) return say(texts::kStopsNothing);
    if (device.machines.empty()) return say(texts::kWiredToNothing);
    if (device.machines.size() > 1 && device.machines.size() == m_.layout.machines.size())
      return say(texts::kStopsEveryMachine);
    QStringList names;
    for (const std::string& id : device.machines) names << machineName(id);
    return say(texts::kStops).arg(names.join(", "));
  }

  Block foot(std::size_t page, std::size_t pages) const {
    Block foot;
    foot.marks.push_back(drawn(linePath({0, 0}, {width(), 0}), inks().ink, 0.35));
    Writer writer(foot, letters_);
    writer.gap(0.5);
    writer.paragraph(say(texts::kCaution), 0, width(), kSmall_mm);
    const QString number = say(texts::kPageOf).arg(page).arg(pages);
    const double numbers = letters_.width(number, kWords_mm, true);
    const double line = foot.height + Lettering::lineOf(kWords_mm) - 0.6;
    foot.marks.push_back(Text{number, {width() - numbers, line}, kWords_mm, true, inks().ink});
    foot.marks.push_back(Text{
        letters_.cut(identity(), width() - numbers - 4, kWords_mm), {0, line}, kWords_mm, false, inks().ink});
    foot.height += Lettering::lineOf(kWords_mm);
    return foot;
  }

  // In one line: what is said at its right is of every block below.
  Block goesOn() const {
    Block head;
    const double rest = letters_.width(say(texts::kMustRest), kWords_mm, true);
    const double baseline = (Lettering::lineOf(kWords_mm) + kWords_mm) / 2;
    head.marks.push_back(
        Text{say(texts::kMustRest), {width() - rest, baseline}, kWords_mm, true, inks().ink});
    Writer(head, letters_)
        .paragraph(letters_.cut(title(), width() - rest - 4, kWords_mm, true), 0, width(), kWords_mm, true);
    head.height += 0.5;
    return head;
  }

  // No block is divided; one that does not fit comes on the next page.
  std::vector<std::vector<Block>> paged(const Block& head, std::vector<Block>& blocks) const {
    const double whole = size_.height() - 2 * kEdge_mm - foot(99, 99).height - 1, next = goesOn().height;
    std::vector<std::vector<Block>> pages(1);
    double left = whole - head.height;
    for (Block& block : blocks) {
      if (block.height > left) {
        pages.emplace_back();
        left = whole - next;
      }
      left -= block.height;
      pages.back().push_back(std::move(block));
    }
    return pages;
  }

  void page(const Block& head, const std::vector<Block>& blocks, std::size_t number, std::size_t of) {
    Page page;
    page.size = size_;
    Block whole = head;
    for (const Block& block : blocks) add(whole, block);
    Block at_foot = foot(number, of);
    shift(at_foot.marks, {0, size_.height() - 2 * kEdge_mm - at_foot.height});
    whole.marks.insert(whole.marks.end(), at_foot.marks.begin(), at_foot.marks.end());
    if (language_.rightToLeft()) mirror(whole.marks, width(), letters_);
    shift(whole.marks, {kEdge_mm, kEdge_mm});
    page.marks = std::move(whole.marks);
    sheet_.document.pages.push_back(std::move(page));
  }

  const RoundSheetMatter& m_;
  const Language& language_;
  Lettering letters_;
  QSizeF size_;
  std::vector<planning::InspectedDevice> inspected_;
  planning::WayPast way_;
  std::vector<audit::DeviceEntry> entries_;
  RoundSheet sheet_;
};

}  // namespace

RoundSheet roundSheet(const RoundSheetMatter& matter, const Wish& wish) {
  return SheetMaker(matter, wish).make();
}

}  // namespace stopwalk::poster
