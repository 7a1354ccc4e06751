#include "app/window/poster/poster_source.h"

#include "app/poster/room_walls.h"

namespace stopwalk::window {

poster::Poster PosterShop::poster(std::size_t room, std::optional<geometry::Point> place,
                                  const poster::Wish& wish) const {
  const auto viewer = place ? poster::viewerStillAt(layout(), room, *place) : std::nullopt;
  return shop_.poster(room, viewer, wish);
}

}  // namespace stopwalk::window
