#pragma once

#include <QtGlobal>

// Every text of the paper sheet of an inspection round, in English; translated as those of texts.h are. What
// a device is and was found to be is said as the window says it (app/rounds).
namespace stopwalk::poster::texts {

inline constexpr const char* kSheet = QT_TRANSLATE_NOOP("poster", "Inspection round");
inline constexpr const char* kSheetOfAll = QT_TRANSLATE_NOOP("poster", "All devices (%1)");
inline constexpr const char* kSheetOfDue = QT_TRANSLATE_NOOP("poster", "Devices that are due (%1)");
inline constexpr const char* kSheetOfRoom = QT_TRANSLATE_NOOP("poster", "Devices of %2 (%1)");
inline constexpr const char* kSheetOfDueInRoom =
    QT_TRANSLATE_NOOP("poster", "Devices of %2 that are due (%1)");
inline constexpr const char* kPrinted = QT_TRANSLATE_NOOP("poster", "Printed %1");
inline constexpr const char* kRoundNumber = QT_TRANSLATE_NOOP("poster", "Round %1, opened %2 by %3");
inline constexpr const char* kRoundToFill = QT_TRANSLATE_NOOP("poster", "Round no.");
inline constexpr const char* kDate = QT_TRANSLATE_NOOP("poster", "Date");
inline constexpr const char* kBegunAt = QT_TRANSLATE_NOOP("poster", "Begun at");
inline constexpr const char* kInspector = QT_TRANSLATE_NOOP("poster", "Inspector");
inline constexpr const char* kSecondPerson = QT_TRANSLATE_NOOP("poster", "Second person");
inline constexpr const char* kHowToFill = QT_TRANSLATE_NOOP(
    "poster",
    "Tick what was tried and was so. Where it was tried and was not so, write NO into the box. What was not "
    "tried stays empty. One result for each device, and the time where it failed.");
inline constexpr const char* kHowToEnter =
    QT_TRANSLATE_NOOP("poster",
                      "Enter it afterwards with its time: in the window in the place Inspect, under \"Done "
                      "on paper on\"; or %1 (a "
                      "round that was not opened before: %2). Keep this sheet.");
inline constexpr const char* kRouteOnPlan =
    QT_TRANSLATE_NOOP("poster", "The walk, in the order of the numbers. 1 : %1");
inline constexpr const char* kWalkInHours =
    QT_TRANSLATE_NOOP("poster", "The walk is %1, doors as in opening hours.");
inline constexpr const char* kWalkAfterHours =
    QT_TRANSLATE_NOOP("poster", "The walk is %1, doors as after hours.");
inline constexpr const char* kNoneShorter = QT_TRANSLATE_NOOP("poster", "No order is shorter.");
inline constexpr const char* kNoneShorterBy =
    QT_TRANSLATE_NOOP("poster", "No order is shorter by more than %1 %.");
inline constexpr const char* kGapUnknown =
    QT_TRANSLATE_NOOP("poster", "How much shorter another order might be is not known.");
inline constexpr const char* kOwnOrder = QT_TRANSLATE_NOOP(
    "poster", "The order is that of the round: on the plan as it is now another may be shorter.");
inline constexpr const char* kBeginsAt = QT_TRANSLATE_NOOP("poster", "It begins at %1.");
inline constexpr const char* kLeadsBack = QT_TRANSLATE_NOOP("poster", "It leads back to where it began.");
inline constexpr const char* kNoWayTo =
    QT_TRANSLATE_NOOP("poster", "On the plan no way leads to: %1. See how to get there.");
inline constexpr const char* kNoWayHere = QT_TRANSLATE_NOOP("poster", "On the plan no way leads here.");

inline constexpr const char* kOnMachine = QT_TRANSLATE_NOOP("poster", "%1: %2");
inline constexpr const char* kNoRoom = QT_TRANSLATE_NOOP("poster", "In no room");
inline constexpr const char* kOnAWall = QT_TRANSLATE_NOOP("poster", "%1, on a wall or post");
inline constexpr const char* kAboveFloor = QT_TRANSLATE_NOOP("poster", "%1, %2 above the floor");
inline constexpr const char* kStops = QT_TRANSLATE_NOOP("poster", "Stops: %1");
inline constexpr const char* kWiredToNothing = QT_TRANSLATE_NOOP("poster", "Is wired to stop nothing.");
inline constexpr const char* kToTest = QT_TRANSLATE_NOOP("poster", "To test, with the work clear: %1");
inline constexpr const char* kMustRest =
    QT_TRANSLATE_NOOP("poster", "What a stop stops must come to rest, and stay at rest.");
inline constexpr const char* kToLookAt = QT_TRANSLATE_NOOP("poster", "No stop. To look at: %1");
inline constexpr const char* kFailedOn = QT_TRANSLATE_NOOP("poster", "Failed on %1 (%2). This is a retest.");
inline constexpr const char* kNameUnread = QT_TRANSLATE_NOOP("poster", "name cannot be read");
inline constexpr const char* kNotOnPlan =
    QT_TRANSLATE_NOOP("poster", "It is no longer on the plan: nothing can be recorded of it.");

inline constexpr const char* kSeen = QT_TRANSLATE_NOOP("poster", "Nothing in its way, marking legible");
inline constexpr const char* kSeenNoStop = QT_TRANSLATE_NOOP(
    "poster", "In its place, with its pin if it has one; nothing in its way, marking legible");
inline constexpr const char* kClear = QT_TRANSLATE_NOOP("poster", "Nothing in its way");
inline constexpr const char* kLegible = QT_TRANSLATE_NOOP("poster", "Marking legible");
inline constexpr const char* kPressed = QT_TRANSLATE_NOOP("poster", "Pressed, and it worked");
inline constexpr const char* kPressedRunning =
    QT_TRANSLATE_NOOP("poster", "Pressed while running at no load: the machine stopped");
inline constexpr const char* kLatches = QT_TRANSLATE_NOOP("poster", "Latches: it stays as it was pressed");
inline constexpr const char* kStaysReleased =
    QT_TRANSLATE_NOOP("poster", "Stays stopped when it is released");
inline constexpr const char* kStaysPower = QT_TRANSLATE_NOOP("poster", "Stays stopped when power returns");

inline constexpr const char* kPass = QT_TRANSLATE_NOOP("poster", "Pass");
inline constexpr const char* kFail = QT_TRANSLATE_NOOP("poster", "Fail");
inline constexpr const char* kNotTested = QT_TRANSLATE_NOOP("poster", "Not tested");
inline constexpr const char* kCouldNotReach = QT_TRANSLATE_NOOP("poster", "Could not reach");

inline constexpr const char* kTime = QT_TRANSLATE_NOOP("poster", "Time");
inline constexpr const char* kRunDown = QT_TRANSLATE_NOOP("poster", "Run-down, seconds");
inline constexpr const char* kNote = QT_TRANSLATE_NOOP("poster", "Note");
inline constexpr const char* kTaggedOut = QT_TRANSLATE_NOOP("poster", "Tagged out by, until when");
inline constexpr const char* kDoneAtOnce = QT_TRANSLATE_NOOP("poster", "What else was done at once");
inline constexpr const char* kStillToDo =
    QT_TRANSLATE_NOOP("poster", "Still to be done, by whom, until when");
inline constexpr const char* kPageOf = QT_TRANSLATE_NOOP("poster", "page %1 of %2");

}  // namespace stopwalk::poster::texts
