#pragma once

#include <QAction>
#include <functional>

class QAbstractButton;
class QBoxLayout;
class QComboBox;
class QMenu;

namespace stopwalk::panels {

// Something that can be done in a panel: one action for its menu, its key and its button, with what it does
// and, while it cannot be done, why.
class Verb : public QAction {
  Q_OBJECT

 public:
  struct Text {
    QString menu;
    QString help = {};    // what it does, where the words alone do not say
    QString button = {};  // shorter, beside what it is about
  };

  Verb(const Text& text, std::function<void()> run, QObject* parent);

  // How it comes to run, such as once one has gone to where it is seen.
  using Run = std::function<void()>;
  void setLead(std::function<void(const Run&)> lead) { lead_ = std::move(lead); }
  // Empty: it can be done.
  void setWhyNot(const QString& why);
  // The button looks as the action does, and does it.
  void showOn(QAbstractButton& button);

 private:
  QString help_;
  Run run_;
  std::function<void(const Run&)> lead_;
};

// A button for each verb, one beside the other.
void addButtons(QBoxLayout& row, const QList<Verb*>& verbs);
// An action for each choice of the box, the one that is chosen ticked; the box stays the one who knows.
void addChoices(QMenu& menu, QComboBox& box, const std::function<void()>& before);
// Likewise for a box that is ticked, under its name.
void addTick(QMenu& menu, QAbstractButton& box, const std::function<void()>& before);

}  // namespace stopwalk::panels
