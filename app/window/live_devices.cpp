#include "app/window/live_devices.h"

#include "core/floor/plan.h"

namespace stopwalk::window {

LiveDevices::LiveDevices(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          [](const Question& question, const auto& give) {
            const floor::Plan plan = floor::buildPlan(*question.layout, floor::Hours::Open);
            Answer answer{question, planning::inspectedDevices(*question.layout, *question.kinds, plan), {}};
            if (!question.order.empty())
              answer.way =
                  planning::wayPast(question.order, question.walk, *question.layout, *question.kinds);
            give(std::move(answer));
          },
          [this](std::shared_ptr<const Answer> answer) { emit answered(std::move(answer)); },
          [this](const QString& why) { emit failed(why); }) {}

}  // namespace stopwalk::window
