#include "app/panels/fields/text_field.h"

#include <QDate>

namespace stopwalk::panels {

namespace {

QString textTr(const char* text) {
  return QCoreApplication::translate("TextField", text);
}

QString dateTrouble(const std::string& text) {
  const QString date = QString::fromStdString(text);
  if (date.isEmpty() || (date.size() == 10 && QDate::fromString(date, Qt::ISODate).isValid())) return {};
  return textTr(QT_TRANSLATE_NOOP("TextField", "Not a day. Type it as year, month, day: 2026-03-02."));
}

}  // namespace

Typed<std::string> TextField::read(const QString& typed) const {
  const std::string text = typed.trimmed().toStdString();
  return {text, check_ ? check_(text) : QString()};
}

TextField::Check notEmpty() {
  return [](const std::string& text) {
    return text.empty() ? textTr(QT_TRANSLATE_NOOP("TextField", "It cannot be left empty.")) : QString();
  };
}

QString idTrouble(const std::string& id) {
  if (id.empty()) return textTr(QT_TRANSLATE_NOOP("TextField", "Everything needs an id, such as saw-2."));
  if (id == layout::kAll || id == layout::kOutside)
    return textTr(QT_TRANSLATE_NOOP("TextField", "“%1” means something else in a layout. Choose another id."))
        .arg(QString::fromStdString(id));
  for (const char c : id)
    if (!(c >= 'a' && c <= 'z') && !(c >= '0' && c <= '9') && c != '-')
      return textTr(QT_TRANSLATE_NOOP(
          "TextField", "An id has only lower-case letters a to z, digits and hyphens, such as saw-2."));
  return {};
}

DateField::DateField(FieldText text, Check besides, QWidget* parent)
    : TextField(
          std::move(text),
          [besides = std::move(besides)](const std::string& day) {
            const QString trouble = dateTrouble(day);
            return trouble.isEmpty() && besides ? besides(day) : trouble;
          },
          parent) {}

void DateField::step(int steps, bool large) {
  if (showsSeveral()) return;
  if (line()->text().isEmpty()) return take(QDate::currentDate().toString(Qt::ISODate).toStdString());
  applyPending();
  const QDate date = QDate::fromString(QString::fromStdString(value()), Qt::ISODate);
  if (!trouble().isEmpty() || !date.isValid()) return;
  take((large ? date.addMonths(steps) : date.addDays(steps)).toString(Qt::ISODate).toStdString());
}

}  // namespace stopwalk::panels
