#include "app/window/notice_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

namespace stopwalk::window {

NoticeBar::NoticeBar(QWidget* parent)
    : QFrame(parent), label_(new QLabel(this)), line_(new QHBoxLayout(this)) {
  setFrameShape(QFrame::StyledPanel);
  setAccessibleName(tr("Notice"));
  label_->setWordWrap(true);
  line_->setContentsMargins(8, 4, 8, 4);
  line_->addWidget(label_, 1);
  hide();
}

void NoticeBar::show(const QString& key, const QString& text, std::vector<Answer> answers) {
  const auto same = [&](const Notice& n) {
    return n.key == key && n.text == text && n.answers.empty() && answers.empty();
  };
  if (std::ranges::any_of(notices_, same)) return;
  std::erase_if(notices_, [&](const Notice& n) { return n.key == key; });
  notices_.insert(notices_.begin(), {key, text, std::move(answers)});
  lay();
}

void NoticeBar::clear(const QString& key) {
  if (std::erase_if(notices_, [&](const Notice& n) { return n.key == key; }) > 0) lay();
}

QString NoticeBar::text() const {
  return notices_.empty() ? QString() : notices_.front().text;
}

void NoticeBar::lay() {
  for (QWidget* button : buttons_) button->deleteLater();
  buttons_.clear();
  setVisible(!notices_.empty());
  if (notices_.empty()) return;
  const Notice& notice = notices_.front();
  label_->setText(notice.text);
  const auto addButton = [&](const QString& text, std::function<void()> run) {
    auto* button = new QPushButton(text, this);
    connect(button, &QPushButton::clicked, this, [this, key = notice.key, run = std::move(run)] {
      clear(key);
      if (run) run();
    });
    line_->addWidget(button);
    buttons_.push_back(button);
  };
  for (const Answer& answer : notice.answers) addButton(answer.text, answer.run);
  if (notice.answers.empty()) addButton(tr("Close"), {});
}

}  // namespace stopwalk::window
