#include "app/panels/fields/looking_only.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace stopwalk::panels {
namespace {

// On the ground of the panel, as what cannot be typed in.
void setGround(QWidget& text, bool only) {
  QPalette palette;
  if (only) palette.setBrush(QPalette::Base, palette.brush(QPalette::Window));
  text.setPalette(palette);
}

template <class Text>
void setTexts(QWidget& fields, bool only) {
  for (Text* text : fields.findChildren<Text*>()) {
    if (text->isReadOnly() == only) continue;
    text->setReadOnly(only);
    setGround(*text, only);
  }
}

}  // namespace

void setLookingOnly(QWidget& fields, bool only) {
  static constexpr const char* kOnly = "lookingOnly";
  if (fields.property(kOnly).toBool() == only && !only) return;  // never was otherwise
  fields.setProperty(kOnly, only);
  setTexts<QLineEdit>(fields, only);
  setTexts<QPlainTextEdit>(fields, only);
  for (QComboBox* box : fields.findChildren<QComboBox*>()) box->setEnabled(!only);
  for (QAbstractButton* button : fields.findChildren<QAbstractButton*>()) button->setEnabled(!only);
  for (QAbstractItemView* view : fields.findChildren<QAbstractItemView*>()) view->setEnabled(!only);
}

}  // namespace stopwalk::panels
