#pragma once

#include <QListWidget>
#include <optional>
#include <string>
#include <vector>

#include "core/layout/layout.h"

namespace stopwalk::panels {

// The rooms that posters are made of: those indoors. One that has nothing to show says so, and can be picked
// all the same.
class RoomChooser : public QWidget {
  Q_OBJECT

 public:
  explicit RoomChooser(QWidget* parent = nullptr);

  // `why_not` has for each room of the layout why it can have no poster, a clause; empty: it can, or that is
  // not known yet. The room chosen stays so as long as it is there.
  void show(const layout::Layout& layout, const std::vector<QString>& why_not);

  std::string chosen() const;  // its id; empty: there is none
  void choose(const std::string& room);
  QListWidget* list() const { return list_; }

 signals:
  void changed();

 private:
  QListWidget* list_;
  std::string picked_;  // by a person; until then it is the first that has something to show
  bool filling_ = false;
};

}  // namespace stopwalk::panels
