#pragma once

#include <QPalette>
#include <QWidget>
#include <utility>

namespace stopwalk::panels {

// How what is shown stands to what is drawn. What was just changed is marked in what is copied at once, and
// by pale letters a frame later; words, which move what stands below them, come when it takes longer.
enum class Age { Current, JustChanged, BeingComputed, MomentAgo };

inline bool isPale(Age age) {
  return age >= Age::BeingComputed;
}

// Between what is written and what it is written on: it is still to be read, at 4.5:1 or better.
inline QColor paled(const QColor& ink, const QColor& ground) {
  const auto mix = [](int a, int b) { return (62 * a + 38 * b) / 100; };
  return {mix(ink.red(), ground.red()), mix(ink.green(), ground.green()), mix(ink.blue(), ground.blue())};
}

// Pales what is written on `widget` and all in it: what is of a moment ago, while it is computed anew. Words
// beside it say so too.
inline void showPale(QWidget& widget, bool is_pale) {
  QPalette palette;
  if (is_pale)
    for (const auto& [role, ground] :
         {std::pair(QPalette::Text, QPalette::Base), std::pair(QPalette::WindowText, QPalette::Window),
          std::pair(QPalette::ButtonText, QPalette::Button)})
      palette.setColor(role, paled(widget.palette().color(role), widget.palette().color(ground)));
  widget.setPalette(palette);
}

}  // namespace stopwalk::panels
