#pragma once

#include <QLabel>
#include <QPointer>
#include <QScrollArea>
#include <QVBoxLayout>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "app/panels/details/desk.h"
#include "app/panels/details/section.h"
#include "app/panels/moment_ago.h"
#include "app/panels/problem.h"

namespace stopwalk::panels {

// All values of what is selected, to be seen and typed; of the workshop where nothing is.
class Details : public QScrollArea {
  Q_OBJECT

 public:
  explicit Details(const Desk& desk, QWidget* parent = nullptr);

  void setProblems(std::vector<Problem> problems);
  void setAge(Age age);
  // What was typed and not yet entered is entered now, such as before saving.
  void applyPending();
  // The shop's own kinds came or went.
  void rebuild();
  QString title() const { return title_->text(); }
  Section* section() const { return section_; }

 private:
  void follow();
  void scheduleRebuild();
  bool isCurrent() const;
  void showTitle();
  void showProblems();
  Section* makeSection();
  // The selected ids that there are, and what they are.
  std::unordered_map<std::string, edits::ThingKind> kindsOfSelected() const;
  std::vector<std::string> present() const;
  std::set<edits::ThingKind> kinds() const;

  Desk desk_;
  QVBoxLayout* column_;
  QLabel* title_;
  QWidget* problems_box_;
  QPointer<Section> section_;
  std::set<edits::ThingKind> section_kinds_;  // of what it shows
  std::vector<Problem> problems_;
  std::vector<Problem> shown_problems_;
  std::size_t more_problems_ = 0;  // that are not shown
  bool rebuild_waits_ = false;
  Age age_ = Age::Current;
};

}  // namespace stopwalk::panels
