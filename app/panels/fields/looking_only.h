#pragma once

class QWidget;

namespace stopwalk::panels {

// Makes all that can be typed, picked or pressed in `fields` be for looking only, and look so: texts can
// still be read, copied and gone through by Tab. Or makes it as usual again.
void setLookingOnly(QWidget& fields, bool only);

}  // namespace stopwalk::panels
