// Writes a folder of generated workshops for `stopwalk audit`: write_shops FOLDER SIZE COUNT, where SIZE is
// small, big, factory or hall. Each has a machine more than the one before, the first as many as the size
// has.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>

#include "core/files/layout_writer.h"
#include "tests/support/shop_layout.h"

int main(int count, char** words) {
  using namespace stopwalk;
  const std::string size = count == 4 ? words[2] : "";
  for (support::ShopSize shop : support::kShopSizes) {
    if (size != shop.name) continue;
    const std::filesystem::path folder = words[1];
    std::filesystem::create_directories(folder);
    for (int i = 0; i < std::atoi(words[3]); ++i, ++shop.machines)
      std::ofstream(folder / (size + "-" + std::to_string(1000 + i) + ".layout.yaml"))
          << files::writeLayout(support::shopLayout(shop));
    return 0;
  }
  std::cerr << "write_shops FOLDER small|big|factory|hall COUNT\n";
  return 2;
}
