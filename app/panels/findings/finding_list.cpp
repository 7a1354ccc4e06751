#include "app/panels/findings/finding_list.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QMenu>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/panels/actions/own_key.h"
#include "app/panels/copied.h"
#include "app/panels/elided_box.h"
#include "app/panels/findings/let_stand.h"
#include "app/panels/rows.h"
#include "app/panels/sentence_label.h"
#include "core/audit/accepted.h"

namespace stopwalk::panels {
namespace {

// What an item is: an index into report.findings, or into what is accepted and found no more; neither of a
// group. Then by what it is known again: rule, subject, which.
constexpr int kFindingRole = Qt::UserRole, kIdleRole = kFindingRole + 4;
constexpr int kTitleRole = kFindingRole + 5;  // of a group, without how many are in it

using audit::Severity;

int indexOf(const QTreeWidgetItem* item, int role = kFindingRole) {
  return item && item->data(0, role).isValid() ? item->data(0, role).toInt() : -1;
}

// Its words are found when they are asked for: of a thousand findings few are in sight.
class FindingItem : public QTreeWidgetItem {
 public:
  FindingItem(std::shared_ptr<const audit::Finding> finding, std::size_t index, bool is_new,
              layout::LengthUnit unit, const QIcon& icon)
      : finding_(std::move(finding)),
        index_(static_cast<int>(index)),
        is_new_(is_new),
        unit_(unit),
        icon_(icon) {}

  QVariant data(int column, int role) const override {
    switch (role) {
      case Qt::DisplayRole:
        return text();
      case Qt::AccessibleTextRole:
        return QString(severityWord(finding_->severity) + ": " + text());
      case Qt::DecorationRole:
        return icon_;
      case kFindingRole:
        return index_;
      case kFindingRole + 1:
        return QString::fromStdString(finding_->rule);
      case kFindingRole + 2:
        return QString::fromStdString(finding_->subject);
      case kFindingRole + 3:
        return QString::fromStdString(finding_->which);
      default:
        return QTreeWidgetItem::data(column, role);
    }
  }

 private:
  const QString& text() const {
    if (text_.isEmpty()) {
      text_ = textOf(*finding_, QDate::currentDate(), unit_);
      if (is_new_) text_ = FindingList::tr("New: %1").arg(text_);
    }
    return text_;
  }

  std::shared_ptr<const audit::Finding> finding_;
  int index_;
  bool is_new_;
  layout::LengthUnit unit_;
  QIcon icon_;
  mutable QString text_;
};

void keepKnown(QTreeWidgetItem& item, const std::string& rule, const std::string& subject,
               const std::string& which) {
  item.setData(0, kFindingRole + 1, QString::fromStdString(rule));
  item.setData(0, kFindingRole + 2, QString::fromStdString(subject));
  item.setData(0, kFindingRole + 3, QString::fromStdString(which));
}

}  // namespace

FindingList::FindingList(QWidget* parent) : QWidget(parent) {
  tree_ = new QTreeWidget(this);
  tree_->setHeaderHidden(true);
  tree_->setAccessibleName(tr("Findings"));
  tree_->setWhatsThis(tr("What the audit found, the worst first. Enter goes there on the plan."));
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  tree_->setTextElideMode(Qt::ElideNone);
  Rows::give(*tree_);
  search_ = new SearchLine(tr("Search findings"), tree_, this);
  summary_ = new QLabel(this);
  summary_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(search_);
  column->addWidget(orderLine());
  filter_line_ = filterLine();
  column->addWidget(filter_line_);
  column->addWidget(summary_);
  column->addWidget(tree_, 1);
  column->addWidget(buttonLine());
  setTabOrder(shows_[2], tree_);  // as they stand
  setFocusProxy(search_);
  connect(search_, &QLineEdit::textChanged, this, [this] {
    build();
    tree_->scrollToTop();
  });
  const auto keepClosed = [this](const QTreeWidgetItem* heading) {
    if (building_ || !search_->text().isEmpty()) return;  // what is found is not hidden
    const QString title = heading->data(0, kTitleRole).toString();
    heading->isExpanded() ? void(closed_.remove(title)) : void(closed_.insert(title));
  };
  connect(tree_, &QTreeWidget::itemCollapsed, this, keepClosed);
  connect(tree_, &QTreeWidget::itemExpanded, this, keepClosed);
  const auto pick = [this] {
    if (const audit::Finding* finding = current()) emit picked(*finding);
  };
  connect(tree_, &QTreeWidget::currentItemChanged, this, [this, pick] {
    if (building_) return;
    look();
    pick();
  });
  const auto go = [this, pick] {
    pick();
    if (const audit::Finding* finding = current()) emit goTo(QString::fromStdString(finding->subject));
  };
  connect(tree_, &QTreeWidget::itemClicked, this, pick);
  connect(tree_, &QTreeWidget::itemActivated, this, go);
  connect(search_, &SearchLine::chosen, this, go);
  giveOwnKey(*tree_, QKeySequence::Copy, [this] { copy_->trigger(); });
  // Findings are not taken away, nor is the machine that the list has just picked on the plan.
  for (const auto removes : {QKeySequence::Delete, QKeySequence::Cut}) giveOwnKey(*tree_, removes, [] {});
  build();
}

QWidget* FindingList::orderLine() {
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  const auto add = [&](const QString& name, const QStringList& choices) {
    auto* box = new ElidedBox(line);
    box->setAccessibleName(name);
    box->view()->setAccessibleName(name);
    box->setToolTip(name);
    box->addItems(choices);
    connect(box, &QComboBox::currentIndexChanged, this, &FindingList::build);
    row->addWidget(box, 1);
    return box;
  };
  group_by_ = add(tr("Group findings"), {tr("By room"), tr("By machine"), tr("By rule"), tr("Not grouped")});
  order_by_ = add(tr("Order of the findings"),
                  {tr("Worst first"), tr("Farthest past its limit first"), tr("By name")});
  return line;
}

QWidget* FindingList::filterLine() {
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  const QString names[] = {tr("Fails"), tr("Warns"), tr("Notes")};
  for (int i = 0; i < 3; ++i) {
    shows_[i] = new QCheckBox(line);
    shows_[i]->setChecked(true);
    shows_[i]->setIcon(severityIcon(static_cast<Severity>(i), *this));
    shows_[i]->setAccessibleName(names[i]);
    shows_[i]->setToolTip(names[i]);
    connect(shows_[i], &QCheckBox::toggled, this, &FindingList::build);
    row->addWidget(shows_[i]);
  }
  row->addStretch(1);
  return line;
}

QWidget* FindingList::buttonLine() {
  copy_ = new Verb(
      {tr("&Copy the findings"), tr("What is shown, as text for a letter"), tr("Copy")},
      [this] { QApplication::clipboard()->setText(asText()); }, this);
  export_ = new Verb(
      {tr("&Export the findings…"), tr("All findings as a CSV file"), tr("Export…")},
      [this] { emit exportWanted(); }, this);
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  addButtons(*row, {copy_, export_});
  row->addStretch(1);
  return line;
}

void FindingList::fillMenu(QMenu& menu, const std::function<void()>& before) {
  addChoices(menu, *group_by_, before);
  menu.addSeparator();
  addChoices(menu, *order_by_, before);
  menu.addSeparator();
  for (QCheckBox* shows : shows_) addTick(menu, *shows, before);
}

void FindingList::setReport(std::shared_ptr<const audit::Report> report,
                            std::shared_ptr<const layout::Layout> layout,
                            std::shared_ptr<const audit::Report> before) {
  report_ = std::move(report);
  layout_ = std::move(layout);
  before_ = std::move(before);
  build();
}

void FindingList::setCircumstances(const QStringList& said, const QString& supposed) {
  said_ = said;
  supposed_ = supposed;
  showCounts();
}

void FindingList::setAge(Age age) {
  if (age == age_) return;
  if (isPale(age) != isPale(age_))
    for (QWidget* widget : {static_cast<QWidget*>(tree_), static_cast<QWidget*>(summary_), filter_line_})
      showPale(*widget, isPale(age));
  age_ = age;
  showCounts();
}

const audit::Finding* FindingList::current() const {
  const int index = indexOf(tree_->currentItem());
  return report_ && index >= 0 ? &report_->findings[static_cast<std::size_t>(index)] : nullptr;
}

const layout::AcceptedFinding* FindingList::currentIdle() const {
  const int index = indexOf(tree_->currentItem(), kIdleRole);
  return index >= 0 ? &idle_[static_cast<std::size_t>(index)] : nullptr;
}

// Keeps the finding that is looked at, what is closed and the place scrolled to, whatever else comes and
// goes.
void FindingList::build() {
  const QTreeWidgetItem* was = tree_->currentItem();
  const QString rule = was ? was->data(0, kFindingRole + 1).toString() : QString();
  const QString subject = was ? was->data(0, kFindingRole + 2).toString() : QString();
  const QString which = was ? was->data(0, kFindingRole + 3).toString() : QString();
  const int scrolled = tree_->verticalScrollBar()->value();
  building_ = true;
  tree_->clear();
  shown_ = 0;
  if (report_ && layout_) {
    const FindingFilter filter{static_cast<GroupBy>(group_by_->currentIndex()),
                               shows_[0]->isChecked(),
                               shows_[1]->isChecked(),
                               shows_[2]->isChecked(),
                               search_->text(),
                               static_cast<OrderBy>(order_by_->currentIndex())};
    const auto is_new = before_ ? newSince(*report_, *before_) : std::vector<bool>(report_->findings.size());
    for (const FindingGroup& group : groupsOf(*report_, *layout_, filter)) addGroup(group, is_new);
    addIdle();
    choose(rule, subject, which);
    openGroups();  // last: who comes to a finding opens its group
  }
  if (scrolled > 0) {
    tree_->doItemsLayout();  // else there is nothing yet to scroll in
    tree_->verticalScrollBar()->setValue(scrolled);
  }
  building_ = false;
  showCounts();
  look();
}

// With what stands under it, which a tree takes faster all at once.
void FindingList::addHeading(const QString& title, const QString& text,
                             const QList<QTreeWidgetItem*>& below) {
  auto* heading = new QTreeWidgetItem(QStringList{text});
  QFont bold = tree_->font();
  bold.setBold(true);
  heading->setFont(0, bold);
  heading->setData(0, kTitleRole, title);
  heading->addChildren(below);
  tree_->addTopLevelItem(heading);
}

// All but those that somebody has closed; what is searched for is not hidden.
void FindingList::openGroups() {
  for (int g = 0; g < tree_->topLevelItemCount(); ++g) {
    QTreeWidgetItem* heading = tree_->topLevelItem(g);
    heading->setExpanded(!closed_.contains(heading->data(0, kTitleRole).toString()) ||
                         !search_->text().isEmpty());
  }
}

// Of the layout as it is, whatever is supposed.
void FindingList::addIdle() {
  idle_ = audit::notNeeded(layout_->accepted_findings, (before_ ? before_ : report_)->findings);
  std::vector<std::pair<int, QString>> shown;
  for (int i = 0; i < std::ssize(idle_); ++i)
    if (const QString text = idleText(idle_[static_cast<std::size_t>(i)], QDate::currentDate());
        search_->text().isEmpty() || matches(text, search_->text()))
      shown.emplace_back(i, text);
  if (shown.empty()) return;
  QList<QTreeWidgetItem*> items;
  for (const auto& [i, text] : shown) {
    const layout::AcceptedFinding& idle = idle_[static_cast<std::size_t>(i)];
    auto* item = new QTreeWidgetItem(QStringList{text});
    item->setData(0, Qt::AccessibleTextRole, text);
    item->setData(0, kIdleRole, i);
    keepKnown(*item, idle.rule, idle.subject, idle.which);
    items << item;
  }
  addHeading({}, tr("Accepted, and found no more: %1").arg(shown.size()), items);
}

void FindingList::addGroup(const FindingGroup& group, const std::vector<bool>& is_new) {
  const auto n = group.findings.size();
  QList<QTreeWidgetItem*> items;
  for (const std::size_t i : group.findings) {
    const QIcon& icon = shows_[static_cast<int>(report_->findings[i].severity)]->icon();
    items << new FindingItem(report_->findings.entry(i), i, is_new[i], report_->unit, icon);
  }
  addHeading(group.title,
             n == group.all ? tr("%1: %2").arg(group.title).arg(n)
                            : tr("%1: %2 of %3").arg(group.title).arg(n).arg(group.all),
             items);
  shown_ += items.size();
}

// Else another of the rule about the subject: what was looked at may be about another stop now.
void FindingList::choose(const QString& rule, const QString& subject, const QString& which) {
  if (rule.isEmpty()) return;
  QTreeWidgetItem* like = nullptr;
  for (int g = 0; g < tree_->topLevelItemCount(); ++g)
    for (int i = 0; i < tree_->topLevelItem(g)->childCount(); ++i) {
      QTreeWidgetItem* item = tree_->topLevelItem(g)->child(i);
      if (item->data(0, kFindingRole + 1) != rule || item->data(0, kFindingRole + 2) != subject) continue;
      if (item->data(0, kFindingRole + 3) == which) return tree_->setCurrentItem(item);
      if (!like) like = item;
    }
  if (like) tree_->setCurrentItem(like);
}

void FindingList::showCounts() {
  for (Verb* verb : {copy_, export_}) verb->setWhyNot(report_ ? QString() : tr("Not audited yet."));
  for (int i = 0; i < 3; ++i) {
    const QString count = report_ ? QString::number(report_->count(static_cast<Severity>(i))) : QString();
    const QString name = shows_[i]->toolTip();
    shows_[i]->setText(count);  // what is read aloud takes its place
    shows_[i]->setAccessibleName(report_ ? tr("%1: %2").arg(name, count) : name);
  }
  if (!report_) return summary_->setText(tr("Not audited yet."));
  QStringList sentences{counted()};
  if (age_ == Age::MomentAgo) sentences.prepend(tr("Of a moment ago:"));
  if (const QString untold = this->untold(); !untold.isEmpty()) sentences << untold;
  for (const QString& said : said_) sentences << said + '.';
  summary_->setText(sentences.join(' '));
}

// Always a line, so that nothing jumps when more is said.
QString FindingList::counted() const {
  const qsizetype n = std::ssize(report_->findings), shown = shown_;
  if (n > 0 && shown == 0) return tr("No finding is like that.");
  if (n > shown) return tr("%1 of %2 findings.").arg(shown).arg(n);
  if (n > 0) return n == 1 ? tr("1 finding.") : tr("%1 findings.").arg(n);
  if (report_->stations.empty())
    return tr("There is nothing to audit yet. Draw a machine with its station, and the findings stand here.");
  return said_.isEmpty() && report_->count(audit::Verdict::Meets) == report_->stations.size()
             ? tr("Every rule is met, as drawn and as entered.")
             : tr("No findings, as drawn and as entered.");
}

QString FindingList::untold() const {
  const auto n = report_ ? static_cast<int>(report_->countUntold()) : 0;
  if (n == 0) return {};
  return n == 1 ? tr("1 station has no way to a stop or to a phone, and no rule that is on warns of it.")
                : tr("%1 stations have no way to a stop or to a phone, and no rule that is on warns of it.")
                      .arg(n);
}

void FindingList::look() {
  emit looked(current());
  if (const layout::AcceptedFinding* idle = currentIdle()) emit lookedIdle(*idle);
}

QString FindingList::asText() const {
  QString text;
  if (age_ != Age::Current) text += tr("Of a moment ago: what changed since is not in it.") + "\n";
  if (report_) text += copiedHead(*report_) + "\n";
  if (!supposed_.isEmpty()) text += supposed_ + "\n";
  if (const QString untold = this->untold(); !untold.isEmpty()) text += untold + "\n";
  for (const QString& said : said_) text += said + ".\n";
  text += howMany() + "\n";
  for (int g = 0; g < tree_->topLevelItemCount(); ++g) {
    const QTreeWidgetItem* group = tree_->topLevelItem(g);
    text += group->text(0) + "\n";
    for (int i = 0; i < group->childCount(); ++i)
      text += "  " + group->child(i)->data(0, Qt::AccessibleTextRole).toString() + "\n";
  }
  return text + copiedCaution() + "\n";
}

// What the filter hides is told as well.
QString FindingList::howMany() const {
  if (!report_) return tr("Not audited yet.");
  const qsizetype all = std::ssize(report_->findings), shown = shown_;
  return shown == all ? counted() : tr("%1 of %2 findings; the others are not shown.").arg(shown).arg(all);
}

}  // namespace stopwalk::panels
