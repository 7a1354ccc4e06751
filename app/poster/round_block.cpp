#include "app/poster/round_block.h"

#include <algorithm>
#include <iterator>
#include <span>

#include "app/poster/colours.h"
#include "app/poster/round_texts.h"
#include "app/poster/sizes.h"

namespace stopwalk::poster {
namespace {

// Many on a page, so that the sheet of a shop is no stack. Letters are as small as at 0.5 m (ASR A1.3), for
// who holds it; the name and the results as for arm's length.
constexpr double kName_mm = 2.8, kWords_mm = 2.1, kResult_mm = 2.6, kNumber_mm = 5, kSign_mm = 5.8;
constexpr double kTick_mm = 5.5;  // common practice: a box of 5 mm can be ticked standing
constexpr double kRun_mm = 5.4, kWrite_mm = 4.4;
constexpr double kSignTop_mm = 7;
constexpr double kText_mm = 12;     // from the left: room for number and sign
constexpr double kResults_mm = 60;  // from the right
constexpr double kLine_mm = 0.35, kGap_mm = 0.4, kTickGap_mm = 0.8;
constexpr int kRuns = 10;  // what a mean run-down is taken of
constexpr std::size_t kTickColumns = 4, kResultColumns = 2;
constexpr qsizetype kNameLines = 3, kMostLines = 5, kStopsLines = 24;  // a cut-off may stop many

constexpr const char* kTried[] = {texts::kClear,          texts::kLegible, texts::kPressed,
                                  texts::kPressedRunning, texts::kLatches, texts::kStaysReleased,
                                  texts::kStaysPower};
constexpr const char* kLook[] = {texts::kSeenNoStop};
constexpr const char* kResults[] = {texts::kPass, texts::kFail, texts::kNotTested, texts::kCouldNotReach};

class BlockMaker {
 public:
  BlockMaker(const SheetDevice& device, const Language& language, const Lettering& letters, double width)
      : device_(device), language_(language), letters_(letters), width_(width) {}

  SheetBlock make() {
    Block& b = made_.block;
    b.marks.push_back(drawn(linePath({0, 0}, {width_, 0}), inks().ink, 0.6));
    number();
    b.height = 1;
    const double results = resultsFrom(b.height + kGap_mm);
    words();
    if (device_.symbol.empty()) return std::move(made_);
    b.height = std::max({b.height, results, kSignTop_mm + kSign_mm}) + kGap_mm;
    ticks();
    if (device_.is_stop) runs();
    notes();
    return std::move(made_);
  }

 private:
  void add(Mark mark) { made_.block.marks.push_back(std::move(mark)); }
  QString say(const char* english) const { return language_.say(english); }

  void number() {
    add(Text{QString::number(device_.number), {0, 1.2 + kNumber_mm}, kNumber_mm, true, inks().ink});
    if (!device_.symbol.empty())
      add(Sign{device_.symbol, device_.ground, QRectF(0, kSignTop_mm, kSign_mm, kSign_mm)});
  }

  void words() {
    const double right = device_.symbol.empty() ? width_ : width_ - kResults_mm - 3;
    paragraph(device_.name, right, kName_mm, true, kNameLines);
    const QString both = device_.where + "   |   " + device_.stops;
    const bool fits = !device_.stops.isEmpty() && letters_.width(both, kWords_mm) <= right - kText_mm;
    paragraph(fits ? both : device_.where, right, kWords_mm, false, kMostLines);
    if (!fits) paragraph(device_.stops, right, kWords_mm, false, kStopsLines);
    paragraph(device_.how, right, kWords_mm, false, kMostLines);
    paragraph(device_.no_way, right, kWords_mm, true, kMostLines);
    paragraph(device_.failed, right, kWords_mm, true, kMostLines);
  }

  void paragraph(const QString& text, double right, double cap, bool bold, qsizetype most) {
    if (text.isEmpty()) return;
    QStringList lines = letters_.wrapped(text, right - kText_mm, cap, bold);
    if (lines.size() > most) {
      made_.cut = true;
      lines = lines.mid(0, most);
      lines.last() = letters_.cut(lines.last() + QStringLiteral("…"), right - kText_mm - 4, cap, bold);
      if (!lines.last().endsWith(QChar(0x2026))) lines.last() += QChar(0x2026);
    }
    Writer writer(made_.block, letters_);
    for (const QString& line : lines) writer.paragraph(line, kText_mm, right + 5, cap, bold);
  }

  void box(QPointF at, double side) { frame(QRectF(at, QSizeF(side, side))); }
  void frame(const QRectF& box) { add(drawn(rectanglePath(box), inks().ink, kLine_mm)); }

  // On the right side, where a right-handed pen is; returns where they end.
  double resultsFrom(double y) {
    if (device_.symbol.empty()) return y;
    constexpr double kColumn_mm = kResults_mm / kResultColumns, kMost_mm = kColumn_mm - kTick_mm - 2;
    double cap = kResult_mm;
    for (const char* result : kResults) cap = std::min(cap, kMost_mm / letters_.width(say(result), 1, true));
    for (std::size_t i = 0; i < std::size(kResults); ++i) {
      const QPointF at(width_ - kResults_mm + static_cast<double>(i % kResultColumns) * kColumn_mm, y);
      box(at, kTick_mm);
      add(Text{say(kResults[i]), at + QPointF(kTick_mm + 1.5, (kTick_mm + cap) / 2), cap, true, inks().ink});
      if (i % kResultColumns + 1 == kResultColumns) y += kTick_mm + kTickGap_mm;
    }
    return y;
  }

  // The time of the check stands in the first row, where no box is: of the longer words each row has as many
  // lines as it must.
  void ticks() {
    const std::span<const char* const> tried =
        device_.is_stop ? std::span<const char* const>(kTried) : std::span<const char* const>(kLook);
    constexpr std::size_t kBeforeTime = kTickColumns - 1;
    const double column = width_ / kTickColumns, time = column * kBeforeTime, top = made_.block.height;
    lineToFill(made_.block, say(texts::kTime), time, width_, top + kTick_mm - 0.6, letters_);
    for (std::size_t i = 0; i < tried.size();) {
      const std::size_t in_row = i == 0 ? kBeforeTime : kTickColumns;
      const double wide = tried.size() == 1 ? time : column;
      double lowest = made_.block.height + kTick_mm;
      for (std::size_t c = 0; c < in_row && i < tried.size(); ++c, ++i)
        lowest = std::max(lowest, tick(say(tried[i]), static_cast<double>(c) * column, wide));
      made_.block.height = lowest + kTickGap_mm;
    }
  }

  // Returns where its words end.
  double tick(const QString& words, double left, double wide) {
    const double top = made_.block.height;
    box({left, top}, kTick_mm);
    Block label;
    Writer(label, letters_).paragraph(words, left + kTick_mm + 1.2, left + wide - 1, kWords_mm);
    shift(label.marks, {0, top + std::max(0.0, (kTick_mm - label.height) / 2)});
    for (Mark& mark : label.marks) add(std::move(mark));
    return top + label.height;
  }

  // Ten fields.
  void runs() {
    const double left = letters_.width(say(texts::kRunDown), kWords_mm) + 2, y = made_.block.height;
    const double each = (width_ - left) / kRuns;
    add(Text{say(texts::kRunDown), {0, y + (kRun_mm + kWords_mm) / 2}, kWords_mm, false, inks().ink});
    for (int run = 0; run < kRuns; ++run) {
      frame({left + run * each, y, each, kRun_mm});
      small(QString::number(run + 1), {left + run * each, y}, inks().quiet_ink);
    }
    made_.block.height += kRun_mm + kGap_mm;
  }

  // In the upper left corner of a field.
  void small(const QString& words, QPointF corner, const QColor& ink) {
    add(Text{words, corner + QPointF(0.8, 0.6 + kLeastLetter_mm), kLeastLetter_mm, false, ink});
  }

  // What is written down of it, a field each, with as much room as its words need, and to write in.
  void notes() {
    struct Field {
      const char* words;
      double part;  // of the width
    };
    constexpr Field kFields[] = {{texts::kNote, 0.26},
                                 {texts::kTaggedOut, 0.21},
                                 {texts::kDoneAtOnce, 0.22},
                                 {texts::kStillToDo, 0.31}};
    const double y = made_.block.height;
    qsizetype lines = 1;
    for (const Field& f : kFields) lines = std::max(lines, wordsOf(f.words, f.part).size());
    const double high = static_cast<double>(lines) * Lettering::lineOf(kLeastLetter_mm) + kWrite_mm;
    double left = 0;
    for (const Field& f : kFields) {
      frame({left, y, f.part * width_, high});
      QPointF corner(left, y);
      for (const QString& line : wordsOf(f.words, f.part)) {
        small(line, corner, inks().ink);
        corner.ry() += Lettering::lineOf(kLeastLetter_mm);
      }
      left += f.part * width_;
    }
    made_.block.height += high + 0.7;
  }
  QStringList wordsOf(const char* words, double part) const {
    return letters_.wrapped(say(words), part * width_ - 1.6, kLeastLetter_mm);
  }

  const SheetDevice& device_;
  const Language& language_;
  const Lettering& letters_;
  double width_;
  SheetBlock made_;
};

}  // namespace

void lineToFill(Block& block, const QString& words, double left, double right, double baseline,
                const Lettering& letters) {
  constexpr double kCap_mm = 2.4;
  block.marks.push_back(Text{words, {left, baseline}, kCap_mm, false, inks().ink});
  const double from = left + letters.width(words, kCap_mm) + 1.5;
  block.marks.push_back(drawn(linePath({from, baseline}, {right, baseline}), inks().ink, kLine_mm));
}

SheetBlock deviceBlock(const SheetDevice& device, const Language& language, const Lettering& letters,
                       double width) {
  return BlockMaker(device, language, letters, width).make();
}

}  // namespace stopwalk::poster
