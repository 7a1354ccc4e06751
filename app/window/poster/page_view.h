#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/plan/theme.h"
#include "app/window/poster/page_painter.h"

namespace stopwalk::window {

// The pages of a poster as they will be on paper, one under the other on the theme's ground; zoomed and moved
// as the plan is. Page up and down go from sheet to sheet.
class PageView : public QWidget {
  Q_OBJECT

 public:
  explicit PageView(QWidget* parent = nullptr);

  // One that is not of the newest question is marked so. None: `sentence` says why.
  void show(std::shared_ptr<const poster::Document> document, const QString& sentence);
  void setCurrent(bool is_current);

  bool isCurrent() const { return is_current_; }
  // Whether what is on the screen was painted as it is to be: sharp, and of this document.
  bool isPainted() const;
  const std::shared_ptr<const poster::Document>& document() const { return document_; }
  const QString& sentence() const { return sentence_; }
  const plan::ViewTransform& transform() const { return view_; }

  void fit();
  void zoomBy(double factor);

  QSize sizeHint() const override { return {900, 640}; }
  QSize minimumSizeHint() const override { return {240, 200}; }

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void mousePressEvent(QMouseEvent*) override;
  void mouseMoveEvent(QMouseEvent*) override;
  void mouseReleaseEvent(QMouseEvent*) override;
  void wheelEvent(QWheelEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void changeEvent(QEvent*) override;
  bool event(QEvent*) override;

 private:
  PagePainter::Question question() const;
  void viewChanged();
  void goToSheet(int index);
  void paintPicture(QPainter& painter) const;
  void paintMark(QPainter& painter, const QString& text, bool in_the_middle) const;

  PagePainter painter_;
  plan::Theme theme_;
  plan::ViewTransform view_;
  std::shared_ptr<const poster::Document> document_;
  QString sentence_;
  bool is_current_ = true;
  bool is_fitted_ = true;  // and stays so when the window grows
  int sheet_ = 0;          // that was gone to last
  std::shared_ptr<const PagePainter::Answer> picture_;
  std::optional<QPointF> panned_from_;
};

}  // namespace stopwalk::window
