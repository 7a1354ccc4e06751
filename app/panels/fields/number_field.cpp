#include "app/panels/fields/number_field.h"

#include <cmath>

#include "core/layout/units.h"

namespace stopwalk::panels {

NumberKind angleKind() {
  NumberKind kind;
  kind.suffix = "°";
  kind.spellings = {"°", "deg", "degrees"};
  kind.large_step = 15;
  return kind;
}

NumberKind secondsKind() {
  NumberKind kind;
  kind.suffix = " s";
  kind.spellings = {"seconds", "sec", "s"};
  kind.least = 0;
  kind.step = 0.1;
  kind.large_step = 1;
  return kind;
}

QString NumberField::textOf(double number, const NumberKind& kind) {
  return QString::fromStdString(layout::numberText(number)) + kind.suffix;
}

Typed<std::optional<double>> NumberField::read(const QString& typed, const NumberKind& kind) {
  QString text = typed.trimmed();
  for (const QString& spelling : kind.spellings) {
    if (!text.endsWith(spelling)) continue;
    text = text.chopped(spelling.size()).trimmed();
    break;
  }
  const auto number = layout::parseNumber(text.toStdString());
  if (!number.ok()) {
    if (text.contains(',')) return {{}, tr("Not a number: write it with a point, such as 2.5.")};
    return {{}, tr("Not a number. Type one such as %1.").arg(textOf(kind.whole ? 3 : 2.5, kind))};
  }
  if (kind.whole && number.value != std::floor(number.value)) return {{}, tr("It has to be a whole number.")};
  if (kind.above_least && number.value <= kind.least)
    return {{}, tr("It has to be more than %1.").arg(textOf(kind.least, kind))};
  if (number.value < kind.least || number.value > kind.most)
    return {{}, tr("It has to be from %1 to %2.").arg(textOf(kind.least, kind), textOf(kind.most, kind))};
  return {number.value, {}};
}

QString NumberField::textOf(const std::optional<double>& number) const {
  return number ? textOf(*number, kind_) : QString();
}

Typed<std::optional<double>> NumberField::read(const QString& typed) const {
  const QString text = typed.trimmed();
  if (known_ == Known::Optional && (text.isEmpty() || text == tr("unknown"))) return {};
  return read(text, kind_);
}

void NumberField::step(int steps, bool large) {
  if (showsSeveral()) return;
  applyPending();
  if (!trouble().isEmpty() || !value()) return;
  const double size = large ? kind_.large_step : kind_.step;
  // Counted in steps, so that ten of 0.1 make 1.
  const double next =
      size < 1 ? std::round((*value() + steps * size) * 1000) / 1000 : *value() + steps * size;
  if (next >= kind_.least && next <= kind_.most && !(kind_.above_least && next == kind_.least)) take(next);
}

}  // namespace stopwalk::panels
