#include "app/panels/poster/choice_list.h"

#include <algorithm>

namespace stopwalk::panels {
namespace {

constexpr int kMost_px = 200;

// As high as what is in it.
class FittedList : public QListWidget {
 public:
  using QListWidget::QListWidget;

  QSize sizeHint() const override {
    if (count() > 0) visualItemRect(item(0));  // lays the rows out, if that is still to be done
    const int height = 2 * frameWidth() + contentsSize().height();
    return {200, std::clamp(height, 2 * fontMetrics().height(), kMost_px)};
  }
  QSize minimumSizeHint() const override { return {120, std::min(sizeHint().height(), 60)}; }

 protected:
  void resizeEvent(QResizeEvent* event) override {
    QListWidget::resizeEvent(event);
    updateGeometry();  // other breaks of the lines
  }
};

}  // namespace

QListWidget* choiceList(const QString& name, QWidget* parent) {
  auto* list = new FittedList(parent);
  list->setAccessibleName(name);
  list->setWordWrap(true);
  list->setTextElideMode(Qt::ElideNone);
  list->setResizeMode(QListView::Adjust);
  list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Maximum);
  return list;
}

void fillRows(QListWidget& list, const std::vector<ChoiceRow>& rows) {
  while (list.count() > static_cast<int>(rows.size())) delete list.takeItem(list.count() - 1);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const int row = static_cast<int>(i);
    if (row == list.count()) list.addItem(QString());
    QListWidgetItem* item = list.item(row);
    if (item->text() != rows[i].text) item->setText(rows[i].text);
    item->setData(Qt::UserRole, rows[i].key);
  }
  list.updateGeometry();
}

}  // namespace stopwalk::panels
