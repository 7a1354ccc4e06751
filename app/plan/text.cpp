#include "app/plan/text.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QHash>
#include <QStaticText>
#include <algorithm>
#include <cmath>

namespace stopwalk::plan {
namespace {

constexpr double kLeast_pt = 9;
constexpr int kMostKept = 20000;  // texts; then the store starts afresh

struct Kept {
  double width = 0;
  QStaticText picture;
};

// By text alone: the plan has one font, and all is forgotten when it changes.
Kept& kept(const QString& line, const QFontMetricsF& metrics) {
  static QHash<QString, Kept> store;
  static QFontMetricsF of{QFont()};
  if (store.size() > kMostKept || of != metrics) {
    store.clear();
    of = metrics;
  }
  auto found = store.find(line);
  if (found == store.end()) {
    Kept fresh{metrics.horizontalAdvance(line), QStaticText(line)};
    fresh.picture.setTextFormat(Qt::PlainText);
    fresh.picture.setPerformanceHint(QStaticText::AggressiveCaching);
    found = store.insert(line, fresh);
  }
  return *found;
}

}  // namespace

QFont labelFont() {
  QFont font = QGuiApplication::font();
  if (font.pointSizeF() > 0) font.setPointSizeF(std::max(font.pointSizeF(), kLeast_pt));
  return font;
}

QSizeF textSize(const QString& text, const QFontMetricsF& metrics) {
  double width = 0;
  const QStringList lines = text.split('\n');
  for (const QString& line : lines) width = std::max(width, kept(line, metrics).width);
  return {width, metrics.height() * static_cast<double>(lines.size())};
}

QString wrapped(const QString& text, double width, const QFontMetricsF& metrics) {
  QStringList words;
  for (const QString& word : text.split(' ', Qt::SkipEmptyParts)) {
    // A number stays with what it numbers.
    if (word.size() <= 2 && !words.isEmpty())
      words.last() += ' ' + word;
    else
      words.append(word);
  }
  QString out, line;
  for (const QString& word : words) {
    const QString longer = line.isEmpty() ? word : line + ' ' + word;
    if (!line.isEmpty() && kept(longer, metrics).width > width) {
      out += line + '\n';
      line = word;
    } else {
      line = longer;
    }
  }
  return out + line;
}

void paintText(QPainter& painter, const QRectF& box, const QString& text) {
  const QFontMetricsF metrics = painter.fontMetrics();
  const QStringList lines = text.split('\n');
  double top = box.center().y() - metrics.height() * static_cast<double>(lines.size()) / 2;
  for (const QString& line : lines) {
    const Kept& k = kept(line, metrics);
    painter.drawStaticText(QPointF(std::round(box.center().x() - k.width / 2), std::round(top)), k.picture);
    top += metrics.height();
  }
}

}  // namespace stopwalk::plan
