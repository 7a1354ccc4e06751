#pragma once

#include <functional>
#include <memory>

#include "app/panels/fields/text_field.h"
#include "app/panels/things/form_dialog.h"
#include "core/audit/report.h"

namespace stopwalk::panels {

// All that is found by now, and whether nothing of it is being computed anew. None: nullptr.
struct FoundNow {
  std::shared_ptr<const audit::Report> report;
  bool is_current = true;
};

// Why a finding is let stand, by whom, and until when. What is accepted is what stands there to be read:
// where it is found otherwise by then, it is shown anew first.
class AcceptDialog : public FormDialog {
  Q_OBJECT

 public:
  AcceptDialog(const Desk& desk, audit::Finding finding, std::function<FoundNow()> found_now,
               QWidget* parent);

  QString said() const { return said_->text(); }  // of the finding
  TextField* reason() const { return reason_; }
  TextField* by() const { return by_; }
  TextField* until() const { return until_; }

 protected:
  bool carryOut() override;

 private:
  bool isFoundAsShown(const FoundNow& now);

  audit::Finding finding_;
  std::function<FoundNow()> found_now_;
  QLabel* said_;
  TextField *reason_, *by_, *until_;
};

}  // namespace stopwalk::panels
