#include "app/window/notice_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/announce.h"

namespace stopwalk::window {

NoticeBar::NoticeBar(QWidget* parent) : QFrame(parent), column_(new QVBoxLayout(this)) {
  setFrameShape(QFrame::StyledPanel);
  setAccessibleName(tr("Notice"));
  column_->setContentsMargins(8, 4, 8, 4);
  column_->setSpacing(4);
  hide();
}

void NoticeBar::show(const QString& key, const QString& text, std::vector<Answer> answers, Weight weight) {
  const auto same = [&](const Notice& n) {
    return n.key == key && n.text == text && n.weight == weight &&
           std::ranges::equal(n.answers, answers, {}, &Answer::text, &Answer::text);
  };
  if (const auto shown = std::ranges::find_if(notices_, same); shown != notices_.end()) {
    shown->answers = std::move(answers);  // what they do may be otherwise
    return;
  }
  std::erase_if(notices_, [&](const Notice& n) { return n.key == key; });
  const auto lighter = [&](const Notice& n) { return n.weight <= weight; };
  const auto at =
      notices_.insert(std::ranges::find_if(notices_, lighter), {key, text, std::move(answers), weight});
  const auto line = static_cast<std::size_t>(at - notices_.begin());
  lay();
  if (auto* label = lines_[line]->findChild<QLabel*>()) panels::announce(*label);
}

void NoticeBar::clear(const QString& key) {
  if (std::erase_if(notices_, [&](const Notice& n) { return n.key == key; }) > 0) lay();
}

QString NoticeBar::text() const {
  QStringList lines;
  for (const Notice& notice : notices_) lines << notice.text;
  return lines.join('\n');
}

void NoticeBar::lay() {
  for (QWidget* line : std::exchange(lines_, {})) {
    line->hide();
    line->deleteLater();
  }
  for (const Notice& notice : notices_) {
    lines_.push_back(lineOf(notice));
    column_->addWidget(lines_.back());
  }
  setVisible(!notices_.empty());
}

QWidget* NoticeBar::lineOf(const Notice& notice) {
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  auto* label = new QLabel(notice.text, line);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  row->addWidget(label, 1);
  const auto addButton = [&](const QString& text, std::size_t answer) {
    auto* button = new QPushButton(text, line);
    connect(button, &QPushButton::clicked, this, [this, key = notice.key, answer] { take(key, answer); });
    row->addWidget(button);
  };
  for (std::size_t i = 0; i < notice.answers.size(); ++i) addButton(notice.answers[i].text, i);
  if (notice.answers.empty() && notice.weight != Weight::Lasting) addButton(tr("Close"), 0);
  return line;
}

// The notice goes first: what is done may show it again.
void NoticeBar::take(const QString& key, std::size_t answer) {
  const auto notice = std::ranges::find(notices_, key, &Notice::key);
  if (notice == notices_.end()) return;
  const auto run = answer < notice->answers.size() ? notice->answers[answer].run : nullptr;
  clear(key);
  if (run) run();
}

}  // namespace stopwalk::window
