#include "app/poster/round_block.h"

#include <algorithm>
#include <span>

#include "app/poster/colours.h"
#include "app/poster/round_texts.h"
#include "app/poster/sizes.h"

namespace stopwalk::poster {
namespace {

// Read at arm's length, some 0.7 m: between the 2 mm for 0.5 m and the 4 mm for 1 m of ASR A1.3.
constexpr double kName_mm = 3.4, kWords_mm = 2.6, kLabel_mm = 2.2, kResult_mm = 3, kNumber_mm = 7;
constexpr double kTick_mm = 5.5, kField_mm = 8;  // common practice: a box of 5 mm can be ticked standing
constexpr double kText_mm = 20;                  // from the left: room for number and sign
constexpr double kResults_mm = 46;               // from the right
constexpr double kLine_mm = 0.35;
constexpr int kRuns = 10;  // what a mean run-down is taken of
constexpr std::size_t kTickColumns = 4;
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
    b.height = 1.5;
    const double results = resultsFrom(b.height);
    words();
    if (device_.symbol.empty()) return std::move(made_);
    b.height = std::max({b.height, results, kText_mm + 2}) + 0.2;
    ticks();
    runs();
    notes();
    return std::move(made_);
  }

 private:
  void add(Mark mark) { made_.block.marks.push_back(std::move(mark)); }
  QString say(const char* english) const { return language_.say(english); }

  void number() {
    add(Text{QString::number(device_.number), {0, 2.5 + kNumber_mm}, kNumber_mm, true, inks().ink});
    if (!device_.symbol.empty()) add(Sign{device_.symbol, device_.ground, QRectF(0, 11, 11, 11)});
  }

  void words() {
    const double right = device_.symbol.empty() ? width_ : width_ - kResults_mm - 3;
    paragraph(device_.name, right, kName_mm, true, kNameLines);
    paragraph(device_.where, right, kWords_mm, false, kMostLines);
    paragraph(device_.stops, right, kWords_mm, false, kStopsLines);
    paragraph(device_.how, right, kWords_mm, false, kMostLines);
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

  void box(QPointF at, double side) {
    add(drawn(rectanglePath(QRectF(at, QSizeF(side, side))), inks().ink, kLine_mm));
  }

  // Down the right side, where a right-handed pen is; returns where they end.
  double resultsFrom(double y) {
    if (device_.symbol.empty()) return y;
    const double left = width_ - kResults_mm;
    for (const char* result : kResults) {
      box({left, y}, kTick_mm);
      const double most = kResults_mm - kTick_mm - 2;
      const double cap = std::min(kResult_mm, most / letters_.width(say(result), 1, true));
      add(Text{say(result), {left + kTick_mm + 2, y + (kTick_mm + cap) / 2}, cap, true, inks().ink});
      y += kTick_mm + 0.8;
    }
    return y;
  }

  void ticks() {
    const double column = device_.is_stop ? width_ / kTickColumns : width_;
    const std::span<const char* const> tried =
        device_.is_stop ? std::span<const char* const>(kTried) : std::span<const char* const>(kLook);
    const std::size_t columns = device_.is_stop ? kTickColumns : 1;
    for (std::size_t i = 0; i < tried.size(); i += columns) {
      double lowest = made_.block.height + kTick_mm;
      for (std::size_t c = 0; c < columns && i + c < tried.size(); ++c) {
        const double left = static_cast<double>(c) * column;
        box({left, made_.block.height}, kTick_mm);
        Block label;
        Writer(label, letters_).paragraph(say(tried[i + c]), left + kTick_mm + 1.5, left + column - 1, 2.3);
        const double down = std::max(0.0, (kTick_mm - label.height) / 2);
        shift(label.marks, {0, made_.block.height + down});
        for (Mark& mark : label.marks) add(std::move(mark));
        lowest = std::max(lowest, made_.block.height + label.height);
      }
      made_.block.height = lowest + 0.7;
    }
  }

  // The time of the check, and of a stop ten fields.
  void runs() {
    const double time = 42, left = letters_.width(say(texts::kRunDown), kWords_mm) + 3;
    const double y = made_.block.height, each = (width_ - time - left - 3) / kRuns;
    const double baseline = y + kField_mm - 1;
    lineToFill(made_.block, say(texts::kTime), width_ - time, width_, baseline, letters_);
    made_.block.height += kField_mm;
    if (!device_.is_stop) return;
    add(Text{say(texts::kRunDown), {0, y + (kField_mm + kWords_mm) / 2}, kWords_mm, false, inks().ink});
    for (int run = 0; run < kRuns; ++run) {
      const QRectF field(left + run * each, y, each, kField_mm);
      add(drawn(rectanglePath(field), inks().ink, kLine_mm));
      add(Text{QString::number(run + 1),
               {field.left() + 0.6, y + 0.6 + kLeastLetter_mm},
               kLeastLetter_mm,
               false,
               inks().quiet_ink});
    }
  }

  void notes() {
    made_.block.height += kField_mm - 0.5;
    const double middle = width_ * 0.42;
    lineToFill(made_.block, say(texts::kNote), 0, middle - 3, made_.block.height, letters_);
    lineToFill(made_.block, say(texts::kStillToDo), middle, width_, made_.block.height, letters_);
    made_.block.height += kField_mm;
    const double half = width_ / 2;
    lineToFill(made_.block, say(texts::kTaggedOut), 0, half - 3, made_.block.height, letters_);
    lineToFill(made_.block, say(texts::kDoneAtOnce), half, width_, made_.block.height, letters_);
    made_.block.height += 2;
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
  block.marks.push_back(Text{words, {left, baseline}, kWords_mm, false, inks().ink});
  const double from = left + letters.width(words, kWords_mm) + 1.5;
  block.marks.push_back(drawn(linePath({from, baseline}, {right, baseline}), inks().ink, kLine_mm));
}

SheetBlock deviceBlock(const SheetDevice& device, const Language& language, const Lettering& letters,
                       double width) {
  return BlockMaker(device, language, letters, width).make();
}

}  // namespace stopwalk::poster
