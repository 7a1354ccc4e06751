#pragma once

#include <QPainter>
#include <QString>
#include <memory>
#include <optional>

#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// What is going on between pressing and releasing the button on things that are there. Moving gives a
// preview; at the end there is one edit, or none.
class Drag {
 public:
  explicit Drag(ToolHost& tool_host) : host(tool_host) {}
  virtual ~Drag() = default;
  Drag(const Drag&) = delete;
  Drag& operator=(const Drag&) = delete;

  virtual void moved(const PointerEvent& event) = 0;
  virtual std::optional<edits::Edit> finished() = 0;
  virtual void paintOver(QPainter&) const {}
  // What is being dragged, as numbers beside the pointer.
  virtual QString tag() const { return ""; }
  // What to do next; empty: to put it down.
  virtual QString prompt() const { return ""; }

 protected:
  ToolHost& host;
};

// Each file of a drag holds its maker. Things move...
std::unique_ptr<Drag> moveDrag(ToolHost& host, const PointerEvent& start);
// ... the one on a wall or machine stays on it ...
std::unique_ptr<Drag> hangDrag(ToolHost& host, const std::string& id, const PointerEvent& start);
// ... one turns about itself ...
std::unique_ptr<Drag> turnDrag(ToolHost& host, const std::string& id);
// ... a note points elsewhere ...
std::unique_ptr<Drag> pointDrag(ToolHost& host, const std::string& note);
// ... a corner, or a whole side, of a room moves ...
std::unique_ptr<Drag> cornerDrag(ToolHost& host, const std::string& room, std::size_t corner);
std::unique_ptr<Drag> sideDrag(ToolHost& host, const std::string& room, std::size_t side,
                               const PointerEvent& start);
// ... or a frame picks what lies in it, beside what was selected if it adds.
std::unique_ptr<Drag> frameDrag(ToolHost& host, const PointerEvent& start);

}  // namespace stopwalk::plan
