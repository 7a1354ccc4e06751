#pragma once

#include <QColor>
#include <QImage>
#include <QObject>
#include <memory>
#include <thread>
#include <vector>

#include "app/plan/view_transform.h"
#include "app/poster/page.h"
#include "app/window/newest.h"

namespace stopwalk::window {

// The sheets of a document one under the other: mm with y up, the first from (0, 0) downwards.
std::vector<geometry::Box> sheetsOf(const poster::Document& document);

// What of the sheets is seen in a view, as a picture: painted on a thread of its own, since a page full of
// letters takes longer than a frame.
class PagePainter : public QObject {
  Q_OBJECT

 public:
  struct Question {
    std::shared_ptr<const poster::Document> document;
    plan::ViewTransform view;
    QSize pixels;      // of the window
    double ratio = 1;  // device pixels for each
    QColor ground;     // round the sheets
  };
  struct Answer {
    Question of;
    QImage image;
  };

  explicit PagePainter(QObject* parent = nullptr);
  ~PagePainter() override;  // waits for the picture that is being painted

  void ask(Question question) { next_.put(std::move(question)); }

 signals:
  void painted(std::shared_ptr<const stopwalk::window::PagePainter::Answer> answer);

 private:
  void work();

  Newest<Question> next_;
  std::thread worker_;
};

}  // namespace stopwalk::window
