#include "app/poster/html_parts.h"

#include "core/audit/accepted.h"
#include "core/audit/counted.h"
#include "core/audit/wording.h"

namespace stopwalk::poster {
namespace {

// Paper has its own margins and letters.
constexpr const char* kOnScreen =
    "body{font-family:sans-serif;font-size:10pt;color:#1F2328;max-width:60em;margin:2em auto;padding:0 "
    "1em}";
constexpr const char* kStyle =
    "h1{font-size:18pt}h2{font-size:13pt}table{border-collapse:collapse;width:100%}"
    "th{background-color:#E0E6EC;text-align:left}td,th{padding:3px;vertical-align:top}"
    ".caution{border:2px solid #9B2423;padding:6px}img{max-width:100%}";

}  // namespace

QString escaped(const std::string& text) {
  return QString::fromStdString(text).toHtmlEscaped();
}

QString htmlPage(const QString& title, const QString& body, bool on_screen) {
  return "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>" + title +
         "</title><style>" + kStyle + (on_screen ? kOnScreen : "") + "</style></head><body><h1>" + title +
         "</h1>" + body + "</body></html>";
}

QString cautionHtml(const QString& what) {
  return "<p class=\"caution\"><b>Caution.</b> " + what +
         " Local codes, the machine's maker, the authority having jurisdiction and licensed people come "
         "first. "
         "Never rely on a stop as a guard. Test a stop only as the maker and the shop's procedure say, with "
         "the "
         "work clear. Anyone may press any stop.</p>";
}

QString acceptanceHtml(const audit::Finding& finding, inspection::Date today, layout::LengthUnit unit) {
  if (finding.unclear) return "<i>" + escaped(audit::withCapital(audit::unclearText(finding))) + "</i>";
  if (!finding.accepted) return {};
  const bool holds = audit::acceptedState(finding, today) == audit::AcceptedState::Yes;
  const QString text = escaped(audit::withCapital(audit::acceptedText(finding, today, unit)));
  return holds ? "<i>" + text + "</i>" : "<b>" + text + "</b>";
}

QString countsHtml(const audit::Report& r) {
  const auto findings = [&](audit::Severity severity) {
    return std::to_string(r.count(severity)) + " " + std::string(audit::word(severity));
  };
  const auto stations = [&](audit::Verdict verdict) { return audit::counted(r.count(verdict), verdict); };
  const std::string untold = audit::untoldText(r);
  return escaped(audit::counted(r.machines, "machine") + ", " + audit::counted(r.stations.size(), "station") +
                 ", " + audit::counted(r.devices, "device") + ". Of the stations " +
                 stations(audit::Verdict::Fails) + ", " + stations(audit::Verdict::Warns) + ", " +
                 stations(audit::Verdict::Meets) + " the chosen rules.") +
         (untold.empty() ? QString() : " <b>" + escaped(untold) + ".</b>") +
         escaped(" Findings: " + findings(audit::Severity::Fail) + ", " + findings(audit::Severity::Warn) +
                 ", " + findings(audit::Severity::Note));
}

QString HtmlTable::html(const QString& if_empty) const {
  const QString title = "<h2>" + title_ + "</h2>";
  if (rows_.isEmpty()) return title + "<p>" + if_empty + "</p>";
  QString head;
  for (qsizetype i = 0; i < head_.size(); ++i)
    head +=
        (widths_.empty() ? QString("<th>")
                         : QStringLiteral("<th width=\"%1%\">").arg(widths_[static_cast<std::size_t>(i)])) +
        head_[i] + "</th>";
  return title + "<table border=\"1\" cellspacing=\"0\" cellpadding=\"3\" width=\"100%\"><thead><tr>" + head +
         "</tr></thead><tbody>" + rows_.join("\n") + "</tbody></table>";
}

}  // namespace stopwalk::poster
