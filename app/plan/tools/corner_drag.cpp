#include "app/edits/room_corners.h"
#include "app/plan/guides.h"
#include "app/plan/pointing.h"
#include "app/plan/tools/drag.h"
#include "core/geometry/polygon.h"

namespace stopwalk::plan {
namespace {

// A corner, or both corners of a side, moved together.
class CornerDrag : public Drag {
 public:
  CornerDrag(ToolHost& tool_host, std::string room, std::vector<geometry::Point> corners,
             geometry::Point start)
      : Drag(tool_host),
        room_(std::move(room)),
        corners_(std::move(corners)),
        start_(start),
        targets_(tool_host.layout(), {room_}) {}

  void moved(const PointerEvent& event) override {
    by_ = along(event.at - start_);
    guides_.clear();
    if (event.snaps()) {
      std::vector<geometry::Point> there = corners_;
      for (geometry::Point& p : there) p = p + by_;
      Snap snap = targets_.pull(there, kSnap_px * host.view().mmPerPixel(), kGrid_mm);
      by_ = by_ + along(snap.by);
      guides_ = std::move(snap.guides);
    }
    host.preview(edit().after);
  }

  std::optional<edits::Edit> finished() override { return edit(); }

  void paintOver(QPainter& painter) const override {
    paintGuides(painter, host.view(), host.theme(), guides_);
  }

 protected:
  virtual geometry::Point along(geometry::Point by) const { return by; }
  virtual edits::Edit edit() const = 0;

  const std::string room_;
  const std::vector<geometry::Point> corners_;
  const geometry::Point start_;
  const SnapTargets targets_;
  geometry::Point by_;
  std::vector<geometry::Segment> guides_;
};

class OneCorner : public CornerDrag {
 public:
  OneCorner(ToolHost& tool_host, std::string room, std::size_t corner, geometry::Point at)
      : CornerDrag(tool_host, std::move(room), {at}, at), corner_(corner) {}

 private:
  edits::Edit edit() const override {
    return edits::moveCorner(host.layout(), room_, corner_, corners_[0] + by_);
  }
  const std::size_t corner_;
};

// A side keeps its direction: it moves only across itself.
class WholeSide : public CornerDrag {
 public:
  WholeSide(ToolHost& tool_host, std::string room, std::size_t side, geometry::Segment where,
            geometry::Point start)
      : CornerDrag(tool_host, std::move(room), {where.a, where.b}, start),
        side_(side),
        across_(geometry::unit(geometry::leftOf(where.b - where.a))) {}

 private:
  geometry::Point along(geometry::Point by) const override { return geometry::dot(by, across_) * across_; }
  edits::Edit edit() const override { return edits::moveWall(host.layout(), room_, side_, by_); }
  const std::size_t side_;
  const geometry::Point across_;
};

const geometry::Polygon& outlineOf(ToolHost& host, const std::string& room) {
  return host.layout().rooms[edits::findThing(host.layout(), room)->index].outline;
}

}  // namespace

std::unique_ptr<Drag> cornerDrag(ToolHost& host, const std::string& room, std::size_t corner) {
  return std::make_unique<OneCorner>(host, room, corner, outlineOf(host, room)[corner]);
}

std::unique_ptr<Drag> sideDrag(ToolHost& host, const std::string& room, std::size_t side,
                               const PointerEvent& start) {
  return std::make_unique<WholeSide>(host, room, side, geometry::edgeOf(outlineOf(host, room), side),
                                     start.at);
}

}  // namespace stopwalk::plan
