#include <QUndoStack>
#include <algorithm>
#include <map>

#include "app/edits/accept_finding.h"
#include "app/edits/add_things.h"
#include "app/edits/align_things.h"
#include "app/edits/change_things.h"
#include "app/edits/copy_things.h"
#include "app/edits/edited_layout.h"
#include "app/edits/hang_things.h"
#include "app/edits/move_things.h"
#include "app/edits/remove_things.h"
#include "app/edits/rename_id.h"
#include "app/edits/room_corners.h"
#include "app/edits/scale_underlay.h"
#include "tests/app/edits/bench_shop.h"
#include "tests/core/files/random_layout.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

// Whatever is done to whatever layout, in whatever order.
namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

Layout startOf(std::uint64_t seed) {
  if (seed % 3 == 0) return benchShop();
  if (seed % 3 == 1) return files::randomLayout(seed, static_cast<layout::LengthUnit>(seed / 3 % 4));
  support::RandomLayoutOptions options;
  options.most_rooms = 2;
  options.most_machines = 5;
  return support::randomLayout(seed, options);
}

// Makes edits of every kind, of things that are there and some that are not.
class RandomEdits {
 public:
  explicit RandomEdits(std::uint64_t seed) : random_(seed) {}

  static constexpr int kVerbs = 25;

  Edit edit(const Layout& layout, int verb) {
    layout_ = &layout;
    switch (verb) {
      case 0:
        return moveThings(layout, ids(), vector());
      case 1:
        return turnThings(layout, ids(), random_.between(-400, 400));
      case 2:
        return turnThings(layout, ids(), 15 * random_.below(24), vector());
      case 3:
        return removeThings(layout, ids(), files::bundledDeviceKinds());
      case 4:
        return duplicateThings(layout, ids(), vector()).edit;
      case 5:
        clip_ = copyThings(layout, ids());
        return paste(layout, clip_, vector()).edit;
      case 6:
        return paste(layout, clip_, vector()).edit;  // of what may be there no more
      case 7:
        return renameId(layout, id(), random_.chance(0.9) ? "r-" + std::to_string(random_.below(30)) : "No");
      case 8:
        return alignThings(layout, ids(), static_cast<Align>(random_.below(6)));
      case 9:
        return distributeThings(layout, ids(), static_cast<Along>(random_.below(2)));
      case 10:
        return moveCorner(layout, room(), corner(), vector());
      case 11:
        return addCorner(layout, room(), corner(), vector());
      case 12:
        return removeCorner(layout, room(), corner());
      case 13:
        return moveWall(layout, room(), corner(), vector());
      case 23:
        return acceptFinding(layout, found(), {}, {"invented", "Ada Example", "2027-12-31"});
      case 24:
        return takeAcceptanceBack(layout, known(), {});
      default:
        return verb < 17 ? adding(verb) : verb < 21 ? changing(verb) : hanging(verb);
    }
  }

 private:
  Edit adding(int verb) {
    const auto& kinds = files::bundledDeviceKinds().all();
    const auto& kind = kinds[static_cast<std::size_t>(random_.below(static_cast<int>(kinds.size())))];
    switch (verb) {
      case 14:
        return random_.chance(0.5) ? addRoom(*layout_, {vector(), vector(), vector()}, "Paint room").edit
                                   : addDoor(*layout_, room(), room(), vector(), 900).edit;
      case 15:
        return random_.chance(0.5) ? addMachineDevice(*layout_, id(), kind, vector()).edit
                                   : addStation(*layout_, id(), layout::Role::Helper, vector()).edit;
      default:
        return random_.chance(0.5)
                   ? addWallDevice(*layout_, kind, vector(), 90, layout::Stops{false, {id(), room()}}).edit
                   : addTapeCheck(*layout_, id(), id(), 1234.5).edit;
    }
  }

  Edit changing(int verb) {
    const double mm = random_.below(40) * 100 - 100;  // some that cannot be
    switch (verb) {
      case 17:
        return change(
            *layout_, ids(),
            "height", [=](auto& thing) requires requires { thing.height = mm; } { thing.height = mm; });
      case 18:
        return setUnit(*layout_, static_cast<layout::LengthUnit>(random_.below(4)));
      case 19:
        return changeRevision(*layout_, "number",
                              [&](layout::Revision& r) { r.number = random_.below(100); });
      default: {
        const auto& kinds = files::bundledDeviceKinds().all();
        return setDeviceKind(*layout_, ids(),
                             kinds[static_cast<std::size_t>(random_.below(static_cast<int>(kinds.size())))]);
      }
    }
  }

  Edit hanging(int verb) {
    if (verb == 21) {
      const std::string hung = id();
      const auto thing = findThing(*layout_, hung);
      if (thing && thing->kind == ThingKind::Door)
        return hangDoor(*layout_, hung, vector(), room(), random_.chance(0.9) ? room() : "gone");
      return thing && thing->kind == ThingKind::MachineDevice
                 ? hangOnMachine(*layout_, hung, vector(), random_.between(-400, 400))
                 : hangOnWall(*layout_, hung, vector(), random_.between(-400, 400));
    }
    return scaleUnderlay(*layout_, vector(), vector(), random_.chance(0.1) ? 1e9 : random_.between(1, 9000));
  }

  audit::Finding found() {
    audit::Finding finding;
    finding.rule = random_.chance(0.5) ? "unreachable" : "stop-too-far";
    finding.subject = id();
    if (random_.chance(0.5)) finding.which = random_.chance(0.5) ? "(phone)" : id() + ", " + id();
    return finding;
  }
  audit::Finding known() {
    audit::Finding finding = found();
    if (layout_->accepted_findings.empty()) return finding;
    const layout::AcceptedFinding& accepted = layout_->accepted_findings.back();
    finding.rule = accepted.rule;
    finding.subject = accepted.subject;
    finding.which = accepted.which;
    return finding;
  }

  std::string id() {
    const auto things = allThings(*layout_);
    if (things.empty() || random_.chance(0.05)) return "nothing/here";
    return idOf(*layout_, things[static_cast<std::size_t>(random_.below(static_cast<int>(things.size())))]);
  }
  std::vector<std::string> ids() {
    std::vector<std::string> some;
    for (int i = 1 + random_.below(6); i > 0; --i) some.push_back(id());
    return some;
  }
  std::string room() {
    const auto& rooms = layout_->rooms;
    return rooms.empty() ? "outside"
                         : rooms[static_cast<std::size_t>(random_.below(static_cast<int>(rooms.size())))].id;
  }
  std::size_t corner() { return static_cast<std::size_t>(random_.below(5)); }
  Point vector() {
    if (random_.chance(0.02)) return {9.9e6, 0};
    const bool odd = random_.chance(0.5);
    const Point p{random_.between(-5000, 5000), random_.between(-5000, 5000)};
    return odd ? p : Point{std::round(p.x / 10) * 10, std::round(p.y / 10) * 10};
  }

  support::Random random_;
  const Layout* layout_ = nullptr;
  Clip clip_;
};

// In four shares, side by side.
class RandomSequences : public testing::TestWithParam<std::uint64_t> {};
INSTANTIATE_TEST_SUITE_P(Share, RandomSequences, testing::Range<std::uint64_t>(0, 4));

TEST_P(RandomSequences, StayReadableAndAreUndoneAndRedoneToTheLetter) {
  std::map<int, int> steps_of;
  for (std::uint64_t seed = GetParam(); seed < 3000 && !HasFailure(); seed += 4) {
    SCOPED_TRACE(seed);
    EditedLayout edited;
    edited.reset(startOf(seed));
    RandomEdits edits(seed);
    support::Random random(seed + 1);
    std::map<int, std::string> texts{{0, files::writeLayout(edited.layout())}};
    for (int i = 0; i < 6; ++i) {
      const int verb = random.below(RandomEdits::kVerbs);
      if (random.chance(0.3)) edited.history().undo();
      if (edited.apply(edits.edit(edited.layout(), verb))) ++steps_of[verb];
      const std::string text = files::writeLayout(edited.layout());
      texts[edited.history().index()] = text;
      EXPECT_EQ(layoutOf(text), edited.layout()) << "verb " << verb << "\n" << text;
    }
    QUndoStack& history = edited.history();
    while (history.canUndo()) {
      history.undo();
      EXPECT_EQ(files::writeLayout(edited.layout()), texts[history.index()]);
    }
    while (history.canRedo()) {
      history.redo();
      EXPECT_EQ(files::writeLayout(edited.layout()), texts[history.index()]);
    }
  }
  for (int verb = 0; verb < RandomEdits::kVerbs; ++verb) EXPECT_GT(steps_of[verb], 10) << "verb " << verb;
}

std::vector<const layout::Device*> devicesOf(const Layout& layout, std::vector<std::string>& ids) {
  std::vector<const layout::Device*> devices;
  for (const Thing& thing : allThings(layout)) {
    if (thing.kind != ThingKind::MachineDevice && thing.kind != ThingKind::WallDevice) continue;
    ids.push_back(idOf(layout, thing));
    visitThing(layout, thing, [&](const auto& value) {
      if constexpr (std::is_same_v<decltype(value), const layout::Device&>) devices.push_back(&value);
    });
  }
  return devices;
}

TEST(RandomEdits, RemovingLetsNoDeviceStopMoreThanBefore) {
  int mended = 0;
  for (std::uint64_t seed = 0; seed < 2000; ++seed) {
    SCOPED_TRACE(seed);
    const Layout before = startOf(seed);
    const Layout after = RandomEdits(seed).edit(before, 3).after;
    std::vector<std::string> old_ids, new_ids;
    const auto old_devices = devicesOf(before, old_ids), new_devices = devicesOf(after, new_ids);
    for (std::size_t i = 0; i < new_ids.size(); ++i) {
      const auto at = std::ranges::find(old_ids, new_ids[i]) - old_ids.begin();
      const auto& was = old_devices.at(static_cast<std::size_t>(at))->stops;
      const auto& is = new_devices[i]->stops;
      ASSERT_EQ(was.has_value(), is.has_value());
      if (!was) continue;
      EXPECT_EQ(was->all, is->all);
      std::vector<std::string> left = was->ids;
      std::erase_if(left, [&](const std::string& id) { return !findThing(after, id); });
      EXPECT_EQ(is->ids, left);
      if (left != was->ids) ++mended;
    }
  }
  EXPECT_GT(mended, 100);
}

}  // namespace
}  // namespace stopwalk::edits
