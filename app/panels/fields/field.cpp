#include "app/panels/fields/field.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QStyle>

namespace stopwalk::panels {

Field::Field(FieldText text, QWidget* parent) : QWidget(parent), text_(std::move(text)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  trouble_row_ = new QWidget(this);
  auto* row = new QHBoxLayout(trouble_row_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  mark_ = new QLabel(trouble_row_);
  trouble_ = new QLabel(trouble_row_);
  trouble_->setWordWrap(true);
  trouble_->setTextFormat(Qt::PlainText);
  row->addWidget(mark_, 0, Qt::AlignTop);
  row->addWidget(trouble_, 1);
  column->addWidget(trouble_row_);
  trouble_row_->hide();
  sizeMark();
}

QString Field::trouble() const {
  return trouble_->text();
}

void Field::setEditor(QWidget* editor, Named named) {
  editor_ = editor;
  static_cast<QVBoxLayout*>(layout())->insertWidget(0, editor);
  setFocusProxy(editor->focusProxy() ? editor->focusProxy() : editor);
  describe(focusProxy(), text_.name);
  setWhatsThis(text_.what);
  if (named == Named::ByItself) return;
  label_ = new QLabel(text_.name, this);
  label_->setBuddy(focusProxy());
  label_->setWordWrap(true);
  label_->setWhatsThis(text_.what);
}

void Field::setFirst(QWidget* control) {
  if (control == focusProxy()) return;
  editor_->setFocusProxy(control);
  setFocusProxy(control);
  if (label_) label_->setBuddy(control);
}

void Field::describe(QWidget* control, const QString& name) const {
  control->setAccessibleName(name);
  control->setAccessibleDescription(text_.what);
  control->setWhatsThis(text_.what);
}

void Field::setTrouble(const QString& trouble) {
  if (trouble == trouble_->text()) return;
  trouble_->setText(trouble);
  giveTroubleItsHeight();
  trouble_row_->setVisible(!trouble.isEmpty());
  focusProxy()->setAccessibleDescription(trouble.isEmpty() ? text_.what : trouble);
}

void Field::closeEditor(QAbstractItemView& table) {
  const QWidget* typing = QApplication::focusWidget();
  if (typing && table.viewport()->isAncestorOf(typing)) table.setFocus();
}

void Field::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) sizeMark();
  QWidget::changeEvent(event);
}

void Field::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  giveTroubleItsHeight();
}

// A form asks a row for its height only once, before the sentence is there.
void Field::giveTroubleItsHeight() {
  const int beside = width() - mark_->sizeHint().width() - trouble_row_->layout()->spacing();
  const bool is_told = !trouble_->text().isEmpty() && beside > 0;
  trouble_->setMinimumHeight(is_told ? trouble_->heightForWidth(beside) : 0);
}

void Field::sizeMark() {
  const int side = fontMetrics().height();
  mark_->setPixmap(style()->standardIcon(QStyle::SP_MessageBoxWarning).pixmap(side, side));
}

}  // namespace stopwalk::panels
