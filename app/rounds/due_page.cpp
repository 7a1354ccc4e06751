#include "app/rounds/due_page.h"

#include <QVBoxLayout>

#include "app/panels/announce.h"
#include "app/panels/poster/choice_list.h"
#include "app/panels/rows.h"
#include "app/panels/sentence_label.h"
#include "app/rounds/big_button.h"

namespace stopwalk::rounds {
namespace {

constexpr int kDeviceRole = Qt::UserRole;

QIcon iconOf(Urgency urgency, const QWidget& on) {
  switch (urgency) {
    case Urgency::Failed:
      return panels::severityIcon(audit::Severity::Fail, on);
    case Urgency::Overdue:
      return panels::severityIcon(audit::Severity::Warn, on);
    case Urgency::Due:
      return panels::severityIcon(audit::Severity::Note, on);
  }
  return {};
}

}  // namespace

DuePage::DuePage(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  summary_ = new QLabel(this);
  summary_->setWordWrap(true);
  QFont bold = summary_->font();
  bold.setBold(true);
  summary_->setFont(bold);
  tree_ = new QTreeWidget(this);
  tree_->setHeaderHidden(true);
  tree_->setIndentation(0);
  tree_->setRootIsDecorated(false);
  tree_->setAccessibleName(tr("What is due"));
  tree_->setWhatsThis(
      tr("What is to be inspected, failed devices first, then by room. The one picked is shown on "
         "the plan, its checks below."));
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  tree_->setTextElideMode(Qt::ElideNone);
  panels::Rows::give(*tree_, kTouch_px);
  open_label_ = new QLabel(tr("Rounds not finished"), this);
  open_ = panels::choiceList(tr("Rounds not finished"), this);
  panels::Rows::give(*open_, kTouch_px);
  open_label_->setBuddy(open_);
  const auto button = [&](const QString& text) {
    auto* made = new QPushButton(text, this);
    made->setAutoDefault(false);
    made->setMinimumHeight(kTouch_px);
    return made;
  };
  start_ = button(tr("Start a round…"));
  start_->setFont(bold);
  continue_ = button(tr("Continue the round"));
  save_ = button(tr("Save the layout…"));
  for (QWidget* part : {static_cast<QWidget*>(summary_), static_cast<QWidget*>(save_)})
    column->addWidget(part);
  column->addWidget(tree_, 1);
  column->addWidget(open_label_);
  column->addWidget(open_);
  column->addWidget(continue_);
  told_ = new QLabel(this);
  told_->setWordWrap(true);
  told_->setTextFormat(Qt::PlainText);
  told_->setFont(bold);
  save_first_ = button(tr("Save the layout, then start"));
  for (QWidget* part : {static_cast<QWidget*>(told_), static_cast<QWidget*>(save_first_)}) {
    part->hide();
    column->addWidget(part);
  }
  column->addWidget(start_);
  connect(tree_, &QTreeWidget::currentItemChanged, this, [this](const QTreeWidgetItem* item) {
    if (!filling_ && item && item->parent()) emit picked(item->data(0, kDeviceRole).toString());
  });
  connect(tree_, &QTreeWidget::itemActivated, this, [this](const QTreeWidgetItem* item) {
    if (!item->parent()) return;
    const QString device = item->data(0, kDeviceRole).toString();
    emit picked(device);
    emit historyWanted(device);
  });
  connect(start_, &QPushButton::clicked, this, &DuePage::startWanted);
  connect(save_, &QPushButton::clicked, this, &DuePage::saveWanted);
  connect(save_first_, &QPushButton::clicked, this, &DuePage::saveAndStartWanted);
  const auto go_on = [this] {
    if (const std::size_t round = openRound()) emit continueWanted(round);
  };
  connect(continue_, &QPushButton::clicked, this, go_on);
  connect(open_, &QListWidget::itemActivated, this, go_on);
}

void DuePage::show(const DueView& view, const std::vector<OpenRound>& open, const QString& summary) {
  summary_->setText(summary);
  save_->hide();
  start_->setEnabled(true);
  fillTree(view);
  fillOpen(open);
}

void DuePage::showNothing(const QString& why, bool save) {
  show({}, {}, why);
  save_->setVisible(save);
  start_->setEnabled(false);
}

void DuePage::tell(const QString& why, bool save) {
  told_->setText(why);
  told_->setVisible(!why.isEmpty());
  save_first_->setVisible(save);
  if (!why.isEmpty()) panels::announce(*told_);
}

void DuePage::goToSave() {
  if (!save_first_->isHidden()) save_first_->setFocus();
}

// Keeps the device that is picked, or the heading.
void DuePage::fillTree(const DueView& view) {
  QTreeWidgetItem* was = tree_->currentItem();
  const std::string device = was ? was->data(0, kDeviceRole).toString().toStdString() : "";
  const int heading = tree_->indexOfTopLevelItem(was);
  filling_ = true;
  tree_->clear();
  QFont bold = tree_->font();
  bold.setBold(true);
  for (const DueGroup& group : view.groups) {
    auto* title = new QTreeWidgetItem(tree_, {group.title});
    title->setFont(0, bold);
    for (const DueRow& row : group.rows) {
      auto* item = new QTreeWidgetItem(title, {row.text});
      item->setIcon(0, iconOf(row.urgency, *this));
      item->setData(0, Qt::AccessibleTextRole, tr("%1: %2").arg(wordOf(row.urgency), row.text));
      item->setData(0, kDeviceRole, QString::fromStdString(row.device));
    }
    title->setExpanded(true);
  }
  if (heading >= 0 && device.empty()) tree_->setCurrentItem(tree_->topLevelItem(heading));
  filling_ = false;
  pick(device);
}

void DuePage::pick(const std::string& device) {
  const QString id = QString::fromStdString(device);
  const QTreeWidgetItem* now = tree_->currentItem();
  if (id.isEmpty() || (now && now->data(0, kDeviceRole) == id)) return;
  filling_ = true;
  for (int g = 0; g < tree_->topLevelItemCount(); ++g)
    for (int i = 0; i < tree_->topLevelItem(g)->childCount(); ++i)
      if (QTreeWidgetItem* item = tree_->topLevelItem(g)->child(i); item->data(0, kDeviceRole) == id)
        tree_->setCurrentItem(item);
  filling_ = false;
}

void DuePage::fillOpen(const std::vector<OpenRound>& open) {
  std::vector<panels::ChoiceRow> rows;
  for (const OpenRound& round : open) rows.push_back({QString::number(round.number), round.text});
  const std::size_t was = openRound();
  panels::fillRows(*open_, rows);
  int row = 0;
  for (int i = 0; i < open_->count(); ++i)
    if (open_->item(i)->data(Qt::UserRole).toULongLong() == was) row = i;
  open_->setCurrentRow(open_->count() > 0 ? row : -1);
  for (QWidget* part :
       {static_cast<QWidget*>(open_label_), static_cast<QWidget*>(open_), static_cast<QWidget*>(continue_)})
    part->setVisible(!open.empty());
}

std::size_t DuePage::openRound() const {
  const QListWidgetItem* item = open_->currentItem();
  return item ? item->data(Qt::UserRole).toULongLong() : 0;
}

}  // namespace stopwalk::rounds
