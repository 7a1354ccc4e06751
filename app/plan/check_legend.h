#pragma once

#include <QPainter>
#include <map>
#include <string>
#include <vector>

#include "app/plan/items/check_sign.h"

namespace stopwalk::plan {

// What the marks of checks mean, in words: those alone that stand on the plan, which keeps it small.
class CheckLegend {
 public:
  CheckLegend() = default;
  CheckLegend(const QString& title, const std::map<std::string, CheckMark>& marks);

  bool isEmpty() const { return rows_.empty(); }
  QSizeF size() const;
  void paint(QPainter& painter, const Theme& theme, const QRectF& box) const;
  // Line by line, without the title.
  QStringList lines() const;

 private:
  double titleHigh() const;

  struct Row {
    CheckMark mark;
    QString words;
  };
  QString title_;
  std::vector<Row> rows_;
};

}  // namespace stopwalk::plan
