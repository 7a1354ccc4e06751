#pragma once

#include "core/floor/layer.h"
#include "core/floor/walk_change.h"

namespace stopwalk::floor {

// The steps of places on the whole floor, with the parts that they lead to, over changes that leave the parts
// as they are. Places are local segments; a point is one of no length.
class KnownEnds {
 public:
  // None: not known.
  const Ends* find(const Segment& local) const;
  // Those that a finder of the whole floor found. It numbers the parts in a way of its own; one that cannot
  // be told to be an old one gets a number of its own, so that more seems to be parted than is, never less.
  void add(EndsTable fresh);
  // What stands so near has a say in the steps.
  void forgetNear(const WalkChange& change, Point origin);

 private:
  EndsTable ends_;
  Mesh::Index next_part_ = 0;
};

// Those of them that still hold after a change (none: null).
struct EndsAfter {
  const KnownEnds* known = nullptr;
  const WalkChange* change = nullptr;
  Point origin;
  const Ends* find(const Segment& local) const;
};

}  // namespace stopwalk::floor
