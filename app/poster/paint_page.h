#pragma once

#include <QString>

#include "app/poster/page.h"

class QPainter;

namespace stopwalk::poster {

// Paints a page so that its top left corner is the painter's origin and a millimetre is `per_mm` units of it.
void paintPage(QPainter& painter, const Page& page, const QString& family, double per_mm);

}  // namespace stopwalk::poster
