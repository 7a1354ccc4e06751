#include "app/plan/reach_layer.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/plan/text.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {
namespace {

constexpr int kPieces = 4;  // of the picture to a step between samples
constexpr double kFoot_mm = 304.8;
constexpr double kPale = 0.4;
constexpr double kLinesApart_px = 14, kLabelsApart_px = 44;
constexpr int kSwatches = 5;

// The first of 1, 2, 5, 10 ... at which lines so many pixels apart are `apart` or more.
int everySoMany(double pixels, double apart) {
  for (int ten = 1;; ten *= 10)
    for (const int n : {ten, 2 * ten, 5 * ten})
      if (n * pixels >= apart || n >= 100000) return n;
}

}  // namespace

ReachLayer::ReachLayer(std::shared_ptr<const audit::Reach> reach, const layout::Layout& layout)
    : reach_(std::move(reach)), title_(titleOf(layout)) {
  const double unit = feet() ? kFoot_mm : 1000;
  const double longest = reach_->map.longest_mm().value_or(0) / unit;
  double top = 5;
  while (top < longest) top += top < 20 ? 5 : top < 100 ? 10 : 50;
  top_mm_ = top * unit;
  for (int row = 0; row < reach_->map.rows(); ++row)
    for (int column = 0; column < reach_->map.columns(); ++column) {
      narrow_ = narrow_ || reach_->map.state(column, row) == floor::Sampled::OnlyNarrow;
      no_way_ = no_way_ || reach_->map.state(column, row) == floor::Sampled::NoWay;
    }
  for (const layout::Room& room : layout.rooms)
    if (room.outline.size() > 2) floors_.push_back(floorOf(room.outline));
}

bool ReachLayer::feet() const {
  return reach_->unit == layout::LengthUnit::Foot || reach_->unit == layout::LengthUnit::Inch;
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
  const std::string& name =
      machine == layout.machines.end() || machine->name.empty() ? reach_->target.machine : machine->name;
  return tr("Walk to the stop of %1, %2").arg(QString::fromStdString(name), unit);
}

// Between the room's own samples lengths are interpolated; beyond the last of them the nearest goes on.
ReachLayer::Floor ReachLayer::floorOf(const geometry::Polygon& outline) const {
  const floor::ReachMap& map = reach_->map;
  Floor out{outline, {}, 0, 0, {}, {}};
  const geometry::Box box = geometry::boxOf(outline);
  if (map.columns() == 0 || map.rows() == 0) return out;
  const auto cell = [&](double v, double low) {
    return static_cast<int>(std::floor((v - low) / map.step_mm()));
  };
  const geometry::Point low = map.at(0, 0);
  const int first_column = cell(box.low.x, low.x), columns = cell(box.high.x, low.x) + 2 - first_column;
  const int first_row = cell(box.low.y, low.y), rows = cell(box.high.y, low.y) + 2 - first_row;
  std::vector<Kind> kinds(static_cast<std::size_t>(columns) * rows, Nothing);
  std::vector<double> lengths(kinds.size(), 0);
  const auto at = [&](int c, int r) { return static_cast<std::size_t>(r) * columns + c; };
  const geometry::IndexedPolygon room(outline);
  for (int r = 0; r < rows; ++r)
    for (int c = 0; c < columns; ++c) {
      const int mc = first_column + c, mr = first_row + r;
      if (mc < 0 || mr < 0 || mc >= map.columns() || mr >= map.rows() || !room.holds(map.at(mc, mr)))
        continue;
      const floor::Sampled state = map.state(mc, mr);
      if (state == floor::Sampled::OffFloor) continue;
      kinds[at(c, r)] = state == floor::Sampled::Walk         ? Walk
                        : state == floor::Sampled::OnlyNarrow ? Narrow
                                                              : NoWay;
      lengths[at(c, r)] = map.length_mm(mc, mr).value_or(0);
    }
  // Twice outwards: a sample off the floor takes the mean of its neighbours.
  for (int ring = 0; ring < 2; ++ring) {
    const std::vector<Kind> known = kinds;
    for (int r = 0; r < rows; ++r)
      for (int c = 0; c < columns; ++c) {
        if (known[at(c, r)] != Nothing) continue;
        double sum = 0;
        int walks = 0;
        for (int y = std::max(0, r - 1); y <= std::min(rows - 1, r + 1); ++y)
          for (int x = std::max(0, c - 1); x <= std::min(columns - 1, c + 1); ++x) {
            const Kind kind = known[at(x, y)];
            if (kind == Walk) sum += lengths[at(x, y)], ++walks;
            if (kind != Nothing && kinds[at(c, r)] != Walk) kinds[at(c, r)] = kind;
          }
        if (walks > 0) lengths[at(c, r)] = sum / walks;
      }
  }
  out.columns = (columns - 1) * kPieces;
  out.rows = (rows - 1) * kPieces;
  out.box.low = low + map.step_mm() * geometry::Point{double(first_column), double(first_row)};
  out.box.high = out.box.low + map.step_mm() * geometry::Point{columns - 1.0, rows - 1.0};
  for (int j = 0; j < out.rows; ++j)
    for (int i = 0; i < out.columns; ++i) {
      const int c = i / kPieces, r = j / kPieces;
      const double x = (i % kPieces + 0.5) / kPieces, y = (j % kPieces + 0.5) / kPieces;
      std::array<double, 4> weight_of{};  // by kind
      double length = 0;
      for (const auto& [dc, dr, weight] : {std::tuple{0, 0, (1 - x) * (1 - y)}, std::tuple{1, 0, x * (1 - y)},
                                           std::tuple{0, 1, (1 - x) * y}, std::tuple{1, 1, x * y}}) {
        const Kind kind = kinds[at(c + dc, r + dr)];
        if (kind != Nothing) weight_of[kind] += weight;
        if (kind == Walk) length += weight * lengths[at(c + dc, r + dr)];
      }
      const auto most = std::max_element(weight_of.begin() + 1, weight_of.end());
      out.kinds.push_back(*most > 0 ? static_cast<Kind>(most - weight_of.begin()) : Nothing);
      out.lengths.push_back(static_cast<float>(weight_of[Walk] > 0 ? length / weight_of[Walk] : 0));
    }
  return out;
}

QImage ReachLayer::imageOf(const Floor& floor, const Theme& theme) const {
  QImage image(std::max(floor.columns, 1), std::max(floor.rows, 1), QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  for (int j = 0; j < floor.rows; ++j)
    for (int i = 0; i < floor.columns; ++i) {
      const std::size_t at = static_cast<std::size_t>(j) * floor.columns + i;
      const bool stripe = floor.kinds[at] == Narrow ? (i + j) % 6 < 3 : i % 6 == 0 || j % 6 == 0;
      QColor colour = theme.reachAt(floor.lengths[at] / top_mm_);
      if (floor.kinds[at] == Nothing) continue;
      if (floor.kinds[at] != Walk) colour = stripe ? theme.hatch : theme.reach_none;
      image.setPixelColor(i, floor.rows - 1 - j, colour);
    }
  return image;
}

void ReachLayer::paint(QPainter& painter, const ViewTransform& view, const Theme& theme,
                       bool is_current) const {
  if (images_.empty() || images_dark_ != theme.dark) {
    images_.clear();
    for (const Floor& floor : floors_) images_.push_back(imageOf(floor, theme));
    images_dark_ = theme.dark;
  }
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  if (!is_current) painter.setOpacity(kPale);
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
  const double value = mm / (feet() ? kFoot_mm : 1000);
  return (feet() ? tr("%1 ft") : tr("%1 m")).arg(std::lround(value));
}

void ReachLayer::paintContours(QPainter& painter, const ViewTransform& view, const Theme& theme) const {
  const double apart = reach_->contour_mm * view.pixelsPerMm();
  const int lines = everySoMany(apart, kLinesApart_px), labels = everySoMany(apart, kLabelsApart_px);
  painter.setFont(labelFont());
  const QFontMetricsF metrics(painter.font());
  for (const floor::Contour& contour : reach_->contours) {
    if (contour.multiple % lines != 0) continue;
    QPolygonF line;
    for (const geometry::Point p : contour.line) line << view.toPixels(p);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.quiet_ink, contour.multiple % 5 == 0 ? 1.6 : 0.8));
    painter.drawPolyline(line);
    const QRectF extent = line.boundingRect();
    if (contour.multiple % labels != 0 || extent.width() + extent.height() < kLabelsApart_px) continue;
    const QString text = lengthText(contour.multiple * reach_->contour_mm);
    QRectF box(QPointF(), textSize(text, metrics) + QSizeF(4, 0));
    box.moveCenter(view.toPixels(floor::midwayOf(contour.line).at));
    painter.fillRect(box, theme.label_ground);
    painter.setPen(theme.ink);
    paintText(painter, box, text);
  }
}

void ReachLayer::paintLegend(QPainter& painter, const Theme& theme, const QRectF& visible,
                             bool is_current) const {
  constexpr double kSwatch_px = 36, kMargin_px = 8;
  painter.save();
  painter.setFont(labelFont());
  const QFontMetricsF metrics(painter.font());
  QStringList lines{title_};
  if (!is_current) lines << tr("Of the layout before; the new one is being computed.");
  if (reach_->devices == 0)
    lines << tr("There is none in this layout.");
  else if (reach_->blocked == reach_->devices)
    lines << tr("None can be walked to: something stands before it.");
  if (narrow_) lines << tr("Striped: only through a gap under 610 mm; not measured.");
  if (no_way_ && reach_->blocked < reach_->devices) lines << tr("Crossed: no way.");
  double width = kSwatches * kSwatch_px + kSwatch_px;
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  const double row = metrics.height() + 4;
  QRectF box(0, 0, width + 2 * kMargin_px, row * (static_cast<double>(lines.size()) + 2) + 2 * kMargin_px);
  box.moveTopRight(visible.topRight() + QPointF(-kMargin_px, kMargin_px));
  QColor ground = theme.floor;
  painter.setPen(QPen(theme.quiet_ink, 1));
  painter.setBrush(ground);
  painter.drawRect(box);
  QPointF at = box.topLeft() + QPointF(kMargin_px, kMargin_px);
  const auto write = [&](const QString& line) {
    painter.setPen(theme.ink);
    painter.drawText(QRectF(at, QSizeF(width, row)), Qt::AlignLeft | Qt::AlignVCenter, line);
    at.ry() += row;
  };
  write(lines.takeFirst());
  for (int i = 0; i < kSwatches; ++i) {
    const QRectF swatch(at + QPointF(i * kSwatch_px, 2), QSizeF(kSwatch_px, row - 4));
    painter.setPen(QPen(theme.quiet_ink, 1));
    painter.setBrush(theme.reachAt((i + 0.5) / kSwatches));
    painter.drawRect(swatch);
  }
  at.ry() += row;
  painter.setPen(theme.ink);
  const double unit = feet() ? kFoot_mm : 1000;
  for (int i = 0; i <= kSwatches; ++i)
    painter.drawText(QRectF(at + QPointF(i * kSwatch_px, 0), QSizeF(kSwatch_px, row)), Qt::AlignLeft,
                     QString::number(top_mm_ / unit * i / kSwatches));
  at.ry() += row;
  for (const QString& line : lines) write(line);
  painter.restore();
}

}  // namespace stopwalk::plan
