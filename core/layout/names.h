#pragma once

#include <string>
#include <unordered_map>
#include <vector>

namespace stopwalk::layout {

// What a room or machine is called: by its name, else by its id.
template <class Thing>
const std::string& nameOf(const Thing& thing) {
  return thing.name.empty() ? thing.id : thing.name;
}

// What rooms, machines or phones are called among themselves: by name, with the id behind a name that another
// of them has. `NamesApart(layout.machines).of(machine)`: "Engine lathe (lathe-2)".
class NamesApart {
 public:
  template <class Thing>
  explicit NamesApart(const std::vector<Thing>& things) {
    for (const Thing& thing : things) ++how_many_[nameOf(thing)];
  }
  template <class Thing>
  std::string of(const Thing& thing) const {
    const std::string& name = nameOf(thing);
    const auto found = how_many_.find(name);
    return found != how_many_.end() && found->second > 1 ? name + " (" + thing.id + ")" : name;
  }

 private:
  std::unordered_map<std::string, int> how_many_;
};

}  // namespace stopwalk::layout
