#pragma once

#include <QWidget>
#include <optional>

#include "app/plan/picture.h"
#include "app/plan/theme.h"
#include "app/poster/room_walls.h"

namespace stopwalk::window {

// The plan of a room whose walls are numbered: a click on one picks the place where the poster is to hang.
// Arrow keys go from wall to wall, Enter picks, Escape leaves.
class WallView : public QWidget {
  Q_OBJECT

 public:
  explicit WallView(QWidget* parent = nullptr);

  // The walls of a room of the layout, and where the poster hangs now.
  void show(std::shared_ptr<const layout::Layout> layout, std::shared_ptr<const layout::DeviceKinds> kinds,
            std::size_t room, std::optional<geometry::Point> place);
  const plan::ViewTransform& transform() const { return view_; }
  std::optional<std::size_t> pointedAt() const { return wall_; }

  QSize sizeHint() const override { return {900, 640}; }
  QSize minimumSizeHint() const override { return {240, 200}; }

 signals:
  void picked(geometry::Point place);
  void left();
  void said(const QString& sentence);

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void mouseMoveEvent(QMouseEvent*) override;
  void mousePressEvent(QMouseEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void leaveEvent(QEvent*) override;
  void changeEvent(QEvent*) override;

 private:
  std::optional<std::size_t> wallAt(QPointF pixel) const;
  void point(std::optional<std::size_t> wall, std::optional<geometry::Point> place);
  void fit();
  void paintWalls(QPainter& painter) const;
  void paintReader(QPainter& painter, const poster::Viewer& viewer) const;

  plan::Theme theme_;
  plan::ViewTransform view_;
  plan::Picture picture_;
  std::shared_ptr<const layout::Layout> layout_;
  std::size_t room_ = 0;
  std::vector<poster::RoomWall> walls_;
  std::optional<poster::Viewer> hangs_;   // now
  std::optional<std::size_t> wall_;       // that the pointer or the keys are at
  std::optional<geometry::Point> place_;  // on it, where the pointer is
};

}  // namespace stopwalk::window
