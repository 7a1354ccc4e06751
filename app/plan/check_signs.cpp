#include "app/plan/check_signs.h"

#include <algorithm>
#include <cmath>

#include "app/plan/items/stamp.h"
#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr double kRow_px = 22, kSign_px = 5, kPad_px = 2;  // of a sign with numbers

std::size_t rankOf(CheckSign sign) {
  return static_cast<std::size_t>(std::ranges::find(kSignsGravestFirst, sign) - kSignsGravestFirst.begin());
}

double countWidth(const LaidSign& sign) {
  const QFontMetricsF metrics{labelFont()};
  double width = 0;
  for (const LaidSign::Row& row : sign.rows)
    width = std::max(width, metrics.horizontalAdvance(QString::number(row.count)));
  return width;
}

// At the corners of the symbol, that to the right above it first; of several round about there.
std::array<QRectF, 4> placesOf(const LaidSign& sign) {
  const QRectF box = checkMarkBox(sign.symbol);
  const QPointF by = box.center() - sign.symbol.center();
  const QSizeF size = sign.count() == 1
                          ? box.size()
                          : QSizeF(kRow_px + countWidth(sign) + 2 * kPad_px,
                                   kRow_px * static_cast<double>(sign.rows.size()) + 2 * kPad_px);
  const QPointF grown((size.width() - box.width()) / 2, (size.height() - box.height()) / 2);
  std::array<QRectF, 4> places;
  std::size_t i = 0;
  for (const QPointF to : {QPointF(1, 1), QPointF(-1, 1), QPointF(1, -1), QPointF(-1, -1)}) {
    QRectF place(QPointF(), size);
    place.moveCenter(sign.symbol.center() +
                     QPointF(to.x() * (by.x() + grown.x()), to.y() * (by.y() - grown.y())));
    places[i++] = place;
  }
  return places;
}

void count(LaidSign& sign, const LaidSign::Row& row) {
  const auto at = std::ranges::lower_bound(sign.rows, rankOf(row.mark.sign), {},
                                           [](const LaidSign::Row& r) { return rankOf(r.mark.sign); });
  if (at == sign.rows.end() || at->mark.sign != row.mark.sign) {
    sign.rows.insert(at, row);
  } else {
    at->count += row.count;
    at->mark.age = std::max(at->mark.age, row.mark.age);
  }
}

using Laid = std::vector<LaidSign>;
using Devices = std::vector<std::pair<QRectF, CheckMark>>;

Laid::iterator over(Laid& laid, const QRectF& place) {
  return std::ranges::find_if(laid, [&](const LaidSign& other) { return other.box.intersects(place); });
}

double squaredFrom(const QRectF& symbol, QPointF at) {
  const QPointF by = at - symbol.center();
  return QPointF::dotProduct(by, by);
}

// Joins what it finds no place beside where it would be taken for its own. The gravest keeps its device.
void lay(Laid& laid, LaidSign sign, const Devices& devices) {
  const auto isFree = [&](const QRectF& place) { return over(laid, place) == laid.end(); };
  const auto isOwn = [&](const QRectF& place) {
    const double own = squaredFrom(sign.symbol, place.center());
    return sign.count() > 1 || std::ranges::none_of(devices, [&](const auto& device) {
             return squaredFrom(device.first, place.center()) < own;
           });
  };
  while (true) {
    const auto places = placesOf(sign);
    auto place = std::ranges::find_if(places, [&](const QRectF& p) { return isFree(p) && isOwn(p); });
    if (place == places.end() && isFree(places.front())) place = places.begin();
    if (place != places.end()) {
      sign.box = *place;
      laid.push_back(std::move(sign));
      return;
    }
    const auto other = over(laid, places.front());
    if (rankOf(other->rows.front().mark.sign) <= rankOf(sign.rows.front().mark.sign))
      sign.symbol = other->symbol, sign.device = other->device;
    for (const LaidSign::Row& row : other->rows) count(sign, row);
    laid.erase(other);
  }
}

void paintCounted(QPainter& painter, const Theme& theme, const LaidSign& sign) {
  painter.setPen(QPen(theme.quiet_ink, 1));
  painter.setBrush(theme.floor);
  painter.drawRoundedRect(sign.box.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
  QRectF line(sign.box.topLeft() + QPointF(kPad_px, kPad_px),
              QSizeF(sign.box.width() - 2 * kPad_px, kRow_px));
  for (const LaidSign::Row& row : sign.rows) {
    paintCheckMark(painter, theme, row.mark, {line.left() + kRow_px / 2, line.center().y()}, kSign_px);
    painter.setPen(theme.ink);
    painter.drawText(line.adjusted(kRow_px, 0, 2, 0), Qt::AlignVCenter | Qt::AlignLeft,
                     QString::number(row.count));
    line.translate(0, kRow_px);
  }
}

void paintOne(QPainter& painter, const Theme& theme, const LaidSign& sign) {
  const CheckMark mark = sign.rows.front().mark;
  const double radius = checkSignRadius(sign.symbol);
  const StampKey key{StampKey::What::Check, static_cast<int>(mark.sign),
                     static_cast<int>(std::lround(10 * radius)), static_cast<int>(mark.age)};
  paintStamp(painter, theme, sign.box.center(), radius + kRoundCheckSign_px, key,
             [&](QPainter& stamp) { paintCheckMark(stamp, theme, mark, {}, radius); });
}

}  // namespace

int LaidSign::count() const {
  int count = 0;
  for (const Row& row : rows) count += row.count;
  return count;
}

std::vector<LaidSign> layCheckSigns(const std::vector<std::pair<QRectF, CheckMark>>& devices) {
  std::vector<LaidSign> single;
  for (std::size_t i = 0; i < devices.size(); ++i)
    if (const auto& [symbol, mark] = devices[i]; mark.sign != CheckSign::None)
      single.push_back({{}, symbol, i, {{mark, 1}}});
  std::ranges::stable_sort(single, {}, [](const LaidSign& s) { return rankOf(s.rows.front().mark.sign); });
  Laid laid;
  for (LaidSign& sign : single) lay(laid, std::move(sign), devices);
  return laid;
}

void paintCheckSigns(QPainter& painter, const Theme& theme, const std::vector<LaidSign>& signs) {
  painter.save();
  painter.setFont(labelFont());
  for (const LaidSign& sign : signs)
    sign.count() == 1 ? paintOne(painter, theme, sign) : paintCounted(painter, theme, sign);
  painter.restore();
}

}  // namespace stopwalk::plan
