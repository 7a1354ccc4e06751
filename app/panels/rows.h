#pragma once

#include <QStyledItemDelegate>
#include <QTreeView>

namespace stopwalk::panels {

// Rows that are high enough to be met by a finger, and as high as their text needs on several lines.
class Rows : public QStyledItemDelegate {
  Q_OBJECT

 public:
  static constexpr int kLowest_px = 24;
  // Gives a list its rows; in a tree long texts are wrapped.
  static void give(QAbstractItemView& view, int lowest_px = kLowest_px);

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  using QStyledItemDelegate::QStyledItemDelegate;

  int lowest_px_ = kLowest_px;
};

}  // namespace stopwalk::panels
