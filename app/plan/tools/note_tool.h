#pragma once

#include <QCoreApplication>
#include <optional>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// A note: pressed where its text goes, dragged to what it points to.
class NoteTool : public Tool {
  Q_DECLARE_TR_FUNCTIONS(NoteTool)

 public:
  explicit NoteTool(ToolHost& tool_host);

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
  std::vector<Field> fields_;
  std::optional<geometry::Point> text_at_;
  std::optional<geometry::Point> points_to_;
  QPointF pressed_at_;
};

}  // namespace stopwalk::plan
