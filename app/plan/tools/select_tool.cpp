#include "app/plan/tools/select_tool.h"

#include <QKeyEvent>

#include "app/edits/move_things.h"
#include "app/edits/room_corners.h"
#include "app/plan/guides.h"
#include "app/plan/pointing.h"

namespace stopwalk::plan {
namespace {

constexpr double kNudge_mm = 10;
constexpr double kNudgeFar_mm = 100;

bool hangs(edits::ThingKind kind) {
  using enum edits::ThingKind;
  return kind == Door || kind == MachineDevice || kind == WallDevice || kind == Phone;
}

}  // namespace

std::vector<Handle> SelectTool::handles() const {
  const auto& ids = host.selection().ids();
  return ids.size() == 1 ? handlesOf(host, ids.front()) : std::vector<Handle>{};
}

const Item* SelectTool::itemAt(const PointerEvent& event) const {
  return host.picture().itemAt(event.at, host.view().mmPerPixel(), kHit_px);
}

void SelectTool::pressed(const PointerEvent& event) {
  start_ = event;
  grip_ = handleAt(handles(), event.pixel);
  pressed_id_.clear();
  if (grip_) return;
  const Item* item = itemAt(event);
  // A room is picked by a click, but a frame can be drawn on its floor.
  if (!item) {
    if (!event.adds()) host.selection().clear();
    return;
  }
  pressed_id_ = item->id;
  was_selected_ = host.selection().contains(pressed_id_);
  if (event.adds())
    host.selection().toggle(pressed_id_);
  else if (!was_selected_ && item->thing.kind != edits::ThingKind::Room)
    host.selection().set(pressed_id_);
}

std::unique_ptr<Drag> SelectTool::dragFrom(const PointerEvent& start) const {
  if (grip_) {
    switch (grip_->kind) {
      case Handle::Kind::Turn:
        return turnDrag(host, grip_->id);
      case Handle::Kind::Pointer:
        return pointDrag(host, grip_->id);
      case Handle::Kind::Corner:
        return cornerDrag(host, grip_->id, grip_->part);
      case Handle::Kind::Side:
        return sideDrag(host, grip_->id, grip_->part, start);
    }
  }
  if (pressed_id_.empty() || !host.selection().contains(pressed_id_)) return frameDrag(host, start);
  const auto thing = edits::findThing(host.layout(), pressed_id_);
  if (!thing) return nullptr;
  if (host.selection().ids().size() == 1 && hangs(thing->kind)) return hangDrag(host, pressed_id_, start);
  return moveDrag(host, start);
}

void SelectTool::moved(const PointerEvent& event) {
  pointer_ = event.pixel;
  if (!start_) return;
  if (!drag_) {
    if ((event.pixel - start_->pixel).manhattanLength() < kDrag_px) return;
    drag_ = dragFrom(*start_);
  }
  if (drag_) drag_->moved(event);
}

void SelectTool::released(const PointerEvent& event) {
  if (!start_) return;
  start_.reset();
  if (drag_) {
    if (event.pixel != pointer_) drag_->moved(event);  // else what is shown is what is put down
    const auto drag = std::move(drag_);
    if (auto edit = drag->finished()) {
      edit->merge_key.clear();  // each drag is a step of its own
      host.commit(std::move(*edit));
    }
    host.preview(std::nullopt);
    host.repaint();
  } else if (!pressed_id_.empty() && !event.adds()) {
    host.selection().set(pressed_id_);
  }
}

// On a room's side: a new corner there.
void SelectTool::doubleClicked(const PointerEvent& event) {
  const auto handle = handleAt(handles(), event.pixel);
  if (!handle) return;
  if (handle->kind == Handle::Kind::Side)
    host.commit(edits::addCorner(host.layout(), handle->id, handle->part, host.view().toPlan(handle->at)));
  if (handle->kind == Handle::Kind::Corner)
    host.commit(edits::removeCorner(host.layout(), handle->id, handle->part));
}

void SelectTool::nudge(geometry::Point by) {
  edits::Edit edit = edits::moveThings(host.layout(), host.selection().ids(), by);
  edit.merge_key = "nudge";
  for (const std::string& id : host.selection().ids()) edit.merge_key += " " + QString::fromStdString(id);
  host.commit(std::move(edit));
}

bool SelectTool::key(QKeyEvent& event) {
  if (host.selection().empty() || event.modifiers() & (Qt::ControlModifier | Qt::MetaModifier)) return false;
  const double far = event.modifiers() & Qt::ShiftModifier ? kNudgeFar_mm : kNudge_mm;
  switch (event.key()) {
    case Qt::Key_Left:
      nudge({-far, 0});
      return true;
    case Qt::Key_Right:
      nudge({far, 0});
      return true;
    case Qt::Key_Up:
      nudge({0, far});
      return true;
    case Qt::Key_Down:
      nudge({0, -far});
      return true;
    default:
      return false;
  }
}

void SelectTool::paintOver(QPainter& painter) const {
  if (!drag_) return paintHandles(painter, host, handles());
  drag_->paintOver(painter);
  paintTagAtPointer(painter, host.theme(), pointer_, drag_->tag());
}

QString SelectTool::prompt() const {
  if (drag_ && !drag_->prompt().isEmpty()) return drag_->prompt();
  if (drag_)
    return tr(
        "Release to put it there; Escape leaves it where it was; Alt keeps it from being pulled to guides.");
  if (host.layout().rooms.empty()) return tr("Draw a first room: its numbers, or Draw, Room.");
  if (host.selection().empty()) return tr("Click a thing to pick it, or drag a frame round several.");
  return tr("Drag it, nudge it with the arrow keys, or type its numbers at the right.");
}

bool SelectTool::cancel() {
  if (drag_) {
    letGo();
    host.preview(std::nullopt);
    return true;
  }
  const bool something = !host.selection().empty();
  host.selection().clear();
  return something;
}

// Undone or removed with the button down: what was dragged is where it was, or nowhere.
void SelectTool::layoutChanged() {
  letGo();
}

void SelectTool::letGo() {
  drag_.reset();
  start_.reset();
  grip_.reset();
}

}  // namespace stopwalk::plan
