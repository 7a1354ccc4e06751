#include <algorithm>

#include "app/plan/tools/drag.h"
#include "app/plan/words.h"

namespace stopwalk::plan {
namespace {

class FrameDrag : public Drag {
 public:
  FrameDrag(ToolHost& tool_host, const PointerEvent& start)
      : Drag(tool_host), from_(start.pixel), to_(start.pixel) {
    if (start.adds()) before_ = tool_host.selection().ids();
  }

  void moved(const PointerEvent& event) override {
    to_ = event.pixel;
    std::vector<std::string> ids = before_;
    for (const Item* item : host.picture().itemsWithin(host.view().toPlan(QRectF(from_, to_).normalized())))
      if (picks(*item) && std::ranges::find(ids, item->id) == ids.end()) ids.push_back(item->id);
    host.selection().set(ids);
    host.repaint();
  }

  std::optional<edits::Edit> finished() override { return std::nullopt; }

  QString prompt() const override { return Words::tr("Release to pick what lies in the frame."); }

  void paintOver(QPainter& painter) const override {
    QColor fill = host.theme().selection;
    fill.setAlphaF(0.1f);
    painter.setPen(QPen(host.theme().selection, 1, Qt::DashLine));
    painter.setBrush(fill);
    painter.drawRect(QRectF(from_, to_).normalized());
  }

 private:
  // What is on a machine goes with the machine.
  static bool picks(const Item& item) {
    using enum edits::ThingKind;
    return item.thing.kind != Station && item.thing.kind != MachineDevice && item.thing.kind != Underlay;
  }

  const QPointF from_;
  QPointF to_;
  std::vector<std::string> before_;
};

}  // namespace

std::unique_ptr<Drag> frameDrag(ToolHost& host, const PointerEvent& start) {
  return std::make_unique<FrameDrag>(host, start);
}

}  // namespace stopwalk::plan
