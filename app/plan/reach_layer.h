#pragma once

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <memory>
#include <vector>

#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/audit/reach.h"

namespace stopwalk::plan {

// A reach map as it lies on the floors: each room coloured between its own samples, so that no colour comes
// through a wall; contour lines with their lengths; a legend. Striped where only a narrow way leads, crossed
// where none does.
class ReachLayer {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::plan::ReachLayer)

 public:
  ReachLayer(std::shared_ptr<const audit::Reach> reach, const layout::Layout& layout);

  const std::shared_ptr<const audit::Reach>& reach() const { return reach_; }
  // What the map shows: "Walk to the phone, metres".
  QString title() const { return title_; }
  // The end of the colour scale: a round length that is at least the longest walk.
  double top_mm() const { return top_mm_; }

  // On the floors; pale unless it is of the layout shown.
  void paint(QPainter& painter, const ViewTransform& view, const Theme& theme, bool is_current) const;
  // In the upper right corner of `visible`.
  void paintLegend(QPainter& painter, const Theme& theme, const QRectF& visible, bool is_current) const;

 private:
  enum Kind : signed char { Nothing, Walk, Narrow, NoWay };
  // What lies between the samples of a room, kPieces to a step each way; lengths in mm.
  struct Floor {
    geometry::Polygon outline;
    geometry::Box box;
    int columns = 0, rows = 0;
    std::vector<Kind> kinds;
    std::vector<float> lengths;
  };
  Floor floorOf(const geometry::Polygon& outline) const;
  QImage imageOf(const Floor& floor, const Theme& theme) const;
  void paintContours(QPainter& painter, const ViewTransform& view, const Theme& theme) const;
  QString lengthText(double mm) const;
  bool feet() const;
  QString titleOf(const layout::Layout& layout) const;

  std::shared_ptr<const audit::Reach> reach_;
  std::vector<Floor> floors_;
  QString title_;
  double top_mm_ = 0;
  bool narrow_ = false, no_way_ = false;  // whether there are such samples
  mutable std::vector<QImage> images_;    // of the floors, in the theme last painted
  mutable bool images_dark_ = false;
};

}  // namespace stopwalk::plan
