#pragma once

#include <exception>
#include <functional>

namespace stopwalk::audit {

// Whether what is being worked out is still wanted; asked on its thread, again and again. None: it is.
using Wanted = std::function<bool()>;

// Where it no longer is.
struct NoLongerWanted : std::exception {
  const char* what() const noexcept override { return "it is no longer wanted"; }
};

inline void goOnIf(const Wanted& wanted) {
  if (wanted && !wanted()) throw NoLongerWanted();
}

}  // namespace stopwalk::audit
