#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTreeWidget>
#include <QWidget>

#include "app/rounds/due_rows.h"

namespace stopwalk::rounds {

// What is due, the rounds that were not finished, and a button to start one.
class DuePage : public QWidget {
  Q_OBJECT

 public:
  struct OpenRound {
    std::size_t number = 0;
    QString text;
  };

  explicit DuePage(QWidget* parent = nullptr);

  void show(const DueView& view, const std::vector<OpenRound>& open, const QString& summary);
  // There is nothing, and this would fill it. `save`: what does is to save the layout.
  void showNothing(const QString& why, bool save);
  // Above the button, why no round can be started yet; empty: nothing is said. `save`: it can once the layout
  // is saved, which has a button and the keyboard.
  void tell(const QString& why, bool save);
  // To the button that saves, if it is there.
  void goToSave();
  QString told() const { return told_->text(); }
  void pick(const std::string& device);

  QString summary() const { return summary_->text(); }
  QTreeWidget* tree() const { return tree_; }
  QListWidget* openRounds() const { return open_; }
  QPushButton* startButton() const { return start_; }
  QPushButton* continueButton() const { return continue_; }
  QPushButton* saveButton() const { return save_; }
  QPushButton* saveFirstButton() const { return save_first_; }
  // Of the round picked, or of the newest; 0: there is none.
  std::size_t openRound() const;

 signals:
  void picked(const QString& device);
  void historyWanted(const QString& device);
  void startWanted();
  void continueWanted(std::size_t round);
  void saveWanted();
  void saveAndStartWanted();

 private:
  void fillTree(const DueView& view);
  void fillOpen(const std::vector<OpenRound>& open);

  QLabel *summary_, *open_label_, *told_;
  QTreeWidget* tree_;
  QListWidget* open_;
  QPushButton *start_, *continue_, *save_, *save_first_;
  bool filling_ = false;
};

}  // namespace stopwalk::rounds
