#pragma once

#include "app/panels/fields/number_field.h"
#include "app/panels/things/form_dialog.h"

namespace stopwalk::panels {

// Moves and turns what is selected by typed numbers.
class MoveDialog : public FormDialog {
  Q_OBJECT

 public:
  MoveDialog(const Desk& desk, QWidget* parent = nullptr);

 protected:
  bool carryOut() override;

 private:
  LengthField* right_;
  LengthField* up_;
  NumberField* turn_;
};

}  // namespace stopwalk::panels
