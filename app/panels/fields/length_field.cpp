#include "app/panels/fields/length_field.h"

#include <QRegularExpression>

#include "core/layout/units.h"

namespace stopwalk::panels {

namespace {

constexpr int kLongestText = 12;

bool isMetric(layout::LengthUnit unit) {
  return unit == layout::LengthUnit::Millimetre || unit == layout::LengthUnit::Metre;
}

bool isWithin(double value, Range range) {
  return range == Range::Any || value > 0 || (range == Range::NotNegative && value == 0);
}

}  // namespace

void LengthField::setUnit(layout::LengthUnit unit) {
  if (unit == unit_) return;
  unit_ = unit;
  showAgain();
}

QString LengthField::textOf(double mm, layout::LengthUnit unit) {
  const std::string shown = layout::formatLength(mm, unit);
  if (layout::parseLength(shown, unit) == mm) return QString::fromStdString(shown);
  std::string exact = layout::lengthText(mm, unit);
  if (exact.find_first_of("'\"") == std::string::npos) exact += " " + std::string(layout::unitName(unit));
  return QString::fromStdString(exact.size() <= kLongestText ? exact : shown);
}

Typed<std::optional<double>> LengthField::read(const QString& typed, layout::LengthUnit unit, Range range) {
  const auto mm = layout::parseLength(typed.toStdString(), unit);
  if (!mm) {
    const QString plain = tr("900 (in %1)").arg(QString::fromStdString(std::string(layout::unitName(unit))));
    if (typed.contains(','))
      return {{}, tr("Not a length: write it with a point, such as 1.2 m, or as %1.").arg(plain)};
    return {{}, tr("Not a length up to 10 km. Type it as 1.2 m, 4' 6\" or %1.").arg(plain)};
  }
  if (!isWithin(*mm, range))
    return {{}, range == Range::Positive ? tr("It has to be more than 0.") : tr("It cannot be less than 0.")};
  return {mm, {}};
}

QString LengthField::textOf(const std::optional<double>& mm) const {
  return mm ? textOf(*mm, unit_) : QString();
}

Typed<std::optional<double>> LengthField::read(const QString& typed) const {
  const QString text = typed.trimmed();
  if (known_ == Known::Optional && (text.isEmpty() || text == tr("unknown"))) return {};
  const Typed<std::optional<double>> length = read(text, unit_, range_);
  static const QRegularExpression only_number(R"(^[0-9.\s]+$)");
  if (length.value && only_number.match(text).hasMatch() && isUnusual(*length.value))
    return {{},
            tr("That would be %1, where %2 is usual. Type the unit with it, such as 1.2 m.")
                .arg(textOf(*length.value, unit_), textOf(usual_mm_, unit_))};
  return length;
}

bool LengthField::isUnusual(double mm) const {
  constexpr double kMany = 10;  // less than between feet and inches, and than between metres and millimetres
  return usual_mm_ > 0 && mm > 0 && (mm > kMany * usual_mm_ || mm < usual_mm_ / kMany);
}

void LengthField::step(int steps, bool large) {
  if (showsSeveral()) return;
  applyPending();
  if (!trouble().isEmpty() || !value()) return;
  const double one_mm = isMetric(unit_) ? (large ? 100 : 10) : (large ? 12 * 25.4 : 25.4);
  const double next = *value() + steps * one_mm;
  if (isWithin(next, range_) && std::abs(next) <= layout::kLongest) take(next);
}

}  // namespace stopwalk::panels
