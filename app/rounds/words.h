#pragma once

#include <QString>

#include "core/inspection/schedule.h"
#include "core/layout/layout.h"
#include "core/planning/inspected_devices.h"

// How inspections are spoken of in the window.
namespace stopwalk::rounds {

QString wordOf(inspection::Result result);
// What may be tried, as a box to tick says it; at what is no stop.
QString wordOf(inspection::Tried test);
QString lookWord();
QString wordOf(inspection::Due::What what);
// What the catalogue calls a kind of device, or says to do with it, as posters say it; a shop's own as it is.
QString ofKind(const std::string& text);
// A person's name as it is recorded; empty: it names nobody.
QString personTyped(const QString& text);
// How to try a stop, or that what is none is only looked at, as the sheet of a round says it; `how`: to work
// it.
QString howToTry(const QString& how, bool is_stop);
// "2.45 s"
QString secondsText(double seconds);
// "3 Feb 2026" as the language writes it.
QString dayText(inspection::Date day);
// "3 Feb 2026, 09:15"
QString momentText(const inspection::Moment& moment);
// "3 Feb, 09:15"; with the year if that is not this one, and with the zone if it is not that of this place.
QString shortMomentText(const inspection::Moment& moment);

// Its name, or its id; of none empty.
QString roomName(const layout::Layout& layout, const std::string& id);
QString machineName(const layout::Layout& layout, const std::string& id);
// "Table saw: paddle" or "Room cut-off (cut-off-gate)": what it is on, or which of its kind it is.
QString nameOf(const layout::Layout& layout, const planning::InspectedDevice& device);

}  // namespace stopwalk::rounds
