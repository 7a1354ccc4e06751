#include "app/edits/move_things.h"
#include "app/plan/guides.h"
#include "app/plan/pointing.h"
#include "app/plan/tools/drag.h"
#include "app/plan/words.h"
#include "core/layout/units.h"

namespace stopwalk::plan {
namespace {

// What a selected thing is pulled by: its own outline, wherever it was grabbed.
std::vector<geometry::Point> referencesOf(const layout::Layout& layout, const std::string& id) {
  const auto thing = edits::findThing(layout, id);
  if (!thing) return {};
  switch (thing->kind) {
    case edits::ThingKind::Machine: {
      const auto& m = layout.machines[thing->index];
      return plan::referencesOf(m.footprint, m.at, m.turn);
    }
    case edits::ThingKind::Fixture: {
      const auto& f = layout.fixtures[thing->index];
      return plan::referencesOf(f.footprint, f.at, f.turn);
    }
    case edits::ThingKind::Room:
      return layout.rooms[thing->index].outline;
    default: {
      const auto at = edits::placeOf(layout, *thing);
      return at ? std::vector{*at} : std::vector<geometry::Point>{};
    }
  }
}

class MoveDrag : public Drag {
 public:
  MoveDrag(ToolHost& tool_host, const PointerEvent& start)
      : Drag(tool_host),
        ids_(tool_host.selection().ids()),
        start_(start.at),
        references_(referencesOf(tool_host.layout(), ids_.back())),
        targets_(tool_host.layout(), ids_) {}

  void moved(const PointerEvent& event) override {
    by_ = event.at - start_;
    guides_.clear();
    if (event.snaps() && !references_.empty()) {
      std::vector<geometry::Point> there = references_;
      for (geometry::Point& p : there) p = p + by_;
      Snap snap = targets_.pull(there, kSnap_px * host.view().mmPerPixel(), kGrid_mm);
      by_ = by_ + snap.by;
      guides_ = std::move(snap.guides);
    }
    host.preview(edits::moveThings(host.layout(), ids_, by_).after);
  }

  std::optional<edits::Edit> finished() override { return edits::moveThings(host.layout(), ids_, by_); }

  void paintOver(QPainter& painter) const override {
    paintGuides(painter, host.view(), host.theme(), guides_);
  }

  QString tag() const override {
    const auto text = [&](double mm) {
      return QString::fromStdString(layout::formatLength(mm, host.layout().unit));
    };
    return Words::tr("moved %1 across, %2 up").arg(text(by_.x), text(by_.y));
  }

 private:
  const std::vector<std::string> ids_;
  const geometry::Point start_;
  const std::vector<geometry::Point> references_;
  const SnapTargets targets_;
  geometry::Point by_;
  std::vector<geometry::Segment> guides_;
};

}  // namespace

std::unique_ptr<Drag> moveDrag(ToolHost& host, const PointerEvent& start) {
  return std::make_unique<MoveDrag>(host, start);
}

}  // namespace stopwalk::plan
