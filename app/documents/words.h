#pragma once

#include <QCoreApplication>

namespace stopwalk::documents {

// Translates what no QObject says. As a class, so that lupdate finds each text in the context that it is
// looked up in.
class Words {
  Q_DECLARE_TR_FUNCTIONS(documents)
};

}  // namespace stopwalk::documents
