#include "app/command_line/output.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <utility>

#include "app/command_line/input.h"
#include "app/records/records_file.h"
#include "app/shop_files/shop_files.h"

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

}  // namespace

Output::Output(std::string file, Session& session) : file_(std::move(file)), session_(session) {
  if (file_ == "-") file_.clear();
}

// A file is written beside the old one and then put in its place: whoever looks sees the old or the new. A
// device or pipe is written to as it is.
bool Output::open() {
  struct stat before {};
  const bool exists = ::stat(file_.c_str(), &before) == 0;
  replaces_ = !exists || S_ISREG(before.st_mode);
  if (!replaces_) {
    descriptor_ = ::open(file_.c_str(), O_WRONLY | O_CLOEXEC);
    return descriptor_ >= 0;
  }
  std::error_code none;
  path_ = fs::is_symlink(file_, none) ? fs::weakly_canonical(file_, none) : fs::path(file_);
  if (exists && ::access(path_.c_str(), W_OK) != 0) return false;
  return openBeside(exists ? before.st_mode & 0777 : 0666);
}

// Without a name where the system can, so that nothing stays if the program is stopped meanwhile.
bool Output::openBeside(mode_t mode) {
  beside_ =
      path_.parent_path() / ("." + path_.filename().string() + "." + std::to_string(::getpid()) + ".new");
#ifdef O_TMPFILE
  const fs::path folder = path_.has_parent_path() ? path_.parent_path() : fs::path(".");
  descriptor_ = ::open(folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, mode);
#endif
  if (descriptor_ >= 0) return true;
  descriptor_ = ::open(beside_.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, mode);
  has_name_ = descriptor_ >= 0;
  return has_name_;
}

bool Output::putInPlace() {
  if (::fsync(descriptor_) != 0) return false;
  if (!has_name_) {
    const std::string held = "/proc/self/fd/" + std::to_string(descriptor_);
    has_name_ = ::linkat(AT_FDCWD, held.c_str(), AT_FDCWD, beside_.c_str(), AT_SYMLINK_FOLLOW) == 0;
  }
  if (!has_name_ || ::rename(beside_.c_str(), path_.c_str()) != 0) return false;
  has_name_ = false;
  return true;
}

bool Output::write(const std::string& text) {
  if (!good_) return false;
  errno = 0;
  bytes_ += text.size();
  if (file_.empty()) {
    session_.console.out << text << std::flush;
    return session_.console.out || failed();
  }
  if (!opened_ && !open()) return failed();
  opened_ = true;
  return writeAll(descriptor_, text) || failed();
}

Exit Output::finish() {
  if (good_ && opened_) {
    errno = 0;
    bool done = !replaces_ || putInPlace();
    if (done) done = ::close(std::exchange(descriptor_, -1)) == 0;
    if (!done) failed();
  }
  if (!good_) return Exit::NoFile;
  if (opened_) session_.log.debug("wrote {} ({} bytes)", file_, bytes_);
  return Exit::Done;
}

bool Output::failed() {
  const int why = errno;
  good_ = false;
  discard();
  session_.console.err << "stopwalk: cannot write " << (file_.empty() ? "to standard output" : file_) << ": "
                       << (why != 0 ? std::strerror(why) : "it is closed") << "\n";
  return false;
}

void Output::discard() {
  if (descriptor_ >= 0) ::close(std::exchange(descriptor_, -1));
  if (std::exchange(has_name_, false)) ::unlink(beside_.c_str());
}

bool isSameFile(const std::string& a, const std::string& b) {
  std::error_code none;
  return fs::equivalent(a, b, none) || fs::path(a).lexically_normal() == fs::path(b).lexically_normal();
}

bool wouldReplaceKept(const std::string& out, Session& session) {
  std::error_code none;
  if (out.empty() || out == "-" || !fs::is_regular_file(out, none)) return false;
  for (const fs::path& name : {fs::path(out), fs::weakly_canonical(out, none)})
    for (const char* kept : {".yaml", ".yml", ".jsonl", ".torn"})
      if (name.extension() == kept) {
        session.console.err << "stopwalk: --out " << out << " is there and ends in " << kept
                            << ", as layouts, profiles and inspection records do; name another file\n";
        return true;
      }
  return false;
}

bool wouldReplaceInput(const std::string& input, const std::string& out, Session& session) {
  if (input == "-") return wouldReplaceKept(out, session);
  const char* what = isSameFile(input, out) ? "the layout itself" : nullptr;
  for (const std::string& file : records::recordFilesOf(input))
    if (isSameFile(file, out)) what = "of the inspection records of the layout";
  if (!what) return wouldReplaceKept(out, session);
  session.console.err << "stopwalk: --out " << out << " is " << what << "; name another file\n";
  return true;
}

bool wouldReplaceInput(const Input& input, const std::string& out, Session& session) {
  if (wouldReplaceInput(input.file, out, session)) return true;
  if (input.file == "-" || out.empty() || out == "-") return false;
  for (const std::string& file : madeWith(*input.layout, fs::path(input.file).parent_path().string())) {
    if (!isSameFile(file, out)) continue;
    session.console.err << "stopwalk: --out " << out
                        << " is a file that the layout is made with; name another file\n";
    return true;
  }
  return false;
}

Exit writeResult(const std::string& text, const std::string& file, Session& session) {
  Output output(file, session);
  output.write(text);
  return output.finish();
}

}  // namespace stopwalk::app
