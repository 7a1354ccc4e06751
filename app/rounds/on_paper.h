#pragma once

#include <QString>
#include <optional>

#include "core/inspection/moment.h"

class QLineEdit;

namespace stopwalk::rounds {

// When something on paper was done, as it was typed.
struct OnPaper {
  std::optional<inspection::Moment> at;  // none: nothing was typed, or `why`
  QString why;                           // it cannot be taken, in a sentence
};
// In a line that is named on the screen: `2026-03-02 09:15` on the clock of this place, or with a zone
// behind; from `earliest` (if given) to `now`.
OnPaper onPaper(const QLineEdit& line, const std::optional<inspection::Moment>& earliest,
                const inspection::Moment& now);

}  // namespace stopwalk::rounds
