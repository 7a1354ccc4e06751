#pragma once

#include <QCoreApplication>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// A room by its corners, one after the other; each side by a click, or by its length and direction.
class OutlineTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(OutlineTool)

 public:
  explicit OutlineTool(ToolHost& tool_host);

  void pressed(const PointerEvent& event) override;
  void moved(const PointerEvent& event) override;
  void doubleClicked(const PointerEvent&) override { close(); }
  bool key(QKeyEvent& event) override;
  void paintOver(QPainter& painter) const override;
  QString prompt() const override;
  std::vector<Field> fields() const override { return fields_; }
  void setField(std::size_t field, double value) override;
  void accept() override;
  bool cancel() override;

 private:
  enum Number { First, Second };  // x and y of the first corner, then length and direction of each side

  void nameFields();
  geometry::Point next() const;  // where the next corner is by the numbers
  void follow(const PointerEvent& event);
  bool closes(geometry::Point at) const;
  void addCorner();
  void close();

  SnapTargets targets_;
  std::vector<Field> fields_;
  std::vector<geometry::Segment> guides_;
  geometry::Polygon corners_;
};

}  // namespace stopwalk::plan
