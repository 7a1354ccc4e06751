#pragma once

#include <QObject>
#include <string>
#include <unordered_set>
#include <vector>

namespace stopwalk::edits {

// The ids of what is selected, in the order of selecting; the last is the one that others are aligned to.
class Selection : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  const std::vector<std::string>& ids() const { return ids_; }
  bool empty() const { return ids_.empty(); }
  bool contains(const std::string& id) const { return selected_.contains(id); }

  void set(std::vector<std::string> ids);
  void set(const std::string& id) { set(std::vector<std::string>{id}); }
  void toggle(const std::string& id);
  void clear() { set(std::vector<std::string>{}); }

 signals:
  void changed();

 private:
  std::vector<std::string> ids_;
  std::unordered_set<std::string> selected_;  // the same; asked for each thing at each painting
};

}  // namespace stopwalk::edits
