#include "app/window/live_devices.h"

namespace stopwalk::window {

LiveDevices::LiveDevices(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          [](const Question& question) {
            const floor::Plan plan = floor::buildPlan(*question.layout, floor::Hours::Open);
            return Answer{question, planning::inspectedDevices(*question.layout, *question.kinds, plan)};
          },
          [this](std::shared_ptr<const Answer> answer) { emit answered(std::move(answer)); }) {}

}  // namespace stopwalk::window
