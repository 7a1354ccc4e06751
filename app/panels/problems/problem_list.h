#pragma once

#include <QLabel>
#include <QListWidget>
#include <optional>

#include "app/panels/moment_ago.h"
#include "app/panels/problem.h"

namespace stopwalk::panels {

// All that is wrong with the drawing, and all that an audit found: sentences, the worst first.
class ProblemList : public QWidget {
  Q_OBJECT

 public:
  explicit ProblemList(QWidget* parent = nullptr);

  void setProblems(std::vector<Problem> problems);
  // Another layout, that is not audited yet: what was said of the old one goes.
  void setUnknown();
  void setAge(Age age);
  QString said() const { return none_->isHidden() ? moment_ago_->text() : none_->text(); }
  QListWidget* list() const { return list_; }

 signals:
  // The thing is to be brought into view on the plan, and selected.
  void goTo(const QString& id);

 private:
  QListWidget* list_;
  QLabel *none_, *moment_ago_;
  Age age_ = Age::Current;
  std::optional<std::vector<Problem>> problems_;  // none: it is not known
};

}  // namespace stopwalk::panels
