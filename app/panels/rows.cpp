#include "app/panels/rows.h"

#include <QHeaderView>
#include <algorithm>

namespace stopwalk::panels {

namespace {

constexpr int kAnyWidth = 10000;

// What a tree leaves for the text of a row. A column that is as wide as its texts breaks none of them.
int textWidth(const QTreeView& tree, const QModelIndex& index) {
  const bool is_one_of_several = tree.header()->count() > 1;
  if (is_one_of_several && tree.header()->sectionResizeMode(index.column()) == QHeaderView::ResizeToContents)
    return kAnyWidth;
  int width = is_one_of_several ? tree.columnWidth(index.column()) : tree.viewport()->width();
  width -= tree.indentation() + 2 * tree.style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 4;
  for (QModelIndex i = index.parent(); i.isValid(); i = i.parent()) width -= tree.indentation();
  if (!index.data(Qt::DecorationRole).isNull()) {
    const int icon = tree.iconSize().isValid() ? tree.iconSize().width()
                                               : tree.style()->pixelMetric(QStyle::PM_SmallIconSize);
    width -= icon + 2 * tree.style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 4;
  }
  if (!index.data(Qt::CheckStateRole).isNull())
    width -= tree.style()->pixelMetric(QStyle::PM_IndicatorWidth) +
             2 * tree.style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 4;
  return std::max(width, 40);
}

}  // namespace

void Rows::give(QAbstractItemView& view, int lowest_px) {
  auto* rows = new Rows(&view);
  rows->lowest_px_ = lowest_px;
  view.setItemDelegate(rows);
  auto* tree = qobject_cast<QTreeView*>(&view);
  if (!tree) return;
  tree->setWordWrap(true);
  connect(tree->header(), &QHeaderView::sectionResized, tree, &QTreeView::doItemsLayout,
          Qt::QueuedConnection);
}

QSize Rows::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QSize size = QStyledItemDelegate::sizeHint(option, index);
  if (const auto* tree = qobject_cast<const QTreeView*>(option.widget)) {
    const QRect room(0, 0, textWidth(*tree, index), kAnyWidth);
    const QRect text = option.fontMetrics.boundingRect(room, Qt::TextWordWrap, index.data().toString());
    size.setHeight(std::max(size.height(), text.height() + 4));
  }
  size.setHeight(std::max({size.height(), lowest_px_, option.fontMetrics.height() * 3 / 2}));
  return size;
}

}  // namespace stopwalk::panels
