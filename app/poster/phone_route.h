#pragma once

#include <functional>
#include <optional>

#include "app/poster/plan_frame.h"
#include "app/poster/plan_names.h"

namespace stopwalk::poster {

// The way to the phone as it is drawn on the plan of a room: to a little beyond where it leaves the room.
class PhoneRoute {
 public:
  // `room` is its outline on the page, closed.
  PhoneRoute(const std::vector<geometry::Point>& path, const PlanFrame& frame, const QPolygonF& room);

  bool empty() const { return pieces_.empty(); }
  const std::vector<QLineF>& pieces() const { return pieces_; }
  // What of it is drawn outside the room.
  const std::optional<QLineF>& outside() const { return outside_; }
  QPointF end() const { return pieces_.back().p2(); }

  // Dashed, with an arrow at its end.
  std::vector<Mark> marks() const;
  // Words beside it, from its middle on, where they may stand; nothing: nowhere.
  std::optional<NameBlock> beside(NameBlock words, const std::function<bool(const QRectF&)>& may_stand) const;

 private:
  struct Spot {
    QPointF at, along;  // the unit vector of the way there
  };
  Spot spotAt(double part) const;

  std::vector<QLineF> pieces_;
  std::optional<QLineF> outside_;
};

}  // namespace stopwalk::poster
