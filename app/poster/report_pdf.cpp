#include <QPainter>
#include <cmath>
#include <map>
#include <string>

#include "app/plan/day.h"
#include "app/plan/picture.h"
#include "app/plan/station_states.h"
#include "app/plan/view_transform.h"
#include "app/poster/colours.h"
#include "app/poster/paged_text.h"
#include "app/poster/report_html.h"

namespace stopwalk::poster {
namespace {

// Pixels of the plan as it is on a screen; painted more finely.
constexpr double kPlanWidth = 800, kFiner = 3;

void paintWalk(QPainter& painter, const plan::ViewTransform& view, const audit::Nearest& nearest, QPen pen) {
  QPolygonF line;
  for (const geometry::Point& p : nearest.path_m) line << view.toPixels(1000 * p);
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(line);
}

}  // namespace

QImage planWithWalks(const ReportMatter& matter) {
  const plan::Picture picture(matter.shop.layout(), matter.kinds);
  const geometry::Box& box = picture.bounds();
  const double high = kPlanWidth * (box.high.y - box.low.y) / std::max(box.high.x - box.low.x, 1.0);
  const QSizeF size(kPlanWidth, std::clamp(high + 60, 200.0, 1100.0));
  plan::ViewTransform view;
  view.fit(box, size, 30);
  const auto in_order = plan::statesOf(matter.report, plan::dateOf(matter.today));
  std::map<std::string, plan::StationState> states;
  for (std::size_t i = 0; i < in_order.size(); ++i) states[matter.report.stations[i].id] = in_order[i];

  QImage image((size * kFiner).toSize(), QImage::Format_RGB32);
  image.setDevicePixelRatio(kFiner);
  image.fill(kPaperWhite);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  picture.paint(painter, view, inks(), QRectF(QPointF(), size),
                {[](const std::string&) { return false; }, "", &states});
  for (const audit::StationReport& s : matter.report.stations) {
    paintWalk(painter, view, s.phone, QPen(inks().selection, 1, Qt::DashLine));
    paintWalk(painter, view, s.stop, QPen(inks().ink, 1.4));
  }
  return image;
}

QByteArray reportPdf(const ReportMatter& matter, const Paper& paper, const QString& family, QString& why) {
  const QString title = "Stop audit: " + QString::fromStdString(matter.shop.layout().site.name);
  return pagedPdf(
      {title,
       "Checks a drawing against chosen rules; certifies nothing",
       reportHtml(matter, "plan"),
       {{"plan", planWithWalks(matter)}},
       title + ", layout " + QString::fromStdString(matter.shop.about().sha256.substr(0, kShortHash))},
      paper, family, why);
}

}  // namespace stopwalk::poster
