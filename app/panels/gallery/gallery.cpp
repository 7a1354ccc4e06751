#include "app/panels/gallery/gallery.h"

#include <QEvent>
#include <QVBoxLayout>

#include "app/panels/rows.h"

namespace stopwalk::panels {

namespace {
constexpr int kNumberRole = Qt::UserRole;
}

Gallery::Gallery(const plan::Catalogue& catalogue, QWidget* parent) : QWidget(parent) {
  list_ = new QTreeWidget(this);
  list_->setHeaderHidden(true);
  Rows::give(*list_);
  list_->setAccessibleName(tr("What to draw"));
  list_->setWhatsThis(tr("Choose what to draw; then click on the plan. Enter chooses by keyboard."));
  list_->setTextElideMode(Qt::ElideRight);
  list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  search_ = new SearchLine(tr("Search what to draw"), list_, this);
  none_ = new QLabel(tr("Nothing here is called that."), this);
  none_->setWordWrap(true);
  none_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(search_);
  column->addWidget(none_);
  column->addWidget(list_, 1);
  setFocusProxy(search_);
  connect(search_, &QLineEdit::textChanged, this, &Gallery::filter);
  connect(search_, &SearchLine::chosen, this, [this] { choose(list_->currentItem()); });
  connect(list_, &QTreeWidget::itemClicked, this, &Gallery::choose);
  setCatalogue(catalogue);
}

void Gallery::setCatalogue(const plan::Catalogue& catalogue) {
  list_->clear();
  offers_.clear();
  for (const OfferGroup& group : offersOf(catalogue)) {
    auto* head = new QTreeWidgetItem(list_, {group.text});
    head->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    for (const Offer& offer : group.offers) {
      auto* item = new QTreeWidgetItem(head, {offer.text});
      item->setData(0, kNumberRole, static_cast<int>(offers_.size()));
      item->setToolTip(0, offer.what);
      item->setData(0, Qt::AccessibleDescriptionRole, offer.what);
      offers_.push_back(offer);
    }
    head->setExpanded(true);
  }
  drawSymbols();
  filter();
}

void Gallery::drawSymbols() {
  const plan::Theme theme = plan::Theme::of(palette());
  const int side = fontMetrics().height() * 3 / 2;
  list_->setIconSize({side, side});
  for (QTreeWidgetItemIterator it(list_); *it; ++it) {
    const QVariant number = (*it)->data(0, kNumberRole);
    if (!number.isValid()) continue;
    const Offer& offer = offers_[number.toUInt()];
    (*it)->setIcon(0, plan::symbolIcon(offer.symbol, offer.ground, theme));
  }
}

void Gallery::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) drawSymbols();
  QWidget::changeEvent(event);
}

void Gallery::showChoice(const plan::Choice& choice) {
  for (QTreeWidgetItemIterator it(list_); *it; ++it) {
    const QVariant number = (*it)->data(0, kNumberRole);
    if (number.isValid() && offers_[number.toUInt()].choice == choice) return list_->setCurrentItem(*it);
  }
  list_->clearSelection();
}

void Gallery::filter() {
  const QString search = search_->text();
  for (int g = 0; g < list_->topLevelItemCount(); ++g) {
    QTreeWidgetItem* head = list_->topLevelItem(g);
    const bool whole = matches(head->text(0), search);
    bool any = false;
    for (int i = 0; i < head->childCount(); ++i) {
      const bool shown = whole || matches(head->child(i)->text(0), search);
      head->child(i)->setHidden(!shown);
      any |= shown;
    }
    head->setHidden(!any);
    if (!search.isEmpty()) head->setExpanded(true);
  }
  QTreeWidgetItem* first = firstShown();
  none_->setVisible(!first);
  if (!search.isEmpty()) list_->setCurrentItem(first);
}

QTreeWidgetItem* Gallery::firstShown() const {
  for (QTreeWidgetItemIterator it(list_, QTreeWidgetItemIterator::NotHidden); *it; ++it)
    if ((*it)->parent()) return *it;
  return nullptr;
}

void Gallery::choose(QTreeWidgetItem* item) {
  if (!item) return;
  const QVariant number = item->data(0, kNumberRole);
  if (!number.isValid())
    item->setExpanded(!item->isExpanded());
  else
    emit chosen(offers_[number.toUInt()].choice);
}

}  // namespace stopwalk::panels
