#pragma once

#include <QtGlobal>

// Every text that a poster or a sheet may carry, in English. Translations stand in resources/translations in
// the context `poster`; what a shop writes itself is never translated.
namespace stopwalk::poster::texts {

inline constexpr const char* kTitle = QT_TRANSLATE_NOOP("poster", "STOP LOCATIONS");
inline constexpr const char* kTitleGoesOn = QT_TRANSLATE_NOOP("poster", "STOP LOCATIONS, page %1 of %2");
inline constexpr const char* kGoesOn = QT_TRANSLATE_NOOP("poster", "The list goes on: see page %1 of %2.");
inline constexpr const char* kHowToStop = QT_TRANSLATE_NOOP("poster", "How each machine stops");
inline constexpr const char* kOnWalls = QT_TRANSLATE_NOOP("poster", "On the walls");
inline constexpr const char* kAfter = QT_TRANSLATE_NOOP("poster", "Then: %1");
inline constexpr const char* kNotStops = QT_TRANSLATE_NOOP("poster", "These are not stops");
inline constexpr const char* kOutOfOrder = QT_TRANSLATE_NOOP("poster", "Out of order");
inline constexpr const char* kFailed =
    QT_TRANSLATE_NOOP("poster", "Failed a check on %1: do not rely on it.");
inline constexpr const char* kUnreadDay = QT_TRANSLATE_NOOP("poster", "a day that cannot be read");
inline constexpr const char* kGuardedStart =
    QT_TRANSLATE_NOOP("poster", "Starts the machine: put the pin back. It is not a stop.");
inline constexpr const char* kStopsNothing = QT_TRANSLATE_NOOP("poster", "Stops nothing.");
inline constexpr const char* kStopsEveryMachineHere =
    QT_TRANSLATE_NOOP("poster", "Stops every machine in this room.");
inline constexpr const char* kStopsEveryMachine =
    QT_TRANSLATE_NOOP("poster", "Stops every machine in all rooms.");
inline constexpr const char* kAlsoStops = QT_TRANSLATE_NOOP("poster", "Also stops: %1");
inline constexpr const char* kStopsOnly = QT_TRANSLATE_NOOP("poster", "Stops only: %1");
inline constexpr const char* kStopsOthers =
    QT_TRANSLATE_NOOP("poster", "Does not stop this machine. Stops: %1");
inline constexpr const char* kAndMore = QT_TRANSLATE_NOOP("poster", "%1 and %2 more");
inline constexpr const char* kHeld = QT_TRANSLATE_NOOP("poster", "Only for the one who holds it.");
inline constexpr const char* kNoStopUse = QT_TRANSLATE_NOOP("poster", "No stop of its own. Use %1.");
inline constexpr const char* kNoStop =
    QT_TRANSLATE_NOOP("poster", "No stop in this room. Keep off this machine.");
inline constexpr const char* kCutOffElsewhere =
    QT_TRANSLATE_NOOP("poster", "The cut-off for this room is elsewhere: %1.");
inline constexpr const char* kEmergency = QT_TRANSLATE_NOOP("poster", "In an emergency");
inline constexpr const char* kStopFirst =
    QT_TRANSLATE_NOOP("poster", "Stop the machine. Anyone may press any stop.");
inline constexpr const char* kDial = QT_TRANSLATE_NOOP("poster", "Dial: %1");
inline constexpr const char* kSay = QT_TRANSLATE_NOOP("poster", "Say where: %1");
inline constexpr const char* kMeet = QT_TRANSLATE_NOOP("poster", "Meet the responders: %1");
inline constexpr const char* kPhoneWay = QT_TRANSLATE_NOOP("poster", "Phone: %1 from here.");
inline constexpr const char* kPhoneWayThrough =
    QT_TRANSLATE_NOOP("poster", "Phone: %1 from here, by way of %2.");
inline constexpr const char* kPhoneAfterHours = QT_TRANSLATE_NOOP("poster", "After hours: %1 from here.");
inline constexpr const char* kPhoneAfterHoursThrough =
    QT_TRANSLATE_NOOP("poster", "After hours: %1 from here, by way of %2.");
inline constexpr const char* kNoPhone =
    QT_TRANSLATE_NOOP("poster", "No phone is drawn. Find out now where the nearest is.");
inline constexpr const char* kNoWay = QT_TRANSLATE_NOOP("poster", "No way to a phone is known from here.");
inline constexpr const char* kNoWayAfterHours =
    QT_TRANSLATE_NOOP("poster", "After hours no phone can be reached from here.");
inline constexpr const char* kNarrow = QT_TRANSLATE_NOOP("poster", "The way is narrow.");
inline constexpr const char* kOutside = QT_TRANSLATE_NOOP("poster", "outside");
inline constexpr const char* kYouAreHere = QT_TRANSLATE_NOOP("poster", "You are here");
inline constexpr const char* kTo = QT_TRANSLATE_NOOP("poster", "to %1");
inline constexpr const char* kHowItStops = QT_TRANSLATE_NOOP("poster", "How it stops");
inline constexpr const char* kNoOwnStop = QT_TRANSLATE_NOOP("poster", "This machine has no stop of its own.");
inline constexpr const char* kWhatStopsIt = QT_TRANSLATE_NOOP("poster", "What stops it");
inline constexpr const char* kDoNotStopIt = QT_TRANSLATE_NOOP("poster", "These do not stop it");
inline constexpr const char* kIfOutOfReach = QT_TRANSLATE_NOOP("poster", "If you cannot reach it");
inline constexpr const char* kNextStop = QT_TRANSLATE_NOOP("poster", "%1: %2 from where you work.");
inline constexpr const char* kNextStopIn = QT_TRANSLATE_NOOP("poster", "%1 in %3: %2 from where you work.");
inline constexpr const char* kNextStopAtHand =
    QT_TRANSLATE_NOOP("poster", "%1: at hand from where you work.");
inline constexpr const char* kAfterHours = QT_TRANSLATE_NOOP("poster", "After hours: %1");
inline constexpr const char* kOfMachine = QT_TRANSLATE_NOOP("poster", "%1 on %2");
inline constexpr const char* kNoNextStop = QT_TRANSLATE_NOOP("poster", "No other stop stops this machine.");
inline constexpr const char* kNothingStopsIt =
    QT_TRANSLATE_NOOP("poster", "Nothing stops this machine. Keep off it.");
inline constexpr const char* kNotAfterHours =
    QT_TRANSLATE_NOOP("poster", "After hours there is no way to it.");
inline constexpr const char* kNotMeasured = QT_TRANSLATE_NOOP(
    "poster", "No way from where you work is known: the plan has none, or no place to work at.");
inline constexpr const char* kRevision = QT_TRANSLATE_NOOP("poster", "Revision %1");
inline constexpr const char* kNoRevision = QT_TRANSLATE_NOOP("poster", "No revision given");
inline constexpr const char* kFaults =
    QT_TRANSLATE_NOOP("poster", "The plan has drawing faults (%1): something may be missing here.");
inline constexpr const char* kNotSaved = QT_TRANSLATE_NOOP("poster", "NOT SAVED");
inline constexpr const char* kLayout = QT_TRANSLATE_NOOP("poster", "Layout %1");
inline constexpr const char* kSizes =
    QT_TRANSLATE_NOOP("poster", "Letters (ASR A1.3): title %1 mm, read to %2 m; table %3 mm, to %4 m.");
inline constexpr const char* kSheetSizes =
    QT_TRANSLATE_NOOP("poster", "Letters (ASR A1.3): name %1 mm, read to %2 m; how it stops %3 mm, to %4 m.");
inline constexpr const char* kSignSizes = QT_TRANSLATE_NOOP(
    "poster", "Signs on the plan: %1 mm, recognised to %2 m (60 times the height, ISO 3864-1, unlit).");
inline constexpr const char* kCheckBar =
    QT_TRANSLATE_NOOP("poster", "Print at 100 %: this bar is 100 mm long.");
inline constexpr const char* kCaution = QT_TRANSLATE_NOOP(
    "poster",
    "Drawn from a plan and checked against chosen rules. It certifies no machine, stop or room. Local codes, "
    "the machine's maker, the authority having jurisdiction and licensed people come first. Never rely on a "
    "stop as a guard. Test a stop only as the maker and the shop's procedure say, with the work clear.");

// How the bundled kinds of device are stopped, as in resources/device-kinds.yaml; a test holds them together.
inline constexpr const char* kKinds[] = {
    QT_TRANSLATE_NOOP("poster", "Mushroom button"),
    QT_TRANSLATE_NOOP("poster", "Press the red button."),
    QT_TRANSLATE_NOOP("poster", "Foot bar"),
    QT_TRANSLATE_NOOP("poster", "Step on the bar."),
    QT_TRANSLATE_NOOP("poster", "Switch thrown to horizontal"),
    QT_TRANSLATE_NOOP("poster", "Throw the switch to horizontal."),
    QT_TRANSLATE_NOOP("poster", "Trigger"),
    QT_TRANSLATE_NOOP("poster", "Let go of the trigger."),
    QT_TRANSLATE_NOOP("poster", "Guarded start with pin"),
    QT_TRANSLATE_NOOP("poster", "This starts the machine. It stops nothing."),
    QT_TRANSLATE_NOOP("poster", "Pull cord"),
    QT_TRANSLATE_NOOP("poster", "Pull the cord."),
    QT_TRANSLATE_NOOP("poster", "Paddle"),
    QT_TRANSLATE_NOOP("poster", "Push the paddle."),
    QT_TRANSLATE_NOOP("poster", "Room cut-off"),
    QT_TRANSLATE_NOOP("poster", "Press to cut the power to the room."),
    QT_TRANSLATE_NOOP("poster", "Isolator"),
    QT_TRANSLATE_NOOP("poster", "Turn the supply switch to off."),
};

}  // namespace stopwalk::poster::texts
