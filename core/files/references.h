#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/files/problems.h"

namespace stopwalk::files {

// What the ids of one file name, and what other things say of them. An id is unique among all things of the
// file that are not on a machine; the stations and devices of one machine have ids unique on it, and are
// `machine/thing` from outside.
enum class Names { Room, Machine, Station, Device, Phone, Other };

class References {
 public:
  explicit References(Problems& problems) : problems_(problems) {}

  // `full` is the id as it is known from outside. False, and reported: it is taken or reserved.
  bool define(const std::string& full, Names what, std::size_t byte);
  // To be checked when everything has been read: `full` must name one of `wanted`, described as `a room`.
  // Messages show the id without its first `hidden` characters.
  void mention(std::string full, std::vector<Names> wanted, std::string described, std::size_t byte,
               std::size_t hidden = 0);
  void check();

 private:
  struct Mention {
    std::string full;
    std::vector<Names> wanted;
    std::string described;
    std::size_t byte;
    std::size_t hidden;
  };
  struct Definition {
    Names what;
    std::size_t byte;
  };
  std::string suggestion(const Mention& mention);

  Problems& problems_;
  std::unordered_map<std::string, Definition> defined_;
  std::vector<std::pair<std::string_view, Names>> order_;  // into `defined_`, whose keys do not move
  std::vector<Mention> mentions_;
  std::size_t comparisons_left_ = 500'000;  // each suggestion looks at every id
};

}  // namespace stopwalk::files
