#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <vector>

#include "app/rounds/big_button.h"
#include "core/planning/round_plan.h"

class QBoxLayout;

namespace stopwalk::rounds {

// Who walks a new round, over what, and how.
class StartForm : public QWidget {
  Q_OBJECT

 public:
  struct Room {
    std::string id;
    QString name;
    std::size_t devices = 0;
  };
  // Where a walk may begin.
  struct Place {
    std::string id;
    QString name;
  };
  enum class Over { Due, All, Room };

  explicit StartForm(QWidget* parent = nullptr);

  void setName(const QString& name) { name_->setText(name); }
  // The walk is the usual one again.
  void show(std::size_t due, std::size_t all, const std::vector<Room>& rooms,
            const std::vector<Place>& places);
  void choose(Over over);

  QString by() const { return name_->text().simplified(); }
  planning::RoundScope scope() const;
  inspection::RoundWalk walk() const;
  // What the choices come to; empty: that is being found out.
  void showOrder(const QString& sentences);
  QString order() const { return order_->text(); }
  void setWriting(bool writing);
  void tell(const QString& sentence);
  QString told() const { return told_->text(); }

  QLineEdit* name() const { return name_; }
  QLineEdit* onPaper() const { return on_paper_; }
  BigButton* over(Over over) const { return over_[static_cast<int>(over)]; }
  QComboBox* room() const { return room_; }
  QCheckBox* onlyDue() const { return only_due_; }
  QComboBox* hours() const { return hours_; }
  QComboBox* beginAt() const { return begin_at_; }
  QCheckBox* closed() const { return closed_; }
  QPushButton* startButton() const { return start_; }
  QPushButton* sheetButton() const { return sheet_; }

 signals:
  void startWanted();
  void sheetWanted();  // the paper of just this
  void changed();      // what is walked, or how
  void left();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void addRoomRow(QBoxLayout& column);
  void addWalkRows(QBoxLayout& column);
  QComboBox* choiceOf(const QString& name);

  QLineEdit *name_, *on_paper_;
  BigButton* over_[3] = {};
  QComboBox *room_, *hours_, *begin_at_;
  QCheckBox *only_due_, *closed_;
  QLabel *order_, *told_;
  QPushButton *start_, *sheet_, *leave_;
};

}  // namespace stopwalk::rounds
