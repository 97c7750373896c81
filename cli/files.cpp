#include "cli/files.hpp"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace sparewright::cli {
namespace {

app::Trouble trouble(std::string code, std::string says, std::string accepted = {}) {
  app::Trouble t;
  t.code = std::move(code);
  t.says = std::move(says);
  t.accepted = std::move(accepted);
  return t;
}

std::string reason(int error) {
  return std::generic_category().message(error);
}

// A descriptor that closes itself.
class Descriptor {
 public:
  explicit Descriptor(int fd) : fd_(fd) {}
  ~Descriptor() {
    if (fd_ >= 0) ::close(fd_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  [[nodiscard]] int get() const { return fd_; }
  // Closes now, and says whether everything had been taken.
  bool close_now() { return ::close(std::exchange(fd_, -1)) == 0; }

 private:
  int fd_;
};

bool write_all(int fd, const std::string& bytes) {
  std::size_t done = 0;
  while (done < bytes.size()) {
    const ssize_t n = ::write(fd, bytes.data() + done, bytes.size() - done);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return false;
    done += static_cast<std::size_t>(n);
  }
  return true;
}

}  // namespace

tl::expected<std::string, app::Trouble> read_file(const std::string& path, std::size_t most) {
  const auto unreadable = [&](const std::string& why) {
    return tl::unexpected(trouble("file-unreadable", path + " cannot be read: " + why));
  };
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.get() < 0) return unreadable(reason(errno));
  struct stat about {};
  if (::fstat(file.get(), &about) != 0) return unreadable(reason(errno));
  if (S_ISDIR(about.st_mode)) return unreadable("it is a folder");
  std::string bytes;
  std::string chunk(std::size_t{1} << 16U, '\0');
  for (;;) {
    const ssize_t n = ::read(file.get(), chunk.data(), chunk.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return unreadable(reason(errno));
    if (n == 0) return bytes;
    bytes.append(chunk, 0, static_cast<std::size_t>(n));
    if (bytes.size() > most) {
      return tl::unexpected(trouble("file-too-large", path + " is larger than a text of this kind",
                                    "at most " + std::to_string(most >> 20U) + " MiB"));
    }
  }
}

tl::expected<void, app::Trouble> write_file(const std::string& path, const std::string& bytes) {
  const auto unwritable = [&](const std::string& why) {
    return tl::unexpected(trouble("output-not-writable", path + " cannot be written: " + why));
  };
  if (std::error_code error; std::filesystem::is_directory(path, error)) return unwritable("it is a folder");
  std::string beside = path + ".new-XXXXXX";
  Descriptor file(::mkstemp(beside.data()));
  if (file.get() < 0) return unwritable(reason(errno));
  const auto give_up = [&](int error) {
    ::unlink(beside.c_str());
    return unwritable(reason(error));
  };
  // As a file made in the plain way would be: mkstemp lets nobody else read it.
  const mode_t mask = ::umask(0);
  ::umask(mask);
  if (::fchmod(file.get(), 0666 & ~mask) != 0) return give_up(errno);
  if (!write_all(file.get(), bytes) || ::fsync(file.get()) != 0) return give_up(errno);
  if (!file.close_now()) return give_up(errno);
  if (::rename(beside.c_str(), path.c_str()) != 0) return give_up(errno);
  return {};
}

}  // namespace sparewright::cli
