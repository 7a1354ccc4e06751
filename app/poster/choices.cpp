#include "app/poster/choices.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "app/poster/plan_frame.h"
#include "app/poster/plan_picture.h"

namespace stopwalk::poster {
namespace {

constexpr double kGap_mm = 4;
// What is weighed in choosing: the plan's scale, by its logarithm, against the rest.
constexpr double kPageCost = 1.2;
constexpr double kElsewhereCost = 1.0;  // of a table that is not on the first page at all
constexpr double kLetterGain = 0.5;     // by the logarithm of the table's letters
constexpr double kSignGain = 0.3;       // by that of the signs
constexpr double kCrowdCost = 3;        // of signs that cover the whole floor
constexpr double kTinyCost = 0.04;      // of a machine too small for its name
constexpr double kTiny_mm = 9;          // on paper

std::size_t sum(const std::vector<std::size_t>& taken) {
  return std::accumulate(taken.begin(), taken.end(), std::size_t{0});
}

std::vector<double> heightsOf(const std::vector<QRectF>& columns) {
  std::vector<double> heights;
  for (const QRectF& column : columns) heights.push_back(column.height());
  return heights;
}

// What goes into the columns of a page from a block on; where that is not all, room is left for the words
// that it goes on.
std::vector<std::size_t> onPage(const std::vector<Block>& table, std::size_t from,
                                std::vector<double> heights, double words_mm) {
  const std::vector<Block> rest(table.begin() + static_cast<std::ptrdiff_t>(from), table.end());
  std::vector<std::size_t> taken = flow(rest, heights);
  if (sum(taken) == rest.size()) return taken;
  heights.back() -= words_mm;
  return flow(rest, heights);
}

class Chooser {
 public:
  Chooser(const Content& content, const layout::Layout& layout, const Wish& wish, PosterParts& parts)
      : wish_(wish),
        parts_(parts),
        room_(turnedSize(layout.rooms[content.room].outline, content.viewer.up_deg)),
        signs_(listedIn(content).size()) {
    for (const layout::Machine& m : layout.machines)
      if (std::ranges::find(content.groups, m.id, &Group::id) != content.groups.end())
        widths_mm_.push_back(
            turnedSize(layout::outlineInPlan(m.footprint, m.at, m.turn), content.viewer.up_deg).width());
  }

  Choices all() {
    Choices choices;
    for (const bool landscape : {true, false}) {
      if (wish_.landscape && *wish_.landscape != landscape) continue;
      const QSizeF page = wish_.paper.size(landscape);
      for (const Arrangement& a : arrangementsOf(page, parts_.body(page))) {
        const int scale = scaleFor(room_, a.plan.size() - ringOf(a.sizes) * 2);
        if (scale == 0) continue;
        choices.room_fits = true;
        if (auto choice = choiceOf(a, scale)) choices.by_cost.push_back(std::move(*choice));
      }
    }
    std::ranges::stable_sort(choices.by_cost, {}, &Choice::cost);
    return choices;
  }

 private:
  std::optional<Choice> choiceOf(const Arrangement& a, int scale) {
    Choice choice{a, scale, {}, 0};
    if (!take(choice)) return std::nullopt;
    const double elsewhere =
        1 - static_cast<double>(sum(choice.taken.front())) / static_cast<double>(parts_.table(a).size());
    choice.cost = std::log(scale) + kPageCost * static_cast<double>(choice.taken.size() - 1) +
                  kElsewhereCost * elsewhere - kLetterGain * std::log(a.sizes.table_cap) -
                  kSignGain * std::log(a.sizes.sign) + kCrowdCost * crowdOf(a.sizes, scale) +
                  kTinyCost * tinyAt(scale);
    return choice;
  }

  // The whole table, on as many pages as it takes. False: the box, or an entry, is too long for its page.
  bool take(Choice& choice) {
    const Arrangement& a = choice.arrangement;
    const std::vector<Block>& table = parts_.table(a);
    const double words_mm = parts_.goesOn(a, 2, 2).height;
    std::vector<double> heights = heightsOf(a.columns);
    heights.back() -= parts_.box(a).height + kGap_mm;
    if (heights.back() < 0) return false;
    choice.taken.push_back(onPage(table, 0, heights, words_mm));
    for (std::size_t done = sum(choice.taken.front()); done < table.size();) {
      choice.taken.push_back(onPage(table, done, heightsOf(parts_.furtherColumns(a)), words_mm));
      const std::size_t more = sum(choice.taken.back());
      if (more == 0) return false;
      done += more;
    }
    return true;
  }

  // How much of the floor the signs cover.
  double crowdOf(const Sizes& sizes, int scale) const {
    const double one = sizes.sign * (1 + kNumberPart) * sizes.sign;
    return static_cast<double>(signs_) * one * scale * scale / (room_.width() * room_.height());
  }

  double tinyAt(int scale) const {
    return static_cast<double>(
        std::ranges::count_if(widths_mm_, [&](double mm) { return mm / scale < kTiny_mm; }));
  }

  const Wish& wish_;
  PosterParts& parts_;
  QSizeF room_;
  std::size_t signs_;
  std::vector<double> widths_mm_;  // of the room's machines as they are turned, mm of the shop
};

}  // namespace

Choices choicesOf(const Content& content, const layout::Layout& layout, const Wish& wish,
                  PosterParts& parts) {
  return Chooser(content, layout, wish, parts).all();
}

}  // namespace stopwalk::poster
