#pragma once

#include <QString>
#include <optional>

#include "core/inspection/record.h"

class QLineEdit;

namespace stopwalk::rounds {

// When something on paper was done, as it was typed.
struct OnPaper {
  std::optional<inspection::Moment> at;  // none: nothing was typed, or `why`
  QString why;                           // it cannot be taken, in a sentence
};
// In a line that is named on the screen: `2026-03-02 09:15` on the clock of this place, or with a zone
// behind; to `now`, and of a check from when its round was begun. Null: it is of no round yet.
OnPaper onPaper(const QLineEdit& line, const inspection::Round* round, const inspection::Moment& now);

// A time alone, as `9:15` or `0915`, with the day (and the zone) of its round, if that is from paper; all
// else as it is typed. Four digits that may be a year are no time.
QString withDay(const QString& typed, const inspection::Round& round);

// As it is typed there; with its zone only where it is another than a clock of this place shows then.
QString typedFor(const inspection::Moment& moment);
// What was typed there, short; as it is if that is no one time.
QString shortText(const QString& typed);

}  // namespace stopwalk::rounds
