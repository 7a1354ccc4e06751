#pragma once

#include <QCoreApplication>
#include <string>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// A distance taped on the floor, from one thing to another, typed as it was read.
class TapeTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(TapeTool)

 public:
  explicit TapeTool(ToolHost& tool_host);

  void pressed(const PointerEvent& event) override;
  void moved(const PointerEvent& event) override;
  void paintOver(QPainter& painter) const override;
  QString prompt() const override;
  std::vector<Field> fields() const override { return fields_; }
  void setField(std::size_t field, double value) override;
  void accept() override;
  bool cancel() override;

 private:
  std::string endAt(const PointerEvent& event) const;

  std::vector<Field> fields_;
  std::string from_;
  std::string to_;
  QPointF pointer_;
};

}  // namespace stopwalk::plan
