#pragma once

#include <QObject>
#include <memory>

#include "app/window/newest_answered.h"
#include "core/planning/round_order.h"

namespace stopwalk::window {

// The devices of the newest layout as an inspection meets them, and the walk past those of a round, found on
// a thread of its own.
class LiveDevices : public QObject {
  Q_OBJECT

 public:
  struct Question {
    std::shared_ptr<const layout::Layout> layout;
    std::shared_ptr<const layout::DeviceKinds> kinds;
    std::vector<std::string> order = {};  // of the round; ids
    inspection::RoundWalk walk = {};      // of the round
    bool operator==(const Question&) const = default;
  };
  struct Answer {
    Question of;
    std::vector<planning::InspectedDevice> devices;
    planning::WayPast way;  // in the order of the round
  };

  explicit LiveDevices(QObject* parent = nullptr);

  void ask(Question question) { worker_.ask(std::move(question)); }

 signals:
  void answered(std::shared_ptr<const stopwalk::window::LiveDevices::Answer> answer);
  // The last question has no answer, such as for want of memory.
  void failed(const QString& why);

 private:
  NewestAnswered<Question, Answer> worker_;
};

}  // namespace stopwalk::window
