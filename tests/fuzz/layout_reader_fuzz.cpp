#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"

// Any bytes are read or refused; what is read is written and read as the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace stopwalk::files;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto read = readLayout(text, "f", bundledDeviceKinds());
  for (const Diagnostic& d : read.diagnostics)
    if (d.line < 1 || d.column < 1 || format(d).empty()) std::abort();
  if (!read.value) return 0;
  const std::string written = writeLayout(*read.value);
  const auto again = readLayout(written, "f", bundledDeviceKinds());
  if (!again.value || !(*again.value == *read.value) || writeLayout(*again.value) != written) std::abort();
  return 0;
}
