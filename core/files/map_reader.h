#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/files/source_tree.h"
#include "core/layout/units.h"

// Typed reading of a `SourceTree`: each function gives the value, or reports what is wrong at the place and
// gives none.
namespace stopwalk::files {

std::optional<std::string> readText(Node node, Problems& problems);
std::optional<bool> readFlag(Node node, Problems& problems);
std::optional<double> readNumber(Node node, Problems& problems);
// A whole number from `least` to `most`.
std::optional<int> readWhole(Node node, int least, int most, Problems& problems);
// Lower-case letters, digits, hyphens.
std::optional<std::string> readId(Node node, Problems& problems);
bool isId(std::string_view text);
// What is wrong with a number's text, for a message.
std::string numberFault(std::string_view text, layout::NumberFault fault);

// The words of an enumeration in a file, and what they mean.
template <class Enum>
using Choices = std::vector<std::pair<std::string_view, Enum>>;

std::optional<std::size_t> readWord(Node node, const std::vector<std::string_view>& words,
                                    Problems& problems);

template <class Enum>
std::optional<Enum> readChoice(Node node, const Choices<Enum>& choices, Problems& problems) {
  std::vector<std::string_view> words;
  for (const auto& choice : choices) words.push_back(choice.first);
  const auto index = readWord(node, words, problems);
  return index ? std::optional<Enum>(choices[*index].second) : std::nullopt;
}

// The keys of one map. Ask for every known key, then `finish`, which warns of the others. `what` names the
// thing in messages, with its article: `a room`. Of a node that is no map it reports that, and has no keys.
class MapReader {
 public:
  MapReader(Node node, Problems& problems, std::string what);

  std::optional<Node> optional(std::string_view key);
  // Reports a missing key at the map's own place.
  std::optional<Node> required(std::string_view key);
  void finish();

  // Where a key that the map has ends.
  std::size_t keyEnd(std::string_view key) const;
  bool isMap() const { return is_map_; }
  Node node() const { return node_; }
  Problems& problems() { return problems_; }
  const std::string& what() const { return what_; }

 private:
  struct Entry {
    Node key;
    Node value;
    bool asked = false;
  };
  Node node_;
  Problems& problems_;
  std::string what_;
  bool is_map_;
  std::vector<Entry> entries_;
  std::size_t next_ = 0;  // keys mostly come in the order they are asked for
  std::vector<std::string_view> known_;
};

}  // namespace stopwalk::files
