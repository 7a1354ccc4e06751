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

// What was entered on cards and is not recorded yet, kept from one card, place and day to another.
class Drafts {
 public:
  explicit Drafts(QSettings& settings) : settings_(settings) {}

  // None: nothing was entered there.
  std::optional<Entered> read(const CardKey& key) const;
  // Nothing entered is nothing kept.
  void keep(const CardKey& key, const Entered& entered);
  void forget(const CardKey& key);

 private:
  QSettings& settings_;
};

}  // namespace stopwalk::rounds
