#include "app/poster/block.h"

#include <algorithm>

namespace stopwalk::poster {
namespace {

struct Shift {
  QPointF by;
  void operator()(Shape& shape) const { shape.path.translate(by); }
  void operator()(Text& text) const { text.at += by; }
  void operator()(Sign& sign) const { sign.square.translate(by); }
};

struct Mirror {
  double width;
  const Lettering& letters;
  double mirrored(double left, double of_width) const { return width - left - of_width; }
  void operator()(Shape& shape) const {
    const QRectF box = shape.path.boundingRect();
    shape.path.translate(mirrored(box.left(), box.width()) - box.left(), 0);
  }
  void operator()(Text& text) const {
    text.at.setX(mirrored(text.at.x(), letters.width(text.text, text.cap, text.bold)));
  }
  void operator()(Sign& sign) const {
    sign.square.moveLeft(mirrored(sign.square.left(), sign.square.width()));
  }
};

// The height of the block and all that belongs to it.
double togetherFrom(const std::vector<Block>& blocks, std::size_t i) {
  double height = blocks[i].height;
  for (; blocks[i].opens && i + 1 < blocks.size(); ++i) height += blocks[i + 1].height;
  return height;
}

}  // namespace

void shift(std::vector<Mark>& marks, QPointF by) {
  for (Mark& mark : marks) std::visit(Shift{by}, mark);
}

void mirror(std::vector<Mark>& marks, double width, const Lettering& letters) {
  for (Mark& mark : marks) std::visit(Mirror{width, letters}, mark);
}

QPainterPath rectanglePath(const QRectF& rectangle) {
  QPainterPath path;
  path.addRect(rectangle);
  return path;
}

QPainterPath linePath(QPointF from, QPointF to) {
  QPainterPath path(from);
  path.lineTo(to);
  return path;
}

QPainterPath discPath(QPointF centre, double across) {
  QPainterPath path;
  path.addEllipse(centre, across / 2, across / 2);
  return path;
}

Shape filled(QPainterPath path, QColor fill) {
  Shape shape;
  shape.path = std::move(path);
  shape.fill = fill;
  return shape;
}

Shape drawn(QPainterPath path, QColor line, double width_mm) {
  Shape shape;
  shape.path = std::move(path);
  shape.line = line;
  shape.width = width_mm;
  return shape;
}

void Writer::paragraph(const QString& text, double left, double right, double cap, bool bold, QColor colour) {
  const double line = Lettering::lineOf(cap);
  for (const QString& words : letters_.wrapped(text, right - left, cap, bold)) {
    // Half the space between two lines above the capitals, half below the baseline.
    block_.marks.push_back(Text{words, {left, block_.height + (line + cap) / 2}, cap, bold, colour});
    block_.height += line;
  }
}

std::vector<std::size_t> flow(const std::vector<Block>& blocks, const std::vector<double>& heights) {
  const double tallest = heights.empty() ? 0 : *std::ranges::max_element(heights);
  std::vector<std::size_t> taken;
  std::size_t next = 0;
  for (const double height : heights) {
    const std::size_t first = next;
    double used = 0;
    while (next < blocks.size() && used + blocks[next].height <= height) used += blocks[next++].height;
    const std::size_t most = next;
    while (next < blocks.size() && next > first && blocks[next - 1].opens) --next;
    // What is longer than any column is divided.
    if (next == first && next < blocks.size() && togetherFrom(blocks, next) > tallest) {
      next = most;
      while (next > first && blocks[next - 1].heading) --next;
    }
    taken.push_back(next - first);
  }
  return taken;
}

}  // namespace stopwalk::poster
