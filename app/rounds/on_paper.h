#pragma once

#include <QString>
#include <optional>

#include "core/inspection/moment.h"

namespace stopwalk::rounds {

// When something on paper was done, as it was typed.
struct OnPaper {
  std::optional<inspection::Moment> at;  // none: nothing was typed, or `why`
  QString why;                           // it cannot be taken, in a sentence
};
// `2026-03-02 09:15` on the clock of this place, or with a zone behind; from `earliest` (if given) to `now`.
OnPaper onPaper(const QString& typed, const std::optional<inspection::Moment>& earliest,
                const inspection::Moment& now);

}  // namespace stopwalk::rounds
