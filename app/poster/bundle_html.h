#pragma once

#include <QString>

#include "app/poster/report_html.h"
#include "core/files/inspection_log.h"
#include "core/inspection/bundle.h"

namespace stopwalk::poster {

// What an insurer is given of a period: the records, and the audit of the plan as it is now.
struct BundleMatter {
  const ReportMatter& report;  // whose `records` say which log it is
  const inspection::Bundle& bundle;
  const files::InspectionLog& log;
};

// As one page of HTML: what the layout is, its audit in short, the plan, the records' head and what it
// proves, the rounds and checks of the period with what corrects what, what is failed and still to be done,
// caution. English. Machine, date, people and inspector stand with every check. `plan_src` is where the
// plan's picture is.
QString bundleHtml(const BundleMatter& matter, const QString& plan_src);

// The same on paper, with the picture of the plan (planWithWalks).
QByteArray bundlePdf(const BundleMatter& matter, const QImage& plan, const Paper& paper,
                     const QString& family, QString& why);

}  // namespace stopwalk::poster
