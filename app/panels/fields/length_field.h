#pragma once

#include <optional>

#include "app/panels/fields/value_field.h"

namespace stopwalk::panels {

// Which numbers a field takes.
enum class Range { Any, NotNegative, Positive };
// Whether a field may be empty, which says that the value is not known.
enum class Known { Always, Optional };

// A length, typed in any unit. Empty if it is unknown.
class LengthField : public ValueField<std::optional<double>> {
  Q_DECLARE_TR_FUNCTIONS(LengthField)

 public:
  LengthField(FieldText text, Range range, Known known, QWidget* parent = nullptr)
      : ValueField(std::move(text), parent), range_(range), known_(known) {
    if (known == Known::Optional) setEmptyText(tr("unknown"));
  }

  void setUnit(layout::LengthUnit unit) override;
  // What the length is as a rule: one that is many times more or less has to be typed with its unit.
  void setUsual(double mm) { usual_mm_ = mm; }

  // A length as text that is read as the very same one wherever it is not too long for a field.
  static QString textOf(double mm, layout::LengthUnit unit);
  static Typed<std::optional<double>> read(const QString& typed, layout::LengthUnit unit, Range range);

 protected:
  QString textOf(const std::optional<double>& mm) const override;
  Typed<std::optional<double>> read(const QString& typed) const override;
  void step(int steps, bool large) override;

 private:
  bool isUnusual(double mm) const;

  layout::LengthUnit unit_ = layout::LengthUnit::Millimetre;
  double usual_mm_ = 0;  // none
  Range range_;
  Known known_;
};

}  // namespace stopwalk::panels
