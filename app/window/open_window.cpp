#include "app/window/open_window.h"

#include <QApplication>
#include <QLocale>
#include <QTimer>

#include "app/window/language.h"
#include "app/window/main_window.h"
#include "app/window/tick_style.h"
#include "core/files/version.h"

namespace stopwalk::window {

int openWindow(const std::string& layout_file) {
  int argc = 1;
  char name[] = "stopwalk";
  char* argv[] = {name, nullptr};
  QApplication application(argc, argv);
  QApplication::setStyle(new TickStyle);  // which it owns
  QApplication::setApplicationName("stopwalk");
  QApplication::setApplicationDisplayName("Stopwalk");
  QApplication::setApplicationVersion(files::kVersion);
  QSettings settings(QSettings::IniFormat, QSettings::UserScope, "stopwalk", "stopwalk");
  speak(languageToSpeak(keptLanguage(settings), QLocale::system().uiLanguages()));
  documents::RecoveryStore store;
  MainWindow window(store, settings);
  window.show();
  QTimer::singleShot(0, &window, [&] { window.begin(QString::fromStdString(layout_file)); });
  return QApplication::exec();
}

}  // namespace stopwalk::window
