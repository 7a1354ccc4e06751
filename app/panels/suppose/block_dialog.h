#pragma once

#include "app/panels/fields/length_field.h"
#include "app/panels/things/form_dialog.h"

namespace stopwalk::panels {

// The place and size of something in the way, as numbers.
class BlockDialog : public FormDialog {
  Q_OBJECT

 public:
  BlockDialog(const Desk& desk, const layout::Fixture& block, QWidget* parent);
  const layout::Fixture& block() const { return block_; }

 protected:
  bool carryOut() override;

 private:
  layout::Fixture block_;
  LengthField *x_, *y_, *width_, *depth_;
};

}  // namespace stopwalk::panels
