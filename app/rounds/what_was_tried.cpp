#include "app/rounds/what_was_tried.h"

#include <QEvent>
#include <QGridLayout>
#include <algorithm>

#include "app/plan/theme.h"
#include "app/rounds/words.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::rounds {
namespace {

using inspection::Result;
using inspection::Tried;

constexpr int kColumns = 2;

QGridLayout* gridIn(QWidget* widget) {
  auto* grid = new QGridLayout(widget);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(4);
  for (int column = 0; column < kColumns; ++column) grid->setColumnStretch(column, 1);
  return grid;
}

// Of the others, no is not done, and nothing needs be said.
bool mayBeNo(Tried test) {
  return test == Tried::Clear || test == Tried::Legible || test == Tried::Latches ||
         test == Tried::StaysStoppedReleased || test == Tried::StaysStoppedPower;
}

}  // namespace

WhatWasTried::WhatWasTried(QWidget* parent) : QWidget(parent) {
  QGridLayout* grid = gridIn(this);
  for (const Tried test : inspection::kTried) {
    const int i = static_cast<int>(test) - 1;
    auto* box = new BigButton(BigButton::Sign::Box, wordOf(test), keyOf(test), mayBeNo(test), this);
    connect(box, &BigButton::answered, this, &WhatWasTried::changed);
    if (test == Tried::Seen)
      grid->addWidget(box, static_cast<int>(inspection::kTried.size()), 0, 1, kColumns);
    else
      grid->addWidget(box, i / kColumns, i % kColumns);
    boxes_[static_cast<std::size_t>(test)] = box;
  }
}

void WhatWasTried::setIsStop(bool is_stop) {
  is_stop_ = is_stop;
  box(Tried::Seen)->setText(is_stop ? wordOf(Tried::Seen) : lookWord());
  showBoxes();
}

// What is asked in one may have been said apart, and the other way round: that is shown where one is
// corrected.
void WhatWasTried::showBoxes() {
  const auto may = inspection::mayBeTried(is_stop_);
  for (const Tried test : inspection::kTried) {
    const bool is_asked = (test == Tried::Seen) != is_stop_;
    const bool is_said = box(test)->answer() && std::ranges::find(may, test) != may.end();
    box(test)->setVisible(is_asked || is_said);
  }
}

QString WhatWasTried::keyOf(Tried test) {
  return QString::number(test == Tried::Seen ? 1 : static_cast<int>(test));
}

std::vector<std::pair<Tried, bool>> WhatWasTried::tested() const {
  std::vector<std::pair<Tried, bool>> tested;
  for (const Tried test : inspection::mayBeTried(is_stop_))
    if (const auto answer = box(test)->answer()) tested.emplace_back(test, *answer);
  return tested;
}

void WhatWasTried::show(const std::vector<std::pair<Tried, bool>>& tested) {
  inspection::Check check;
  check.tested = tested;
  for (const Tried test : inspection::kTried) box(test)->setAnswer(inspection::testedFor(check, test));
  showBoxes();
}

ResultChoice::ResultChoice(QWidget* parent) : QWidget(parent) {
  QGridLayout* grid = gridIn(this);
  for (const Result result : inspection::kResults) {
    const int i = static_cast<int>(result);
    auto* button = new BigButton(BigButton::Sign::Circle, wordOf(result), keyOf(result), false, this);
    connect(button, &BigButton::answered, this, [this, result] {
      show(result);
      emit changed();
    });
    grid->addWidget(button, i / kColumns, i % kColumns);
    buttons_[static_cast<std::size_t>(result)] = button;
  }
  setInks();
}

QString ResultChoice::keyOf(Result result) {
  switch (result) {
    case Result::Pass:
      return tr("P", "the key for: pass");
    case Result::Fail:
      return tr("F", "the key for: fail");
    case Result::NotTested:
      return tr("N", "the key for: not tested");
    case Result::NotAccessible:
      return tr("R", "the key for: could not reach");
  }
  return {};
}

std::optional<Result> ResultChoice::result() const {
  for (const Result result : inspection::kResults)
    if (button(result)->answer()) return result;
  return std::nullopt;
}

void ResultChoice::show(std::optional<Result> result) {
  for (const Result r : inspection::kResults)
    button(r)->setAnswer(r == result ? std::optional(true) : std::nullopt);
}

// Told by words and the sign; the colour comes to them.
void ResultChoice::setInks() {
  const plan::Theme theme = plan::Theme::of(palette());
  button(Result::Pass)->setInk(theme.meets);
  button(Result::Fail)->setInk(theme.fails);
}

void ResultChoice::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && buttons_[0]) setInks();
}

}  // namespace stopwalk::rounds
