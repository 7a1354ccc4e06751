#pragma once

#include <QObject>
#include <QSettings>

#include "app/window/poster/live_poster.h"
#include "app/window/poster/poster_files.h"

class QListWidget;
class QStackedWidget;
class QWidget;

namespace stopwalk::panels {
class PaperChooser;
class RoomChooser;
class WallChooser;
}  // namespace stopwalk::panels

namespace stopwalk::window {

class MenuMaker;
class PageView;
class WallView;

// Where posters are made: the choices, the page as it will be, what it cannot do, and what is done with it.
class PosterPlace : public QObject {
  Q_OBJECT

 public:
  PosterPlace(Document& document, FileFlow& files, Asker& asker, QSettings& settings,
              QObject* parent = nullptr);

  QWidget* side() const { return side_; }    // beside the page
  QWidget* middle() const;                   // the page, or the plan of the room
  QWidget* under() const { return under_; }  // below it
  PageView& page() const { return *page_; }
  WallView& walls() const { return *wall_view_; }
  panels::RoomChooser& room() const { return *room_; }
  panels::WallChooser& wall() const { return *wall_; }
  panels::PaperChooser& paper() const { return *paper_; }
  QListWidget* shortfalls() const { return shortfalls_; }
  PosterFiles& files() { return files_; }

  // The poster of this is shown, until another comes.
  void follow(PosterSource source);
  // Whether the page on the screen is that of the newest source and choices.
  bool isCurrent() const { return source_.layout && (live_.isCurrent() || !source_.unreadable.isEmpty()); }
  void come();
  // The choice of a wall is left.
  void leave();
  void forgetWalls();
  // What is done with a poster; `come_here` is called before.
  void fillMenu(MenuMaker& menu, const std::function<void()>& come_here);

 signals:
  void said(const QString& sentence);
  void lookWanted();  // at the records that posters are made by
  void cautionWanted();

 private:
  QWidget* choices();
  QWidget* below();
  QString prompt() const;
  void roomChanged();
  void showWalls();
  void showPlan(bool shows);
  void ask();
  void showNone();
  void showFailed(const QString& why);
  void show(const LivePoster::Answer& answer);
  void showShortfalls(const LivePoster::Answer& answer);
  PosterOrder order(PosterFiles::Rooms rooms) const;
  std::optional<std::size_t> roomIndex() const;

  Document& document_;
  QSettings& settings_;
  PosterFiles files_;
  LivePoster live_;
  PosterSource source_;
  std::vector<QString> why_not_;  // of the rooms, as far as it is known

  QWidget *side_, *under_;
  QStackedWidget* middle_;
  PageView* page_;
  WallView* wall_view_;
  panels::RoomChooser* room_;
  panels::WallChooser* wall_;
  panels::PaperChooser* paper_;
  QListWidget* shortfalls_;
};

}  // namespace stopwalk::window
