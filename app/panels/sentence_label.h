#pragma once

#include <QIcon>
#include <QLabel>

#include "app/panels/problem.h"

namespace stopwalk::panels {

// The sign of a severity, told by its shape.
QIcon severityIcon(audit::Severity severity, const QWidget& on);

// A problem as a sentence behind its sign.
class SentenceLabel : public QWidget {
  Q_OBJECT

 public:
  SentenceLabel(const Problem& problem, QWidget* parent);
};

}  // namespace stopwalk::panels
