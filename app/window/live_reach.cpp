#include "app/window/live_reach.h"

namespace stopwalk::window {

LiveReach::LiveReach(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          [](const Question& question, const auto& give) {
            const auto layerOf = [&](std::size_t samples) {
              return plan::ReachLayer(std::make_shared<const audit::Reach>(
                                          audit::reachOf(*question.layout, *question.kinds, question.hours,
                                                         question.target, samples, question.out_of_order)),
                                      *question.layout, question.top_mm);
            };
            if (give(layerOf(kCoarse))) give(layerOf(kFine));
          },
          [this](std::shared_ptr<const plan::ReachLayer> reach) { emit answered(std::move(reach)); },
          [this](const QString& why) { emit failed(why); }) {}

}  // namespace stopwalk::window
