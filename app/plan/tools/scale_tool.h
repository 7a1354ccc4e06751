#pragma once

#include <QCoreApplication>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// Brings the underlay picture to scale: two places on it, and the distance between them.
class ScaleTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(ScaleTool)

 public:
  explicit ScaleTool(ToolHost& tool_host) : Tool(tool_host) {}

  void pressed(const PointerEvent& event) override;
  void moved(const PointerEvent& event) override;
  void paintOver(QPainter& painter) const override;
  QString prompt() const override;
  std::vector<Field> fields() const override { return fields_; }
  void setField(std::size_t field, double value) override;
  void accept() override;
  bool cancel() override;

 private:
  std::vector<geometry::Point> ends_;
  geometry::Point pointer_;
  std::vector<Field> fields_;
};

}  // namespace stopwalk::plan
