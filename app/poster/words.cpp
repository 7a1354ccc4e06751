#include "app/poster/words.h"

#include <QLocale>
#include <QStringList>
#include <QTranslator>

#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

std::shared_ptr<const QTranslator> translatorOf(const std::string& key) {
  if (key == "en") return nullptr;
  auto translator = std::make_shared<QTranslator>();
  if (!translator->load(QStringLiteral(":/translations/stopwalk_%1.qm").arg(QString::fromStdString(key))))
    return nullptr;
  return translator;
}

}  // namespace

Language::Language(const std::string& key) : Language(key, translatorOf(key)) {}

Language::Language(std::string key, std::shared_ptr<const QTranslator> translator)
    : key_(std::move(key)), translator_(std::move(translator)) {}

bool Language::rightToLeft() const {
  return QLocale(QString::fromStdString(key_)).textDirection() == Qt::RightToLeft;
}

QString Language::say(const char* english) const {
  const QString said = translator_ ? translator_->translate("poster", english) : QString();
  return said.isEmpty() ? QString::fromUtf8(english) : said;
}

const std::vector<LanguageName>& posterLanguages() {
  static const std::vector<LanguageName> all{{"en", "English"}, {"es", "Español"}, {"de", "Deutsch"}};
  return all;
}

QStringList sayEach(const Languages& languages, const char* english) {
  QStringList said;
  for (const Language& language : languages) said << language.say(english);
  said.removeDuplicates();
  return said;
}

QString failedOnText(inspection::Date day, const Language& language) {
  return day == inspection::kUnreadDay ? language.say(texts::kUnreadDay)
                                       : QString::fromStdString(inspection::dateText(day));
}

}  // namespace stopwalk::poster
