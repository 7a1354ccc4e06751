#include "app/command_line/painting.h"

#include <QGuiApplication>
#include <algorithm>
#include <sstream>

#include "app/poster/lettering.h"
#include "core/files/nearest.h"

namespace stopwalk::app {

void startPainting() {
  if (QCoreApplication::instance()) return;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  static int count = 1;
  static char name[] = "stopwalk";
  static char* names[] = {name, nullptr};
  static QGuiApplication application(count, names);
}

std::optional<poster::Languages> languagesOf(const std::string& asked, Session& session) {
  std::vector<std::string_view> known;
  for (const poster::LanguageName& l : poster::posterLanguages()) known.push_back(l.key);
  poster::Languages languages;
  std::istringstream keys(asked);
  for (std::string key; std::getline(keys, key, ',');) {
    if (std::ranges::find(known, key) == known.end() || languages.size() == 2) {
      session.console.err << "stopwalk: --language " << asked << ": one of " << files::anyOf(known)
                          << " is expected, or two with a comma between\n";
      return std::nullopt;
    }
    if (!languages.empty() && languages.front().key() == key) {
      session.console.err << "stopwalk: --language " << asked << ": the same language twice; one alone, or "
                          << "two that differ, with a comma between\n";
      return std::nullopt;
    }
    languages.emplace_back(key);
  }
  if (!languages.empty()) return languages;
  session.console.err << "stopwalk: --language is empty: one of " << files::anyOf(known) << " is expected\n";
  return std::nullopt;
}

std::optional<QString> familyOf(const std::string& asked, Session& session) {
  const QString usual = poster::usualFamily();
  if (usual.isEmpty()) {
    session.console.err
        << "stopwalk: there are no fonts on this machine; on Debian, install fonts-dejavu-core\n";
    return std::nullopt;
  }
  if (asked.empty()) return usual;
  const QString family = QString::fromStdString(asked);
  if (poster::hasFamily(family)) return family;
  const std::string nearest = poster::nearestFamily(family).toStdString();
  session.console.err << "stopwalk: there is no font `" << asked << "` here"
                      << (nearest.empty() ? "; without --font, " + usual.toStdString() + " is used"
                                          : "; did you mean " + nearest + "?")
                      << "\n";
  return std::nullopt;
}

}  // namespace stopwalk::app
