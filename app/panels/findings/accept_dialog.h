#pragma once

#include "app/panels/fields/text_field.h"
#include "app/panels/things/form_dialog.h"
#include "core/audit/report.h"

namespace stopwalk::panels {

// Why a finding is let stand, by whom, and until when.
class AcceptDialog : public FormDialog {
  Q_OBJECT

 public:
  // `all`: that is found, which what is accepted already may mean as well.
  AcceptDialog(const Desk& desk, audit::Finding finding, audit::SharedList<audit::Finding> all,
               QWidget* parent);

  TextField* reason() const { return reason_; }
  TextField* by() const { return by_; }
  TextField* until() const { return until_; }

 protected:
  bool carryOut() override;

 private:
  audit::Finding finding_;
  audit::SharedList<audit::Finding> all_;
  TextField *reason_, *by_, *until_;
};

}  // namespace stopwalk::panels
