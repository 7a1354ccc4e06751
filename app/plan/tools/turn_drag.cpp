#include <cmath>

#include "app/edits/move_things.h"
#include "app/plan/tools/drag.h"
#include "app/plan/walls.h"

namespace stopwalk::plan {
namespace {

constexpr double kStep_deg = 15;
constexpr double kFine_deg = 0.1;

class TurnDrag : public Drag {
 public:
  TurnDrag(ToolHost& tool_host, std::string id) : Drag(tool_host), id_(std::move(id)) {
    const layout::Layout& layout = tool_host.layout();
    const edits::Thing thing = *edits::findThing(layout, id_);
    at_ = *edits::placeOf(layout, thing);
    turn_ = thing.kind == edits::ThingKind::Machine ? layout.machines[thing.index].turn
                                                    : layout.fixtures[thing.index].turn;
    now_ = turn_;
  }

  void moved(const PointerEvent& event) override {
    const geometry::Point d = event.at - at_;
    if (d == geometry::Point{}) return;
    const double deg = degreesOf(d) - 90;  // the handle stands behind the thing
    const double step = event.snaps() ? kStep_deg : kFine_deg;
    now_ = std::fmod(std::round(deg / step) * step + 720, 360);
    host.preview(edit().after);
  }

  std::optional<edits::Edit> finished() override { return edit(); }
  QString tag() const override { return QString::number(now_, 'g', 6) + QChar(0x00B0); }

 private:
  edits::Edit edit() const { return edits::turnThings(host.layout(), {id_}, now_ - turn_, at_); }

  const std::string id_;
  geometry::Point at_;
  double turn_ = 0;
  double now_ = 0;
};

}  // namespace

std::unique_ptr<Drag> turnDrag(ToolHost& host, const std::string& id) {
  return std::make_unique<TurnDrag>(host, id);
}

}  // namespace stopwalk::plan
