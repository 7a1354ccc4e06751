#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <map>

namespace stopwalk::window {

// Tells when files that the layout in the window is made with are changed, removed or brought back by another
// program. Looks now and then, as network folders tell nothing.
class FilesBeside : public QObject {
  Q_OBJECT

 public:
  explicit FilesBeside(QObject* parent = nullptr);

  // From as they are now; those that are followed already, from as they were when last looked at.
  void follow(const QStringList& paths);
  void lookNow();

 signals:
  void changed(const QStringList& paths);

 private:
  struct Stamp {
    qint64 size = -1;
    qint64 modified_ms = -1;
    bool readable = false;
    bool operator==(const Stamp&) const = default;
  };
  static Stamp stampOf(const QString& path);

  std::map<QString, Stamp> stamps_;
  QTimer look_;
};

}  // namespace stopwalk::window
