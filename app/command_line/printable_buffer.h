#pragma once

#include <ostream>
#include <streambuf>
#include <string>

namespace stopwalk::app {

// Passes on what is written to it, by lines, without anything that a terminal would obey.
class PrintableBuffer : public std::streambuf {
 public:
  explicit PrintableBuffer(std::ostream& to) : to_(to) {}
  ~PrintableBuffer() override { pass(held_.size()); }

 protected:
  int_type overflow(int_type c) override;
  std::streamsize xsputn(const char* text, std::streamsize size) override;
  int sync() override;

 private:
  void pass(std::size_t bytes);

  std::ostream& to_;
  std::string held_;
};

}  // namespace stopwalk::app
