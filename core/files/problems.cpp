#include "core/files/problems.h"

#include <algorithm>

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

constexpr std::size_t kMost = 10000;
constexpr int kExcerptWidth = 100;  // characters
constexpr int kLeastBehind = 30;

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

// Steps through the text once, from problem to problem.
class Lines {
 public:
  explicit Lines(std::string_view text) : text_(text) {
    if (text_.starts_with("\xEF\xBB\xBF")) at_ = start_ = 3;
  }

  // The line of any place, from 1.
  std::size_t lineOf(std::size_t byte) {
    if (ends_.empty()) {
      for (std::size_t i = 0; i < text_.size(); ++i) {
        const std::size_t length = breakAt(text_, i);
        if (length > 0) ends_.push_back(i += length - 1);
      }
    }
    return static_cast<std::size_t>(std::lower_bound(ends_.begin(), ends_.end(), byte) - ends_.begin()) + 1;
  }

  void place(std::size_t byte, Diagnostic& d) {
    byte = std::min(byte, text_.size());
    while (at_ < byte) step();
    d.line = line_;
    d.column = column_;
    excerpt(d);
  }

 private:
  void step() {
    if (const std::size_t length = breakAt(text_, at_); length > 0) {
      at_ += length;
      start_ = at_;
      ++line_;
      column_ = 1;
      return;
    }
    at_ = next(at_);
    ++column_;
  }

  std::size_t next(std::size_t byte) const {
    do ++byte;
    while (byte < text_.size() && continues(text_[byte]));
    return byte;
  }

  std::size_t previous(std::size_t byte) const {
    do --byte;
    while (byte > start_ && continues(text_[byte]));
    return byte;
  }

  // Room for a hundred characters: some behind the caret first, then what stands before it, then what fits
  // behind.
  void excerpt(Diagnostic& d) const {
    std::size_t from = at_, to = at_;
    int before = 0, after = 0;
    const auto goOn = [&](int most) {
      for (; after < most && to < text_.size() && breakAt(text_, to) == 0; ++after) to = next(to);
    };
    goOn(kLeastBehind);
    for (; from > start_ && before + after < kExcerptWidth; ++before) from = previous(from);
    goOn(kExcerptWidth - before);
    const bool cut_before = from > start_;
    const bool cut_after = to < text_.size() && breakAt(text_, to) == 0;
    d.excerpt = (cut_before ? "…" : "") + printable(text_.substr(from, to - from)) + (cut_after ? "…" : "");
    d.caret = before + 1 + (cut_before ? 1 : 0);
  }

  std::string_view text_;
  std::vector<std::size_t> ends_;  // the last byte of each line's break
  std::size_t at_ = 0;
  std::size_t start_ = 0;
  int line_ = 1;
  int column_ = 1;
};

}  // namespace

std::size_t breakAt(std::string_view text, std::size_t byte) {
  const std::string_view rest = text.substr(std::min(byte, text.size()), 3);
  if (rest.empty()) return 0;
  if (rest[0] == '\n') return 1;
  if (rest[0] == '\r') return rest.starts_with("\r\n") ? 2 : 1;
  if (rest.starts_with("\xC2\x85")) return 2;
  return rest == "\xE2\x80\xA8" || rest == "\xE2\x80\xA9" ? 3 : 0;
}

std::string quoted(std::string_view piece) {
  constexpr std::size_t kLongest = 60;
  if (piece.size() <= kLongest) return "`" + printable(piece) + "`";
  std::size_t end = kLongest;
  while (end > 0 && continues(piece[end])) --end;
  return "`" + printable(piece.substr(0, end)) + "…`";
}

void Problems::add(Severity severity, std::size_t byte, std::string what, std::optional<std::size_t> first) {
  if (severity == Severity::Error) ++errors_;
  if (problems_.size() < kMost)
    problems_.push_back({severity, byte, std::move(what), first});
  else
    ++left_out_;
}

std::vector<Diagnostic> Problems::take() {
  std::stable_sort(problems_.begin(), problems_.end(),
                   [](const Problem& a, const Problem& b) { return a.byte < b.byte; });
  std::vector<Diagnostic> diagnostics;
  diagnostics.reserve(problems_.size());
  Lines lines(text_);
  for (Problem& p : problems_) {
    Diagnostic& d = diagnostics.emplace_back();
    d.severity = p.severity;
    d.file = file_;
    d.text = std::move(p.what);
    if (p.first) d.text += "; the first is on line " + std::to_string(lines.lineOf(*p.first));
    lines.place(p.byte, d);
  }
  if (left_out_ > 0) {
    Diagnostic d = diagnostics.back();
    d.severity = errors_ > 0 ? Severity::Error : Severity::Warning;
    d.text = "and " + std::to_string(left_out_) + " more problems, not shown";
    diagnostics.push_back(std::move(d));
  }
  problems_.clear();
  left_out_ = 0;
  return diagnostics;
}

}  // namespace stopwalk::files
