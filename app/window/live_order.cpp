#include "app/window/live_order.h"

namespace stopwalk::window {

LiveOrder::LiveOrder(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          [](const Question& question, const auto& give) {
            give(Answer{question,
                        planning::asWalked(question.ids, question.walk, *question.layout, *question.kinds),
                        planning::inspectedDevices(
                            *question.layout, *question.kinds,
                            floor::buildPlan(*question.layout, planning::hoursOf(question.walk)))});
          },
          [this](std::shared_ptr<const Answer> answer) { emit answered(std::move(answer)); },
          [this](const QString& why) { emit failed(why); }) {}

}  // namespace stopwalk::window
