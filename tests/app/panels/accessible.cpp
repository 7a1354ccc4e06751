#include "tests/app/panels/accessible.h"

#include <QAccessible>
#include <QLineEdit>

namespace stopwalk::panels {

QStringList namelessControls(const QWidget& widget) {
  QStringList nameless;
  for (const QWidget* child : widget.findChildren<QWidget*>()) {
    const bool inner = child->objectName().startsWith("qt_");
    if (child->focusPolicy() == Qt::NoFocus || inner || qobject_cast<const QLineEdit*>(child->focusProxy()))
      continue;
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(child));
    if (!face || face->text(QAccessible::Name).isEmpty())
      nameless << QString("%1 in %2")
                      .arg(child->metaObject()->className(), child->parent()->metaObject()->className());
  }
  return nameless;
}

}  // namespace stopwalk::panels
