#include "app/plan/symbols.h"

#include <QFile>
#include <QPainter>
#include <QPixmap>
#include <cmath>
#include <map>
#include <memory>
#include <tuple>

#include "app/plan/items/stamp.h"

namespace stopwalk::plan {
namespace {

constexpr const char* kUnknown = "unknown";

QString pathOf(const std::string& key) {
  return QStringLiteral(":/symbols/%1.svg").arg(QString::fromStdString(key));
}

struct Colours {
  QColor sign, ground;
};

Colours coloursOf(Ground ground, const Theme& theme) {
  switch (ground) {
    case Ground::Stop:
      return {theme.stop_sign, theme.stop_ground};
    case Ground::Start:
    case Ground::Plain:
      return {theme.dark_sign, theme.start_ground};
    case Ground::Phone:
      return {theme.phone_sign, theme.phone};
    case Ground::None:
      break;
  }
  return {theme.ink, theme.floor};
}

void paintGround(QPainter& painter, const QRectF& square, Ground ground, const QColor& fill,
                 const QColor& rim) {
  const double line = std::max(1.0, square.width() / 24);
  const QRectF inner = square.adjusted(line / 2, line / 2, -line / 2, -line / 2);
  painter.setPen(QPen(rim, line));
  painter.setBrush(fill);
  if (ground == Ground::Start)
    painter.drawEllipse(inner);
  else if (ground == Ground::Phone)
    painter.drawRect(inner);
  else
    painter.drawRoundedRect(inner, square.width() / 6, square.width() / 6);
}

QPixmap pixmapOf(const std::string& key, Ground ground, const Theme& theme, int side, double ratio) {
  QPixmap pixmap(QSize(side, side));
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  paintSymbolVectors(painter, QRectF(0, 0, side, side), key, ground, theme);
  painter.end();
  pixmap.setDevicePixelRatio(ratio);
  return pixmap;
}

// Symbols are few and their sizes have limits, so that nothing need be dropped.
const QPixmap& cachedPixmap(const std::string& key, Ground ground, const Theme& theme, int side,
                            double ratio) {
  using Key = std::tuple<std::string, Ground, QRgb, QRgb, QRgb, int, double>;
  static std::map<Key, QPixmap> cache;
  const Colours colours = coloursOf(ground, theme);
  const Key of{key, ground, colours.sign.rgba(), colours.ground.rgba(), theme.symbol_rim.rgba(), side, ratio};
  auto found = cache.find(of);
  if (found == cache.end()) found = cache.emplace(of, pixmapOf(key, ground, theme, side, ratio)).first;
  return found->second;
}

}  // namespace

Ground groundOf(const layout::DeviceKind& kind) {
  if (kind.counts_as_stop) return Ground::Stop;
  return kind.symbol == "guarded-start" ? Ground::Start : Ground::Plain;
}

bool hasSymbol(const std::string& key) {
  return QFile::exists(pathOf(key));
}

QSvgRenderer& symbol(const std::string& key, const QColor& sign, const QColor& ground) {
  // Each thread has its own: posters are painted on others than the window's.
  static thread_local std::map<std::tuple<std::string, QRgb, QRgb>, std::unique_ptr<QSvgRenderer>> cache;
  auto& renderer = cache[{key, sign.rgba(), ground.rgba()}];
  if (!renderer) {
    QFile file(pathOf(hasSymbol(key) ? key : kUnknown));
    QByteArray svg = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    svg.replace("#ffffff", "#ground").replace("#000000", sign.name().toLatin1());
    svg.replace("#ground", ground.name().toLatin1());
    renderer = std::make_unique<QSvgRenderer>(svg);
  }
  return *renderer;
}

void paintSymbolVectors(QPainter& painter, const QRectF& square, const std::string& key, Ground ground,
                        const Theme& theme) {
  const Colours colours = coloursOf(ground, theme);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ground != Ground::None) paintGround(painter, square, ground, colours.ground, theme.symbol_rim);
  const double edge = ground == Ground::None    ? 0
                      : ground == Ground::Start ? square.width() / 8
                                                : square.width() / 16;
  symbol(key, colours.sign, colours.ground).render(&painter, square.adjusted(edge, edge, -edge, -edge));
  painter.restore();
}

void paintSymbol(QPainter& painter, const QRectF& square, const std::string& key, Ground ground,
                 const Theme& theme) {
  if (!isRaster(painter) || square.width() > 64)
    return paintSymbolVectors(painter, square, key, ground, theme);
  const double ratio = painter.device()->devicePixelRatioF();
  const int side = static_cast<int>(std::lround(square.width() * ratio));
  const QPointF corner = square.topLeft() * ratio;
  const QPointF whole(std::round(corner.x()) / ratio, std::round(corner.y()) / ratio);
  painter.drawPixmap(whole, cachedPixmap(key, ground, theme, side, ratio));
}

void paintSymbolDot(QPainter& painter, const QRectF& square, Ground ground, const Theme& theme) {
  const Colours colours = coloursOf(ground, theme);
  painter.setPen(QPen(theme.symbol_rim, 1));
  painter.setBrush(ground == Ground::Stop ? colours.sign : colours.ground);
  if (ground == Ground::Phone)
    painter.drawRect(square);
  else
    painter.drawEllipse(square);
}

QIcon symbolIcon(const std::string& key, Ground ground, const Theme& theme) {
  QIcon icon;
  for (const int side : {16, 24, 32, 48, 64}) icon.addPixmap(pixmapOf(key, ground, theme, side, 1));
  return icon;
}

}  // namespace stopwalk::plan
