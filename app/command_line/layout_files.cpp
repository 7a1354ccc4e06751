#include "app/command_line/layout_files.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

fs::path real(const fs::path& file) {
  std::error_code none;
  const fs::path path = fs::canonical(file, none);
  return none ? file : path;
}

// A pipe would be waited for without end. A link that leads nowhere is told when it is read.
bool isLayout(const fs::directory_entry& entry) {
  std::error_code none;
  return entry.path().native().ends_with(".layout.yaml") &&
         (entry.is_regular_file(none) || !entry.exists(none));
}

Exit unreadable(const fs::path& folder, const std::error_code& why, Session& session) {
  session.console.err << "stopwalk: cannot read " << folder.string() << ": " << why.message() << "\n";
  return Exit::NoFile;
}

// Appends the layouts in the folder and below, by name.
Exit find(const fs::path& folder, std::vector<std::string>& files, Session& session) {
  std::error_code wrong;
  std::vector<fs::directory_entry> entries;
  for (fs::directory_iterator at(folder, wrong), end; !wrong && at != end; at.increment(wrong))
    if (!at->path().filename().native().starts_with('.')) entries.push_back(*at);
  if (wrong) return unreadable(folder, wrong, session);
  std::ranges::sort(entries);
  Exit worst = Exit::Done;
  for (const fs::directory_entry& entry : entries) {
    std::error_code none;
    if (fs::is_directory(entry.symlink_status(none)))
      worst = std::max(worst, find(entry.path(), files, session));
    else if (isLayout(entry))
      files.push_back(entry.path().string());
  }
  return worst;
}

}  // namespace

LayoutFiles layoutFiles(const std::vector<std::string>& named, Session& session) {
  LayoutFiles all{{}, named.size() > 1, Exit::Done};
  const auto is_folder = [](const std::string& name) {
    std::error_code none;
    return fs::is_directory(name, none);
  };
  std::map<fs::path, std::string> taken;  // by which name
  std::set<std::size_t> again;
  for (std::size_t i = 0; i < named.size(); ++i) {
    if (is_folder(named[i])) continue;
    const auto [first, is_first] = taken.emplace(real(named[i]), named[i]);
    if (is_first) continue;
    again.insert(i);
    session.console.err << "stopwalk: " << named[i]
                        << (named[i] == first->second ? " is named twice"
                                                      : " is the same file as " + first->second)
                        << "; it is taken once\n";
  }
  for (std::size_t i = 0; i < named.size(); ++i) {
    const std::string& name = named[i];
    if (again.contains(i)) continue;
    if (!is_folder(name)) {
      all.files.push_back(name);
      continue;
    }
    all.several = true;
    std::vector<std::string> found;
    Exit exit = find(name, found, session);
    if (found.empty() && exit == Exit::Done) {
      session.console.err << "stopwalk: " << name << ": no file *.layout.yaml is in this folder or below\n";
      exit = Exit::Wrong;
    }
    all.exit = std::max(all.exit, exit);
    for (const std::string& file : found)
      if (taken.emplace(real(file), file).second) all.files.push_back(file);
  }
  return all;
}

}  // namespace stopwalk::app
