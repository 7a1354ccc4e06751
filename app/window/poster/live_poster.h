#pragma once

#include <QObject>
#include <memory>
#include <utility>

#include "app/window/newest_answered.h"
#include "app/window/poster/poster_source.h"

namespace stopwalk::window {

// Makes the poster of the newest question on a thread of its own; questions between are not answered.
class LivePoster : public QObject {
  Q_OBJECT

 public:
  struct Question {
    PosterSource source;
    std::string room;                      // its id
    std::optional<geometry::Point> place;  // where it hangs
    poster::Wish wish;
  };
  struct Answer {
    std::shared_ptr<const layout::Layout> layout;
    std::vector<QString> why_not;                      // for each of its rooms
    std::string room;                                  // that was asked for
    std::shared_ptr<const poster::Document> document;  // none: there is no poster
    std::vector<poster::Shortfall> shortfalls;
    int scale = 0;
  };

  explicit LivePoster(QObject* parent = nullptr);

  void ask(Question question) { worker_.ask(std::move(question)); }
  // Whether the last answer was to the last question.
  bool isCurrent() const { return worker_.isCurrent(); }

 signals:
  void answered(std::shared_ptr<const stopwalk::window::LivePoster::Answer> answer);
  // The last question has no answer, such as for want of memory.
  void failed(const QString& why);

 private:
  static Answer answerTo(const PosterShop& shop, const Question& question);

  NewestAnswered<Question, Answer> worker_;
};

}  // namespace stopwalk::window
