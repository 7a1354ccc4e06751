#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "app/poster/poster.h"
#include "core/audit/audit.h"
#include "core/audit/context.h"

namespace stopwalk::poster {

// One layout made ready for the posters of its rooms. Keeps references to the layout, kinds and profile.
class Shop {
 public:
  // Unless the profile says otherwise, what is in `failed` is shown as out of order, and nothing is said to
  // be stopped by it. An empty hash: no file holds this very layout.
  Shop(const layout::Layout& layout, const layout::DeviceKinds& kinds, const audit::Profile& profile,
       std::string sha256, audit::Failed failed);

  // Why there can be no poster of the room: a clause; empty: there can.
  QString whyNot(std::size_t room) const;
  // Hanging there; where nothing is said, on the longest free stretch of wall.
  Poster poster(std::size_t room, const std::optional<Viewer>& viewer, const Wish& wish) const;
  Content content(std::size_t room, const std::optional<Viewer>& viewer) const;

  const layout::Layout& layout() const { return layout_; }
  About about() const;
  // What is to be known of the room's or machine's devices that failed and have not passed since.
  QStringList failedOf(const std::vector<const Listed*>& listed) const;
  const audit::Context& open() const { return open_; }
  const audit::Context& afterHours() const { return after_; }

 private:
  const layout::Layout& layout_;
  std::string sha256_;
  audit::Context open_, after_;
};

}  // namespace stopwalk::poster
