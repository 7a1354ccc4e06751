#pragma once

#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <optional>
#include <vector>

// Where the signs of a plan stand: on the spot where they can, else beside it at the end of a leader line.
// Plain geometry in mm of paper.
namespace stopwalk::poster {

struct CallOut {
  QPointF anchor;  // the thing's true place
  QSizeF size;     // of the box that tells of it
};

struct CallOutArea {
  QRectF all;                // every box lies within
  QRectF room;               // the drawing; between it and `all` there is a ring for boxes
  std::vector<QRectF> kept;  // neither covered nor crossed, but by a leader from within it
  struct Dear {
    QRectF box;
    double cost;  // of covering it whole
  };
  std::vector<Dear> dear;  // better not covered
};

struct PlacedCallOut {
  QRectF box;
  QLineF leader;  // from the anchor to the box; null: the box lies over the anchor
  bool led() const { return !leader.isNull(); }
};

// Boxes overlap no box and cover no other's anchor; leaders cross no leader, no box, no kept box, and pass by
// every other anchor (so far as anchors are apart at all). Nothing: no such placing was found. The same input
// gives the same answer.
std::optional<std::vector<PlacedCallOut>> placeCallOuts(const std::vector<CallOut>& call_outs,
                                                        const CallOutArea& area);

// What of those promises a placing breaks, for the first that does; empty: nothing.
QString troubleOf(const std::vector<CallOut>& call_outs, const CallOutArea& area,
                  const std::vector<PlacedCallOut>& placed);

}  // namespace stopwalk::poster
