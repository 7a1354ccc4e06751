#include "core/files/nearest.h"

#include <algorithm>
#include <array>

namespace stopwalk::files {
namespace {

constexpr std::size_t kLongest = 48;

// Letters to change, add, leave out or swap with their neighbour to make one word of the other; above `most`:
// most + 1.
std::size_t slips(std::string_view a, std::string_view b, std::size_t most) {
  if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > most) return most + 1;
  std::array<std::array<std::size_t, kLongest + 1>, 3> rows;
  for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    auto& row = rows[i % 3];
    const auto& above = rows[(i + 2) % 3];
    const auto& two_above = rows[(i + 1) % 3];
    row[0] = i;
    std::size_t least = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], two_above[j - 2] + 1);
      least = std::min(least, row[j]);
    }
    if (least > most + 1) return most + 1;
  }
  return std::min(rows[a.size() % 3][b.size()], most + 1);
}

// Case, hyphens and underscores are mixed up more often than letters.
std::string plain(std::string_view word) {
  std::string out;
  for (const char c : word)
    if (c != '-' && c != '_' && c != ' ') out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return out;
}

}  // namespace

std::string_view nearest(std::string_view word, const std::vector<std::string_view>& known) {
  if (word.empty() || word.size() > kLongest) return {};
  const std::string mine = plain(word);
  std::size_t best = std::min<std::size_t>(2, mine.size() / 3) + 1;
  std::string_view found;
  for (const std::string_view candidate : known) {
    if (candidate.size() > kLongest || candidate.size() > word.size() + 4 ||
        word.size() > candidate.size() + 4)
      continue;
    const std::size_t distance = slips(mine, plain(candidate), best - 1);
    if (distance >= best) continue;
    best = distance;
    found = candidate;
    if (best == 0) break;
  }
  return found;
}

std::string didYouMean(std::string_view word, const std::vector<std::string_view>& known) {
  const std::string_view near = nearest(word, known);
  return near.empty() ? "" : "; did you mean `" + std::string(near) + "`?";
}

std::string anyOf(const std::vector<std::string_view>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
    text += words[i];
  }
  return text;
}

}  // namespace stopwalk::files
