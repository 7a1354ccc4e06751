#pragma once

#include <QString>
#include <QStringList>
#include <vector>

// The files of resources/translations as they are written.
namespace stopwalk::translations {

struct Message {
  QString context;
  QString source;
  QString comment;    // tells two of the same source apart
  QStringList forms;  // what it becomes; several where it is counted
  bool counted = false;
  bool finished = true;

  QString named() const { return context + ": " + source; }
};

// In the order of the file. Empty, with `why`, if it cannot be read.
std::vector<Message> messagesOf(const QString& file, QString& why);

// What is wrong with one message, in words; empty if nothing is.
QStringList faultsOf(const Message& message);

}  // namespace stopwalk::translations
