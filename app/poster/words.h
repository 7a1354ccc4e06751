#pragma once

#include <QString>
#include <memory>
#include <string>
#include <vector>

#include "core/inspection/moment.h"

class QTranslator;

namespace stopwalk::poster {

// One language of posters. English is always there.
class Language {
 public:
  explicit Language(const std::string& key);
  // Of other translations than those compiled in, such as a test's.
  Language(std::string key, std::shared_ptr<const QTranslator> translator);

  const std::string& key() const { return key_; }  // `de`
  bool rightToLeft() const;
  // A text of texts.h; what has no translation stays English.
  QString say(const char* english) const;
  QString say(const std::string& english) const { return say(english.c_str()); }

 private:
  std::string key_;
  std::shared_ptr<const QTranslator> translator_;  // null: English
};

// When something failed.
QString failedOnText(inspection::Date day, const Language& language);

struct LanguageName {
  std::string key;
  std::string name;  // as its speakers call it
};
// Those that posters can be had in.
const std::vector<LanguageName>& posterLanguages();

// One or two, the first the main one.
using Languages = std::vector<Language>;

// The text in each of the languages, those that say the same once.
QStringList sayEach(const Languages& languages, const char* english);

}  // namespace stopwalk::poster
