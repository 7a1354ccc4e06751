#pragma once

#include <QFont>
#include <QHash>
#include <QString>
#include <QStringList>

namespace stopwalk::poster {

// With each letter on its own: of letters that are joined (ff, fi) a hash or id is not copied from a PDF as
// it was written.
QFont withLettersApart(QFont font);

// Lines of text measured and cut in millimetres, by the height of their capital letters and not by points.
class Lettering {
 public:
  explicit Lettering(QString family) : family_(std::move(family)) {}

  // Measured in units of a hundredth of a millimetre, so that no hinting of a screen comes in.
  static constexpr double kUnitsPerMm = 100;
  QFont font(double cap_mm, bool bold) const;

  double width(const QString& text, double cap_mm, bool bold = false) const;
  // Broken at spaces, and within a word only where the word alone is too wide.
  QStringList wrapped(const QString& text, double width_mm, double cap_mm, bool bold = false) const;
  // Cut at the end with an ellipsis where it is too wide.
  QString cut(const QString& text, double width_mm, double cap_mm, bool bold = false) const;

  // The signs of the text that no font here has: they print as empty boxes.
  QString missingFrom(const QString& text) const;

  // From one baseline to the next.
  static double lineOf(double cap_mm) { return 1.75 * cap_mm; }

  const QString& family() const { return family_; }

 private:
  // Of a capital a millimetre high; every size is a multiple of it, for nothing is hinted.
  double unitWidth(const QString& text, bool bold) const;

  QString family_;
  mutable QHash<QString, double> widths_[2];  // plain, bold: shaping the same words again is the slow part
};

// The family for posters unless another is asked for: the system's own. Empty if there are no fonts.
QString usualFamily();
bool hasFamily(const QString& family);
// The family whose name is nearest to one that is not there.
QString nearestFamily(const QString& asked);

}  // namespace stopwalk::poster
