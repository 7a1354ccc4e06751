#include "core/files/readable.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/audit/profile.h"
#include "core/files/layout_keys.h"
#include "core/files/thing_reader.h"

namespace stopwalk::files {
namespace {

using layout::Point;

struct Mention {
  std::string full;
  bool (*wanted)(Names);
};

// What one layout has said so far.
struct Said {
  bool good = true;
  std::unordered_map<std::string, Names> defined;
  std::vector<Mention> mentions;
};

bool isRoom(Names n) {
  return n == Names::Room;
}
bool isMachine(Names n) {
  return n == Names::Machine;
}
bool isStation(Names n) {
  return n == Names::Station;
}
bool isStoppable(Names n) {
  return n == Names::Machine || n == Names::Room;
}
bool isPlace(Names n) {
  return n == Names::Station || n == Names::Device || n == Names::Phone;
}

// Looks at one thing; the visitor of layout_keys.h. Each function holds against what the reader of the same
// name accepts.
class ReadableCheck {
 public:
  ReadableCheck(Said& said, Names names, std::string scope)
      : said_(said), names_(names), scope_(std::move(scope)) {}

  void format(std::string_view) {}
  void unit(std::string_view, layout::LengthUnit) {}
  void text(std::string_view, const std::string& text, Need) { want(text.find('\0') == std::string::npos); }
  // A text that is no date is only warned of.
  void date(std::string_view key, const std::string& date) { text(key, date, Need::Optional); }
  void id(std::string_view, const std::string& id) {
    want(isId(id) && id != layout::kAll && id != layout::kOutside);
    want(said_.defined.try_emplace(scope_ + id, names_).second);
    inner_ = id + "/";
  }
  void whole(std::string_view, int number) { want(number >= 0 && number <= 1'000'000'000); }
  void point(std::string_view, Point p) { want(inReach(p.x) && inReach(p.y)); }
  void point(std::string_view key, const std::optional<Point>& p) { point(key, p.value_or(Point{})); }
  void size(std::string_view, double mm) { want(mm > 0 && inReach(mm)); }
  void size(std::string_view key, std::optional<double> mm) { size(key, mm.value_or(1)); }
  void distance(std::string_view, double mm) { want(mm >= 0 && inReach(mm)); }
  void angle(std::string_view, double deg, Need) { want(std::abs(deg) <= layout::kMostAngle); }
  void number(std::string_view, std::optional<double> n) { want(finite(n)); }
  void seconds(std::string_view, std::optional<double> s) { want(s.value_or(0) >= 0 && finite(s)); }
  void scale(std::string_view, double scale) { want(scale >= 1e-6 && scale <= 1e6); }
  void share(std::string_view, double share, double) { want(share >= 0 && share <= 1); }
  void flag(std::string_view, const std::optional<bool>&) {}
  template <class... Values>
  void choice(std::string_view, const Values&...) {}
  template <class... Values>
  void word(std::string_view, const Values&...) {}
  void outline(std::string_view key, const geometry::Polygon& outline, Need need) {
    want(outline.size() >= 3 || (outline.empty() && need == Need::Optional));
    for (const Point p : outline) point(key, p);
  }
  void footprint(std::string_view key, const layout::Footprint& shape) {
    if (const auto* r = std::get_if<layout::Rectangle>(&shape))
      size(key, r->width), size(key, r->depth);
    else
      outline(key, std::get<geometry::Polygon>(shape), Need::Required);
  }
  void deviceKind(std::string_view, const std::string&) {}
  void faces(std::string_view key, double deg) { angle(key, deg, Need::Optional); }
  void barLength(std::string_view key, std::optional<double> mm, const std::string&) { size(key, mm); }
  void joins(std::string_view, const std::string& first, const std::string& second) {
    mention(first, isRoom);
    if (second != layout::kOutside) mention(second, isRoom);
  }
  void stops(std::string_view, const std::optional<layout::Stops>& stops) {
    if (!stops) return;
    for (const std::string& id : stops->ids) mention(id, isStoppable);
  }
  void runDown(std::string_view key, std::optional<double> all,
               const std::vector<std::pair<std::string, double>>& each) {
    want(!all || each.empty());  // a file says one of them
    seconds(key, all);
    for (std::size_t i = 0; i < each.size(); ++i) {
      seconds(key, each[i].second);
      mention(each[i].first, isMachine);
      for (std::size_t k = 0; k < i; ++k) want(each[k].first != each[i].first);
    }
  }
  void heldAt(std::string_view, const std::optional<std::vector<std::string>>& stations) {
    if (!stations) return;
    want(!scope_.empty());
    for (const std::string& id : *stations) mention(scope_ + id, isStation);
  }
  void place(std::string_view, const std::string& id) { mention(id, isPlace); }

  template <class Thing>
  void thing(std::string_view, const Thing& thing) {
    look(thing);
  }
  template <class Thing>
  void thing(std::string_view, const std::optional<Thing>& thing) {
    if (thing) look(*thing);
  }
  template <class Thing>
  void list(std::string_view, const std::vector<Thing>& things) {
    for (const Thing& thing : things) {
      look(thing);
      if constexpr (std::is_same_v<Thing, layout::HouseRule> ||
                    std::is_same_v<Thing, layout::AcceptedFinding>)
        want(audit::troubleOf(thing).empty());
    }
  }

 private:
  template <class Thing>
  void look(const Thing& thing) {
    ReadableCheck inner(said_, kNames<Thing>, inner_);
    describe(inner, thing);
  }
  void want(bool good) { said_.good = said_.good && good; }
  void mention(std::string full, bool (*wanted)(Names)) {
    said_.mentions.push_back({std::move(full), wanted});
  }
  static bool inReach(double mm) { return std::abs(mm) <= layout::kLongest; }
  static bool finite(std::optional<double> value) { return std::isfinite(value.value_or(0)); }

  Said& said_;
  Names names_;
  std::string scope_;
  std::string inner_;
};

}  // namespace

bool isReadable(const layout::Layout& layout) {
  Said said;
  ReadableCheck check(said, Names::Other, "");
  describe(check, layout);
  return said.good && std::ranges::all_of(said.mentions, [&](const Mention& m) {
           const auto found = said.defined.find(m.full);
           return found != said.defined.end() && m.wanted(found->second);
         });
}

}  // namespace stopwalk::files
