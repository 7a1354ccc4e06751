#include "app/plan/picture_preview.h"

#include <QPainter>

namespace stopwalk::plan {

PicturePreview::PicturePreview(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                               QWidget* parent)
    : QWidget(parent), picture_(layout, kinds) {
  setMinimumSize(200, 150);
}

void PicturePreview::paintEvent(QPaintEvent*) {
  constexpr double kMargin_px = 16;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Theme theme = Theme::of(palette());
  painter.fillRect(rect(), theme.outside);
  if (picture_.bounds().empty()) return;
  ViewTransform view;
  view.fit(picture_.bounds(), QSizeF(width(), height()), kMargin_px);
  picture_.paint(painter, view, theme, QRectF(rect()), {});
}

}  // namespace stopwalk::plan
