#pragma once

#include <QPainterPath>
#include <QString>

namespace stopwalk::poster {

// A QR code (ISO/IEC 18004) of the text as one path in a square of this side, with its quiet zone; empty if
// the text is too long. Its least square, mm, is in `module`.
struct QrCode {
  QPainterPath path;
  double module = 0;  // mm
};
QrCode qrCode(const QString& text, const QRectF& square);

}  // namespace stopwalk::poster
