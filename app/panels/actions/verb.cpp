#include "app/panels/actions/verb.h"

#include <QAbstractButton>
#include <QActionGroup>
#include <QBoxLayout>
#include <QComboBox>
#include <QMenu>
#include <QPushButton>
#include <utility>

namespace stopwalk::panels {

Verb::Verb(const Text& text, std::function<void()> run, QObject* parent)
    : QAction(text.menu, parent), help_(text.help), run_(std::move(run)) {
  if (!text.button.isEmpty()) setIconText(text.button);
  setWhyNot({});
  connect(this, &QAction::triggered, this, [this] { lead_ ? lead_(run_) : run_(); });
}

void Verb::setWhyNot(const QString& why) {
  const QString told = why.isEmpty() ? help_ : why;
  setEnabled(why.isEmpty());
  setToolTip(told);
  setStatusTip(told);
  setWhatsThis(told);
}

void Verb::showOn(QAbstractButton& button) {
  const auto show = [this, &button] {
    button.setText(iconText());
    button.setToolTip(toolTip());
    button.setEnabled(isEnabled());
    button.setCheckable(isCheckable());
    button.setChecked(isChecked());
  };
  show();
  connect(this, &QAction::changed, &button, show);
  connect(&button, &QAbstractButton::clicked, this, &QAction::trigger);
}

void addButtons(QBoxLayout& row, const QList<Verb*>& verbs) {
  for (Verb* verb : verbs) {
    auto* button = new QPushButton;
    verb->showOn(*button);
    row.addWidget(button);
  }
}

void addChoices(QMenu& menu, QComboBox& box, const std::function<void()>& before) {
  auto* group = new QActionGroup(&menu);
  for (int i = 0; i < box.count(); ++i) {
    QAction* choice = menu.addAction(box.itemText(i), &box, [&box, before, i] {
      before();
      box.setCurrentIndex(i);
    });
    choice->setCheckable(true);
    group->addAction(choice);
  }
  const auto show = [group, &box] {
    const auto choices = group->actions();
    for (int i = 0; i < choices.size(); ++i) choices[i]->setChecked(i == box.currentIndex());
  };
  show();
  QObject::connect(&box, &QComboBox::currentIndexChanged, group, show);
}

void addTick(QMenu& menu, QAbstractButton& box, const std::function<void()>& before) {
  QAction* tick = menu.addAction(box.toolTip());
  tick->setCheckable(true);
  tick->setChecked(box.isChecked());
  QObject::connect(&box, &QAbstractButton::toggled, tick, &QAction::setChecked);
  QObject::connect(tick, &QAction::triggered, &box, [&box, before](bool ticked) {
    before();
    box.setChecked(ticked);
  });
}

}  // namespace stopwalk::panels
