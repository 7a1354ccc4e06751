#include "app/plan/tools/tape_tool.h"

#include "app/edits/add_things.h"
#include "app/plan/pointing.h"

namespace stopwalk::plan {
namespace {

bool canBeTapedTo(edits::ThingKind kind) {
  using enum edits::ThingKind;
  return kind == Station || kind == MachineDevice || kind == WallDevice || kind == Phone;
}

}  // namespace

TapeTool::TapeTool(ToolHost& tool_host) : Tool(tool_host) {}

std::string TapeTool::endAt(const PointerEvent& event) const {
  const Item* item = host.picture().itemAt(event.at, host.view().mmPerPixel(), kHit_px);
  return item && canBeTapedTo(item->thing.kind) ? item->id : "";
}

void TapeTool::pressed(const PointerEvent& event) {
  const std::string end = endAt(event);
  if (end.empty() || end == from_) return;
  if (from_.empty()) {
    from_ = end;
  } else {
    to_ = end;
    fields_ = {{tr("Taped length")}};
  }
  host.fieldsChanged();
  host.repaint();
}

void TapeTool::moved(const PointerEvent& event) {
  pointer_ = event.pixel;
  host.repaint();
}

void TapeTool::paintOver(QPainter& painter) const {
  const auto pixelOf = [&](const std::string& id) -> std::optional<QPointF> {
    const auto thing = edits::findThing(host.layout(), id);
    const auto at = thing ? edits::placeOf(host.layout(), *thing) : std::nullopt;
    return at ? std::optional(host.view().toPixels(*at)) : std::nullopt;
  };
  const auto from = pixelOf(from_);
  if (!from) return;
  painter.setPen(QPen(host.theme().selection, 1.5, Qt::DashLine));
  painter.drawLine(*from, pixelOf(to_).value_or(pointer_));
}

QString TapeTool::prompt() const {
  if (from_.empty()) return tr("Click the station, stop or phone where the tape began.");
  if (to_.empty()) return tr("Click the station, stop or phone where the tape ended.");
  return tr("Type the length that was read from the tape along the way on the floor, then Enter.");
}

void TapeTool::setField(std::size_t field, double value) {
  fields_[field].value = value;
  fields_[field].typed = true;
}

void TapeTool::accept() {
  if (to_.empty() || fields_.empty() || fields_[0].value <= 0) return;
  add(edits::addTapeCheck(host.layout(), from_, to_, fields_[0].value));
}

bool TapeTool::cancel() {
  const bool something = !from_.empty();
  from_.clear();
  to_.clear();
  fields_.clear();
  host.fieldsChanged();
  host.repaint();
  return something;
}

}  // namespace stopwalk::plan
