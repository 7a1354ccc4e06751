#include "core/files/source_tree.h"

namespace stopwalk::files {

NodeKind Node::kind() const {
  return tree_->nodes_[index_].kind;
}
bool Node::isQuoted() const {
  return tree_->nodes_[index_].quoted;
}
bool Node::isFlow() const {
  return tree_->nodes_[index_].flow;
}
std::string_view Node::text() const {
  return tree_->textOf(index_);
}
std::size_t Node::begin() const {
  return tree_->nodes_[index_].begin;
}
std::size_t Node::end() const {
  return tree_->nodes_[index_].end;
}
std::string_view Node::source() const {
  return tree_->text_.substr(begin(), end() - begin());
}

std::string_view Node::whole() const {
  return tree_->text_;
}

std::size_t Node::size() const {
  const auto& data = tree_->nodes_[index_];
  return data.kind == NodeKind::Map ? data.count / 2 : data.count;
}

Node::Items Node::items() const {
  const std::uint32_t next = tree_->nodes_[index_].next;
  return {{tree_, index_ + 1}, {tree_, next}};
}

std::string_view SourceTree::textOf(std::uint32_t node) const {
  const Data& data = nodes_[node];
  if (data.value != kAsItStands) return values_[data.value];
  return data.kind == NodeKind::List || data.kind == NodeKind::Map
             ? std::string_view()
             : text_.substr(data.begin, data.end - data.begin);
}

Node::Items::Iterator& Node::Items::Iterator::operator++() {
  index_ = tree_->nodes_[index_].next;
  return *this;
}

}  // namespace stopwalk::files
