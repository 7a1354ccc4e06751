#include "app/plan/check_legend.h"

#include <algorithm>

#include "app/plan/check_words.h"
#include "app/plan/legend_corner.h"
#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr double kRow_px = 20, kSign_px = 4.2, kSigns_px = 28;

}  // namespace

CheckLegend::CheckLegend(const QString& title, const std::map<std::string, CheckMark>& marks)
    : title_(title) {
  const auto has = [&](auto part, auto value) {
    return std::ranges::any_of(marks, [&](const auto& mark) { return mark.second.*part == value; });
  };
  for (const auto sign : {CheckSign::Passed, CheckSign::Short, CheckSign::Failed, CheckSign::NotReached,
                          CheckSign::NotTested, CheckSign::Never})
    if (has(&CheckMark::sign, sign)) rows_.push_back({{sign, CheckAge::None}, wordOf(sign)});
  for (const auto age : {CheckAge::Fresh, CheckAge::HalfGone, CheckAge::Due, CheckAge::Overdue})
    if (has(&CheckMark::age, age)) rows_.push_back({{CheckSign::None, age}, wordOf(age)});
}

QStringList CheckLegend::lines() const {
  QStringList lines;
  for (const Row& row : rows_) lines << row.words;
  return lines;
}

double CheckLegend::titleHigh() const {
  return title_.isEmpty() ? 0 : QFontMetricsF(labelFont()).height();
}

QSizeF CheckLegend::size() const {
  const QFontMetricsF metrics{labelFont()};
  double width = metrics.horizontalAdvance(title_) - kSigns_px;
  for (const Row& row : rows_) width = std::max(width, metrics.horizontalAdvance(row.words));
  return {width + kSigns_px + 2 * kLegendMargin_px,
          titleHigh() + static_cast<double>(rows_.size()) * kRow_px + 2 * kLegendMargin_px};
}

void CheckLegend::paint(QPainter& painter, const Theme& theme, const QRectF& box) const {
  painter.save();
  painter.setFont(labelFont());
  painter.setPen(QPen(theme.quiet_ink, 1));
  painter.setBrush(theme.floor);
  painter.drawRect(box);
  const double title = titleHigh();
  QRectF row(box.topLeft() + QPointF(kLegendMargin_px, kLegendMargin_px),
             QSizeF(box.width() - 2 * kLegendMargin_px, title));
  painter.setPen(theme.quiet_ink);
  painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, title_);
  row.moveTop(row.bottom());
  row.setHeight(kRow_px);
  for (const Row& each : rows_) {
    paintCheckMark(painter, theme, each.mark, {row.left() + kSigns_px / 2 - 3, row.center().y()}, kSign_px);
    painter.setPen(theme.ink);
    painter.drawText(row.adjusted(kSigns_px, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, each.words);
    row.translate(0, kRow_px);
  }
  painter.restore();
}

}  // namespace stopwalk::plan
