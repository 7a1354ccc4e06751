#include "tests/core/files/random_layout.h"

#include <cmath>
#include <random>

namespace stopwalk::files {
namespace {

using namespace layout;

class Maker {
 public:
  explicit Maker(std::uint64_t seed) : random_(seed) {}

  Layout layout(LengthUnit unit);

 private:
  bool maybe() { return random_() % 2 == 0; }
  std::size_t below(std::size_t n) { return random_() % n; }

  double coordinate() {
    std::uniform_real_distribution<double> wide(-1e6, 1e6);
    switch (below(6)) {
      case 0:
        return std::round(wide(random_));
      case 1:
        return std::round(wide(random_)) * 25.4 / 16;
      case 2:
        return 0;
      case 3:
        return std::round(wide(random_)) / 1000;
      case 4:
        return wide(random_) * 1e-9;
      default:
        return wide(random_);
    }
  }
  double size() { return std::abs(coordinate()) + 1e-6; }
  Point point() { return {coordinate(), coordinate()}; }
  geometry::Polygon outline() {
    geometry::Polygon corners(3 + below(4));
    for (Point& p : corners) p = point();
    return corners;
  }
  Footprint footprint() {
    if (maybe()) return Rectangle{size(), size()};
    return outline();
  }
  std::string text() {
    static const std::string texts[] = {"",
                                        "Engine lathe 1",
                                        "12",
                                        "null",
                                        "~",
                                        "true",
                                        "no",
                                        "- dash",
                                        "a: b",
                                        "a #b",
                                        "# not a comment",
                                        "\"quoted\"",
                                        "it's",
                                        "tab\there",
                                        "two\nlines",
                                        " leading",
                                        "trailing ",
                                        "[x]",
                                        "{y}",
                                        "a, b",
                                        "&a",
                                        "*a",
                                        "!t",
                                        "%d",
                                        "@",
                                        "`",
                                        "|",
                                        ">",
                                        "?",
                                        ":",
                                        "...",
                                        "---",
                                        "Zaß Ünïcode – 漢字",
                                        "\xE2\x80\xA8sep",
                                        "\xC2\x85nel",
                                        "\xEF\xBB\xBF"
                                        "bom",
                                        "bell\x07",
                                        "back\\slash",
                                        "1e3",
                                        "0x10",
                                        "\r",
                                        std::string(200, 'x'),
                                        "ends:",
                                        "\U0001F6D1"};
    return texts[below(std::size(texts))];
  }
  std::string id() {
    static const char* const odd[] = {"", "y", "no", "null", "12-", "-", "--", "on"};
    return odd[below(std::size(odd))] + std::to_string(++ids_);
  }
  template <class T>
  std::optional<T> sometimes(T value) {
    return maybe() ? std::optional<T>(value) : std::nullopt;
  }

  Device device(const Machine* machine);
  Machine machine();

  std::mt19937_64 random_;
  int ids_ = 0;
  std::vector<std::string> rooms_, machines_, places_;
};

Device Maker::device(const Machine* on) {
  static const char* const kinds[] = {"mushroom-button", "foot-bar",  "trigger",
                                      "guarded-start",   "pull-cord", "isolator"};
  Device d;
  d.id = id();
  d.kind = kinds[below(std::size(kinds))];
  d.at = point();
  if (on == nullptr || maybe()) d.faces = coordinate();
  if (d.kind == "foot-bar" || d.kind == "pull-cord" || maybe()) d.length = size();
  d.height = sometimes(size());
  if (maybe()) {
    d.stops.emplace();
    d.stops->all = maybe();
    if (!d.stops->all && !rooms_.empty()) d.stops->ids = {rooms_.front()};
  }
  if (maybe())
    d.run_down = std::abs(coordinate());
  else if (!machines_.empty() && maybe())
    d.run_down_each = {{machines_.front(), 2.5}, {machines_.back(), 0}};
  if (d.run_down_each.size() == 2 && machines_.size() == 1) d.run_down_each.pop_back();
  d.instruction = text();
  d.emergency = sometimes(maybe());
  d.direction = sometimes(static_cast<ThrowDirection>(below(4)));
  if (on != nullptr && !on->stations.empty() && maybe())
    d.held_at = std::vector<std::string>{on->stations.front().id};
  d.pin = sometimes(static_cast<Pin>(below(2)));
  return d;
}

Machine Maker::machine() {
  Machine m;
  m.id = id();
  m.name = text();
  m.kind = text();
  m.at = point();
  if (maybe()) m.turn = coordinate();
  m.footprint = footprint();
  m.height = sometimes(size());
  m.run_down = sometimes(std::abs(coordinate()));
  m.hand_held = maybe();
  m.after_stop = text();
  if (maybe()) m.hazard = outline();
  for (std::size_t i = below(3); i > 0; --i)
    m.stations.push_back({id(), static_cast<Role>(below(4)), point(), {}});
  for (std::size_t i = below(3); i > 0; --i) m.devices.push_back(device(&m));
  for (const Station& s : m.stations) places_.push_back(m.id + "/" + s.id);
  machines_.push_back(m.id);
  return m;
}

Layout Maker::layout(LengthUnit unit) {
  Layout plan;
  plan.unit = unit;
  plan.profile = text();
  plan.site = {text(), text(), text(), text(), {}};
  if (maybe()) plan.revision = Revision{static_cast<int>(below(1000)), text(), text(), text(), {}};
  if (maybe()) plan.underlay = Underlay{text(), point(), 12.5, coordinate(), 0.25, {}};
  for (std::size_t i = below(4); i > 0; --i) {
    plan.rooms.push_back({id(), text(), outline(), maybe(), {}});
    rooms_.push_back(plan.rooms.back().id);
  }
  for (std::size_t i = rooms_.empty() ? 0 : below(3); i > 0; --i)
    plan.doors.push_back({id(),
                          rooms_.front(),
                          maybe() ? rooms_.back() : kOutside,
                          point(),
                          size(),
                          static_cast<Locked>(below(3)),
                          {}});
  for (std::size_t i = below(3); i > 0; --i)
    plan.fixtures.push_back(
        {id(), text(), point(), maybe() ? 90.0 : 0.0, footprint(), sometimes(size()), {}});
  for (std::size_t i = below(4); i > 0; --i) plan.machines.push_back(machine());
  for (std::size_t i = below(3); i > 0; --i) plan.devices.push_back(device(nullptr));
  for (std::size_t i = below(3); i > 0; --i) {
    plan.phones.push_back({id(), text(), point(), coordinate(), sometimes(size()), {}});
    places_.push_back(plan.phones.back().id);
  }
  for (std::size_t i = below(3); i > 0; --i)
    plan.notes.push_back({id(), point(), sometimes(point()), text(), {}});
  for (std::size_t i = places_.empty() ? 0 : below(3); i > 0; --i)
    plan.tape_checks.push_back({id(), places_.front(), places_.back(), size(), text(), text(), {}});
  if (maybe()) plan.house_rules.push_back({"stop-too-far", "", 4.25, {}, {}, text(), {}});
  if (maybe()) plan.house_rules.push_back({"hidden-stop", "", {}, layout::Severity::Warn, false, "", {}});
  if (maybe()) plan.house_rules.push_back({"stop-out-of-reach", "hand", 0.7, {}, {}, "", {}});
  if (maybe())
    plan.accepted_findings.push_back({"stop-too-far",
                                      id(),
                                      maybe() ? "x" + text() : "",
                                      "x" + text(),
                                      "x" + text(),
                                      "2026-12-31",
                                      {},
                                      maybe() ? std::optional(5.203) : std::nullopt});
  return plan;
}

}  // namespace

Layout randomLayout(std::uint64_t seed, LengthUnit unit) {
  return Maker(seed).layout(unit);
}

}  // namespace stopwalk::files
