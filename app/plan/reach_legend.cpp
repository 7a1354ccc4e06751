// What the colours of a reach map mean.
#include <algorithm>
#include <utility>

#include "app/plan/legend_corner.h"
#include "app/plan/reach_layer.h"
#include "app/plan/text.h"
#include "core/audit/wording.h"
#include "core/floor/walks.h"

namespace stopwalk::plan {
namespace {

constexpr int kSwatches = 5;
constexpr double kSwatch_px = 36, kLegend_px = 260, kMargin_px = kLegendMargin_px;
constexpr int kScale_rows = 2;

double rowOf(const QFontMetricsF& metrics) {
  return metrics.height() + 4;
}

}  // namespace

QStringList ReachLayer::legendLines(bool is_current) const {
  const QString gap =
      QString::fromStdString(audit::lengthText(2 * floor::kMeasuringClearance_mm / 1000, reach_->unit));
  QStringList said;
  if (!is_current) said << tr("Of a moment ago: what changed since is not in it.");
  if (reach_->devices == 0)
    said << (reach_->target.what == audit::ReachTarget::What::MachineStop
                 ? tr("There is no stop of this machine to walk to, or none that works.")
                 : tr("There is none in this layout, or none that works."));
  else if (reach_->blocked == reach_->devices)
    said << tr("None can be walked to: something stands before it.");
  if (narrow_) said << tr("Striped: only through a gap under %1; not measured.").arg(gap);
  if (no_way_ && reach_->blocked < reach_->devices) said << tr("Crossed: no way.");
  const QFontMetricsF metrics{labelFont()};
  QStringList lines{wrapped(title_, kLegend_px, metrics)};
  if (!said.isEmpty()) lines << wrapped(said.join(' '), kLegend_px, metrics);
  return lines;
}

QSizeF ReachLayer::legendSize(bool is_current) const {
  const QFontMetricsF metrics{labelFont()};
  const QSizeF text = textSize(legendLines(is_current).join('\n'), metrics);
  return {std::max(text.width(), kLegend_px) + 2 * kMargin_px,
          text.height() + kScale_rows * rowOf(metrics) + 2 * kMargin_px};
}

LegendPlace ReachLayer::legendPlace(const ViewTransform& view, const QRectF& visible,
                                    std::vector<QRectF> marks) const {
  KeptInSight kept{std::move(marks), {}};
  for (const ReachFloor& floor : floors_)
    kept.grounds.push_back(view.toPixels(geometry::boxOf(floor.outline)));
  return freestPlace(legendSize(false), visible, kept);
}

QRectF ReachLayer::legendBox(LegendPlace place, const QRectF& visible, bool is_current) const {
  return boxIn(place, legendSize(is_current), visible);
}

void ReachLayer::paintLegend(QPainter& painter, const Theme& theme, const QRectF& box,
                             bool is_current) const {
  painter.save();
  painter.setFont(labelFont());
  const QFontMetricsF metrics(painter.font());
  painter.setPen(QPen(theme.quiet_ink, 1));
  painter.setBrush(theme.floor);
  painter.drawRect(box);
  const double row = rowOf(metrics);
  QPointF at = box.topLeft() + QPointF(kMargin_px, kMargin_px);
  const auto write = [&](const QString& lines) {
    const double high = textSize(lines, metrics).height();
    painter.setPen(theme.ink);
    painter.drawText(QRectF(at, QSizeF(box.width(), high)), Qt::AlignLeft | Qt::AlignVCenter, lines);
    at.ry() += high;
  };
  QStringList lines = legendLines(is_current);
  write(lines.takeFirst());
  paintScale(painter, theme, QRectF(at, QSizeF(kSwatches * kSwatch_px, row)));
  at.ry() += kScale_rows * row;
  for (const QString& line : lines) write(line);
  painter.restore();
}

// Swatches, and under their edges the lengths.
void ReachLayer::paintScale(QPainter& painter, const Theme& theme, const QRectF& swatches) const {
  const double unit = unit_mm();
  for (int i = 0; i < kSwatches; ++i) {
    painter.setPen(QPen(theme.quiet_ink, 1));
    painter.setBrush(theme.reachAt((i + 0.5) / kSwatches));
    painter.drawRect(
        QRectF(swatches.left() + i * kSwatch_px, swatches.top() + 2, kSwatch_px, swatches.height() - 4));
  }
  painter.setPen(theme.ink);
  for (int i = 0; i <= kSwatches; ++i) {
    const QRectF under(swatches.left() + i * kSwatch_px, swatches.bottom(), kSwatch_px, swatches.height());
    painter.drawText(
        i == 0 ? under : under.translated(-kSwatch_px / 2, 0), i == 0 ? Qt::AlignLeft : Qt::AlignHCenter,
        (i == kSwatches && beyond_ ? tr("%1+") : QStringLiteral("%1")).arg(top_mm_ / unit * i / kSwatches));
  }
}

}  // namespace stopwalk::plan
