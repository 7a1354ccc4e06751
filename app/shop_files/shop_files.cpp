#include "app/shop_files/shop_files.h"

#include <algorithm>
#include <filesystem>

#include "app/shop_files/text_file.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/machine_templates_reader.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

// Reads one file by `read` and merges what it holds over `all` by `merge`.
template <class T, class Read, class Merge>
void mergeFile(const std::string& file, T& all, ShopFiles& shop, Read read, Merge merge) {
  if (file.empty() || !shop.good) return;
  const auto text = textOfFile(file);
  if (!text) {
    shop.unreadable = file + ": " + whyUnreadable(file);
    shop.good = false;
    return;
  }
  files::Result<T> own = read(*text);
  std::ranges::move(own.diagnostics, std::back_inserter(shop.diagnostics));
  shop.good = own.value.has_value();
  if (!own.value) return;
  all = merge(all, *own.value);
  shop.merged.push_back(file);
}

}  // namespace

std::string fileBesideLayout(const std::string& layout_file, const char* name) {
  if (layout_file.empty() || layout_file == "-") return "";
  const fs::path path = fs::path(layout_file).parent_path() / name;
  std::error_code none;
  return fs::exists(fs::symlink_status(path, none)) ? path.string() : "";
}

std::vector<std::string> madeWith(const layout::Layout& layout, const std::string& folder) {
  std::vector<std::string> files;
  const auto add = [&](const std::string& name) { files.push_back((fs::path(folder) / name).string()); };
  add(kKindsFile);
  add(kTemplatesFile);
  if (layout.underlay) add(layout.underlay->image);
  if (!layout.profile.empty()) add(layout.profile);
  return files;
}

ShopFiles readShopFiles(const std::string& layout_file, const std::string& kinds_file) {
  ShopFiles shop{files::bundledDeviceKinds(), files::bundledMachineTemplates(), {}, {}, {}, true};
  const std::string kinds = kinds_file.empty() ? fileBesideLayout(layout_file, kKindsFile) : kinds_file;
  mergeFile(
      kinds, shop.kinds, shop, [&](const std::string& text) { return files::readDeviceKinds(text, kinds); },
      files::mergeDeviceKinds);
  const std::string templates = fileBesideLayout(layout_file, kTemplatesFile);
  mergeFile(
      templates, shop.templates, shop,
      [&](const std::string& text) { return files::readMachineTemplates(text, templates, shop.kinds); },
      files::mergeMachineTemplates);
  return shop;
}

}  // namespace stopwalk::app
