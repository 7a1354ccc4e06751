#include "app/window/language.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QMenu>
#include <QSettings>
#include <QTranslator>

#include "app/poster/words.h"

namespace stopwalk::window {
namespace {

const char* const kSetting = "window/language";

class Words {
  Q_DECLARE_TR_FUNCTIONS(window)
};

bool isSpoken(const QString& key) {
  for (const poster::LanguageName& language : poster::posterLanguages())
    if (QString::fromStdString(language.key) == key) return true;
  return false;
}

void install(const QString& file, const QString& folder) {
  auto* translator = new QTranslator(QCoreApplication::instance());
  if (translator->load(file, folder)) QCoreApplication::installTranslator(translator);
}

}  // namespace

QString keptLanguage(const QSettings& settings) {
  const QString kept = settings.value(kSetting).toString();
  return isSpoken(kept) ? kept : QString();
}

QString languageToSpeak(const QString& kept, const QStringList& system) {
  if (isSpoken(kept)) return kept;
  for (const QString& wish : system)
    if (const QString key = wish.section('-', 0, 0).toLower(); isSpoken(key)) return key;
  return "en";
}

void speak(const QString& key) {
  // Days and hours as they are written where that language is spoken; of the system, if it speaks it.
  if (const QLocale locale(key); locale.language() != QLocale::system().language())
    QLocale::setDefault(locale);
  if (key == "en") return;
  install("qtbase_" + key, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  install("stopwalk_" + key, ":/translations");
}

void fillLanguageMenu(QMenu& menu, QSettings& settings, std::function<void(const QString&)> say) {
  auto* group = new QActionGroup(&menu);
  const auto add = [&](const QString& name, const QString& key) {
    QAction* action = group->addAction(menu.addAction(name));
    action->setCheckable(true);
    action->setChecked(key == keptLanguage(settings));
    QObject::connect(action, &QAction::triggered, &menu, [&settings, say, name, key] {
      settings.setValue(kSetting, key);
      say(Words::tr("Language: %1. It is spoken from the next start of Stopwalk on.").arg(name));
    });
  };
  add(Words::tr("As the computer has it"), {});
  for (const poster::LanguageName& language : poster::posterLanguages())
    add(QString::fromStdString(language.name), QString::fromStdString(language.key));
}

}  // namespace stopwalk::window
