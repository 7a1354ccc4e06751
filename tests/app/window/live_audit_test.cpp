#include "app/window/live_audit.h"

#include <gtest/gtest.h>

#include <QTest>

#include "app/plan/catalogue.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::window {
namespace {

// So that nothing of it is computed where the plan is painted, nor for each frame of a drag.
TEST(LiveAudit, FindsNarrowPlacesOfWhatStaysAndNotOfWhatIsDragged) {
  LiveAudit live;
  std::shared_ptr<const LiveAudit::Answer> answer;
  QObject::connect(&live, &LiveAudit::answered, &live, [&](auto given) { answer = given; });
  LiveAudit::Question question{
      std::make_shared<const layout::Layout>(support::shopLayout(support::kShopSizes[0])),
      std::make_shared<const layout::DeviceKinds>(plan::bundledCatalogue().kinds), audit::defaultProfile()};
  for (const bool is_preview : {false, true}) {
    answer.reset();
    question.is_preview = is_preview;
    live.ask(question);
    ASSERT_TRUE(QTest::qWaitFor([&] { return answer != nullptr; }, 10000));
    EXPECT_EQ(answer->narrow_places == nullptr, is_preview);
  }
}

}  // namespace
}  // namespace stopwalk::window
