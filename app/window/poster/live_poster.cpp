#include "app/window/poster/live_poster.h"

#include <algorithm>

namespace stopwalk::window {

LivePoster::LivePoster(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          // The shop is kept while only the room or the paper is another.
          [shop = std::shared_ptr<const PosterShop>()](const Question& question, const auto& give) mutable {
            if (!shop || !(shop->source() == question.source))
              shop = std::make_shared<const PosterShop>(question.source);
            give(answerTo(*shop, question));
          },
          [this](std::shared_ptr<const Answer> answer) { emit answered(std::move(answer)); },
          [this](const QString& why) { emit failed(why); }) {}

LivePoster::Answer LivePoster::answerTo(const PosterShop& shop, const Question& question) {
  Answer answer;
  answer.layout = question.source.layout;
  answer.room = question.room;
  const auto& rooms = answer.layout->rooms;
  for (std::size_t r = 0; r < rooms.size(); ++r) answer.why_not.push_back(shop.whyNot(r));
  const auto found = std::ranges::find(rooms, question.room, &layout::Room::id);
  if (found == rooms.end()) return answer;
  const auto room = static_cast<std::size_t>(found - rooms.begin());
  if (!answer.why_not[room].isEmpty()) return answer;
  poster::Poster made = shop.poster(room, question.place, question.wish);
  if (made.document) answer.document = std::make_shared<const poster::Document>(std::move(*made.document));
  answer.shortfalls = std::move(made.shortfalls);
  answer.scale = made.scale;
  return answer;
}

}  // namespace stopwalk::window
