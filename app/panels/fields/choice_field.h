#pragma once

#include <QAbstractItemView>
#include <QComboBox>
#include <functional>
#include <string>
#include <vector>

#include "app/panels/fields/field.h"

namespace stopwalk::panels {

struct Option {
  std::string key;
  QString text;
  bool operator==(const Option&) const = default;
};

// One of several, by its key.
class ChoiceField : public Field {
  Q_OBJECT

 public:
  using Value = std::string;

  explicit ChoiceField(FieldText text, std::vector<Option> options, QWidget* parent = nullptr);

  std::function<void(const std::string&)> entered;

  QComboBox* box() const { return box_; }
  void setOptions(std::vector<Option> options);
  // A key that is none of the options is shown as it is.
  void show(const std::string& key);
  void showDiffering();

 private:
  void fill();

  QComboBox* box_;
  std::vector<Option> options_;
  std::string key_;
  bool differ_ = true;
};

}  // namespace stopwalk::panels
