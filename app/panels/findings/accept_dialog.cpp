#include "app/panels/findings/accept_dialog.h"

#include <QDate>

#include "app/edits/accept_finding.h"

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

AcceptDialog::AcceptDialog(const Desk& desk, audit::Finding finding, audit::SharedList<audit::Finding> all,
                           QWidget* parent)
    : FormDialog(desk, tr("Accept this finding"), tr("Accept"), parent),
      finding_(std::move(finding)),
      all_(std::move(all)) {
  say(QString::fromStdString(finding_.text));
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
  return desk().edited.apply(edits::acceptFinding(desk().edited.layout(), finding_, all_,
                                                  {reason_->value(), by_->value(), until_->value()}));
}

}  // namespace stopwalk::panels
