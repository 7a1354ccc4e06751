#pragma once

#include <QObject>
#include <memory>
#include <optional>

#include "app/plan/reach_layer.h"
#include "app/window/newest_answered.h"
#include "core/audit/reach.h"

namespace stopwalk::window {

// Answers with the reach map of the newest layout, found on a thread of its own: first a coarse one, soon
// enough to follow a drag, then a finer one unless another was asked for meanwhile.
class LiveReach : public QObject {
  Q_OBJECT

 public:
  struct Question {
    std::shared_ptr<const layout::Layout> layout;
    std::shared_ptr<const layout::DeviceKinds> kinds;
    floor::Hours hours = floor::Hours::Open;
    audit::ReachTarget target;
    std::vector<std::string> out_of_order;  // ids of devices that count as no stop
    std::optional<double> top_mm = {};      // where the colours end; none: at the longest walk
    // As it is, while something else is supposed: the scale holds the longest walk of both.
    std::shared_ptr<const layout::Layout> as_it_is = {};
    plan::AsSeen seen = {};  // what the map is painted for ahead
  };

  // Samples over the floor's box.
  static constexpr std::size_t kCoarse = 2500;
  static constexpr std::size_t kFine = 16000;

  explicit LiveReach(QObject* parent = nullptr);

  void ask(Question question) { worker_.ask(std::move(question)); }
  // Nothing is wanted any more: answers on their way are dropped.
  void leave() { worker_.leave(); }
  // Whether the last map was of what was asked for last.
  bool isCurrent() const { return worker_.isCurrent(); }

 signals:
  // With all that painting needs of it, and painted, so that the window need not do it.
  void answered(std::shared_ptr<const stopwalk::plan::ReachLayer> reach);
  // The last question has no answer, such as for want of memory.
  void failed(const QString& why);

 private:
  NewestAnswered<Question, plan::ReachLayer> worker_;
};

}  // namespace stopwalk::window
