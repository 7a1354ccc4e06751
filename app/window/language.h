#pragma once

#include <QString>
#include <QStringList>
#include <functional>

class QMenu;
class QSettings;

namespace stopwalk::window {

// The window's language is chosen once, at its start: by the setting, else by the system, else English.

// What is kept, such as `de`; empty: as the system has it.
QString keptLanguage(const QSettings& settings);

// The key of the language to speak, given what is kept and what the system asks for, first wish first
// (`de-AT`).
QString languageToSpeak(const QString& kept, const QStringList& system);

// From now on all that is newly shown is in this language, Qt's own dialogs as well.
void speak(const QString& key);

// A menu to choose by; `say` is told what happens then.
void fillLanguageMenu(QMenu& menu, QSettings& settings, std::function<void(const QString&)> say);

}  // namespace stopwalk::window
