#pragma once

#include <vector>

#include "app/poster/lettering.h"
#include "app/poster/page.h"

// Pieces of a page that are made by themselves, from (0, 0), and then put in their place.
namespace stopwalk::poster {

struct Block {
  double height = 0;
  std::vector<Mark> marks;
  bool opens = false;    // what comes next belongs to it
  bool heading = false;  // never the last of a column
};

void shift(std::vector<Mark>& marks, QPointF by);
// As it is for those who read from right to left: places are mirrored between 0 and `width`, letters and
// signs are not.
void mirror(std::vector<Mark>& marks, double width, const Lettering& letters);

QPainterPath rectanglePath(const QRectF& rectangle);
QPainterPath linePath(QPointF from, QPointF to);
QPainterPath discPath(QPointF centre, double across);
Shape filled(QPainterPath path, QColor fill);
Shape drawn(QPainterPath path, QColor line, double width_mm);

// Writes downwards into a block, a line or a paragraph at a time.
class Writer {
 public:
  Writer(Block& block, const Lettering& letters) : block_(block), letters_(letters) {}

  // Wrapped into [left, right] from the current height; of the lines each one mark.
  void paragraph(const QString& text, double left, double right, double cap, bool bold = false,
                 QColor colour = Qt::black);
  void gap(double mm) { block_.height += mm; }

 private:
  Block& block_;
  const Lettering& letters_;
};

// What the columns take, in order, each of its own height; what belongs together stays so, unless it is
// longer than a column. Returns for each column the number of blocks in it; the rest does not fit.
std::vector<std::size_t> flow(const std::vector<Block>& blocks, const std::vector<double>& heights);

}  // namespace stopwalk::poster
