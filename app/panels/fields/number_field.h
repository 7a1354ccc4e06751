#pragma once

#include <optional>

#include "app/panels/fields/length_field.h"

namespace stopwalk::panels {

// What a number is of, and which ones are taken.
struct NumberKind {
  QString suffix = {};             // behind the number: `°`
  std::vector<QString> spellings;  // that may be typed for it
  double least = -1e6;
  double most = 1e6;
  double step = 1;
  double large_step = 10;
  bool whole = false;
  bool above_least = false;  // `least` itself is not taken
};

// A number with a point, whatever the language. Empty if it is unknown.
class NumberField : public ValueField<std::optional<double>> {
  Q_DECLARE_TR_FUNCTIONS(NumberField)

 public:
  NumberField(FieldText text, NumberKind kind, Known known, QWidget* parent = nullptr)
      : ValueField(std::move(text), parent), kind_(std::move(kind)), known_(known) {
    if (known == Known::Optional) setEmptyText(tr("unknown"));
  }

  static QString textOf(double number, const NumberKind& kind);
  static Typed<std::optional<double>> read(const QString& typed, const NumberKind& kind);

 protected:
  QString textOf(const std::optional<double>& number) const override;
  Typed<std::optional<double>> read(const QString& typed) const override;
  void step(int steps, bool large) override;

 private:
  NumberKind kind_;
  Known known_;
};

// Degrees counter-clockwise; steps of 1, large ones of 15.
NumberKind angleKind();
// From 0; steps of 0.1 s, large ones of 1 s.
NumberKind secondsKind();

}  // namespace stopwalk::panels
