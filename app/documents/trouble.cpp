#include "app/documents/trouble.h"

namespace stopwalk::documents {

QString Trouble::text() const {
  QString text = path + ": " + what;
  if (!why.isEmpty()) text += " (" + why + ")";
  text += ".";
  if (!advice.isEmpty()) text += " " + advice;
  return text;
}

}  // namespace stopwalk::documents
