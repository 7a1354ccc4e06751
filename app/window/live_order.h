#pragma once

#include <QObject>
#include <memory>

#include "app/window/newest_answered.h"
#include "core/planning/round_order.h"

namespace stopwalk::window {

// The order that a round would have which is just being put together, found on a thread of its own.
class LiveOrder : public QObject {
  Q_OBJECT

 public:
  struct Question {
    std::shared_ptr<const layout::Layout> layout;
    std::shared_ptr<const layout::DeviceKinds> kinds;
    std::vector<std::string> ids;
    inspection::RoundWalk walk;
    bool operator==(const Question&) const = default;
  };
  struct Answer {
    Question of;
    planning::RoundOrder order;
    std::vector<planning::InspectedDevice> devices;  // of the whole layout
  };

  explicit LiveOrder(QObject* parent = nullptr);

  void ask(Question question) { worker_.ask(std::move(question)); }

 signals:
  void answered(std::shared_ptr<const stopwalk::window::LiveOrder::Answer> answer);
  // The last question has no answer, such as for want of memory.
  void failed(const QString& why);

 private:
  NewestAnswered<Question, Answer> worker_;
};

}  // namespace stopwalk::window
