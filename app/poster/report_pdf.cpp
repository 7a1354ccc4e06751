#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextTable>
#include <cmath>

#include "app/plan/picture.h"
#include "app/plan/view_transform.h"
#include "app/poster/colours.h"
#include "app/poster/pdf_language.h"
#include "app/poster/report_html.h"

namespace stopwalk::poster {
namespace {

constexpr int kDpi = 600;
constexpr double kEdge_mm = 16;
constexpr double kFoot_mm = 8;

// Pixels of the plan as it is on a screen; painted more finely.
constexpr double kPlanWidth = 800, kFiner = 3;

plan::StationState stateOf(audit::Verdict verdict) {
  switch (verdict) {
    case audit::Verdict::Fails:
      return plan::StationState::Fails;
    case audit::Verdict::Warns:
      return plan::StationState::Warns;
    case audit::Verdict::Meets:
      break;
  }
  return plan::StationState::Meets;
}

void paintWalk(QPainter& painter, const plan::ViewTransform& view, const audit::Nearest& nearest, QPen pen) {
  QPolygonF line;
  for (const geometry::Point& p : nearest.path_m) line << view.toPixels(1000 * p);
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(line);
}

// The heads are marked as such by hand: not every version takes <thead> for one.
void repeatHeads(QTextFrame* frame) {
  for (QTextFrame* child : frame->childFrames()) {
    if (auto* table = qobject_cast<QTextTable*>(child)) {
      QTextTableFormat format = table->format();
      format.setHeaderRowCount(1);
      format.setBorderCollapse(true);
      table->setFormat(format);
    }
    repeatHeads(child);
  }
}

}  // namespace

QImage planWithWalks(const ReportMatter& matter) {
  const plan::Picture picture(matter.shop.layout(), matter.kinds);
  const geometry::Box& box = picture.bounds();
  const double high = kPlanWidth * (box.high.y - box.low.y) / std::max(box.high.x - box.low.x, 1.0);
  const QSizeF size(kPlanWidth, std::clamp(high + 60, 200.0, 1100.0));
  plan::ViewTransform view;
  view.fit(box, size, 30);
  std::map<std::string, plan::StationState> states;
  for (const audit::StationReport& s : matter.report.stations) states[s.id] = stateOf(s.verdict);

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
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  const QString title = "Stop audit: " + QString::fromStdString(matter.shop.layout().site.name);
  writer.setTitle(title);
  writer.setCreator("Stopwalk");
  writer.setResolution(kDpi);
  writer.setPageLayout(
      QPageLayout(QPageSize(paper.size(false), QPageSize::Millimeter, QString(), QPageSize::ExactMatch),
                  QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
  const double per_mm = kDpi / 25.4;
  const QSizeF body((paper.width_mm - 2 * kEdge_mm) * per_mm,
                    (paper.height_mm - 2 * kEdge_mm - kFoot_mm) * per_mm);

  QTextDocument document;
  document.documentLayout()->setPaintDevice(&writer);
  document.setDefaultFont(QFont(family, 9));
  document.addResource(QTextDocument::ImageResource, QUrl("plan"), planWithWalks(matter));
  document.setHtml(reportHtml(matter, "plan"));
  document.setDocumentMargin(0);
  repeatHeads(document.rootFrame());
  document.setPageSize(body);

  QPainter painter;
  if (!painter.begin(&writer)) {
    why = "the PDF cannot be begun";
    return {};
  }
  const int pages = document.pageCount();
  for (int page = 0; page < pages; ++page) {
    if (page > 0) writer.newPage();
    painter.save();
    painter.translate(kEdge_mm * per_mm, kEdge_mm * per_mm - page * body.height());
    const QRectF shown(0, page * body.height(), body.width(), body.height());
    painter.setClipRect(shown);
    QAbstractTextDocumentLayout::PaintContext context;
    context.clip = shown;
    context.palette.setColor(QPalette::Text, inks().ink);
    document.documentLayout()->draw(&painter, context);
    painter.restore();
    painter.setFont(QFont(family, 8));
    painter.setPen(inks().quiet_ink);
    const QRectF foot(kEdge_mm * per_mm, (paper.height_mm - kEdge_mm - kFoot_mm / 2) * per_mm, body.width(),
                      kFoot_mm * per_mm);
    painter.drawText(
        foot, Qt::AlignLeft | Qt::AlignTop,
        title + ", layout " + QString::fromStdString(matter.shop.about().sha256.substr(0, kShortHash)));
    painter.drawText(foot, Qt::AlignRight | Qt::AlignTop,
                     QStringLiteral("page %1 of %2").arg(page + 1).arg(pages));
  }
  painter.end();
  return withLanguage(buffer.data(), "en", "Checks a drawing against chosen rules; certifies nothing", why);
}

}  // namespace stopwalk::poster
