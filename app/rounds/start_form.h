#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <vector>

#include "app/rounds/big_button.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {

// Who walks a new round, and over what.
class StartForm : public QWidget {
  Q_OBJECT

 public:
  struct Room {
    std::string id;
    QString name;
    std::size_t devices = 0;
  };
  enum class Over { Due, All, Room };

  explicit StartForm(QWidget* parent = nullptr);

  void setName(const QString& name) { name_->setText(name); }
  void show(std::size_t due, std::size_t all, const std::vector<Room>& rooms);
  void choose(Over over);

  QString by() const { return name_->text().simplified(); }
  planning::RoundScope scope() const;
  void setWriting(bool writing);
  void tell(const QString& sentence);
  QString told() const { return told_->text(); }

  QLineEdit* name() const { return name_; }
  QLineEdit* onPaper() const { return on_paper_; }
  BigButton* over(Over over) const { return over_[static_cast<int>(over)]; }
  QComboBox* room() const { return room_; }
  QPushButton* startButton() const { return start_; }

 signals:
  void startWanted();
  void left();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QLineEdit *name_, *on_paper_;
  BigButton* over_[3] = {};
  QComboBox* room_;
  QLabel* told_;
  QPushButton *start_, *leave_;
};

}  // namespace stopwalk::rounds
