#pragma once

#include <QString>
#include <memory>
#include <optional>
#include <string>

#include "app/poster/shop.h"
#include "core/audit/profile.h"

namespace stopwalk::window {

// What posters are made from, as values that stay as they are: for a worker.
struct PosterSource {
  std::shared_ptr<const layout::Layout> layout;
  std::shared_ptr<const layout::DeviceKinds> kinds;
  audit::Profile profile;
  std::string hash;  // of the file that holds this very layout; empty: there is none
  std::vector<inspection::FailedDevice> failed;  // and not passed since, by the records beside it
  // Why those cannot be read, in a sentence: what failed is not known then, and no poster is made. Empty:
  // they can, or there are none.
  QString unreadable = {};

  bool operator==(const PosterSource&) const = default;
};

// A source made ready for the posters of its rooms.
class PosterShop {
 public:
  explicit PosterShop(PosterSource source)
      : source_(std::move(source)),
        shop_(*source_.layout, *source_.kinds, source_.profile, source_.hash, source_.failed) {}
  PosterShop(const PosterShop&) = delete;
  PosterShop& operator=(const PosterShop&) = delete;

  const PosterSource& source() const { return source_; }
  const layout::Layout& layout() const { return *source_.layout; }
  QString whyNot(std::size_t room) const { return shop_.whyNot(room); }
  // Hung at the place, or where most wall is free.
  poster::Poster poster(std::size_t room, std::optional<geometry::Point> place,
                        const poster::Wish& wish) const;

 private:
  const PosterSource source_;
  const poster::Shop shop_;
};

}  // namespace stopwalk::window
