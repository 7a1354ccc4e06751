#include "app/plan/tools/scale_tool.h"

#include "app/edits/scale_underlay.h"
#include "app/plan/guides.h"

namespace stopwalk::plan {

void ScaleTool::pressed(const PointerEvent& event) {
  if (ends_.size() == 2) return;
  ends_.push_back(event.at);
  if (ends_.size() == 2)
    fields_ = {{tr("True distance"), Field::Kind::Length, geometry::distance(ends_[0], ends_[1])}};
  host.fieldsChanged();
  host.repaint();
}

void ScaleTool::moved(const PointerEvent& event) {
  pointer_ = event.at;
  host.repaint();
}

void ScaleTool::paintOver(QPainter& painter) const {
  if (ends_.empty()) return;
  paintDraft(painter, host.view(), host.theme(), {ends_[0], ends_.size() > 1 ? ends_[1] : pointer_}, false);
}

QString ScaleTool::prompt() const {
  if (!host.layout().underlay) return tr("There is no underlay picture yet: choose one in the gallery.");
  if (ends_.empty()) return tr("Click one end of a length that you know on the picture.");
  if (ends_.size() == 1) return tr("Click its other end.");
  return tr("Type its true length, then Enter.");
}

void ScaleTool::setField(std::size_t field, double value) {
  fields_[field].value = value;
  fields_[field].typed = true;
}

void ScaleTool::accept() {
  if (ends_.size() < 2 || fields_[0].value <= 0 || !host.layout().underlay) return;
  const double true_mm = fields_[0].value;
  if (host.commit(edits::scaleUnderlay(host.layout(), ends_[0], ends_[1], true_mm))) host.finished();
}

bool ScaleTool::cancel() {
  const bool something = !ends_.empty();
  ends_.clear();
  fields_.clear();
  host.fieldsChanged();
  host.repaint();
  return something;
}

}  // namespace stopwalk::plan
