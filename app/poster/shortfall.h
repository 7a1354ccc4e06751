#pragma once

#include <QCoreApplication>
#include <QString>

namespace stopwalk::poster {

// What a poster does not do as it should, in a clause; never met by shrinking it silently.
struct Shortfall {
  QString text;
  bool bars = false;  // there is no poster
};

// Says so in the language of the program, which need not be the poster's.
class Told {
  Q_DECLARE_TR_FUNCTIONS(posters)
};

}  // namespace stopwalk::poster
