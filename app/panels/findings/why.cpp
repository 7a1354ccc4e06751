#include "app/panels/findings/why.h"

#include "app/panels/findings/let_stand.h"
#include "core/audit/accepted.h"
#include "core/audit/rule.h"
#include "core/audit/wording.h"

namespace stopwalk::panels {
namespace {

QString escaped(const std::string& text) {
  return QString::fromStdString(text).toHtmlEscaped();
}

std::string limitOf(double limit, const std::string& unit, layout::LengthUnit lengths) {
  if (unit == "m") return audit::limitText(limit, lengths);
  if (unit == "s") return audit::limitSecondsText(limit);
  return audit::decimal(limit) + (unit.empty() ? "" : " " + unit);
}

// With so many digits that it is told from the limit.
std::string measuredOf(const audit::Finding& finding, layout::LengthUnit lengths) {
  const double measured = *finding.measured;
  return audit::figureText(measured, finding.limit.value_or(measured), finding.unit, lengths);
}

// As fine as it must be to be told from what was measured.
std::string limitBesideMeasured(const audit::Finding& finding, layout::LengthUnit lengths) {
  return finding.unit == "m" && finding.measured
             ? audit::limitText(*finding.limit, *finding.measured, lengths)
             : limitOf(*finding.limit, finding.unit, lengths);
}

}  // namespace

Why::Why(QWidget* parent) : QTextBrowser(parent) {
  setAccessibleName(tr("Why this is a finding"));
  setOpenLinks(false);
  setTabChangesFocus(true);
  show(nullptr, layout::LengthUnit::Millimetre);
}

void Why::show(const audit::Finding* finding, layout::LengthUnit unit) {
  if (!finding) {
    setHtml("<p>" + tr("Pick a finding: its rule, limit, basis and what would mend it stand here.") + "</p>");
    return;
  }
  QString html = "<p><b>" + escaped(finding->text) + "</b></p>";
  const auto line = [&](const QString& name, const QString& text) {
    if (!text.isEmpty()) html += "<p><i>" + name + "</i> " + text + "</p>";
  };
  if (finding->measured) line(tr("Measured:"), escaped(measuredOf(*finding, unit)));
  if (finding->limit) line(tr("Limit:"), escaped(limitBesideMeasured(*finding, unit)));
  const audit::Rule* rule = audit::findRule(finding->rule);
  if (rule) line(tr("To mend it:"), escaped(rule->mend));
  line(tr("Rule:"), escaped(finding->rule) + (rule ? ", " + escaped(rule->finds) + "." : QString()));
  if (rule) line(tr("What it means:"), escaped(rule->meaning));
  if (finding->accepted) {
    const QString why_not = whyNoLonger(*finding, QDate::currentDate(), unit).toHtmlEscaped();
    line(why_not.isEmpty() ? tr("Accepted:") : tr("No longer accepted, %1:").arg(why_not),
         tr("by %1 until %2: %3")
             .arg(escaped(finding->accepted->by), escaped(finding->accepted->until),
                  escaped(finding->accepted->reason)));
  }
  if (finding->unclear)
    line(tr("Not accepted:"),
         tr("what %1 accepts until %2 may be this finding or another of this rule about %3. To mean this "
            "one, the layout must say %4: accept it here, and it does.")
             .arg(escaped(finding->unclear->by), escaped(finding->unclear->until), escaped(finding->subject),
                  escaped(audit::whichLine(*finding))));
  line(tr("Basis:"), escaped(audit::basisText(finding->basis)));
  setHtml(html);
}

void Why::showIdle(const layout::AcceptedFinding& idle, layout::LengthUnit unit) {
  const QDate today = QDate::currentDate();
  setHtml("<p><b>" + idleText(idle, today).toHtmlEscaped() + "</b></p><p>" +
          comeBackText(idle, today, unit).toHtmlEscaped() + "</p>");
}

}  // namespace stopwalk::panels
