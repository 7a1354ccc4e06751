#include "app/plan/tools/outline_tool.h"

#include <QKeyEvent>
#include <cmath>

#include "app/edits/add_things.h"
#include "app/plan/guides.h"
#include "app/plan/pointing.h"
#include "app/plan/tools/placing.h"
#include "app/plan/walls.h"

namespace stopwalk::plan {
namespace {

constexpr double kSquare_deg = 3;  // a side so near to a right direction is pulled into it

// `at` seen from `from` brought into a direction of whole 90 degrees, if it is near one.
geometry::Point squared(geometry::Point from, geometry::Point at) {
  const double deg = degreesOf(at - from), right = std::round(deg / 90) * 90;
  if (std::abs(deg - right) > kSquare_deg) return at;
  return from + geometry::distance(from, at) * geometry::direction(right);
}

}  // namespace

OutlineTool::OutlineTool(ToolHost& tool_host) : Tool(tool_host), targets_(tool_host.layout(), {}) {
  nameFields();
}

void OutlineTool::nameFields() {
  if (corners_.empty())
    fields_ = {{tr("X")}, {tr("Y")}};
  else
    fields_ = {{tr("Length")}, {tr("Direction"), Field::Kind::Angle}};
  host.fieldsChanged();
}

geometry::Point OutlineTool::next() const {
  if (corners_.empty()) return {fields_[First].value, fields_[Second].value};
  return corners_.back() + fields_[First].value * geometry::direction(fields_[Second].value);
}

void OutlineTool::follow(const PointerEvent& event) {
  geometry::Point at = event.at;
  guides_.clear();
  if (event.snaps()) {
    if (!corners_.empty()) at = squared(corners_.back(), at);
    Snap snap = targets_.pull({at}, kSnap_px * host.view().mmPerPixel(), kGrid_mm);
    at = at + snap.by;
    guides_ = std::move(snap.guides);
  }
  const geometry::Point d = corners_.empty() ? at : at - corners_.back();
  const double values[] = {corners_.empty() ? d.x : geometry::length(d),
                           corners_.empty() ? d.y : degreesOf(d)};
  for (const Number i : {First, Second})
    if (!fields_[i].typed) fields_[i].value = values[i];
  host.fieldsChanged();
  host.repaint();
}

bool OutlineTool::closes(geometry::Point at) const {
  return corners_.size() >= 3 &&
         geometry::distance(at, corners_.front()) <= kHandleReach_px * host.view().mmPerPixel();
}

void OutlineTool::pressed(const PointerEvent& event) {
  follow(event);
  if (closes(event.at)) return close();
  addCorner();
}

void OutlineTool::moved(const PointerEvent& event) {
  follow(event);
}

bool OutlineTool::key(QKeyEvent& event) {
  if (event.key() != Qt::Key_Backspace || corners_.empty()) return false;
  corners_.pop_back();
  nameFields();
  host.repaint();
  return true;
}

void OutlineTool::paintOver(QPainter& painter) const {
  paintGuides(painter, host.view(), host.theme(), guides_);
  if (corners_.empty()) return;
  geometry::Polygon draft = corners_;
  draft.push_back(next());
  paintDraft(painter, host.view(), host.theme(), draft, false);
  paintLength(painter, host.view(), host.theme(), {corners_.back(), draft.back()}, host.layout().unit);
}

QString OutlineTool::prompt() const {
  if (corners_.empty()) return tr("Click the room's first corner, or type its place.");
  if (corners_.size() < 3)
    return tr("Click the next corner, or type length, Tab, direction, Enter. Backspace takes one back.");
  return tr(
      "Click the next corner; click the first one, or press Enter without a number, to close the room.");
}

void OutlineTool::setField(std::size_t field, double value) {
  fields_[field].value = value;
  fields_[field].typed = true;
  host.fieldsChanged();
  host.repaint();
}

// With a typed number the next corner; with none the room is done.
void OutlineTool::accept() {
  const bool typed = fields_[First].typed || fields_[Second].typed;
  corners_.empty() || typed ? addCorner() : close();
}

void OutlineTool::addCorner() {
  const geometry::Point at = next();
  if (!corners_.empty() && geometry::distance(corners_.back(), at) < 1) return;
  corners_.push_back(at);
  nameFields();
  if (corners_.size() > 1) {
    // Until the pointer moves there is no next side.
    fields_[First].value = 0;
    fields_[Second].value = degreesOf(at - corners_[corners_.size() - 2]);
    host.fieldsChanged();
  }
  host.repaint();
}

void OutlineTool::close() {
  if (corners_.size() < 3) return;
  add(edits::addRoom(host.layout(), corners_, roomName(host.layout())));
}

bool OutlineTool::cancel() {
  const bool something = !corners_.empty();
  corners_.clear();
  guides_.clear();
  nameFields();
  host.repaint();
  return something;
}

}  // namespace stopwalk::plan
