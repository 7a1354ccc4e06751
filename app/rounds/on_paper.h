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

// As it is typed there; with its zone only where it is another than a clock of this place shows then.
QString typedFor(const inspection::Moment& moment);
// What was typed there, short; as it is if that is no one time.
QString shortText(const QString& typed);

}  // namespace stopwalk::rounds
