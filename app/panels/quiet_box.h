#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace stopwalk::panels {

// A choice that the wheel leaves as it is: it scrolls what the box stands in, and nobody chooses by passing
// over.
class QuietBox : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace stopwalk::panels
