#pragma once

#include <QSettings>
#include <string>

#include "app/rounds/entered.h"

namespace stopwalk::rounds {

// Which card something was entered on.
struct CardKey {
  std::string records_file;
  std::size_t round = 0;
  std::string begun;  // when the round was: the log may be another one under the old name
  std::string device;
  std::size_t corrects = 0;  // the number of a check; 0: it is a check of its own
  bool operator==(const CardKey&) const = default;
};

// Who typed something, and when.
struct Typed {
  QString by;                          // empty: no name was given
  std::optional<inspection::Date> on;  // none: it is not known
  QString visit;                       // of a round, as one opened it: who that was may be said later
  std::size_t known = 0;               // lines of the records, when the card was begun
  bool operator==(const Typed&) const = default;
};
// Whether it may be recorded as what the inspector tried on that day. No name: who that is is not said yet.
bool mayBeOf(const Typed& typed, const QString& inspector, inspection::Date today, const QString& visit);

struct Draft {
  Entered entered;
  Typed typed;
  bool operator==(const Draft&) const = default;
};
// What it says that must not become a record of another or of another day, in a sentence.
QString notRecordedText(const Draft& draft);
// The lines alone: nothing that was tried, and nobody who was there.
Entered linesOf(const Entered& entered);

// What was entered on cards and is not recorded yet, kept from one card, place and day to another.
class Drafts {
 public:
  explicit Drafts(QSettings& settings) : settings_(settings) {}

  // None: nothing was entered there.
  std::optional<Draft> read(const CardKey& key) const;
  // Nothing entered is nothing kept.
  void keep(const CardKey& key, const Draft& draft);
  void forget(const CardKey& key);
  // Whether all that was to be kept is on the disk, as far as that is known by now.
  bool areKept() const { return settings_.status() == QSettings::NoError; }
  // What was typed before that day, such as on cards of rounds that are long over.
  void forgetBefore(inspection::Date day);

 private:
  QSettings& settings_;
};

}  // namespace stopwalk::rounds
