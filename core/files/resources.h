#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace stopwalk::files {

// The text of a file of `resources/` as it was compiled in; `name` is its path there, such as
// `device-kinds.yaml` or `profiles/teaching-shop.yaml`.
std::optional<std::string_view> resource(std::string_view name);

// Every name that `resource` knows, sorted.
std::vector<std::string_view> resourceNames();

}  // namespace stopwalk::files
