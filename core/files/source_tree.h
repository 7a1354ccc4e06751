#pragma once

#include <cstddef>
#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/problems.h"

// A YAML text as a tree that keeps the order of its keys and knows where each thing stands. Stricter than
// YAML, so that there is one way to read a file: no anchors, aliases, tags, keys twice or second document;
// see `parseTree`.
//
//   Problems problems(text, file);
//   if (const auto tree = parseTree(text, problems)) {
//     MapReader map(tree->root(), problems, "a profile");   // map_reader.h
//     ...
//   }
//   return problems.result(std::move(profile));
namespace stopwalk::files {

enum class NodeKind : std::uint8_t { Null, Scalar, List, Map };

class SourceTree;

// A place in a tree, cheap to copy; the tree must outlive it.
class Node {
 public:
  NodeKind kind() const;
  bool isNull() const { return kind() == NodeKind::Null; }
  bool isScalar() const { return kind() == NodeKind::Scalar; }
  bool isList() const { return kind() == NodeKind::List; }
  bool isMap() const { return kind() == NodeKind::Map; }
  bool isQuoted() const;            // a scalar in quotes or a block scalar: a text, whatever it looks like
  bool isFlow() const;              // a list or map in brackets
  std::string_view text() const;    // a scalar's value
  std::string_view source() const;  // as it stands in the file, comments within it too
  std::string_view whole() const;   // the text of the file
  std::size_t begin() const;        // bytes of the text
  std::size_t end() const;
  std::size_t size() const;  // items of a list, entries of a map

  class Items;
  Items items() const;  // of a list; of a map: key, value, key, value; of anything else: none

 private:
  friend class SourceTree;
  Node(const SourceTree* tree, std::uint32_t index) : tree_(tree), index_(index) {}
  const SourceTree* tree_;
  std::uint32_t index_;
};

class SourceTree {
 public:
  Node root() const { return {this, 0}; }
  bool hasEndMarker() const { return has_end_marker_; }
  std::size_t endOfDocument() const { return end_; }
  std::string_view text() const { return text_; }

 private:
  friend class Node;
  friend class TreeBuilder;
  struct Data {
    NodeKind kind = NodeKind::Null;
    bool quoted = false;
    bool flow = false;
    std::uint32_t begin = 0;
    std::uint32_t end = 0;
    std::uint32_t next = 0;             // the node after its last descendant
    std::uint32_t count = 0;            // children
    std::uint32_t value = kAsItStands;  // of `values_`
  };
  static constexpr std::uint32_t kAsItStands = 0xFFFFFFFF;
  std::string_view textOf(std::uint32_t node) const;

  std::string_view text_;
  std::vector<Data> nodes_;         // in the order of the text
  std::deque<std::string> values_;  // of scalars that are written other than they read
  bool has_end_marker_ = false;
  std::size_t end_ = 0;
};

class Node::Items {
 public:
  class Iterator {
   public:
    Iterator(const SourceTree* tree, std::uint32_t index) : tree_(tree), index_(index) {}
    Node operator*() const { return Node(tree_, index_); }
    Iterator& operator++();
    bool operator!=(const Iterator& other) const { return index_ != other.index_; }

   private:
    const SourceTree* tree_;
    std::uint32_t index_;
  };
  Items(Iterator from, Iterator to) : from_(from), to_(to) {}
  Iterator begin() const { return from_; }
  Iterator end() const { return to_; }

 private:
  Iterator from_;
  Iterator to_;
};

// Reads `text`, which must outlive the tree, or reports why it cannot be read: over 64 MiB, not UTF-8, a NUL,
// not YAML, over 20 levels, over four million values, an anchor, alias or tag, a key that is not a scalar,
// more than one document. A key given twice is reported and both are in the tree. Time and memory are in
// proportion to the text.
std::optional<SourceTree> parseTree(std::string_view text, Problems& problems);

}  // namespace stopwalk::files
