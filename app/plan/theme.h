#pragma once

#include <QColor>
#include <QPalette>

namespace stopwalk::plan {

// Every colour of the plan by its meaning; nothing else in the window names a colour.
struct Theme {
  bool dark = false;
  QColor outside;   // round the rooms
  QColor floor;     // of a room
  QColor outdoors;  // floor of a yard
  QColor grid;
  QColor ink;           // walls, outlines, text
  QColor quiet_ink;     // dimensions, rulers, notes
  QColor machine;       // fill
  QColor fixture;       // fill
  QColor hatch;         // of a fixture
  QColor stop_ground;   // yellow
  QColor stop_sign;     // red
  QColor start_ground;  // of a guarded start: grey
  QColor dark_sign;     // on a light fill
  QColor phone;         // green
  QColor phone_sign;    // white
  QColor symbol_rim;    // round the ground of a symbol
  QColor selection;     // blue
  QColor measured;      // of the finding that is looked at: reddish purple
  QColor hazard;        // vermilion
  QColor meets;         // blue-green
  QColor warns;         // orange, as a fill only
  QColor fails;         // vermilion
  QColor computing;     // grey
  QColor label_ground;  // behind text on the plan
  // The reach map, from near over the middle to far: by lightness alone they can be told apart.
  QColor reach_near, reach_middle, reach_far;
  QColor reach_none;  // no way, and between the stripes of a narrow one

  // Of the reach map, at a part of the whole scale in [0, 1].
  QColor reachAt(double part) const;

  static Theme light();
  static Theme darkened();
  // The one that goes with a window of these colours.
  static Theme of(const QPalette& palette);
  bool operator==(const Theme&) const = default;
};

}  // namespace stopwalk::plan
