#pragma once

#include <QCoreApplication>
#include <optional>

#include "app/plan/choice.h"
#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// One new thing that is put down where the pointer is: a machine, bench, door, station, device or phone. What
// belongs on a wall or on a machine goes there by itself.
class PlaceTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(PlaceTool)

 public:
  PlaceTool(Choice choice, ToolHost& tool_host);

  void pressed(const PointerEvent& event) override;
  void moved(const PointerEvent& event) override;
  bool key(QKeyEvent& event) override;
  void paintOver(QPainter& painter) const override;
  QString prompt() const override;
  std::vector<Field> fields() const override { return fields_; }
  void setField(std::size_t field, double value) override;
  void accept() override;
  bool cancel() override;

 private:
  enum Number { X, Y, Turn };

  bool turns() const;
  void follow(const PointerEvent& event);
  void show();
  void turnBy(double deg);

  const Choice choice_;
  SnapTargets targets_;
  std::vector<Field> fields_;
  std::vector<geometry::Segment> guides_;
  bool pulled_ = true;  // onto walls and machines
};

}  // namespace stopwalk::plan
