#pragma once

#include <QFont>
#include <QPainter>
#include <QSizeF>
#include <QString>

// The plan's own text: its sizes and pictures are kept, since laying text out is the slow part of a frame.
namespace stopwalk::plan {

// The window's font, never under 9 points.
QFont labelFont();
// Of a text whose lines end with '\n'.
QSizeF textSize(const QString& text, const QFontMetricsF& metrics);
// The same lines broken at spaces so that none is wider, where it can be.
QString wrapped(const QString& text, double width, const QFontMetricsF& metrics);
// In the middle of the box, with the painter's font and pen.
void paintText(QPainter& painter, const QRectF& box, const QString& text);

}  // namespace stopwalk::plan
