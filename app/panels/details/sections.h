#pragma once

#include <string>
#include <vector>

#include "app/panels/details/section.h"

// The fields of each kind of thing, a file each.
namespace stopwalk::panels {

using Ids = std::vector<std::string>;

Section* makeWorkshopSection(const Desk& desk, QWidget* parent);
Section* makeUnderlaySection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeRoomSection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeDoorSection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeFixtureSection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeMachineSection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeStationSection(const Desk& desk, Ids ids, QWidget* parent);
// Of devices on machines, or on walls.
Section* makeDeviceSection(const Desk& desk, Ids ids, bool on_machine, QWidget* parent);
Section* makePhoneSection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeNoteSection(const Desk& desk, Ids ids, QWidget* parent);
Section* makeTapeCheckSection(const Desk& desk, Ids ids, QWidget* parent);
// What things of several kinds have in common.
Section* makeMixedSection(const Desk& desk, Ids ids, QWidget* parent);

}  // namespace stopwalk::panels
