#pragma once

#include <QCoreApplication>
#include <memory>

#include "app/plan/tools/drag.h"
#include "app/plan/tools/handles.h"

namespace stopwalk::plan {

// Picks things, and moves what is picked: by dragging, by its handles, by the arrow keys.
class SelectTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(SelectTool)

 public:
  explicit SelectTool(ToolHost& tool_host) : Tool(tool_host) {}

  void pressed(const PointerEvent& event) override;
  void moved(const PointerEvent& event) override;
  void released(const PointerEvent& event) override;
  void doubleClicked(const PointerEvent& event) override;
  bool key(QKeyEvent& event) override;
  void paintOver(QPainter& painter) const override;
  QString prompt() const override;
  bool cancel() override;
  void layoutChanged() override;

 private:
  std::vector<Handle> handles() const;
  const Item* itemAt(const PointerEvent& event) const;
  std::unique_ptr<Drag> dragFrom(const PointerEvent& start) const;
  void nudge(geometry::Point by);
  void letGo();

  std::optional<PointerEvent> start_;  // where the button went down
  std::optional<Handle> grip_;         // ... on a handle
  std::string pressed_id_;             // ... on a thing
  bool was_selected_ = false;          // ... that was selected already
  std::unique_ptr<Drag> drag_;
  QPointF pointer_;
};

}  // namespace stopwalk::plan
