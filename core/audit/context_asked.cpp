// What a context works out when a rule first asks for it.
#include <algorithm>
#include <numeric>

#include "core/audit/context_parts.h"

namespace stopwalk::audit {
namespace {

std::vector<std::size_t> upTo(std::size_t count) {
  std::vector<std::size_t> all(count);
  std::iota(all.begin(), all.end(), std::size_t{0});
  return all;
}

}  // namespace

Context::OtherHours& Context::otherHours() const {
  if (other_hours_) return *other_hours_;
  const floor::Hours other = hours == floor::Hours::Open ? floor::Hours::After : floor::Hours::Open;
  floor::Plan then = floor::buildPlan(layout, other);
  floor::Surroundings around(layout, then);
  auto walks_then = last_ ? last_->next(other, then) : std::make_shared<floor::Walks>(then);
  std::vector<PlacedEntry> phones_then = placedPhones(layout, around);
  other_hours_ = std::make_unique<OtherHours>(
      OtherHours{std::move(then), std::move(around), std::move(walks_then), std::move(phones_then), {}, {}});
  return *other_hours_;
}

const std::vector<Way>& Context::phoneWaysAt(floor::Hours at) const {
  if (at == hours) return phone_ways;
  OtherHours& other = otherHours();
  if (other.ways.of.empty()) {
    if (hours == floor::Hours::Open) other.by_day = std::make_unique<WaysByDay>(*this, other);
    seekPhonesThen(other, upTo(stations.size()));
  }
  return other.ways.of;
}

const std::vector<Way>& Context::cutOffWays() const {
  if (!cut_off_ways_) {
    Trace* const asking = trace_;
    traceIn(nullptr);
    cut_off_ways_.emplace();
    seekCutOffs(upTo(stations.size()), *cut_off_ways_);
    traceIn(asking);
  }
  return cut_off_ways_->of;
}

const std::vector<Exit>& Context::exits() const {
  if (!exits_) exits_ = exitsOf(*this);
  return *exits_;
}

std::vector<const DoorOpening*> Context::openingsNear(Point p, double distance_mm) const {
  if (!openings_) {
    openings_ = std::make_unique<Openings>();
    for (const floor::Passage& q : plan.passages)
      openings_->all.push_back(
          {q.door, {q.first, q.second, {q.first.a, q.second.a}, {q.first.b, q.second.b}}});
    for (const Exit& e : exits())
      if (layout.doors[e.door].second == layout::kOutside) openings_->all.push_back({e.door, {e.opening}});
    std::vector<geometry::Box> boxes;
    for (const DoorOpening& o : openings_->all) {
      geometry::Box& box = boxes.emplace_back();
      for (const geometry::Segment& edge : o.edges) box.add(geometry::boxOf(edge));
    }
    openings_->boxes = geometry::BoxTree(boxes);
  }
  std::vector<std::size_t> found;
  openings_->boxes.any(geometry::boxOf(p).grown(distance_mm),
                       [&](std::size_t i) { return found.push_back(i), false; });
  std::ranges::sort(found);
  std::vector<const DoorOpening*> near;
  for (const std::size_t i : found) near.push_back(&openings_->all[i]);
  return near;
}

std::optional<NamedPlace> Context::placeOf(const std::string& id) const {
  noteAll();
  if (place_of_id_.empty()) {
    for (std::size_t s = 0; s < stations.size(); ++s)
      place_of_id_.try_emplace(stations[s].id, PlaceKind::Station, s);
    for (std::size_t d = 0; d < devices.size(); ++d)
      place_of_id_.try_emplace(devices[d].id, PlaceKind::Device, d);
    for (std::size_t p = 0; p < phones.size(); ++p)
      place_of_id_.try_emplace(layout.phones[p].id, PlaceKind::Phone, p);
  }
  const auto found = place_of_id_.find(id);
  if (found == place_of_id_.end()) return std::nullopt;
  const auto [kind, index] = found->second;
  if (kind == PlaceKind::Station) {
    const Point at = stations[index].at;
    return NamedPlace{id, Place{{at}, {}}, surroundings.roomAt(at), {}};
  }
  const floor::Standing standing = standingByDay(kind, index);
  return NamedPlace{id, standing.place, standing.room, standing.reason};
}

// One may stand in a doorway that is shut after hours.
floor::Standing Context::standingByDay(PlaceKind kind, std::size_t index) const {
  const bool is_device = kind == PlaceKind::Device;
  if (hours == floor::Hours::Open) return (is_device ? placed : phones)[index].standing;
  const OtherHours& day = otherHours();
  return is_device ? placedDevice(devices[index], day.around).standing : day.phones[index].standing;
}

floor::Walk Context::walkByDay(const Place& from, const Place& to) const {
  noteAll();
  const floor::Walks& by_day = hours == floor::Hours::Open ? walks : *otherHours().walks;
  return by_day.between(from, to);
}

}  // namespace stopwalk::audit
