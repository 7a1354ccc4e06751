#include "app/plan/items/stamp.h"

#include <QPixmap>
#include <cmath>
#include <unordered_map>

namespace stopwalk::plan {
namespace {

constexpr std::size_t kMostKept = 4000;  // then the store starts afresh

struct Kept {
  StampKey key;
  QRgb ink, floor;  // of the theme
  double ratio;
  bool operator==(const Kept&) const = default;
};

struct HashOfKept {
  std::size_t operator()(const Kept& k) const {
    return qHashMulti(0, static_cast<int>(k.key.what), k.key.kind, k.key.size, k.key.turn, k.ink, k.floor,
                      k.ratio);
  }
};

QPixmap painted(int side, double ratio, const std::function<void(QPainter&)>& paint) {
  QPixmap pixmap(side, side);
  pixmap.fill(Qt::transparent);
  pixmap.setDevicePixelRatio(ratio);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(side / ratio / 2, side / ratio / 2);
  paint(painter);
  return pixmap;
}

}  // namespace

bool isRaster(const QPainter& painter) {
  const int type = painter.device()->devType();
  return type == QInternal::Widget || type == QInternal::Image || type == QInternal::Pixmap;
}

void paintStamp(QPainter& painter, const Theme& theme, QPointF middle, double reach, const StampKey& key,
                const std::function<void(QPainter&)>& paint) {
  if (!isRaster(painter)) {
    painter.save();
    painter.translate(middle);
    paint(painter);
    painter.restore();
    return;
  }
  static std::unordered_map<Kept, QPixmap, HashOfKept> store;
  if (store.size() > kMostKept) store.clear();
  const double ratio = painter.device()->devicePixelRatioF();
  QPixmap& pixmap = store[{key, theme.ink.rgba(), theme.floor.rgba(), ratio}];
  const int side = 2 * static_cast<int>(std::ceil(reach * ratio)) + 1;
  if (pixmap.isNull()) pixmap = painted(side, ratio, paint);
  const QPointF corner = middle * ratio - QPointF(side / 2.0, side / 2.0);
  painter.drawPixmap(QPointF(std::round(corner.x()), std::round(corner.y())) / ratio, pixmap);
}

}  // namespace stopwalk::plan
