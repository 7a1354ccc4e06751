#include "app/poster/qr_code.h"

#include <exception>
#include <qrcodegen/qrcodegen.hpp>

namespace stopwalk::poster {
namespace {

constexpr int kQuiet = 4;  // modules, ISO/IEC 18004 (from memory)

}  // namespace

QrCode qrCode(const QString& text, const QRectF& square) {
  QrCode code;
  try {
    const auto qr = qrcodegen::QrCode::encodeText(text.toUtf8().constData(), qrcodegen::QrCode::Ecc::MEDIUM);
    const int size = qr.getSize();
    code.module = square.width() / (size + 2 * kQuiet);
    const double m = code.module;
    for (int y = 0; y < size; ++y)
      for (int x = 0; x < size; ++x)
        if (qr.getModule(x, y))
          code.path.addRect(square.left() + (x + kQuiet) * m, square.top() + (y + kQuiet) * m, m, m);
  } catch (const std::exception&) {  // too long
  }
  return code;
}

}  // namespace stopwalk::poster
