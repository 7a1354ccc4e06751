#include "core/files/faults.h"

#include <unordered_map>

#include "core/files/source_tree.h"

namespace stopwalk::files {
namespace {

// Where each thing with an id begins, by its id as seen from outside.
class Places {
 public:
  explicit Places(Node root) { look(root, ""); }
  std::size_t of(const std::string& id) const {
    const auto found = at_.find(id);
    return found == at_.end() ? 0 : found->second;
  }

 private:
  void look(Node node, const std::string& within) {
    if (node.isList())
      for (const Node item : node.items()) look(item, within);
    if (!node.isMap()) return;
    std::string id = within;
    const auto items = node.items();
    for (auto i = items.begin(); i != items.end(); ++i) {
      const Node key = *i, value = *++i;
      if (key.text() != "id" || !value.isScalar()) continue;
      id = (within.empty() ? "" : within + "/") + std::string(value.text());
      at_.emplace(id, value.begin());
    }
    for (auto i = items.begin(); i != items.end(); ++i) look(*++i, id);
  }

  std::unordered_map<std::string, std::size_t> at_;
};

}  // namespace

std::vector<Diagnostic> faultsAt(std::string_view text, const std::string& file,
                                 const std::vector<floor::Fault>& faults) {
  Problems problems(text, file);
  const auto tree = parseTree(text, problems);
  problems.take();  // the reader has told them
  if (!tree) return {};
  const Places places(tree->root());
  for (const floor::Fault& f : faults) problems.warn(places.of(f.subject), f.text);
  std::vector<Diagnostic> found = problems.take();
  for (Diagnostic& d : found) d.severity = Severity::Fault;
  return found;
}

std::vector<Diagnostic> errorAtKey(std::string_view text, const std::string& file, std::string_view key,
                                   std::string what) {
  Problems problems(text, file);
  const auto tree = parseTree(text, problems);
  problems.take();
  std::size_t byte = 0;
  if (tree && tree->root().isMap()) {
    const auto items = tree->root().items();
    for (auto i = items.begin(); i != items.end(); ++i) {
      const Node found = *i, value = *++i;
      if (found.text() == key) byte = value.begin();
    }
  }
  problems.error(byte, std::move(what));
  return problems.take();
}

}  // namespace stopwalk::files
