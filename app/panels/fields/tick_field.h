#pragma once

#include <QComboBox>
#include <QListWidget>
#include <functional>
#include <string>
#include <vector>

#include "app/panels/fields/choice_field.h"

namespace stopwalk::panels {

// What is ticked of a list, or that nothing was said, or that it is everything.
struct Ticks {
  enum class Which { Usual, All, Listed };
  Which which = Which::Usual;
  std::vector<std::string> ids = {};
  bool operator==(const Ticks&) const = default;
};

// A choice between what is usual, everything, and some of a list.
class TickField : public Field {
  Q_OBJECT

 public:
  using Value = Ticks;

  // How the three are called; without `all`, everything cannot be chosen.
  struct Words {
    QString usual;
    QString all;
    QString listed;
  };
  TickField(FieldText text, const Words& words, QWidget* parent = nullptr);

  std::function<void(const Ticks&)> entered;
  // The list is chosen: each thing gets its own first ticks. Not set: `entered`, with none.
  std::function<void()> list_chosen;

  QComboBox* box() const { return which_->box(); }
  QListWidget* list() const { return list_; }
  // What can be ticked.
  void setCandidates(std::vector<Option> candidates);
  void show(const Ticks& ticks);
  void showDiffering();

 private:
  void fill();
  void enterWhich(const std::string& key);
  void enterTick(QListWidgetItem* item);

  ChoiceField* which_;
  QListWidget* list_;
  std::vector<Option> candidates_;
  Ticks ticks_;
  bool differ_ = false;
};

}  // namespace stopwalk::panels
