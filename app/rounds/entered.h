#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/inspection/record.h"

namespace stopwalk::rounds {

// What stands on a card before it is a record. Texts as they were typed.
struct Entered {
  std::vector<std::pair<inspection::Tried, bool>> tested;  // in the order of kTried; no: tried, and not so
  std::optional<inspection::Result> result;                // none: not chosen yet
  QStringList run_down;                                    // each run, in seconds
  QString note, second;
  // Of a failure, or of what could not be tested; nothing of it is recorded with a pass:
  QString tagged_by, tagged_until;  // the machine, out of use
  QString action;                   // what else was done at once
  QString todo, owner, until;       // what is still to be done
  bool operator==(const Entered&) const = default;
};

// Why it cannot be recorded yet, in a sentence; empty: it can. `latches`: the device stays in when pressed.
QString whatIsMissing(const Entered& entered, bool latches);
// Whether anything was typed of what was done or is still to be done.
bool asksForMending(const Entered& entered);
// Into a check that has all else. Only where nothing is missing.
void put(const Entered& entered, inspection::Check& check);
// To begin a correction with: all that the check says but its result, which is chosen anew.
Entered enteredOf(const inspection::Check& check);

// Seconds of one run as people type them, with a point or a comma; none: it cannot be one.
std::optional<double> runTyped(const QString& text);
QString runText(double run_s);
// Which run cannot be read, and what would be accepted, in a sentence; empty: all can be.
QString badRun(const QStringList& runs);

// To be kept; what cannot be read back is nothing.
QByteArray asText(const Entered& entered);
Entered enteredIn(const QByteArray& text);

}  // namespace stopwalk::rounds
