#include "tests/support/translations.h"

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace stopwalk::translations {
namespace {

Message messageAt(QXmlStreamReader& xml, const QString& context) {
  Message message;
  message.context = context;
  message.counted = xml.attributes().value("numerus") == QStringLiteral("yes");
  while (xml.readNextStartElement()) {
    if (xml.name() == QStringLiteral("source")) {
      message.source = xml.readElementText();
    } else if (xml.name() == QStringLiteral("comment")) {
      message.comment = xml.readElementText();
    } else if (xml.name() == QStringLiteral("translation")) {
      message.finished = !xml.attributes().hasAttribute("type");
      if (!message.counted) {
        message.forms << xml.readElementText();
        continue;
      }
      while (xml.readNextStartElement()) message.forms << xml.readElementText();
    } else {
      xml.skipCurrentElement();
    }
  }
  return message;
}

// All that the expression finds, in order of the alphabet.
QStringList found(const QString& text, const char* expression) {
  QStringList all;
  for (auto match = QRegularExpression(expression).globalMatch(text); match.hasNext();)
    all << match.next().captured();
  all.sort();
  return all;
}

QStringList faultsOf(const Message& message, const QString& said) {
  QStringList faults;
  if (said.trimmed().isEmpty()) return {"is not translated"};
  const auto same = [&](const char* what, const char* expression) {
    if (found(message.source, expression) != found(said, expression)) faults << QString(what) + " differ";
  };
  same("placeholders", "%[1-9n]");
  same("mnemonics", "&(?!&)(?=\\w)");
  same("dots at the end", "(…|\\.\\.\\.)$");
  same("colons at the end", ":$");
  same("spaces at the ends", "^\\s+|\\s+$");
  same("tags", "<[^>]+>");
  if (QRegularExpression("^(Ctrl|Alt|Shift)\\+|^.$").match(message.source).hasMatch() &&
      message.context == "stopwalk::window::MainWindow" && said != message.source)
    faults << "keys differ";
  return faults;
}

}  // namespace

std::vector<Message> messagesOf(const QString& file, QString& why) {
  std::vector<Message> messages;
  QFile input(file);
  if (!input.open(QIODevice::ReadOnly)) return why = input.errorString(), messages;
  QXmlStreamReader xml(&input);
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QStringLiteral("name")) context = xml.readElementText();
    if (xml.name() == QStringLiteral("message")) messages.push_back(messageAt(xml, context));
  }
  if (xml.hasError()) return why = xml.errorString(), std::vector<Message>{};
  return messages;
}

QStringList faultsOf(const Message& message) {
  if (!message.finished) return {"is not finished"};
  if (message.forms.isEmpty()) return {"is not translated"};
  QStringList faults;
  for (const QString& said : message.forms) faults << faultsOf(message, said);
  return faults;
}

}  // namespace stopwalk::translations
