#include "app/panels/rules/rules_panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/edits/change_things.h"
#include "app/edits/house_rules.h"
#include "app/panels/elided_box.h"
#include "app/panels/fields/length_field.h"
#include "app/panels/fields/number_field.h"
#include "app/panels/rows.h"
#include "core/audit/wording.h"
#include "core/files/profile_reader.h"
#include "core/layout/units.h"

namespace stopwalk::panels {
namespace {

constexpr int kRuleRole = Qt::UserRole;
constexpr double kMm = 1000;      // in a metre
constexpr double kSame_m = 1e-6;  // a thousandth of a millimetre
constexpr int kExact = 6;         // decimals

// Exact; what no fraction of an inch is, stands beside it in metres.
QString limitText(const audit::Limit& limit, double value, layout::LengthUnit unit) {
  if (limit.unit != "m")
    return QString::fromStdString(audit::decimal(value, kExact) +
                                  (limit.unit.empty() ? "" : " " + limit.unit));
  const std::string text = audit::limitText(value, unit);
  const auto meant_mm = layout::parseLength(text, unit);
  if (meant_mm && std::abs(*meant_mm / kMm - value) < kSame_m) return QString::fromStdString(text);
  return QStringLiteral("%1 (%2 m)")
      .arg(QString::fromStdString(text), QString::fromStdString(audit::decimal(value, kExact)));
}

// Metres even where the layout is drawn in millimetres: as the list above says them.
layout::LengthUnit unitOfLimits(layout::LengthUnit drawn) {
  return drawn == layout::LengthUnit::Millimetre ? layout::LengthUnit::Metre : drawn;
}

// "A station whose nearest stop is farther to walk than the limit: 5 m"
QString textOf(const audit::Rule& rule, const audit::Setting& setting, layout::LengthUnit unit) {
  QStringList limits;
  for (std::size_t i = 0; i < rule.limits.size(); ++i)
    limits << limitText(rule.limits[i], setting.limits[i], unit);
  const QString finds = QString::fromStdString(audit::withCapital(rule.finds));
  return limits.isEmpty() ? finds : RulesPanel::tr("%1: %2").arg(finds, limits.join(", "));
}

std::string nameOf(const layout::Layout& layout) {
  return layout.profile.empty() ? audit::kDefaultProfile : layout.profile;
}

std::string keyOf(audit::Severity severity) {
  return std::string(audit::word(severity));
}

audit::Severity severityOf(const std::string& key) {
  for (const auto severity : {audit::Severity::Fail, audit::Severity::Warn})
    if (key == keyOf(severity)) return severity;
  return audit::Severity::Note;
}

}  // namespace

RulesPanel::RulesPanel(const Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  of_ = new QLabel(this);
  of_->setWordWrap(true);
  tree_ = new QTreeWidget(this);
  tree_->setHeaderHidden(true);
  tree_->setRootIsDecorated(false);
  tree_->setAccessibleName(tr("Rules"));
  tree_->setWhatsThis(tr("Space puts a rule on or off. What is bold is the house's own."));
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  tree_->setTextElideMode(Qt::ElideNone);
  Rows::give(*tree_);
  search_ = new SearchLine(tr("Search rules"), tree_, this);
  makeVerbs();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(profileLine());
  column->addWidget(of_);
  column->addWidget(search_);
  column->addWidget(tree_, 1);
  column->addWidget(editor());
  for (const audit::Rule* rule : audit::rules()) {
    auto* item = new QTreeWidgetItem(tree_);
    item->setData(0, kRuleRole, QString::fromStdString(rule->id));
    item->setToolTip(0, QString::fromStdString(rule->meaning));
  }
  connect(search_, &QLineEdit::textChanged, this, &RulesPanel::filter);
  connect(tree_, &QTreeWidget::currentItemChanged, this, &RulesPanel::showRule);
  connect(tree_, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* item) {
    if (showing_) return;
    const audit::Rule* rule = audit::findRule(item->data(0, kRuleRole).toString().toStdString());
    audit::Setting wanted = kept_.of(*rule);
    wanted.on = item->checkState(0) == Qt::Checked;
    tree_->setCurrentItem(item);
    keep(wanted);
  });
  connect(&desk_.edited, &edits::EditedLayout::changed, this, &RulesPanel::showAll);
  showAll();
  tree_->setCurrentItem(tree_->topLevelItem(0));
}

void RulesPanel::makeVerbs() {
  is_on_ = new Verb(
      {tr("The rule chosen is on"), tr("A rule that is off finds nothing")},
      [this] {
        const audit::Rule* rule = current();
        if (!rule) return;
        audit::Setting wanted = kept_.of(*rule);
        wanted.on = is_on_->isChecked();
        keep(wanted);
      },
      this);
  is_on_->setCheckable(true);
  as_it_was_ = new Verb(
      {tr("The rule chosen as the profile has it"), tr("Puts back what was changed of this rule"),
       tr("As the profile ha&s it")},
      [this] {
        if (const audit::Rule* rule = current()) keep(profile_.of(*rule));
      },
      this);
  choose_ = new Verb(
      {tr("Choose the prof&ile"), tr("The rules and limits that the layout is audited by")},
      [this] { profile_box_->setFocus(); }, this);
  from_file_ = new Verb(
      {tr("Profile fro&m a file…"), tr("One of your own, beside the layout"), tr("File…")},
      [this] { emit profileFileWanted(); }, this);
  save_ = new Verb(
      {tr("Sa&ve the rules as a profile file…"),
       tr("All rules as they are kept here, for other layouts and the command line"), tr("Save…")},
      [this] { emit saveWanted(); }, this);
}

// The profile of the layout: a bundled one, or the file that it names.
QWidget* RulesPanel::profileLine() {
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  profile_box_ = new ElidedBox(line);
  profile_box_->setAccessibleName(tr("Profile"));
  profile_box_->view()->setAccessibleName(profile_box_->accessibleName());
  profile_box_->setToolTip(choose_->toolTip());
  for (const std::string& name : files::bundledProfiles())
    profile_box_->addItem(QString::fromStdString(files::bundledProfile(name)->name),
                          QString::fromStdString(name));
  connect(profile_box_, &QComboBox::activated, this, [this] {
    const std::string wanted = profile_box_->currentData().toString().toStdString();
    if (wanted != nameOf(desk_.edited.layout()))
      desk_.edited.apply(edits::setProfile(desk_.edited.layout(), wanted));
    showProfile();  // as it is, if that was refused
  });
  row->addWidget(profile_box_, 1);
  addButtons(*row, {from_file_, save_});
  return line;
}

void RulesPanel::showProfile() {
  const QString named = QString::fromStdString(nameOf(desk_.edited.layout()));
  const int bundled = static_cast<int>(files::bundledProfiles().size());
  if (profile_box_->count() > bundled && profile_box_->itemData(bundled) != named)
    profile_box_->removeItem(bundled);
  if (profile_box_->findData(named) < 0) profile_box_->addItem(named, named);
  profile_box_->setCurrentIndex(profile_box_->findData(named));
  // Of the usual rules it would not be the layout's own that are saved.
  save_->setWhyNot(trouble_);
}

QWidget* RulesPanel::editor() {
  auto* box = editor_ = new QWidget(this);
  form_ = new QFormLayout(box);
  form_->setContentsMargins(0, 0, 0, 0);
  severity_ = new ChoiceField({tr("A break of it"), tr("How bad it is if the rule is not met.")},
                              {{keyOf(audit::Severity::Fail), tr("fails")},
                               {keyOf(audit::Severity::Warn), tr("warns")},
                               {keyOf(audit::Severity::Note), tr("is noted")}});
  severity_->entered = [this](const std::string& key) {
    const audit::Rule* rule = current();
    if (!rule) return;
    audit::Setting wanted = kept_.of(*rule);
    wanted.severity = severityOf(key);
    keep(wanted);
  };
  reason_ = new TextField({tr("Reason"), tr("Why the house keeps it otherwise. Shown as the basis.")});
  reason_->entered = [this](const std::string& reason) {
    const audit::Rule* rule = current();
    if (!rule) return;
    if (!(kept_.of(*rule) == profile_.of(*rule))) return keep(kept_.of(*rule));
    typed_first_[rule->id] = reason;
    showBasis(*rule);
  };
  basis_ = new QLabel(box);
  basis_->setWordWrap(true);
  basis_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  as_profile_ = new QPushButton(box);
  as_it_was_->showOn(*as_profile_);
  form_->addRow(severity_->label(), severity_);
  form_->addRow(reason_->label(), reason_);
  form_->addRow(tr("Basis"), basis_);
  form_->addRow(as_profile_);
  return box;
}

const audit::Rule* RulesPanel::current() const {
  const QTreeWidgetItem* item = tree_->currentItem();
  return item ? audit::findRule(item->data(0, kRuleRole).toString().toStdString()) : nullptr;
}

void RulesPanel::setProfile(const audit::Profile& profile, const QString& trouble) {
  trouble_ = trouble;
  profile_ = profile;
  showAll();
}

void RulesPanel::forget() {
  typed_first_.clear();
  showRule();
}

void RulesPanel::choose(const std::string& rule) {
  search_->clear();
  for (int i = 0; i < tree_->topLevelItemCount(); ++i)
    if (tree_->topLevelItem(i)->data(0, kRuleRole).toString().toStdString() == rule)
      tree_->setCurrentItem(tree_->topLevelItem(i));
}

void RulesPanel::applyPending() {
  for (LineField* limit : limits_) limit->applyPending();
  reason_->applyPending();
}

void RulesPanel::showAll() {
  showing_ = true;
  showProfile();
  const layout::Layout& layout = desk_.edited.layout();
  kept_ = audit::withHouseRules(profile_, layout.house_rules);
  QStringList head{tr("Rules of the profile %1; what is changed here is kept with the layout.")
                       .arg(QString::fromStdString(profile_.name))};
  if (!trouble_.isEmpty()) head.prepend(trouble_);
  const auto off = std::ranges::count(kept_.settings, false, &audit::Setting::on);
  if (off > 0) head << (off == 1 ? tr("1 rule is off.") : tr("%1 rules are off.").arg(off));
  of_->setText(head.join(' '));
  for (int i = 0; i < tree_->topLevelItemCount(); ++i) {
    QTreeWidgetItem* item = tree_->topLevelItem(i);
    const audit::Rule& rule = *audit::rules()[static_cast<std::size_t>(i)];
    const audit::Setting& setting = kept_.of(rule);
    const bool own = !(setting == profile_.of(rule));
    const QString text = textOf(rule, setting, layout.unit);
    QFont font = tree_->font();
    font.setBold(own);
    item->setFont(0, font);
    item->setText(0, text);
    item->setData(0, Qt::AccessibleTextRole, own ? tr("%1 (the house's own)").arg(text) : text);
    item->setCheckState(0, setting.on ? Qt::Checked : Qt::Unchecked);
  }
  showing_ = false;
  showRule();
}

void RulesPanel::showRule() {
  if (showing_) return;
  const audit::Rule* rule = current();
  editor_->setEnabled(rule != nullptr);
  const QString none = rule ? QString() : tr("Choose a rule in the list first.");
  is_on_->setWhyNot(none);
  if (!rule) return as_it_was_->setWhyNot(none);
  if (limits_of_ != rule) makeLimits(*rule);
  const audit::Setting& setting = kept_.of(*rule);
  severity_->show(keyOf(setting.severity));
  for (std::size_t i = 0; i < limits_.size(); ++i) {
    const bool is_length = rule->limits[i].unit == "m";
    if (is_length) {
      limits_[i]->setUnit(unitOfLimits(desk_.edited.layout().unit));
      static_cast<LengthField*>(limits_[i])->setUsual(kMm * profile_.of(*rule).limits[i]);
    }
    static_cast<ValueField<std::optional<double>>*>(limits_[i])
        ->show(is_length ? kMm * setting.limits[i] : setting.limits[i]);
  }
  const std::string reason = edits::reasonFor(desk_.edited.layout(), *rule);
  const auto typed = typed_first_.find(rule->id);
  reason_->show(reason.empty() && typed != typed_first_.end() ? typed->second : reason);
  showBasis(*rule);
  is_on_->setChecked(setting.on);
  as_it_was_->setWhyNot(setting == profile_.of(*rule) ? tr("This rule is as the profile has it.")
                                                      : QString());
}

// A limit that is not the source's has lost its basis: the house's reason takes its place.
void RulesPanel::showBasis(const audit::Rule& rule) {
  const audit::Setting &setting = kept_.of(rule), &usual = profile_.of(rule);
  const bool says_why = !reason_->value().empty();
  const bool asks = setting.limits != usual.limits && !says_why;
  QStringList basis{QString::fromStdString(audit::basisText(setting.basis))};
  if (asks) basis << tr("Type the reason: it takes the place of what the limit rested on.");
  if (setting == usual && says_why) basis << tr("The reason is kept as soon as the rule is changed.");
  basis_->setText(basis.join(QStringLiteral(". ")));
  reason_->setEmptyText(asks ? tr("Why is it otherwise here?") : QString());
}

void RulesPanel::makeLimits(const audit::Rule& rule) {
  for (LineField* limit : limits_) form_->removeRow(limit);
  limits_.clear();
  limits_of_ = &rule;
  for (std::size_t i = 0; i < rule.limits.size(); ++i) {
    const audit::Limit& limit = rule.limits[i];
    const bool alone = rule.limits.size() == 1, is_length = limit.unit == "m";
    const FieldText text{alone ? tr("Limit") : tr("Limit, %1").arg(QString::fromStdString(limit.name)),
                         tr("From where on the rule is broken.")};
    ValueField<std::optional<double>>* field = nullptr;
    if (is_length) {
      field = new LengthField(text, Range::NotNegative, Known::Always);
    } else {
      NumberKind kind;
      if (!limit.unit.empty()) kind.suffix = " " + QString::fromStdString(limit.unit);
      kind.least = limit.unit.empty() ? 1 : 0;
      kind.whole = limit.unit.empty();
      field = new NumberField(text, kind, Known::Always);
    }
    const auto inItsUnit = [is_length](double value) { return is_length ? value / kMm : value; };
    field->refuses = [this, i, inItsUnit, &rule](const std::optional<double>& value) {
      audit::Setting wanted = kept_.of(rule);
      const std::string wrong = value ? audit::setLimit(wanted, rule, i, inItsUnit(*value)) : std::string();
      return wrong.empty() ? QString() : QString::fromStdString(audit::withCapital(wrong)) + '.';
    };
    field->entered = [this, i, inItsUnit, &rule](const std::optional<double>& value) {
      if (!value) return;
      audit::Setting wanted = kept_.of(rule);
      wanted.limits[i] = inItsUnit(*value);
      keep(wanted);
    };
    limits_.push_back(field);
    form_->insertRow(1 + static_cast<int>(i), field->label(), field);
  }
}

// What is hidden is not chosen: the first that is shown is.
void RulesPanel::filter() {
  QTreeWidgetItem* first = nullptr;
  for (int i = 0; i < tree_->topLevelItemCount(); ++i) {
    QTreeWidgetItem* item = tree_->topLevelItem(i);
    item->setHidden(!matches(item->text(0) + " " + item->data(0, kRuleRole).toString(), search_->text()));
    if (!item->isHidden() && !first) first = item;
  }
  const QTreeWidgetItem* chosen = tree_->currentItem();
  if (!chosen || chosen->isHidden()) tree_->setCurrentItem(first);
}

void RulesPanel::keep(const audit::Setting& wanted) {
  const audit::Rule* rule = current();
  if (!rule) return;
  if (desk_.edited.apply(edits::keepRule(desk_.edited.layout(), profile_, *rule, wanted, reason_->value())))
    typed_first_.erase(rule->id);
  showAll();
}

}  // namespace stopwalk::panels
