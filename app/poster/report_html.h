#pragma once

#include <QDate>
#include <QImage>
#include <QString>
#include <optional>
#include <string>

#include "app/poster/shop.h"
#include "core/audit/report.h"
#include "core/files/report_json.h"

namespace stopwalk::poster {

// What the report for an insurer or a safety office is made from.
struct ReportMatter {
  const Shop& shop;
  const layout::DeviceKinds& kinds;
  const audit::Profile& profile;
  const audit::Report& report;
  std::string file;                           // the layout's name on the disk
  std::optional<files::RecordsUsed> records;  // of inspections, that the report takes into account
  QDate today;                                // on which accepted findings have ended or not
};

// The whole report as one page of HTML that needs no other file: the summary, the plan with every walk,
// machines, stops, stations, findings with their basis, what was accepted, tape checks, rules, identity,
// caution. English. `plan_src` is where the plan's picture is, such as a data: address.
QString reportHtml(const ReportMatter& matter, const QString& plan_src);

// The whole layout with each station's state and its walks to the stop and to the phone.
QImage planWithWalks(const ReportMatter& matter);

// The same report on paper, A4 or Letter: tables repeat their heads, page x of y on each.
QByteArray reportPdf(const ReportMatter& matter, const Paper& paper, const QString& family, QString& why);

}  // namespace stopwalk::poster
