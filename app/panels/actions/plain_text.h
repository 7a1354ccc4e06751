#pragma once

#include <QAction>

namespace stopwalk::panels {

// Without the marks for keys: `&File` and `Open...`.
inline QString plainText(QString text) {
  text.replace("&&", QChar(1)).remove('&').replace(QChar(1), '&');
  return text.endsWith("...") ? text.chopped(3) : text;
}

// As it stands in a sentence: "Export the findings".
inline QString nameOf(const QAction& action) {
  return plainText(action.text()).remove(QStringLiteral("…"));
}

}  // namespace stopwalk::panels
