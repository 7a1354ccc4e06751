#pragma once

#include <QPalette>
#include <QWidget>

namespace stopwalk::panels {

// Pales what is written on `widget` and all in it: what is of a moment ago, while it is computed anew. Words
// beside it say so too.
inline void showPale(QWidget& widget, bool is_pale) {
  QPalette palette;
  if (is_pale)
    for (const auto role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText})
      palette.setColor(role, widget.palette().color(QPalette::Disabled, role));
  widget.setPalette(palette);
}

}  // namespace stopwalk::panels
