#include "app/poster/lettering.h"

#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QHash>
#include <QTextBoundaryFinder>
#include <algorithm>

#include "core/files/nearest.h"

namespace stopwalk::poster {
namespace {

constexpr double kMeasuredAt_mm = 10;
// A font's size is a whole number of hundredths of a millimetre or so: never wider than said.
constexpr double kRounded = 1.002;

QFont plainFont(const QString& family, bool bold) {
  QFont font(family);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setBold(bold);
  return withLettersApart(std::move(font));
}

// Height of a capital letter as part of the font's size, measured on a letter with a flat top and foot.
double capPart(const QString& family, bool bold) {
  thread_local QHash<QString, double> known;  // posters are made on one thread and painted on another
  double& part = known[family + (bold ? "/bold" : "")];
  if (part == 0) {
    QFont font = plainFont(family, bold);
    font.setPixelSize(1000);
    part = QFontMetricsF(font).tightBoundingRect("H").height() / 1000;
  }
  return part > 0 ? part : 0.7;
}

// The longest beginning of the word that is not too wide, at least one letter of it.
template <class Width>
int fittingLength(const QString& word, double most, Width&& width) {
  QTextBoundaryFinder letters(QTextBoundaryFinder::Grapheme, word);
  int fits = 0;
  for (auto at = letters.toNextBoundary(); at > 0; at = letters.toNextBoundary()) {
    if (fits > 0 && width(word.left(at)) > most) break;
    fits = static_cast<int>(at);
  }
  return std::max(fits, 1);
}

// What only joins or turns its neighbours is no letter to be missed.
bool leavesInk(char32_t sign) {
  switch (QChar::category(sign)) {
    case QChar::Mark_NonSpacing:
    case QChar::Mark_Enclosing:
    case QChar::Separator_Space:
    case QChar::Separator_Line:
    case QChar::Separator_Paragraph:
    case QChar::Other_Control:
    case QChar::Other_Format:
      return false;
    default:
      return true;
  }
}

}  // namespace

// Where letters are spaced by hand, as little as can be, Qt joins none.
QFont withLettersApart(QFont font) {
  font.setLetterSpacing(QFont::AbsoluteSpacing, 1.0 / 64);
  return font;
}

QFont Lettering::font(double cap_mm, bool bold) const {
  QFont font = plainFont(family_, bold);
  font.setPixelSize(std::max(1, qRound(cap_mm * kUnitsPerMm / capPart(family_, bold))));
  return font;
}

double Lettering::unitWidth(const QString& text, bool bold) const {
  double& width = widths_[bold][text];
  if (width == 0 && !text.isEmpty())
    width = QFontMetricsF(font(kMeasuredAt_mm, bold)).horizontalAdvance(text) / kUnitsPerMm / kMeasuredAt_mm;
  return width;
}

double Lettering::width(const QString& text, double cap_mm, bool bold) const {
  return unitWidth(text, bold) * cap_mm * kRounded;
}

QStringList Lettering::wrapped(const QString& text, double width_mm, double cap_mm, bool bold) const {
  const double space = width(" ", cap_mm, bold);
  QStringList lines;
  QString line;
  double used = 0;
  for (QString word : text.simplified().split(' ', Qt::SkipEmptyParts)) {
    double wide = width(word, cap_mm, bold);
    if (!line.isEmpty() && used + space + wide <= width_mm) {
      line += ' ' + word;
      used += space + wide;
      continue;
    }
    if (!line.isEmpty()) lines << line;
    while (wide > width_mm && word.size() > 1) {
      const int fits =
          fittingLength(word, width_mm, [&](const QString& part) { return width(part, cap_mm, bold); });
      if (fits >= word.size()) break;
      lines << word.left(fits);
      word = word.mid(fits);
      wide = width(word, cap_mm, bold);
    }
    line = word;
    used = wide;
  }
  if (!line.isEmpty()) lines << line;
  return lines;
}

QString Lettering::cut(const QString& text, double width_mm, double cap_mm, bool bold) const {
  return QFontMetricsF(font(cap_mm, bold)).elidedText(text, Qt::ElideRight, width_mm * kUnitsPerMm);
}

QString Lettering::missingFrom(const QString& text) const {
  const QFontMetricsF metrics(font(kMeasuredAt_mm, false));
  QString missing;
  for (const char32_t sign : text.toStdU32String())
    if (leavesInk(sign) && !metrics.inFontUcs4(sign)) missing += QString::fromUcs4(&sign, 1);
  return missing;
}

QString usualFamily() {
  if (QFontDatabase::families().isEmpty()) return {};
  return QFontInfo(QFontDatabase::systemFont(QFontDatabase::GeneralFont)).family();
}

bool hasFamily(const QString& family) {
  return QFontDatabase::families().contains(family, Qt::CaseInsensitive);
}

QString nearestFamily(const QString& asked) {
  std::vector<std::string> families;
  for (const QString& family : QFontDatabase::families()) families.push_back(family.toStdString());
  const std::vector<std::string_view> known(families.begin(), families.end());
  const std::string_view found = files::nearest(asked.toStdString(), known);
  return QString::fromUtf8(found.data(), static_cast<qsizetype>(found.size()));
}

}  // namespace stopwalk::poster
