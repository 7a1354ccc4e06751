#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "core/files/diagnostic.h"

namespace stopwalk::files {

inline std::string textOf(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

inline std::string all(const std::vector<Diagnostic>& diagnostics) {
  std::string text;
  for (const Diagnostic& d : diagnostics) text += format(d);
  return text;
}

// Empty when equal; else the first line that differs, of both.
inline std::string difference(const std::string& a, const std::string& b) {
  std::istringstream in_a(a), in_b(b);
  std::string line_a, line_b;
  for (int line = 1; a != b; ++line) {
    const bool more_a = static_cast<bool>(std::getline(in_a, line_a)),
               more_b = static_cast<bool>(std::getline(in_b, line_b));
    if (more_a != more_b || line_a != line_b || !more_a)
      return "line " + std::to_string(line) + ":\n" + (more_a ? line_a : "(end)") + "\n" +
             (more_b ? line_b : "(end)") + "\n";
  }
  return "";
}

}  // namespace stopwalk::files
