// A cold `check` of a job against the bare kernel program, process against process, in one run and in turn.
//   cold_check PROGRAM JOB BARE_KERNEL [--smoke]
// Times are printed to be read; only the ratio decides the exit status.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <vector>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include "timing.hpp"

namespace {

using sparewright::benchmarks::median;

constexpr double kTimesSlower = 3.0;

// Seconds from start to end; its output is thrown away.
double timed(const std::vector<std::string>& command) {
  const auto begin = std::chrono::steady_clock::now();
  const pid_t child = ::fork();
  if (child < 0) throw std::runtime_error("no process can be started");
  if (child == 0) {
    std::vector<char*> words;
    for (const std::string& word : command)
      words.push_back(const_cast<char*>(word.c_str()));
    words.push_back(nullptr);
    ::dup2(::open("/dev/null", O_WRONLY), STDOUT_FILENO);
    ::execv(words[0], words.data());
    std::_Exit(127);
  }
  int ended = 0;
  ::waitpid(child, &ended, 0);
  const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
  if (!WIFEXITED(ended) || WEXITSTATUS(ended) != 0) throw std::runtime_error(command.front() + " failed");
  return seconds;
}

int run(const std::string& program, const std::string& job, const std::string& bare, bool smoke) {
  std::vector<double> check;
  std::vector<double> kernel;
  for (int i = 0; i < (smoke ? 2 : 21); ++i) {
    check.push_back(timed({program, "check", job}));
    kernel.push_back(timed({bare}));
  }
  const double ratio = median(check) / median(kernel);
  fmt::print("cold check {:.0f} ms, bare kernel {:.0f} ms: {:.2f} times\n", median(check) * 1e3,
             median(kernel) * 1e3, ratio);
  if (smoke || ratio <= kTimesSlower) return 0;
  fmt::print("slower than {} times\n", kTimesSlower);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 4) throw std::runtime_error("usage: cold_check PROGRAM JOB BARE_KERNEL [--smoke]");
    return run(argv[1], argv[2], argv[3], argc > 4 && std::string(argv[4]) == "--smoke");
  });
}
