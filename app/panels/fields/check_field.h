#pragma once

#include <QCheckBox>
#include <functional>

#include "app/panels/fields/field.h"

namespace stopwalk::panels {

// Yes or no; its name stands on the box itself.
class CheckField : public Field {
  Q_OBJECT

 public:
  using Value = bool;

  explicit CheckField(FieldText text, QWidget* parent = nullptr);

  std::function<void(bool)> entered;

  QCheckBox* box() const { return box_; }
  void show(bool value);
  void showDiffering();

 private:
  QCheckBox* box_;
};

}  // namespace stopwalk::panels
