#include "app/window/first_minutes.h"

#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/layout/units.h"

namespace stopwalk::window {
namespace {

constexpr int kRuler_px = 28;  // the plan's rulers stay free

QLabel* heading(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  return label;
}

// "tram-depot.layout.yaml" as people say it.
QString sampleName(const QString& file) {
  QString name = file.section('.', 0, 0).replace('-', ' ');
  if (!name.isEmpty()) name[0] = name[0].toUpper();
  return name;
}

}  // namespace

FirstMinutes::FirstMinutes(const QStringList& samples, QWidget* parent)
    : QFrame(parent),
      width_(new QLineEdit("8 m", this)),
      depth_(new QLineEdit("6 m", this)),
      problem_(new QLabel(this)) {
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  setAccessibleName(tr("Begin"));
  setFocusProxy(width_);
  width_->selectAll();  // the first digit takes the place of what is offered
  if (parent) parent->installEventFilter(this);

  width_->setObjectName("first width");

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 20, 24, 20);
  column->setSpacing(8);
  column->addWidget(heading(tr("Draw a first room"), this));
  auto* form = new QFormLayout;
  form->addRow(tr("&Width"), width_);
  form->addRow(tr("&Depth"), depth_);
  column->addLayout(form);
  column->addWidget(problem_);
  problem_->hide();
  problem_->setWordWrap(true);
  auto* draw_button = new QPushButton(tr("Draw the room"), this);
  draw_button->setDefault(true);
  column->addWidget(draw_button);
  auto* hint = new QLabel(
      tr("Inside, from wall to wall: 8 m, 7500 mm or 24' 6\". It can be changed at any time."), this);
  hint->setWordWrap(true);
  column->addWidget(hint);

  column->addSpacing(12);
  column->addWidget(heading(tr("Or look at a sample"), this));
  for (const QString& sample : samples) {
    auto* button = new QPushButton(sampleName(sample), this);
    connect(button, &QPushButton::clicked, this, [this, sample] { emit sampleWanted(sample); });
    column->addWidget(button);
  }
  column->addSpacing(12);
  column->addWidget(heading(tr("Or go on with a file"), this));
  auto* open = new QPushButton(tr("Open a layout…"), this);
  column->addWidget(open);

  for (QLineEdit* edit : {width_, depth_})
    connect(edit, &QLineEdit::returnPressed, this, &FirstMinutes::draw);
  connect(draw_button, &QPushButton::clicked, this, &FirstMinutes::draw);
  connect(open, &QPushButton::clicked, this, &FirstMinutes::openWanted);
}

void FirstMinutes::place() {
  if (!parentWidget()) return;
  layout()->activate();
  adjustSize();
  const QSize free = parentWidget()->size() - size();
  move(std::max(kRuler_px, free.width() / 2), std::max(kRuler_px, free.height() / 3));
}

bool FirstMinutes::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parent() && event->type() == QEvent::Resize) place();
  return QFrame::eventFilter(watched, event);
}

double FirstMinutes::lengthIn(const QLineEdit* edit) const {
  const auto length =
      layout::parseLength(edit->text().trimmed().toStdString(), layout::LengthUnit::Millimetre);
  return length && *length >= 100 && *length <= 1e6 ? *length : 0;
}

void FirstMinutes::draw() {
  for (QLineEdit* edit : {width_, depth_})
    if (lengthIn(edit) == 0) {
      problem_->setText(tr("Type a length from 0.1 m to 1000 m, such as 8 m, 7500 mm or 24' 6\"."));
      problem_->show();
      place();
      edit->setFocus();
      edit->selectAll();
      return;
    }
  problem_->hide();
  emit roomWanted(lengthIn(width_), lengthIn(depth_));
}

}  // namespace stopwalk::window
