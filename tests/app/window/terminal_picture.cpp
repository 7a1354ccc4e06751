#include "tests/app/window/terminal_picture.h"

#include <QFont>
#include <QFontMetricsF>
#include <QMap>
#include <QPainter>
#include <QRegularExpression>
#include <QStringList>

namespace stopwalk::window {
namespace {

constexpr double kMargin_px = 12;
const QColor kGround(0x1F, 0x23, 0x28), kInk(0xE8, 0xEB, 0xEE);
// Of the codes for colours that the program writes.
const QMap<QString, QColor> kInks = {{"31", QColor(0xFF, 0x7B, 0x72)},
                                     {"32", QColor(0x7E, 0xE7, 0x87)},
                                     {"33", QColor(0xF2, 0xCC, 0x60)},
                                     {"2", QColor(0xA6, 0xAF, 0xB8)}};

class Pen {
 public:
  void take(const QString& codes) {
    for (const QString& code : codes.split(';')) {
      if (code.isEmpty() || code == "0") *this = Pen();
      if (code == "1") bold_ = true;
      if (kInks.contains(code)) ink_ = kInks[code];
    }
  }
  void putOn(QPainter& painter, QFont font) const {
    font.setBold(bold_);
    painter.setFont(font);
    painter.setPen(ink_);
  }

 private:
  bool bold_ = false;
  QColor ink_ = kInk;
};

}  // namespace

QImage terminalPicture(const QString& command, const std::string& written, int columns) {
  QFont font("DejaVu Sans Mono");
  font.setPixelSize(14);
  const QFontMetricsF metrics(font);
  const double across = metrics.horizontalAdvance('0'), down = std::ceil(metrics.lineSpacing());
  const QStringList lines = ("$ " + command + "\n" + QString::fromStdString(written).trimmed()).split('\n');
  QImage image(static_cast<int>(std::ceil(columns * across + 2 * kMargin_px)),
               static_cast<int>(down * double(lines.size()) + 2 * kMargin_px), QImage::Format_RGB32);
  image.fill(kGround);
  QPainter painter(&image);
  static const QRegularExpression code("\033\\[([0-9;]*)m");
  Pen pen;
  double y = kMargin_px + metrics.ascent();
  for (const QString& line : lines) {
    double x = kMargin_px;
    qsizetype from = 0;
    const auto show = [&](qsizetype to) {
      pen.putOn(painter, font);
      painter.drawText(QPointF(x, y), line.mid(from, to - from));
      x += across * double(to - from);
    };
    for (auto codes = code.globalMatch(line); codes.hasNext();) {
      const auto match = codes.next();
      show(match.capturedStart());
      pen.take(match.captured(1));
      from = match.capturedEnd();
    }
    show(line.size());
    y += down;
  }
  return image;
}

}  // namespace stopwalk::window
