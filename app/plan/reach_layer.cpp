#include "app/plan/reach_layer.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/plan/items/drawing.h"
#include "core/geometry/segment.h"
#include "core/layout/names.h"

namespace stopwalk::plan {
namespace {

constexpr double kFoot_mm = 304.8;
constexpr double kPale = 0.4;
constexpr double kLinesApart_px = 14, kLabelsApart_px = 44;
constexpr int kShades = 1024;    // of the colour scale, on an image; each colour is opaque
constexpr int kImportance = 20;  // below the names

bool inFeet(const audit::Reach& reach) {
  return reach.unit == layout::LengthUnit::Foot || reach.unit == layout::LengthUnit::Inch;
}

double unitOf(const audit::Reach& reach) {
  return inFeet(reach) ? kFoot_mm : 1000;
}

// The first of 1, 2, 5, 10 ... at which lines so many pixels apart are `apart` or more.
int everySoMany(double pixels, double apart) {
  for (int ten = 1;; ten *= 10)
    for (const int n : {ten, 2 * ten, 5 * ten})
      if (n * pixels >= apart || n >= 100000) return n;
}

// The doorway and as much of the rooms on both sides as must hold samples.
geometry::Polygon reachedThrough(const floor::Passage& passage, double step_mm) {
  const auto [a, b] = passage.first;
  const auto [c, d] = passage.second;
  const geometry::Point over = 0.5 * (c + d) - 0.5 * (a + b);
  if (geometry::length(over) <= geometry::kTouch_mm) return outlineOf(passage);
  const geometry::Point out = 1.5 * step_mm * geometry::unit(over);
  return {a - out, b - out, d + out, c + out};
}

}  // namespace

ReachLayer::ReachLayer(std::shared_ptr<const audit::Reach> reach, const layout::Layout& layout,
                       std::optional<double> top_mm)
    : reach_(std::move(reach)), title_(titleOf(layout)) {
  top_mm_ = top_mm.value_or(topOf(*reach_));
  beyond_ = reach_->map.longest_mm().value_or(0) > top_mm_;
  for (int row = 0; row < reach_->map.rows(); ++row)
    for (int column = 0; column < reach_->map.columns(); ++column) {
      narrow_ = narrow_ || reach_->map.state(column, row) == floor::Sampled::OnlyNarrow;
      no_way_ = no_way_ || reach_->map.state(column, row) == floor::Sampled::NoWay;
    }
  for (const layout::Room& room : layout.rooms)
    if (room.outline.size() > 2) floors_.push_back(reachFloor(reach_->map, room.outline, room.outline));
  for (const floor::Passage& passage : reach_->passages)
    if (geometry::distance(passage.first.a, passage.second.a) > geometry::kTouch_mm ||
        geometry::distance(passage.first.b, passage.second.b) > geometry::kTouch_mm)
      floors_.push_back(
          reachFloor(reach_->map, outlineOf(passage), reachedThrough(passage, reach_->map.step_mm())));
}

double ReachLayer::topOf(const audit::Reach& reach) {
  const double unit = unitOf(reach);
  const double longest = reach.map.longest_mm().value_or(0) / unit;
  double top = 5;
  while (top < longest) top += top < 20 ? 5 : top < 100 ? 10 : 50;
  return top * unit;
}

bool ReachLayer::feet() const {
  return inFeet(*reach_);
}

double ReachLayer::unit_mm() const {
  return unitOf(*reach_);
}

QString ReachLayer::titleOf(const layout::Layout& layout) const {
  using What = audit::ReachTarget::What;
  const QString unit = feet() ? tr("feet") : tr("metres");
  switch (reach_->target.what) {
    case What::Phone:
      return tr("Walk to the phone, %1").arg(unit);
    case What::AnyStop:
      return tr("Walk to any stop, %1").arg(unit);
    case What::CutOff:
      return tr("Walk to a cut-off, %1").arg(unit);
    case What::MachineStop:
      break;
  }
  const auto machine = std::ranges::find(layout.machines, reach_->target.machine, &layout::Machine::id);
  const std::string name = machine == layout.machines.end()
                               ? reach_->target.machine
                               : layout::NamesApart(layout.machines).of(*machine);
  return tr("Walk to the stop of %1, %2").arg(QString::fromStdString(name), unit);
}

QImage ReachLayer::imageOf(const ReachFloor& floor, const Theme& theme) const {
  std::array<QRgb, kShades + 1> shades;
  for (int i = 0; i <= kShades; ++i) shades[i] = theme.reachAt(double(i) / kShades).rgba();
  const QRgb line = theme.hatch.rgba(), ground = theme.reach_none.rgba();
  QImage image(std::max(floor.columns, 1), std::max(floor.rows, 1), QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  for (int j = 0; j < floor.rows; ++j) {
    auto* pixels = reinterpret_cast<QRgb*>(image.scanLine(floor.rows - 1 - j));
    for (int i = 0; i < floor.columns; ++i) {
      const std::size_t at = static_cast<std::size_t>(j) * floor.columns + i;
      const ReachFloor::Kind kind = floor.kinds[at];
      if (kind == ReachFloor::Nothing) continue;
      const bool on_line = kind == ReachFloor::Narrow ? (i + j) % 6 < 3 : i % 6 == 0 || j % 6 == 0;
      const double part = std::clamp(floor.lengths[at] / top_mm_, 0.0, 1.0);
      pixels[i] = on_line ? line : ground;
      if (kind == ReachFloor::Walk) pixels[i] = shades[std::lround(kShades * part)];
    }
  }
  return image;
}

void ReachLayer::paintAhead(const AsSeen& seen) {
  QImage picture(seen.size * seen.device_pixels, QImage::Format_ARGB32_Premultiplied);
  if (picture.isNull()) return;  // no view, or no memory for it
  picture.setDevicePixelRatio(seen.device_pixels);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  paintFloors(painter, seen.view, seen.theme);
  painter.end();
  ahead_ = Ahead{seen, std::move(picture)};
}

void ReachLayer::paint(QPainter& painter, const AsSeen& seen, bool is_current) const {
  painter.save();
  if (!is_current) painter.setOpacity(kPale);
  if (isPaintedFor(seen))
    painter.drawImage(QPointF(), ahead_->picture);
  else
    paintFloors(painter, seen.view, seen.theme);
  painter.restore();
}

void ReachLayer::paintFloors(QPainter& painter, const ViewTransform& view, const Theme& theme) const {
  if (images_.empty() || images_dark_ != theme.dark) {
    images_.clear();
    for (const ReachFloor& floor : floors_) images_.push_back(imageOf(floor, theme));
    images_dark_ = theme.dark;
  }
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  for (std::size_t i = 0; i < floors_.size(); ++i) {
    if (floors_[i].columns == 0) continue;
    QPolygonF outline;
    for (const geometry::Point p : floors_[i].outline) outline << view.toPixels(p);
    QPainterPath path;
    path.addPolygon(outline);
    painter.save();
    painter.setClipPath(path, Qt::IntersectClip);
    painter.drawImage(view.toPixels(floors_[i].box), images_[i]);
    painter.restore();
  }
  paintContours(painter, view, theme);
  painter.restore();
}

QString ReachLayer::lengthText(double mm) const {
  const double value = mm / unit_mm();
  return (feet() ? tr("%1 ft") : tr("%1 m")).arg(std::lround(value));
}

ReachLayer::Spacing ReachLayer::spacing(const ViewTransform& view) const {
  const double apart = reach_->contour_mm * view.pixelsPerMm();
  return {everySoMany(apart, kLinesApart_px), everySoMany(apart, kLabelsApart_px)};
}

void ReachLayer::paintContours(QPainter& painter, const ViewTransform& view, const Theme& theme) const {
  const int lines = spacing(view).lines;
  painter.setBrush(Qt::NoBrush);
  for (const floor::Contour& contour : reach_->contours) {
    if (contour.multiple % lines != 0) continue;
    painter.setPen(QPen(theme.quiet_ink, contour.multiple % 5 == 0 ? 1.6 : 0.8));
    painter.drawPolyline(onScreen(contour.line, view));
  }
}

std::vector<Label> ReachLayer::labels(const ViewTransform& view) const {
  std::vector<Label> labels;
  const int every = spacing(view).labels;
  for (const floor::Contour& contour : reach_->contours) {
    if (contour.multiple % every != 0) continue;
    const QPolygonF line = onScreen(contour.line, view);
    const QRectF extent = line.boundingRect();
    if (extent.width() + extent.height() < kLabelsApart_px) continue;
    Label label{lengthText(contour.multiple * reach_->contour_mm), {}, kImportance};
    for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9})
      label.middles.push_back(placeAlong(line, part));
    labels.push_back(std::move(label));
  }
  return labels;
}

}  // namespace stopwalk::plan
