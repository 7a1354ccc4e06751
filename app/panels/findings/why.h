#pragma once

#include <QTextBrowser>

#include "core/audit/profile.h"
#include "core/audit/report.h"

namespace stopwalk::panels {

// Why a finding is one: what was measured, the rule and its limit, the basis, what it means and what would
// mend it.
class Why : public QTextBrowser {
  Q_OBJECT

 public:
  explicit Why(QWidget* parent = nullptr);
  // None: says what would stand here.
  void show(const audit::Finding* finding, layout::LengthUnit unit);
  // What accepted a finding that is there no more.
  void showIdle(const layout::AcceptedFinding& idle, layout::LengthUnit unit);
};

}  // namespace stopwalk::panels
