#include "app/panels/problems/problem_list.h"

#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/sentence_label.h"

namespace stopwalk::panels {

ProblemList::ProblemList(QWidget* parent)
    : QWidget(parent), list_(new QListWidget(this)), none_(new QLabel(this)), moment_ago_(new QLabel(this)) {
  list_->setAccessibleName(tr("Problems"));
  list_->setWhatsThis(
      tr("What is wrong with the drawing, and what the audit found. Enter goes there on the plan."));
  list_->setWordWrap(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setResizeMode(QListView::Adjust);
  list_->setTextElideMode(Qt::ElideNone);
  list_->setLayoutMode(QListView::Batched);  // hundreds of wrapped sentences take more than a frame
  list_->setBatchSize(40);
  none_->setText(tr("Not audited yet."));
  none_->setWordWrap(true);
  none_->setAlignment(Qt::AlignLeading | Qt::AlignTop);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(none_);
  column->addWidget(list_, 1);
  column->addWidget(moment_ago_);  // below, so that nothing jumps
  moment_ago_->hide();
  setFocusProxy(list_);
  list_->hide();
  connect(list_, &QListWidget::itemActivated, this,
          [this](QListWidgetItem* item) { emit goTo(item->data(Qt::UserRole).toString()); });
}

void ProblemList::setProblems(std::vector<Problem> problems) {
  std::ranges::stable_sort(problems, {}, &Problem::severity);
  if (problems == problems_) return;
  problems_ = std::move(problems);
  const int row = list_->currentRow();
  list_->clear();
  QIcon icons[3];  // a style takes longer for one than a line does
  for (int i = 0; i < 3; ++i) icons[i] = severityIcon(static_cast<audit::Severity>(i), *this);
  for (const Problem& p : *problems_) {
    auto* item = new QListWidgetItem(icons[static_cast<int>(p.severity)], sentenceOf(p), list_);
    item->setData(Qt::UserRole, QString::fromStdString(p.id));
  }
  list_->setCurrentRow(std::min(row, list_->count() - 1));
  list_->setVisible(!problems_->empty());
  none_->setText(tr("No problems. Faults of the drawing and findings of the audit would stand here."));
  none_->setVisible(problems_->empty());
}

void ProblemList::setUnknown() {
  problems_.reset();
  list_->clear();
  list_->hide();
  none_->setText(tr("Not audited yet."));
  none_->show();
}

void ProblemList::setAge(Age age) {
  if (isPale(age) != isPale(age_)) {
    showPale(*list_, isPale(age));
    showPale(*none_, isPale(age));
  }
  age_ = age;
  moment_ago_->setText(age == Age::MomentAgo ? tr("Of a moment ago") : QString());
  moment_ago_->setVisible(age == Age::MomentAgo);
}

}  // namespace stopwalk::panels
