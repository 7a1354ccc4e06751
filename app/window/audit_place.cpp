#include "app/window/audit_place.h"

#include <QApplication>
#include <QLabel>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/findings/accepting.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/findings/why.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/panels/stations/station_table.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/plan/changes.h"
#include "app/plan/turn_sign.h"
#include "app/window/records_beside.h"

namespace stopwalk::window {
namespace {

struct FindingCounts {
  std::size_t fresh = 0, otherwise = 0, gone = 0;
};

// "2 stations worse off, 1 station better off, 3 new findings."
QString summaryOf(const std::vector<plan::StationChange>& changes, const FindingCounts& findings) {
  const auto count = [&](plan::Turn turn) {
    return static_cast<int>(std::ranges::count(changes, turn, &plan::StationChange::turn));
  };
  if (changes.empty() && findings.fresh + findings.otherwise + findings.gone == 0)
    return AuditPlace::tr("It changes nothing for any station.");
  QStringList parts;
  if (const int n = count(plan::Turn::Worse))
    parts << (n == 1 ? AuditPlace::tr("1 station worse off")
                     : AuditPlace::tr("%1 stations worse off").arg(n));
  if (const int n = count(plan::Turn::Better))
    parts << (n == 1 ? AuditPlace::tr("1 station better off")
                     : AuditPlace::tr("%1 stations better off").arg(n));
  if (const int n = count(plan::Turn::Other))
    parts << (n == 1 ? AuditPlace::tr("1 station otherwise")
                     : AuditPlace::tr("%1 stations otherwise").arg(n));
  const auto add = [&](std::size_t n, const QString& one, const QString& many) {
    if (n > 0) parts << (n == 1 ? one : many.arg(n));
  };
  add(findings.fresh, AuditPlace::tr("1 new finding"), AuditPlace::tr("%1 new findings"));
  add(findings.otherwise, AuditPlace::tr("1 finding changed"), AuditPlace::tr("%1 findings changed"));
  add(findings.gone, AuditPlace::tr("1 finding gone"), AuditPlace::tr("%1 findings gone"));
  return parts.join(AuditPlace::tr(", ")) + ".";
}

// Who is otherwise off and by how much: the gravest first, who is better off last. The table has them all.
QString namedIn(std::vector<plan::StationChange> changes) {
  constexpr std::size_t kMostNamed = 5;
  plan::sortGravestFirst(changes);
  QString text;
  for (std::size_t i = 0; i < std::min(changes.size(), kMostNamed); ++i)
    text += "\n" + plan::signOf(changes[i].turn) + changes[i].text;
  if (changes.size() > kMostNamed)
    text += "\n" + AuditPlace::tr("and %1 more, in the table").arg(changes.size() - kMostNamed);
  return text;
}

// Short, as it stands with the findings; the window says above the plan what to do.
QString troubleOf(const RecordsBeside& records) {
  if (!records.unreadable().isEmpty()) return AuditPlace::tr("The inspection records cannot be read");
  if (records.read()->there && files::isEmpty(records.read()->log))
    return AuditPlace::tr("The file of inspection records is empty");
  if (records.areMissed()) return AuditPlace::tr("The inspection records are not as they were read before");
  if (!records.read()->log.bad.empty() || !records.read()->log.torn.empty())
    return AuditPlace::tr("The inspection records are not all as they were written");
  return {};
}

}  // namespace

AuditPlace::AuditPlace(const panels::Desk& desk, QObject* parent) : QObject(parent), desk_(desk) {
  tabs_ = new QTabWidget;
  tabs_->setDocumentMode(true);
  tabs_->setAccessibleName(tr("What the audit found, and what if"));
  tabs_->addTab(findingsPage(), tr("Findings"));
  suppose_ = new panels::SupposePanel(desk_);
  tabs_->addTab(suppose_, tr("What if"));
  rules_ = new panels::RulesPanel(desk_);
  tabs_->addTab(rules_, tr("Rules"));
  connect(rules_, &panels::RulesPanel::profileFileWanted, this, &AuditPlace::profileFileWanted);
  connect(rules_, &panels::RulesPanel::saveWanted, this, &AuditPlace::profileSaveWanted);
  reach_ = new panels::ReachChooser(desk_.edited);
  side_ = new QWidget;
  auto* beside = new QVBoxLayout(side_);
  beside->setContentsMargins(0, 0, 0, 0);
  beside->addWidget(tabs_, 1);
  beside->addWidget(reach_);
  connect(suppose_, &panels::SupposePanel::changed, this, &AuditPlace::supposed);

  under_ = new QWidget;
  auto* column = new QVBoxLayout(under_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  stations_ = new panels::StationTable(desk_.selection);
  column->addWidget(stations_, 1);
  column->addWidget(caution());
  connect(stations_, &panels::StationTable::goTo, this, &AuditPlace::goTo);
  connect(stations_, &panels::StationTable::exportWanted, this, &AuditPlace::exportWanted);
}

QWidget* AuditPlace::side() const {
  return side_;
}

QWidget* AuditPlace::under() const {
  return under_;
}

QWidget* AuditPlace::findingsPage() {
  auto* page = new QSplitter(Qt::Vertical);
  findings_ = new panels::FindingList;
  why_ = new panels::Why;
  accepting_ = new panels::Accepting(desk_);
  auto* why = new QWidget;
  auto* column = new QVBoxLayout(why);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(why_, 1);
  column->addWidget(accepting_);
  page->addWidget(findings_);
  page->addWidget(why);
  page->setStretchFactor(0, 1);
  page->setSizes({420, 220});
  page->setChildrenCollapsible(false);
  connect(findings_, &panels::FindingList::goTo, this, &AuditPlace::goTo);
  connect(findings_, &panels::FindingList::exportWanted, this, &AuditPlace::exportFindingsWanted);
  connect(findings_, &panels::FindingList::looked, this, [this](const audit::Finding* finding) {
    why_->show(finding, unit_);
    accepting_->look(finding);
  });
  connect(findings_, &panels::FindingList::lookedIdle, this, [this](const layout::AcceptedFinding& idle) {
    why_->showIdle(idle, unit_);
    accepting_->lookAtIdle(&idle);
  });
  connect(findings_, &panels::FindingList::looked, this, [this] { emit looked(drawn()); });
  connect(findings_, &panels::FindingList::picked, this, &AuditPlace::takePicked);
  connect(&desk_.selection, &edits::Selection::changed, this, &AuditPlace::takeSelection);
  return page;
}

const audit::Finding* AuditPlace::drawn() const {
  return is_drawn_ ? findings_->current() : nullptr;
}

void AuditPlace::takePicked(const audit::Finding& finding) {
  is_drawn_ = true;
  emit looked(&finding);
  if (findings_->isAncestorOf(QApplication::focusWidget()))
    emit goTo(QString::fromStdString(finding.subject));
}

// Whoever picks something else is done with the finding; its machine, or all that is picked with it, is not.
void AuditPlace::takeSelection() {
  const audit::Finding* finding = findings_->current();
  const layout::AcceptedFinding* idle = findings_->currentIdle();
  if (desk_.selection.empty() || (!finding && !idle)) return;
  const std::string& subject = finding ? finding->subject : idle->subject;
  const auto isOf = [&](const std::string& id) { return subject == id || subject.starts_with(id + "/"); };
  if (std::ranges::any_of(desk_.selection.ids(), isOf)) return;
  is_drawn_ = false;
  findings_->leave();
}

QWidget* AuditPlace::caution() {
  auto* label = new QLabel(tr(
      "Holds a drawing against chosen rules; certifies nothing. Local codes, the maker and licensed people "
      "come first. Never rely on a stop as a guard. <a href=\"#\">More</a>"));
  label->setWordWrap(true);
  label->setMargin(4);
  label->setTextInteractionFlags(Qt::TextBrowserInteraction);
  connect(label, &QLabel::linkActivated, this, &AuditPlace::cautionWanted);
  return label;
}

std::vector<std::function<void()>> AuditPlace::showing(std::shared_ptr<const LiveAudit::Answer> answer,
                                                       std::shared_ptr<const layout::DeviceKinds> kinds) {
  return {[this, answer, kinds] { showFindings(*answer, *kinds); },
          [this, answer, kinds] { showStations(*answer, *kinds); }};
}

void AuditPlace::showFindings(const LiveAudit::Answer& answer, const layout::DeviceKinds& kinds) {
  unit_ = answer.layout->unit;
  const QString what = panels::sentenceOf(answer.suppositions, *answer.layout, kinds, panels::Several::Named);
  supposed_ = what.isEmpty() ? QString() : tr("What if %1? Not as the workshop is.").arg(what);
  rules_off_ = answer.rules_off;
  showCircumstances();
  accepting_->setSupposed(answer.supposed != nullptr);
  accepting_->setReport(answer.report);
  findings_->setReport(answer.shown(), answer.layout, answer.supposed ? answer.report : nullptr);
}

void AuditPlace::showStations(const LiveAudit::Answer& answer, const layout::DeviceKinds& kinds) {
  std::vector<plan::StationChange> changes;
  summary_.clear();
  if (answer.supposed) {
    changes = plan::changesBetween(*answer.report, *answer.supposed);
    const audit::Report &supposed = *answer.supposed, &as_it_is = *answer.report;
    const auto fresh = std::ranges::count(panels::newSince(supposed, as_it_is), true);
    summary_ =
        summaryOf(changes, {static_cast<std::size_t>(fresh), panels::otherwiseSince(supposed, as_it_is),
                            panels::goneBy(answer.suppositions, *answer.layout, as_it_is, supposed)}) +
        namedIn(changes);
  }
  stations_->setReport(answer.shown(), *answer.layout, kinds, changes);
  showSummary();
}

void AuditPlace::forget() {
  findings_->setReport(nullptr, nullptr);
  stations_->setReport(nullptr, {}, {}, {});
  rules_->forget();
  summary_.clear();
  supposed_.clear();
  rules_off_ = 0;
  showSummary();
  showCircumstances();
}

void AuditPlace::setRecords(const RecordsBeside& records) {
  records_trouble_ = troubleOf(records);
  showCircumstances();
}

void AuditPlace::setProfile(const audit::Profile& profile, const QString& trouble) {
  profile_trouble_ = trouble;
  rules_->setProfile(profile, trouble);
  showCircumstances();
}

void AuditPlace::setAge(panels::Age age) {
  const bool is_pale = isPale(age), was_pale = isPale(std::exchange(age_, age));
  if (is_pale != was_pale)
    for (QWidget* widget : {static_cast<QWidget*>(why_), static_cast<QWidget*>(&suppose_->summaryLine())})
      panels::showPale(*widget, is_pale);
  findings_->setAge(age);
  accepting_->setAge(age);
  stations_->setAge(age);
  showSummary();
}

// What makes the findings fewer, or others, than the layout's own rules would.
void AuditPlace::showCircumstances() {
  QStringList said;
  if (rules_off_ > 0)
    said << (rules_off_ == 1 ? tr("1 rule is off") : tr("%1 rules are off").arg(rules_off_));
  if (!profile_trouble_.isEmpty()) said << tr("The layout's own profile is not used");
  if (!records_trouble_.isEmpty()) said << records_trouble_;
  findings_->setCircumstances(said, supposed_);
  stations_->setCircumstances(said, supposed_);
}

void AuditPlace::showSummary() {
  const bool says_so = age_ == panels::Age::MomentAgo && !summary_.isEmpty();
  suppose_->setSummary(says_so ? tr("Of a moment ago: %1").arg(summary_) : summary_);
}

}  // namespace stopwalk::window
