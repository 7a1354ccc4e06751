#pragma once

#include <QPainter>
#include <optional>
#include <string>
#include <vector>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// What the one selected thing can be gripped by, besides itself.
struct Handle {
  enum class Kind { Turn, Corner, Side, Pointer };
  Kind kind = Kind::Turn;
  QPointF at;  // pixels
  std::string id;
  std::size_t part = 0;  // of a corner or side
};

std::vector<Handle> handlesOf(const ToolHost& host, const std::string& id);
std::optional<Handle> handleAt(const std::vector<Handle>& handles, QPointF pixel);
void paintHandles(QPainter& painter, const ToolHost& host, const std::vector<Handle>& handles);

}  // namespace stopwalk::plan
