#include "app/panels/findings/accept_dialog.h"

#include <QDate>
#include <algorithm>
#include <utility>

#include "app/edits/accept_finding.h"
#include "core/audit/accepted.h"

namespace stopwalk::panels {
namespace {

constexpr int kWidth_px = 440;

// What was never typed is looked at as well.
template <class Text>
class Needed : public Text {
 public:
  using Text::Text;
  void applyPending() override { this->enter(this->line()->text()); }
};

constexpr int kMostYears =
    5;  // common practice: what stands longer than that is a slip, or a rule of the house

// A day that somebody typed is one by then.
QString untilTrouble(const std::string& text) {
  if (text.empty()) return notEmpty()(text);
  const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
  const QDate today = QDate::currentDate(), last = today.addYears(kMostYears);
  if (day < today) return AcceptDialog::tr("That day has passed. Type today's or a later one.");
  if (day <= last) return {};
  return AcceptDialog::tr(
             "That is more than %1 years from now. Type a day up to %2; what stands longer is a matter "
             "for the rules.")
      .arg(kMostYears)
      .arg(last.toString(Qt::ISODate));
}

}  // namespace

AcceptDialog::AcceptDialog(const Desk& desk, audit::Finding finding, std::function<FoundNow()> found_now,
                           QWidget* parent)
    : FormDialog(desk, tr("Accept this finding"), tr("Accept"), parent),
      finding_(std::move(finding)),
      found_now_(std::move(found_now)),
      said_(say(QString::fromStdString(finding_.text))) {
  say(tr(
      "It stays a finding, as grave as it is, and is shown with these words everywhere. They are kept with "
      "the layout."));
  reason_ = new Needed<TextField>(
      {tr("Reason"), tr("Why it may stand for a time, and what is done meanwhile.")}, notEmpty());
  by_ = new Needed<TextField>({tr("Accepted by"), tr("The name of who answers for it.")}, notEmpty());
  until_ = new Needed<DateField>(
      {tr("Until"),
       tr("The last day, such as 2026-12-31. Arrows up and down change it by a day, with Shift by a "
          "month.")},
      untilTrouble);
  for (TextField* field : {reason_, by_, until_}) addField(field);
  setMinimumWidth(kWidth_px);
  if (!finding_.accepted) return;
  reason_->show(finding_.accepted->reason);
  by_->show(finding_.accepted->by);
  until_->show(finding_.accepted->until);
}

bool AcceptDialog::carryOut() {
  const FoundNow now = found_now_();
  if (!isFoundAsShown(now)) return false;
  const layout::Layout& layout = desk().edited.layout();
  edits::Edit edit = edits::acceptFinding(layout, finding_, now.report->findings,
                                          {reason_->value(), by_->value(), until_->value()});
  const bool is_so_already = edit.refused.isEmpty() && edit.after == layout;
  return is_so_already || desk().edited.apply(std::move(edit));
}

// While the dialog stands open somebody may have recorded a failure, or changed a file beside the layout.
bool AcceptDialog::isFoundAsShown(const FoundNow& now) {
  if (!now.report || !now.is_current)
    return refuse(
        tr("What is found now is not computed yet. Accept it again in a moment; if that lasts, close this "
           "and audit again."));
  const auto found = std::ranges::find_if(now.report->findings, [this](const audit::Finding& f) {
    return f.rule == finding_.rule && f.subject == finding_.subject && f.which == finding_.which;
  });
  if (found == now.report->findings.end())
    return refuse(tr("This is found no more: something was changed meanwhile. There is nothing to accept."));
  const audit::Finding was = std::exchange(finding_, *found);
  said_->setText(QString::fromStdString(finding_.text));
  return (finding_.text == was.text && audit::acceptedFigure(finding_) == audit::acceptedFigure(was)) ||
         refuse(tr("It is found otherwise by now: read it above, and accept it if it may stand like that."));
}

}  // namespace stopwalk::panels
