#pragma once

#include <QWidget>
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "app/rounds/big_button.h"
#include "core/inspection/record.h"

namespace stopwalk::rounds {

// The boxes to tick for what was tried; nothing is ticked from the start.
class WhatWasTried : public QWidget {
  Q_OBJECT

 public:
  explicit WhatWasTried(QWidget* parent = nullptr);

  // Which of them the device has: what is no stop is looked at only.
  void setIsStop(bool is_stop);
  std::vector<std::pair<inspection::Tried, bool>> tested() const;
  void show(const std::vector<std::pair<inspection::Tried, bool>>& tested);
  // The digit that ticks it, while its box is shown.
  static QString keyOf(inspection::Tried test);
  BigButton* box(inspection::Tried test) const { return boxes_[static_cast<std::size_t>(test)]; }

 signals:
  void changed();

 private:
  void showBoxes();

  std::array<BigButton*, inspection::kTried.size()> boxes_{};
  bool is_stop_ = true;
};

// The results as big buttons, none of them chosen from the start.
class ResultChoice : public QWidget {
  Q_OBJECT

 public:
  explicit ResultChoice(QWidget* parent = nullptr);

  std::optional<inspection::Result> result() const;
  void show(std::optional<inspection::Result> result);
  BigButton* button(inspection::Result result) const { return buttons_[static_cast<std::size_t>(result)]; }
  // The letter that chooses it.
  static QString keyOf(inspection::Result result);

 signals:
  void changed();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void setInks();

  std::array<BigButton*, inspection::kResults.size()> buttons_{};
};

}  // namespace stopwalk::rounds
