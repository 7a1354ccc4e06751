#include "app/window/live_devices.h"

#include "core/planning/round_plan.h"

namespace stopwalk::window {

LiveDevices::LiveDevices(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          [](const Question& question, const auto& give) {
            const floor::Plan plan = floor::buildPlan(*question.layout, floor::Hours::Open);
            Answer answer{question, planning::inspectedDevices(*question.layout, *question.kinds, plan), {}};
            std::vector<const planning::InspectedDevice*> walked;
            for (const std::string& id : question.order)
              if (const auto* device = planning::findDevice(answer.devices, id)) walked.push_back(device);
            if (!walked.empty()) answer.legs = planning::legsPast(walked, floor::Walks(plan));
            give(std::move(answer));
          },
          [this](std::shared_ptr<const Answer> answer) { emit answered(std::move(answer)); },
          [this](const QString& why) { emit failed(why); }) {}

}  // namespace stopwalk::window
