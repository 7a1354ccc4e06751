#include "app/poster/table.h"

#include <algorithm>

#include "app/poster/colours.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr std::size_t kManyStops = 8;  // of one machine
constexpr std::size_t kMostNames = 6;  // of machines in a sentence

QString named(const std::vector<std::string>& names, const Language& language) {
  QStringList shown;
  for (std::size_t i = 0; i < std::min(names.size(), kMostNames); ++i)
    shown << QString::fromStdString(names[i]);
  const QString listed = shown.join(", ");
  if (names.size() <= kMostNames) return listed;
  return language.say(texts::kAndMore).arg(listed).arg(names.size() - kMostNames);
}

QString spanWords(const Listed& listed, const Language& language) {
  switch (listed.span.of) {
    case Span::Of::ItsMachine:
      return {};
    case Span::Of::EveryMachineHere:
      return language.say(texts::kStopsEveryMachineHere) +
             (listed.span.others.empty()
                  ? QString()
                  : ' ' + language.say(texts::kAlsoStops).arg(named(listed.span.others, language)));
    case Span::Of::EveryMachine:
      return language.say(texts::kStopsEveryMachine);
    case Span::Of::Nothing:
      return language.say(texts::kStopsNothing);
    case Span::Of::Named:
      break;
  }
  const char* text = listed.machine.empty() ? texts::kStopsOnly
                     : listed.span.own      ? texts::kAlsoStops
                                            : texts::kStopsOthers;
  return language.say(text).arg(named(listed.span.others, language));
}

bool stopsOnlyOthers(const Listed& listed) {
  return !listed.machine.empty() && !listed.span.own;
}

class Table {
 public:
  Table(const Languages& languages, const Lettering& letters, double width, const Sizes& sizes)
      : languages_(languages),
        letters_(letters),
        width_(width),
        sizes_(sizes),
        number_width_(2.2 * sizes.table_cap) {}

  // Room for the widest of the numbers.
  void makeRoom(const Content& content) {
    for (const Group& g : content.groups)
      for (std::size_t i = 0; i + 1 < g.stops.size(); ++i)
        if (toldAlike(g.stops[i], g.stops[i + 1]))
          number_width_ = std::max(
              number_width_,
              letters_.width(numbers(g.stops[i].number, g.stops[i + 1].number), cap(), true) + 0.5 * cap());
  }

  Block heading(const QStringList& texts, bool first) const {
    Block block;
    block.opens = block.heading = true;
    Writer writer(block, letters_);
    if (!first) writer.gap(0.5 * cap());
    writer.paragraph(texts.join(" / "), 0, width_, cap(), true);
    const double y = block.height + 0.6;
    block.marks.push_back(drawn(linePath({0, y}, {width_, y}), inks().ink, 0.35));
    writer.gap(2);
    return block;
  }

  // Its name, then a block a stop, so that a long one may go on in the next column.
  void group(std::vector<Block>& blocks, const Group& group) const {
    Block& name = blocks.emplace_back();
    name.opens = name.heading = true;
    Writer(name, letters_)
        .paragraph(group.machine.empty() ? sayEach(languages_, texts::kOnWalls).join(" / ")
                                         : QString::fromStdString(group.machine),
                   0, width_, cap(), true);
    // What does not stop it comes after the word that nothing here does, or what else does.
    const bool has_own = std::ranges::any_of(group.stops, [](const Listed& l) { return l.span.own; });
    if (!group.machine.empty() && !has_own) {
      instead(blocks.emplace_back(), group);
      blocks.back().opens = !group.stops.empty();
    }
    for (std::size_t i = 0; i < group.stops.size();) {
      std::size_t next = i + 1;
      while (next < group.stops.size() && toldAlike(group.stops[i], group.stops[next])) ++next;
      // Where it may be divided, each says whose it is.
      row(blocks.emplace_back(), group.stops[i], group.stops[next - 1].number,
          group.stops.size() > kManyStops);
      blocks.back().opens = true;
      i = next;
    }
    // What is done then is read with the last of its stops.
    if (!group.after_stop.empty())
      Writer(blocks.back(), letters_)
          .paragraph(languages_.front().say(texts::kAfter).arg(QString::fromStdString(group.after_stop)),
                     textLeft(), width_, cap());
    blocks.back().opens = false;
    close(blocks.back());
  }

  Block notStop(const Listed& listed) const {
    Block block;
    row(block, listed, listed.number, true);
    close(block);
    return block;
  }

  Block sentence(const QStringList& sentences) const {
    Block block;
    Writer writer(block, letters_);
    for (const QString& s : sentences) writer.paragraph(s, 0, width_, cap());
    close(block);
    return block;
  }

 private:
  double cap() const { return sizes_.table_cap; }
  double sign() const { return std::max(2 * cap(), kLeastSign_mm); }
  double numberWidth() const { return number_width_; }
  double textLeft() const { return numberWidth() + sign() + 0.6 * cap(); }

  // Number or numbers, picture, words.
  void row(Block& block, const Listed& listed, int last, bool with_machine) const {
    const double top = block.height;
    const double side = listed.cut_off ? sign() * 1.2 : sign();
    block.marks.push_back(
        Text{numbers(listed.number, last), {0, top + (side + cap()) / 2 + 0.4}, cap(), true});
    block.marks.push_back(Sign{listed.symbol, listed.ground, QRectF(numberWidth(), top + 0.4, side, side)});

    Writer writer(block, letters_);
    const double left = textLeft() + side - sign();
    const double line = Lettering::lineOf(cap());
    if (side > line) writer.gap(std::min(0.4 + (side - line) / 2, 0.5 * cap()));
    if (with_machine && !listed.machine.empty())
      writer.paragraph(QString::fromStdString(listed.machine), left, width_, cap(), true);
    QStringList said;
    for (const Language& language : languages_) said << wordsOf(listed, language).join(' ');
    said.removeDuplicates();
    for (const QString& words : said) writer.paragraph(words, left, width_, cap());
    block.height = std::max(block.height, top + side + 0.8);
  }

  static QString numbers(int first, int last) {
    if (first == last) return QString::number(first);
    return QStringLiteral("%1%2%3").arg(first).arg(last == first + 1 ? ',' : QChar(0x2013)).arg(last);
  }

  void instead(Block& block, const Group& group) const {
    Writer writer(block, letters_);
    QStringList numbers;
    for (const int number : group.use_instead) numbers << QString::number(number);
    for (const Language& language : languages_)
      writer.paragraph(numbers.isEmpty() ? language.say(texts::kNoStop)
                                         : language.say(texts::kNoStopUse).arg(numbers.join(", ")),
                       textLeft(), width_, cap(), numbers.isEmpty());
  }

  void close(Block& block) const {
    const double y = block.height + 0.5;
    block.marks.push_back(drawn(linePath({0, y}, {width_, y}), inks().hatch, 0.2));
    block.height += 1.5;
  }

  const Languages& languages_;
  const Lettering& letters_;
  double width_;
  Sizes sizes_;
  double number_width_;
};

}  // namespace

QStringList wordsOf(const Listed& listed, const Language& language) {
  QStringList said;
  if (listed.ground == plan::Ground::Start) return {language.say(texts::kGuardedStart)};
  if (listed.ground == plan::Ground::Plain) {
    const QString why = listed.failed_on
                            ? language.say(texts::kFailed).arg(failedOnText(*listed.failed_on, language))
                            : language.say(texts::kStopsNothing);
    return {language.say(listed.label) + ":", why};
  }
  said << language.say(listed.instruction);
  if (listed.held) said << language.say(texts::kHeld);
  const QString span = spanWords(listed, language);
  if (span.isEmpty()) return said;
  // That it does not stop the machine it is on is read before what to do with it.
  stopsOnlyOthers(listed) ? said.prepend(span + ".") : said.append(span);
  return said;
}

std::vector<Block> tableBlocks(const Content& content, const Languages& languages, const Lettering& letters,
                               double width, const Sizes& sizes) {
  Table table(languages, letters, width, sizes);
  table.makeRoom(content);
  std::vector<Block> blocks;
  blocks.push_back(table.heading(sayEach(languages, texts::kHowToStop), true));
  if (!content.cut_off_rooms.empty()) {
    QStringList rooms, said;
    for (const std::string& room : content.cut_off_rooms) rooms << QString::fromStdString(room);
    for (const Language& language : languages) {
      QString text = language.say(texts::kCutOffElsewhere).arg(rooms.join(", "));
      if (content.cut_off_shut_late) text += ' ' + language.say(texts::kNotAfterHours);
      said << text;
    }
    blocks.push_back(table.sentence(said));
  }
  for (const Group& group : content.groups) table.group(blocks, group);
  const auto apart = [&](const char* heading, const std::vector<Listed>& list) {
    if (!list.empty()) blocks.push_back(table.heading(sayEach(languages, heading), false));
    for (const Listed& listed : list) blocks.push_back(table.notStop(listed));
  };
  apart(texts::kOutOfOrder, content.out_of_order);
  apart(texts::kNotStops, content.not_stops);
  return blocks;
}

}  // namespace stopwalk::poster
