#pragma once

#include <QColor>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <string>
#include <variant>
#include <vector>

#include "app/plan/symbols.h"

// The page as it will be on paper: millimetres, the origin at the top left, y down. Painted by paint_page to
// PDF, SVG, PNG, printer and screen alike; it holds no pixels and no points.
namespace stopwalk::poster {

struct Shape {
  QPainterPath path;
  QColor fill = Qt::transparent;
  QColor line = Qt::transparent;
  double width = 0;          // of the line, mm; 0: no line
  std::vector<double> dash;  // mm on, mm off, ...; empty: unbroken
};

// One line of text. `cap` is the height of its capital letters, which is what the norms call letter height.
struct Text {
  QString text;
  QPointF at;  // left end of the baseline
  double cap = 4;
  bool bold = false;
  QColor colour = Qt::black;
};

// A symbol on its ground, filling the square.
struct Sign {
  std::string symbol;
  plan::Ground ground = plan::Ground::Stop;
  QRectF square;
};

using Mark = std::variant<Shape, Text, Sign>;

struct Page {
  QSizeF size;
  std::vector<Mark> marks;  // in the order of painting
};

struct Document {
  QString heading;  // "STOP LOCATIONS"
  QString of;       // the room; empty: of no one room
  QString subject;
  QString language;  // BCP 47, such as `en`
  QString family;    // of all letters
  std::vector<Page> pages;

  QString title() const;  // "STOP LOCATIONS: Car hall"
};

// All pages in one, of all their rooms. At least one document.
Document joined(std::vector<Document> documents);

}  // namespace stopwalk::poster
