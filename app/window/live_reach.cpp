#include "app/window/live_reach.h"

#include <algorithm>

namespace stopwalk::window {

LiveReach::LiveReach(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          [](const Question& question, const auto& give) {
            const auto reachIn = [&](const layout::Layout& layout, floor::Hours hours, std::size_t samples) {
              return audit::reachOf(layout, *question.kinds, hours, question.target, samples,
                                    question.out_of_order);
            };
            const auto layerOf = [&](std::size_t samples) {
              const auto reach =
                  std::make_shared<const audit::Reach>(reachIn(*question.layout, question.hours, samples));
              auto top_mm = question.top_mm;
              if (!top_mm && question.as_it_is)
                top_mm = std::max(
                    plan::ReachLayer::topOf(*reach),
                    plan::ReachLayer::topOf(reachIn(*question.as_it_is, floor::Hours::Open, samples)));
              plan::ReachLayer layer(reach, *question.layout, top_mm);
              layer.paintAhead(question.seen);
              return layer;
            };
            if (give(layerOf(kCoarse))) give(layerOf(kFine));
          },
          [this](std::shared_ptr<const plan::ReachLayer> reach) { emit answered(std::move(reach)); },
          [this](const QString& why) { emit failed(why); }) {}

}  // namespace stopwalk::window
