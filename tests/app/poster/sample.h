#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <memory>
#include <sstream>
#include <stdexcept>
#include <string>

#include "app/plan/catalogue.h"
#include "app/poster/lettering.h"
#include "app/poster/shop.h"
#include "core/audit/profile.h"
#include "core/files/layout_reader.h"
#include "core/files/sha256.h"

namespace stopwalk::poster {

// A layout with all that a poster is made from, kept together.
struct Sample {
  explicit Sample(const std::string& text, std::vector<inspection::FailedDevice> failed_devices = {})
      : failed(std::move(failed_devices)),
        kinds(plan::bundledCatalogue().kinds),
        profile(audit::defaultProfile()) {
    auto read = files::readLayout(text, "sample", kinds);
    for (const files::Diagnostic& d : read.diagnostics) ADD_FAILURE() << files::format(d);
    if (!read.value) throw std::runtime_error("no layout");
    layout = std::move(*read.value);
    sha256 = files::sha256(text);
    shop = std::make_unique<Shop>(layout, kinds, profile, sha256, failed);
  }
  Sample(const Sample&) = delete;

  static std::string fileText(const std::string& name) {
    std::ostringstream text;
    text << std::ifstream(STOPWALK_SOURCE_DIR "/sample-layouts/" + name + ".layout.yaml").rdbuf();
    return text.str();
  }

  std::size_t room(const std::string& id) const {
    for (std::size_t r = 0; r < layout.rooms.size(); ++r)
      if (layout.rooms[r].id == id) return r;
    ADD_FAILURE() << "no room " << id;
    return 0;
  }

  std::vector<inspection::FailedDevice> failed;
  layout::DeviceKinds kinds;
  audit::Profile profile;
  layout::Layout layout;
  std::string sha256;
  std::unique_ptr<Shop> shop;
};

// Its lines of text with a space between.
inline QString wordsOn(const Page& page) {
  QStringList lines;
  for (const Mark& mark : page.marks)
    if (const Text* text = std::get_if<Text>(&mark)) lines << text->text;
  return lines.join(' ');
}

inline std::vector<inspection::FailedDevice> failedCheckOf(const std::string& device) {
  return {{device, *inspection::parseDate("2026-05-04"), 2, "Ada Example"}};
}

inline Wish wishFor(const std::string& paper, const std::vector<std::string>& languages = {"en"}) {
  Wish wish;
  wish.paper = *paperOf(paper);
  wish.languages.clear();
  for (const std::string& key : languages) wish.languages.emplace_back(key);
  wish.family = usualFamily();
  return wish;
}

}  // namespace stopwalk::poster
