#pragma once

#include "app/panels/fields/text_field.h"
#include "app/panels/things/form_dialog.h"

namespace stopwalk::panels {

// Gives a thing another name, where it has one, and another id.
class RenameDialog : public FormDialog {
  Q_OBJECT

 public:
  RenameDialog(const Desk& desk, std::string id, QWidget* parent = nullptr);

 protected:
  bool carryOut() override;

 private:
  std::string ownId() const;

  std::string id_;
  TextField* name_ = nullptr;
  TextField* new_id_ = nullptr;
};

}  // namespace stopwalk::panels
