#pragma once

#include <QColor>
#include <QIcon>
#include <QRectF>
#include <QSvgRenderer>
#include <string>

#include "app/plan/theme.h"
#include "core/layout/device_kind.h"

class QPainter;

// The drawings of resources/symbols by their name (`mushroom-button`, `phone`, `station-helper`, `bench`):
// two colours each, the sign's and the ground's, given when they are painted.
namespace stopwalk::plan {

// What a symbol stands on; says what it is for before the sign is read.
enum class Ground {
  None,   // the sign alone, in ink
  Plain,  // a grey plate: a device that stops nothing and is no guarded start
  Stop,   // a yellow plate
  Start,  // a grey disc
  Phone   // a green square
};

Ground groundOf(const layout::DeviceKind& kind);
bool hasSymbol(const std::string& key);

// The drawing itself, the same for every call with these colours; of an unknown key the plain sign.
QSvgRenderer& symbol(const std::string& key, const QColor& sign, const QColor& ground);
// With its ground, filling the square: on a screen from a cache, elsewhere as vectors.
void paintSymbol(QPainter& painter, const QRectF& square, const std::string& key, Ground ground,
                 const Theme& theme);
// The same, always as vectors; the square may be in any unit.
void paintSymbolVectors(QPainter& painter, const QRectF& square, const std::string& key, Ground ground,
                        const Theme& theme);
// In its place where there is no room for more: the colours of the ground and sign.
void paintSymbolDot(QPainter& painter, const QRectF& square, Ground ground, const Theme& theme);
QIcon symbolIcon(const std::string& key, Ground ground, const Theme& theme);

}  // namespace stopwalk::plan
