#include "tests/bench/shop.h"

#include <memory>

#include "core/layout/layout.h"

namespace stopwalk::bench {
namespace {

using floor::Place;
using floor::Point;

Place before(Point at, double faces, double away) {
  return {{at + away * geometry::direction(faces)}, {}};
}

Place before(const layout::Machine& machine, const layout::Device& device) {
  const double faces = machine.turn + device.faces;
  const Point at = layout::toPlan(machine.at, machine.turn, device.at);
  if (!device.length) return before(at, faces, 450);
  const Point middle = at + 300 * geometry::direction(faces);
  const Point half = *device.length / 2 * geometry::leftOf(geometry::direction(faces));
  return {{}, {{middle - half, middle + half}}};
}

bool inRoom(const layout::Room& room, Point p) {
  return p.x >= room.outline[0].x && p.x <= room.outline[2].x && p.y >= room.outline[0].y &&
         p.y <= room.outline[2].y;
}

}  // namespace

Shop::Shop(const support::ShopSize& size) {
  const layout::Layout layout = support::shopLayout(size);
  plan = floor::buildPlan(layout, floor::Hours::Open);
  std::vector<Place> cut_offs;
  for (const layout::Device& device : layout.devices)
    cut_offs.push_back(before(device.at, device.faces, 450));
  for (const layout::Phone& phone : layout.phones) phones.push_back(before(phone.at, phone.faces, 450));
  for (const layout::Machine& machine : layout.machines) {
    std::vector<Place> own;
    for (const layout::Device& device : machine.devices)
      if (device.kind != "guarded-start") own.push_back(before(machine, device));
    stops.insert(stops.end(), own.begin(), own.end());
    for (std::size_t i = 0; i < layout.rooms.size(); ++i)
      if (inRoom(layout.rooms[i], machine.at)) own.push_back(cut_offs[i]);
    for (const layout::Station& station : machine.stations) {
      stations.push_back(layout::toPlan(machine.at, machine.turn, station.at));
      candidates.push_back(own);
    }
  }
  stops.insert(stops.end(), cut_offs.begin(), cut_offs.end());
}

const Shop& shopOf(std::size_t size) {
  static std::unique_ptr<Shop> shops[std::size(support::kShopSizes)];
  if (!shops[size]) shops[size] = std::make_unique<Shop>(support::kShopSizes[size]);
  return *shops[size];
}

}  // namespace stopwalk::bench
