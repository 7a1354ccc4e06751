#pragma once

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <QSize>
#include <memory>
#include <optional>
#include <vector>

#include "app/plan/items/item.h"
#include "app/plan/legend_corner.h"
#include "app/plan/reach_floor.h"
#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/audit/reach.h"

namespace stopwalk::plan {

// How the plan is seen on the screen.
struct AsSeen {
  ViewTransform view;
  Theme theme;
  QSize size;                // of the view, pixels
  double device_pixels = 1;  // to one of those
  bool operator==(const AsSeen&) const = default;
};

// A reach map as it lies on the floors: each room and doorway coloured between its own samples, so that no
// colour comes through a wall; contour lines with their lengths; a legend. Striped where only a narrow way
// leads, crossed where none does.
class ReachLayer {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::plan::ReachLayer)

 public:
  // `top_mm`: where the colour scale ends; none: where topOf() says.
  ReachLayer(std::shared_ptr<const audit::Reach> reach, const layout::Layout& layout,
             std::optional<double> top_mm = std::nullopt);

  const std::shared_ptr<const audit::Reach>& reach() const { return reach_; }
  // What the map shows: "Walk to the phone, metres".
  QString title() const { return title_; }
  // Where the colours of a map alone end: a round length that is at least its longest walk.
  static double topOf(const audit::Reach& reach);
  // The end of the colour scale.
  double top_mm() const { return top_mm_; }

  // Paints what paint() takes as long as the plan is seen so. On any one thread, before others have the map.
  void paintAhead(const AsSeen& seen);
  bool isPaintedFor(const AsSeen& seen) const { return ahead_ && ahead_->seen == seen; }
  // On the floors; pale unless it is of the layout shown.
  void paint(QPainter& painter, const AsSeen& seen, bool is_current) const;
  // The lengths of the contour lines, each with places along its line.
  std::vector<Label> labels(const ViewTransform& view) const;
  // What the legend says: the title, then all the rest, wrapped.
  QStringList legendLines(bool is_current) const;
  // The place in `visible` where the legend hides least of the marks, then of the floors, whether it is
  // current or not; and its box in one.
  LegendPlace legendPlace(const ViewTransform& view, const QRectF& visible,
                          std::vector<QRectF> marks = {}) const;
  QRectF legendBox(LegendPlace place, const QRectF& visible, bool is_current) const;
  void paintLegend(QPainter& painter, const Theme& theme, const QRectF& box, bool is_current) const;

 private:
  struct Spacing {
    int lines = 1, labels = 1;  // each how many multiples
  };
  Spacing spacing(const ViewTransform& view) const;
  QSizeF legendSize(bool is_current) const;
  QImage imageOf(const ReachFloor& floor, const Theme& theme) const;
  void paintScale(QPainter& painter, const Theme& theme, const QRectF& swatches) const;
  void paintFloors(QPainter& painter, const ViewTransform& view, const Theme& theme) const;
  void paintContours(QPainter& painter, const ViewTransform& view, const Theme& theme) const;
  QString lengthText(double mm) const;
  bool feet() const;
  double unit_mm() const;
  QString titleOf(const layout::Layout& layout) const;

  std::shared_ptr<const audit::Reach> reach_;
  std::vector<ReachFloor> floors_;
  QString title_;
  double top_mm_ = 0;
  bool beyond_ = false;                   // whether some walks are longer than the scale
  bool narrow_ = false, no_way_ = false;  // whether there are such samples
  mutable std::vector<QImage> images_;    // of the floors, in the theme last painted
  mutable bool images_dark_ = false;
  struct Ahead {
    AsSeen seen;
    QImage picture;
  };
  std::optional<Ahead> ahead_;
};

}  // namespace stopwalk::plan
