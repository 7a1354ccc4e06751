#include "app/command_line/output.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

bool writeAll(int file, const std::string& text) {
  for (std::size_t done = 0; done < text.size();) {
    const ssize_t n = ::write(file, text.data() + done, text.size() - done);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return false;
    done += static_cast<std::size_t>(n);
  }
  return true;
}

bool writeTo(const fs::path& path, int flags, mode_t mode, const std::string& text, bool sync) {
  const int file = ::open(path.c_str(), flags | O_WRONLY | O_CLOEXEC, mode);
  if (file < 0) return false;
  bool done = writeAll(file, text) && (!sync || ::fsync(file) == 0);
  const int why = errno;
  done = ::close(file) == 0 && done;
  if (!done && why != 0) errno = why;
  return done;
}

// Beside the file, then in its place: whoever looks sees the old or the new. A device or pipe is written to
// as it is.
bool replace(const std::string& name, const std::string& text) {
  std::error_code none;
  const fs::path path = fs::is_symlink(name, none) ? fs::weakly_canonical(name, none) : fs::path(name);
  struct stat before {};
  const bool exists = ::stat(path.c_str(), &before) == 0;
  if (exists && !S_ISREG(before.st_mode)) return writeTo(path, 0, 0, text, false);
  if (exists && ::access(path.c_str(), W_OK) != 0) return false;
  const fs::path beside =
      path.parent_path() / ("." + path.filename().string() + "." + std::to_string(::getpid()) + ".new");
  const mode_t mode = exists ? before.st_mode & 0777 : 0666;
  if (writeTo(beside, O_CREAT | O_EXCL, mode, text, true) && ::rename(beside.c_str(), path.c_str()) == 0)
    return true;
  const int why = errno;
  ::unlink(beside.c_str());
  errno = why;
  return false;
}

}  // namespace

Exit writeResult(const std::string& text, const std::string& file, Session& session) {
  errno = 0;
  if (file.empty() || file == "-") {
    session.console.out << text << std::flush;
    if (session.console.out) return Exit::Done;
  } else if (replace(file, text)) {
    session.log.debug("wrote {} ({} bytes)", file, text.size());
    return Exit::Done;
  }
  session.console.err << "stopwalk: cannot write "
                      << (file.empty() || file == "-" ? "to standard output" : file) << ": "
                      << (errno != 0 ? std::strerror(errno) : "it is closed") << "\n";
  return Exit::NoFile;
}

}  // namespace stopwalk::app
