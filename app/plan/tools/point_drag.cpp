#include <QCoreApplication>

#include "app/edits/change_things.h"
#include "app/plan/tools/drag.h"

namespace stopwalk::plan {
namespace {

class PointDrag : public Drag {
 public:
  PointDrag(ToolHost& tool_host, std::string note) : Drag(tool_host), note_(std::move(note)) {}

  void moved(const PointerEvent& event) override {
    to_ = event.at;
    host.preview(edit().after);
  }

  std::optional<edits::Edit> finished() override { return to_ ? std::optional(edit()) : std::nullopt; }

 private:
  edits::Edit edit() const {
    return edits::change(host.layout(), {note_}, QCoreApplication::translate("plan", "pointer"),
                         [&](layout::Note& note) { note.points_to = to_; });
  }

  const std::string note_;
  std::optional<geometry::Point> to_;
};

}  // namespace

std::unique_ptr<Drag> pointDrag(ToolHost& host, const std::string& note) {
  return std::make_unique<PointDrag>(host, note);
}

}  // namespace stopwalk::plan
