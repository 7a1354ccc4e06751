#include "core/files/sha256.h"

#include <openssl/evp.h>

#include <array>
#include <cassert>

namespace stopwalk::files {

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  static EVP_MD* const kHash = EVP_MD_fetch(nullptr, "SHA256", nullptr);  // looked up once; never given back
  [[maybe_unused]] const int done =
      EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, kHash, nullptr);
  assert(done == 1 && size == 32);
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::string text;
  text.reserve(2 * size);
  for (unsigned int i = 0; i < size; ++i) {
    text += kDigits[digest[i] >> 4];
    text += kDigits[digest[i] & 15];
  }
  return text;
}

}  // namespace stopwalk::files
