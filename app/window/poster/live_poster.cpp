#include "app/window/poster/live_poster.h"

#include <algorithm>

namespace stopwalk::window {

LivePoster::LivePoster(QObject* parent) : QObject(parent), worker_([this] { work(); }) {}

LivePoster::~LivePoster() {
  next_.close();
  worker_.join();
}

void LivePoster::ask(Question question) {
  next_.put({++asked_, std::move(question)});
}

LivePoster::Answer LivePoster::answerTo(const PosterShop& shop, const Question& question) {
  Answer answer;
  answer.layout = question.source.layout;
  answer.room = question.room;
  const auto& rooms = answer.layout->rooms;
  for (std::size_t r = 0; r < rooms.size(); ++r) answer.why_not.push_back(shop.whyNot(r));
  const auto found = std::ranges::find(rooms, question.room, &layout::Room::id);
  if (found == rooms.end()) return answer;
  const auto room = static_cast<std::size_t>(found - rooms.begin());
  if (!answer.why_not[room].empty()) return answer;
  poster::Poster made = shop.poster(room, question.place, question.wish);
  if (made.document) answer.document = std::make_shared<const poster::Document>(std::move(*made.document));
  answer.shortfalls = std::move(made.shortfalls);
  answer.scale = made.scale;
  return answer;
}

void LivePoster::work() {
  std::unique_ptr<const PosterShop> shop;  // kept while only the room or the paper is another
  while (auto next = next_.take()) {
    if (!shop || !(shop->source() == next->second.source))
      shop = std::make_unique<const PosterShop>(next->second.source);
    const auto answer = std::make_shared<const Answer>(answerTo(*shop, next->second));
    QMetaObject::invokeMethod(
        this,
        [this, answer, asked = next->first] {
          answered_ = asked;
          emit answered(answer);
        },
        Qt::QueuedConnection);
  }
}

}  // namespace stopwalk::window
