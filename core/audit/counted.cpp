#include "core/audit/counted.h"

#include "core/audit/wording.h"

namespace stopwalk::audit {

std::string counted(std::size_t n, const std::string& one) {
  return std::to_string(n) + " " + one + (n == 1 ? "" : "s");
}

std::string counted(std::size_t n, Verdict verdict) {
  std::string one(word(verdict));
  if (n != 1) one.pop_back();
  return std::to_string(n) + " " + one;
}

}  // namespace stopwalk::audit
