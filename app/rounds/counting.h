#pragma once

#include <QString>
#include <map>

#include "app/plan/items/check_sign.h"
#include "core/inspection/on_record.h"
#include "core/layout/layout.h"

namespace stopwalk::rounds {

// Which of the passes on record count as a test by hand today, of the devices as the layout has them, and
// close what failed.
class Counting {
 public:
  Counting() = default;
  Counting(const inspection::OnRecord& records, const layout::Layout& layout);

  // What is to be said behind "pass"; empty: it counts and leaves nothing open, or it is no pass, or was
  // corrected.
  QString but(const inspection::Check& check) const;
  // A pass of which something is to be said falls short.
  plan::CheckSign sign(const inspection::Check& check) const;

 private:
  std::map<std::size_t, QString> passes_;  // of checks that are not corrected, by number: what is to be said
};

}  // namespace stopwalk::rounds
