#pragma once

#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

#include "app/poster/lettering.h"
#include "app/poster/page.h"

namespace stopwalk::poster {

// Boxes that nothing more may cover, as the plan fills up.
class Taken {
 public:
  void add(const QRectF& box) { boxes_.push_back(box); }
  void add(const QLineF& line) { lines_.push_back(line); }
  bool free(const QRectF& box) const;

 private:
  std::vector<QRectF> boxes_;
  std::vector<QLineF> lines_;
};

// A few words in several lines, each in the middle of `box`, as a paragraph of at most this width.
struct NameBlock {
  QRectF box;
  std::vector<Text> lines;
};
NameBlock nameBlock(const QString& name, double most_width, double cap, const Lettering& letters, bool bold,
                    QColor colour);
void moveCentre(NameBlock& block, QPointF to);

// Within the footprint, in letters from `cap` down to the least; else beside it. Nothing: no place is free.
std::optional<NameBlock> placeName(const QString& name, const QRectF& footprint, const QRectF& within,
                                   double cap, const Lettering& letters, const Taken& taken,
                                   const std::vector<QRectF>& others);

}  // namespace stopwalk::poster
