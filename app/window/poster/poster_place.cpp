#include "app/window/poster/poster_place.h"

#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/poster/choice_list.h"
#include "app/panels/poster/paper_chooser.h"
#include "app/panels/poster/room_chooser.h"
#include "app/panels/poster/wall_chooser.h"
#include "app/poster/texts.h"
#include "app/window/commands.h"
#include "app/window/poster/page_view.h"
#include "app/window/poster/wall_view.h"

namespace stopwalk::window {
namespace {

using As = PosterFiles::As;
using Rooms = PosterFiles::Rooms;

constexpr int kSide_px = 290;

panels::PaperChoice rememberedIn(const QSettings& settings) {
  panels::PaperChoice choice;
  const auto read = [&](const char* key, std::string& value) {
    value =
        settings.value(QString("poster/%1").arg(key), QString::fromStdString(value)).toString().toStdString();
  };
  read("paper", choice.paper);
  read("turn", choice.turn);
  read("language", choice.language);
  read("also", choice.also);
  read("family", choice.family);
  return choice;
}

void remember(const panels::PaperChoice& choice, QSettings& settings) {
  const auto write = [&](const char* key, const std::string& value) {
    settings.setValue(QString("poster/%1").arg(key), QString::fromStdString(value));
  };
  write("paper", choice.paper);
  write("turn", choice.turn);
  write("language", choice.language);
  write("also", choice.also);
  write("family", choice.family);
}

}  // namespace

PosterPlace::PosterPlace(Document& document, FileFlow& files, Asker& asker, QSettings& settings,
                         QObject* parent)
    : QObject(parent),
      document_(document),
      settings_(settings),
      files_(document, files, asker, [this](Rooms rooms) { return order(rooms); }) {
  side_ = choices();
  page_ = new PageView;
  wall_view_ = new WallView;
  middle_ = new QStackedWidget;
  middle_->addWidget(page_);
  middle_->addWidget(wall_view_);
  under_ = below();

  connect(room_, &panels::RoomChooser::changed, this, &PosterPlace::roomChanged);
  connect(wall_, &panels::WallChooser::changed, this, [this] {
    showWalls();
    ask();
  });
  connect(wall_, &panels::WallChooser::planWanted, this, &PosterPlace::showPlan);
  connect(paper_, &panels::PaperChooser::changed, this, [this] {
    remember(paper_->choice(), settings_);
    ask();
  });
  connect(wall_view_, &WallView::picked, this, [this](geometry::Point place) {
    wall_->hang(place);
    leave();
  });
  connect(wall_view_, &WallView::left, this, &PosterPlace::leave);
  connect(wall_view_, &WallView::said, this, &PosterPlace::said);
  connect(&files_, &PosterFiles::said, this, &PosterPlace::said);
  connect(&files_, &PosterFiles::lookWanted, this, &PosterPlace::lookWanted);
  connect(&live_, &LivePoster::answered, this,
          [this](std::shared_ptr<const LivePoster::Answer> answer) { show(*answer); });
  connect(&live_, &LivePoster::failed, this, &PosterPlace::showFailed);
}

QWidget* PosterPlace::middle() const {
  return middle_;
}

// In the order of the work.
QWidget* PosterPlace::choices() {
  auto* inner = new QWidget;
  auto* column = new QVBoxLayout(inner);
  room_ = new panels::RoomChooser;
  wall_ = new panels::WallChooser;
  paper_ = new panels::PaperChooser;
  paper_->show(rememberedIn(settings_));
  column->addWidget(room_);
  column->addWidget(wall_);
  column->addWidget(paper_);
  column->addStretch(1);
  auto* scroll = new QScrollArea;
  scroll->setWidget(inner);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setMinimumWidth(kSide_px);
  return scroll;
}

QWidget* PosterPlace::below() {
  auto* under = new QWidget;
  auto* grid = new QGridLayout(under);
  grid->setContentsMargins(4, 4, 4, 4);
  shortfalls_ = panels::choiceList(tr("What the poster cannot do as it should"), under);
  shortfalls_->setSelectionMode(QAbstractItemView::NoSelection);
  shortfalls_->setIconSize(QSize(1, 1) * under->fontMetrics().height());
  auto* label = new QLabel(tr("What the poster cannot do as it sho&uld"), under);
  label->setBuddy(shortfalls_);
  auto* told = new QVBoxLayout;
  told->addWidget(label);
  told->addWidget(shortfalls_);
  told->addStretch(1);
  auto* buttons = new QVBoxLayout;
  const auto add = [&](const QString& text, std::function<void()> run) {
    auto* button = new QPushButton(text, under);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, std::move(run));
    buttons->addWidget(button);
  };
  add(tr("Save as PDF…"), [this] { files_.save(As::Pdf, Rooms::This); });
  add(tr("Save as picture (PNG)…"), [this] { files_.save(As::Png, Rooms::This); });
  add(tr("Save as drawing (SVG)…"), [this] { files_.save(As::Svg, Rooms::This); });
  add(tr("Save posters of all rooms…"), [this] { files_.save(As::Pdf, Rooms::All); });
  add(tr("Print…"), [this] { files_.print(); });
  buttons->addStretch(1);
  auto* caution = new QLabel(
      tr("Drawn from a plan and checked against chosen rules; certifies nothing. Local codes, the maker and "
         "licensed people come first. Never rely on a stop as a guard. <a href=\"#\">More</a>"),
      under);
  caution->setWordWrap(true);
  caution->setTextInteractionFlags(Qt::TextBrowserInteraction);
  connect(caution, &QLabel::linkActivated, this, &PosterPlace::cautionWanted);
  grid->addLayout(told, 0, 0);
  grid->addLayout(buttons, 0, 1);
  grid->addWidget(caution, 1, 0, 1, 2);
  grid->setRowStretch(0, 1);
  grid->setColumnStretch(0, 1);
  return under;
}

void PosterPlace::fillMenu(MenuMaker& menu, const std::function<void()>& come_here) {
  const auto add = [&](const QString& text, const QKeySequence& key, std::function<void()> run) {
    menu.add(text, key, [come_here, run] {
      come_here();
      run();
    });
  };
  add(tr("Choose the &room"), QKeySequence(tr("Ctrl+Shift+R")), [this] { room_->list()->setFocus(); });
  add(tr("Choose the &wall on the plan"), QKeySequence(tr("Ctrl+Shift+W")),
      [this] { wall_->button()->setChecked(true); });
  menu.addSeparator();
  add(tr("&Save as PDF…"), QKeySequence(tr("Ctrl+Shift+E")), [this] { files_.save(As::Pdf, Rooms::This); });
  add(tr("Save as p&icture (PNG)…"), {}, [this] { files_.save(As::Png, Rooms::This); });
  add(tr("Save as &drawing (SVG)…"), {}, [this] { files_.save(As::Svg, Rooms::This); });
  add(tr("Save posters of &all rooms…"), {}, [this] { files_.save(As::Pdf, Rooms::All); });
  menu.addSeparator();
  add(tr("&Print…"), QKeySequence::Print, [this] { files_.print(); });
}

void PosterPlace::follow(PosterSource source) {
  if (source == source_) return;
  if (source.layout != source_.layout) why_not_.clear();
  source_ = std::move(source);
  const std::string before = room_->chosen();
  room_->show(*source_.layout, why_not_);
  if (room_->chosen() == before) roomChanged();
}

void PosterPlace::roomChanged() {
  wall_->show(*source_.layout, room_->chosen());
  if (!roomIndex()) leave();
  showWalls();
  ask();
}

std::optional<std::size_t> PosterPlace::roomIndex() const {
  const auto& rooms = source_.layout->rooms;
  const auto found = std::ranges::find(rooms, room_->chosen(), &layout::Room::id);
  if (found == rooms.end()) return std::nullopt;
  return static_cast<std::size_t>(found - rooms.begin());
}

void PosterPlace::showWalls() {
  if (middle_->currentWidget() != wall_view_) return;
  if (const auto room = roomIndex()) wall_view_->show(source_.layout, source_.kinds, *room, wall_->place());
}

void PosterPlace::showPlan(bool shows) {
  middle_->setCurrentWidget(shows ? static_cast<QWidget*>(wall_view_) : page_);
  if (!shows) return emit said(prompt());
  showWalls();
  wall_view_->setFocus();
  emit said(tr("Click the wall where the poster is to hang; Escape goes back to the poster."));
}

QString PosterPlace::prompt() const {
  return tr("The wheel zooms and dragging moves the page; 0 shows it whole.");
}

void PosterPlace::come() {
  emit said(prompt());
}

void PosterPlace::leave() {
  const bool had_keyboard = wall_view_->hasFocus();
  wall_->button()->setChecked(false);
  if (had_keyboard) wall_->list()->setFocus();
}

void PosterPlace::forgetWalls() {
  leave();
  wall_->forgetAll();
}

void PosterPlace::ask() {
  if (!source_.layout) return;
  if (!source_.unreadable.isEmpty()) return showNone();
  page_->setCurrent(false);
  live_.ask({source_, room_->chosen(), wall_->place(), panels::wishOf(paper_->choice())});
}

// As long as it is not known what failed.
void PosterPlace::showNone() {
  page_->show(nullptr, tr("No poster is made: %1").arg(source_.unreadable));
  page_->setCurrent(true);
  panels::fillRows(*shortfalls_, {});
}

void PosterPlace::showFailed(const QString& why) {
  page_->show(nullptr, tr("The poster could not be computed: %1.").arg(why));
  page_->setCurrent(true);
  panels::fillRows(*shortfalls_, {});
}

void PosterPlace::show(const LivePoster::Answer& answer) {
  if (!source_.unreadable.isEmpty()) return;
  if (answer.layout == source_.layout && why_not_ != answer.why_not) {
    why_not_ = answer.why_not;
    room_->show(*source_.layout, why_not_);  // which may choose another room, and ask
  }
  page_->setCurrent(live_.isCurrent());
  if (!live_.isCurrent()) return;
  QString sentence;
  if (answer.room.empty())
    sentence = tr("There is no room indoors yet. Draw one: posters are made of rooms.");
  else if (!answer.document)
    sentence = tr("There is no poster of this room on this paper.");
  if (const auto room = roomIndex(); room && !answer.why_not[*room].isEmpty())
    sentence = tr("There is no poster of this room: %1.").arg(answer.why_not[*room]);
  page_->show(answer.document, sentence);
  showShortfalls(answer);
}

void PosterPlace::showShortfalls(const LivePoster::Answer& answer) {
  std::vector<panels::ChoiceRow> rows;
  if (answer.document && source_.hash.empty())
    rows.push_back(
        {{},
         tr("It says %1: this layout is not in its file as it is here, so that the poster "
            "cannot be held against it.")
             .arg(panels::wishOf(paper_->choice()).languages.front().say(poster::texts::kNotSaved))});
  for (const poster::Shortfall& s : answer.shortfalls) rows.push_back({{}, asSentence(s.text)});
  const bool as_it_should = rows.empty() && answer.document;
  if (as_it_should) rows.push_back({{}, tr("Nothing: it does all that it should.")});
  panels::fillRows(*shortfalls_, rows);
  const auto sign = as_it_should ? QStyle::SP_DialogApplyButton : QStyle::SP_MessageBoxWarning;
  for (int row = 0; row < shortfalls_->count(); ++row)
    shortfalls_->item(row)->setIcon(shortfalls_->style()->standardIcon(sign));
}

PosterOrder PosterPlace::order(Rooms rooms) const {
  PosterOrder order{source_, {}, panels::wishOf(paper_->choice())};
  if (!source_.layout) return order;
  for (std::size_t r = 0; r < source_.layout->rooms.size(); ++r) {
    const layout::Room& room = source_.layout->rooms[r];
    if (rooms == Rooms::All ? !room.outdoors : room.id == room_->chosen())
      order.wanted.push_back({r, wall_->placeOf(room.id)});
  }
  return order;
}

}  // namespace stopwalk::window
