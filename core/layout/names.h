#pragma once

#include <string>

namespace stopwalk::layout {

// What a room or machine is called: by its name, else by its id.
template <class Thing>
const std::string& nameOf(const Thing& thing) {
  return thing.name.empty() ? thing.id : thing.name;
}

}  // namespace stopwalk::layout
