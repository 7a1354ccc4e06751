#pragma once

#include <QCoreApplication>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// A rectangular room, by two opposite corners or by numbers.
class RoomTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(RoomTool)

 public:
  explicit RoomTool(ToolHost& tool_host);

  void pressed(const PointerEvent& event) override;
  void moved(const PointerEvent& event) override;
  void released(const PointerEvent& event) override;
  void paintOver(QPainter& painter) const override;
  QString prompt() const override;
  std::vector<Field> fields() const override { return fields_; }
  void setField(std::size_t field, double value) override;
  void accept() override;
  bool cancel() override;

 private:
  enum Number { X, Y, Width, Depth };

  geometry::Point snapped(const PointerEvent& event);
  void follow(geometry::Point corner);
  geometry::Polygon corners() const;

  SnapTargets targets_;
  std::vector<Field> fields_;
  std::vector<geometry::Segment> guides_;
  geometry::Point towards_{1, 1};  // to which side of the first corner the pointer is: typed sides go there
  bool begun_ = false;
  QPointF pressed_at_;
};

}  // namespace stopwalk::plan
