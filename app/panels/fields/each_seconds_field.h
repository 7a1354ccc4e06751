#pragma once

#include <QTableWidget>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "app/panels/fields/choice_field.h"

namespace stopwalk::panels {

// Seconds for each of a list of things, in a small table; empty where they are not known.
class EachSecondsField : public Field {
  Q_OBJECT

 public:
  using Value = std::vector<std::pair<std::string, double>>;

  explicit EachSecondsField(FieldText text, QWidget* parent = nullptr);

  ~EachSecondsField() override { table_->disconnect(this); }

  std::function<void(const Value&)> entered;

  QTableWidget* table() const { return table_; }
  void setCandidates(std::vector<Option> candidates);
  void applyPending() override { closeEditor(*table_); }
  void show(const Value& seconds);
  void showDiffering();

 private:
  void fill();
  void enterCell(int row);

  QTableWidget* table_;
  std::vector<Option> candidates_;
  Value seconds_;
  bool differ_ = false;
};

}  // namespace stopwalk::panels
