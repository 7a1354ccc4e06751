#include "app/command_line/printable_buffer.h"

#include "core/files/printable.h"

namespace stopwalk::app {

PrintableBuffer::int_type PrintableBuffer::overflow(int_type c) {
  if (traits_type::eq_int_type(c, traits_type::eof())) return traits_type::not_eof(c);
  const char letter = traits_type::to_char_type(c);
  xsputn(&letter, 1);
  return c;
}

// A character may come in pieces: what has no line end yet is held back.
std::streamsize PrintableBuffer::xsputn(const char* text, std::streamsize size) {
  held_.append(text, static_cast<std::size_t>(size));
  pass(held_.rfind('\n') + 1);
  return size;
}

int PrintableBuffer::sync() {
  pass(held_.size());
  to_.flush();
  return to_ ? 0 : -1;
}

void PrintableBuffer::pass(std::size_t bytes) {
  if (bytes == 0) return;
  to_ << files::printable(std::string_view(held_).substr(0, bytes), "\t\n");
  held_.erase(0, bytes);
}

}  // namespace stopwalk::app
