#include "app/plan/tools/note_tool.h"

#include "app/edits/add_things.h"
#include "app/plan/pointing.h"

namespace stopwalk::plan {

NoteTool::NoteTool(ToolHost& tool_host) : Tool(tool_host), fields_{{tr("X")}, {tr("Y")}} {}

void NoteTool::pressed(const PointerEvent& event) {
  pressed_at_ = event.pixel;
  moved(event);
  text_at_ = {fields_[0].value, fields_[1].value};
}

void NoteTool::moved(const PointerEvent& event) {
  if (text_at_) {
    const bool dragged = (event.pixel - pressed_at_).manhattanLength() > kDrag_px;
    points_to_ = dragged ? std::optional(event.at) : std::nullopt;
  } else {
    if (!fields_[0].typed) fields_[0].value = event.at.x;
    if (!fields_[1].typed) fields_[1].value = event.at.y;
    host.fieldsChanged();
  }
  host.repaint();
}

void NoteTool::released(const PointerEvent& event) {
  if (!text_at_) return;
  moved(event);
  accept();
}

void NoteTool::paintOver(QPainter& painter) const {
  if (!text_at_ || !points_to_) return;
  painter.setPen(QPen(host.theme().selection, 1.5));
  painter.drawLine(host.view().toPixels(*text_at_), host.view().toPixels(*points_to_));
}

QString NoteTool::prompt() const {
  return tr("Click where the note goes; drag from there to what it points to.");
}

void NoteTool::setField(std::size_t field, double value) {
  fields_[field].value = value;
  fields_[field].typed = true;
  host.fieldsChanged();
}

void NoteTool::accept() {
  const geometry::Point at = text_at_.value_or(geometry::Point{fields_[0].value, fields_[1].value});
  add(edits::addNote(host.layout(), tr("Note").toStdString(), at, points_to_));
}

bool NoteTool::cancel() {
  const bool something = text_at_.has_value();
  text_at_.reset();
  points_to_.reset();
  host.repaint();
  return something;
}

}  // namespace stopwalk::plan
