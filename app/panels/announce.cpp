#include "app/panels/announce.h"

#include <QAccessible>
#include <QWidget>

namespace stopwalk::panels {

void announce(QWidget& widget) {
  if (!QAccessible::isActive()) return;
  QAccessibleEvent alert(&widget, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

}  // namespace stopwalk::panels
