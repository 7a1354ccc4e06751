#pragma once

#include <QSettings>
#include <QString>
#include <vector>

namespace stopwalk::documents {

struct RecentLayout {
  QString path;
  bool missing = false;  // not there now; it may be on a disk that is not plugged in
  bool operator==(const RecentLayout&) const = default;
};

// The layouts that were open last, the newest first, kept in the settings. One that is missing stays until it
// is forgotten or pushed out.
class RecentLayouts {
 public:
  static constexpr int kMost = 10;

  explicit RecentLayouts(QSettings& settings) : settings_(settings) {}

  void add(const QString& path);
  void forget(const QString& path);
  void forgetAll();
  std::vector<RecentLayout> list() const;

 private:
  QStringList paths() const;
  void keep(const QStringList& paths);

  QSettings& settings_;
};

}  // namespace stopwalk::documents
