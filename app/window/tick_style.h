#pragma once

#include <QPainter>
#include <QProxyStyle>
#include <QStyleOption>

namespace stopwalk::window {

// The style of the desktop, but for boxes to tick on a dark ground: some styles draw their edge darker than
// the ground, so that there is nothing to be seen to tick.
class TickStyle : public QProxyStyle {
 public:
  using QProxyStyle::QProxyStyle;

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool is_box = element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck;
    if (!is_box || option->palette.color(QPalette::Base).lightness() > 127) return;
    QColor edge = option->palette.color(QPalette::Text);
    edge.setAlphaF(0.6f);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setPen(edge);
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
    painter->restore();
  }
};

}  // namespace stopwalk::window
