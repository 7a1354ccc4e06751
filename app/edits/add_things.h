#pragma once

#include <optional>
#include <string>

#include "app/edits/edit.h"
#include "core/layout/device_kind.h"
#include "core/layout/machine_template.h"

// New things. All places are in the plan. What cannot be, such as a station on a machine that is not there,
// changes nothing and has no id.
namespace stopwalk::edits {

struct Added {
  Edit edit;
  std::string id;  // as seen from outside
};

Added addRoom(const layout::Layout& layout, const geometry::Polygon& outline, const std::string& name);
// `first` carries it; `second` is a room or `outside`.
Added addDoor(const layout::Layout& layout, const std::string& first, const std::string& second,
              geometry::Point at, double width);
Added addFixture(const layout::Layout& layout, const std::string& name, const layout::Footprint& footprint,
                 geometry::Point at, double turn, std::optional<double> height = {});
// With the stations and devices that such a machine usually has; it is named after its template.
Added addMachine(const layout::Layout& layout, const layout::MachineTemplate& from, geometry::Point at,
                 double turn);
Added addStation(const layout::Layout& layout, const std::string& machine, layout::Role role,
                 geometry::Point at);
// Faces the machine's operator. A bar or cord without a length is as wide as the machine.
Added addMachineDevice(const layout::Layout& layout, const std::string& machine,
                       const layout::DeviceKind& kind, geometry::Point at, std::optional<double> length = {});
// Stops nothing where `stops` is absent. A bar or cord without a length is a metre long.
Added addWallDevice(const layout::Layout& layout, const layout::DeviceKind& kind, geometry::Point at,
                    double faces, std::optional<layout::Stops> stops = {}, std::optional<double> length = {});
Added addPhone(const layout::Layout& layout, const std::string& name, geometry::Point at, double faces);
Added addNote(const layout::Layout& layout, const std::string& text, geometry::Point at,
              std::optional<geometry::Point> points_to = {});
// `from` and `to`: stations, devices or phones.
Added addTapeCheck(const layout::Layout& layout, const std::string& from, const std::string& to, double taped,
                   const std::string& date = {}, const std::string& by = {});
// In place of the one there is; none takes it away.
Edit setUnderlay(const layout::Layout& layout, const std::optional<layout::Underlay>& underlay);

// How long a bar or cord is before someone says: on a wall, and on a machine.
inline constexpr double kUsualBar_mm = 1000;
double widthOf(const layout::Machine& machine);

}  // namespace stopwalk::edits
