#include "app/poster/paint_page.h"

#include <QPainter>
#include <QPen>

#include "app/plan/theme.h"
#include "app/poster/lettering.h"

namespace stopwalk::poster {
namespace {

constexpr double kUnits = Lettering::kUnitsPerMm;

QPen penOf(const Shape& shape) {
  if (shape.width <= 0) return Qt::NoPen;
  QPen pen(shape.line, shape.width * kUnits, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
  if (!shape.dash.empty()) {
    QList<qreal> pattern;  // in widths of the line
    for (const double mm : shape.dash) pattern << mm / shape.width;
    pen.setDashPattern(pattern);
  }
  return pen;
}

class Paint {
 public:
  Paint(QPainter& painter, const QString& family) : painter_(painter), letters_(family) {}

  void operator()(const Shape& shape) const {
    painter_.setPen(penOf(shape));
    painter_.setBrush(shape.fill.alpha() == 0 ? QBrush(Qt::NoBrush) : QBrush(shape.fill));
    painter_.drawPath(QTransform::fromScale(kUnits, kUnits).map(shape.path));
  }

  void operator()(const Text& text) const {
    painter_.setFont(letters_.font(text.cap, text.bold));
    painter_.setPen(text.colour);
    painter_.drawText(text.at * kUnits, text.text);
  }

  void operator()(const Sign& sign) const {
    const QRectF square(sign.square.topLeft() * kUnits, sign.square.size() * kUnits);
    plan::paintSymbolVectors(painter_, square, sign.symbol, sign.ground, plan::Theme::light());
  }

 private:
  QPainter& painter_;
  Lettering letters_;
};

}  // namespace

void paintPage(QPainter& painter, const Page& page, const QString& family, double per_mm) {
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(per_mm / kUnits, per_mm / kUnits);
  const Paint paint(painter, family);
  for (const Mark& mark : page.marks) std::visit(paint, mark);
  painter.restore();
}

}  // namespace stopwalk::poster
