#pragma once

#include <string>

namespace stopwalk::plan {

// What the pointer is to do on the plan: pick things, or draw a new one.
struct Choice {
  enum class What {
    Select,
    Room,  // a rectangle
    RoomByCorners,
    Door,
    Fixture,  // key: bench, column, rack
    Machine,  // key: of the template
    Station,  // onto the machine under the pointer or selected; key: role
    Device,   // key: of the kind; onto a machine, or else onto a wall
    Phone,
    Note,
    TapeCheck,
    ScaleUnderlay,  // two points and the distance between them
  };
  What what = What::Select;
  std::string key = {};
  bool operator==(const Choice&) const = default;
};

}  // namespace stopwalk::plan
