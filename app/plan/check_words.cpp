#include "app/plan/check_words.h"

#include "app/plan/words.h"

namespace stopwalk::plan {

QString wordOf(CheckSign sign) {
  switch (sign) {
    case CheckSign::None:
      return {};
    case CheckSign::Passed:
      return Words::tr("passed");
    case CheckSign::Short:
      return Words::tr("passed, but does not count in full");
    case CheckSign::Failed:
      return Words::tr("failed");
    case CheckSign::NotReached:
      return Words::tr("could not be reached");
    case CheckSign::NotTested:
      return Words::tr("not tested");
    case CheckSign::Never:
      return Words::tr("never checked");
  }
  return {};
}

QString wordOf(CheckAge age) {
  switch (age) {
    case CheckAge::None:
      return {};
    case CheckAge::Fresh:
      return Words::tr("less than half of its time gone");
    case CheckAge::HalfGone:
      return Words::tr("half of its time gone");
    case CheckAge::Due:
      return Words::tr("due today");
    case CheckAge::Overdue:
      return Words::tr("overdue");
  }
  return {};
}

}  // namespace stopwalk::plan
