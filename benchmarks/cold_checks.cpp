// A cold `check` of each of some jobs, from its texts to the verdicts, against the bare kernel that makes the same part's
// cuts at once and measures what is left; in one run and in turn.   cold_checks JOB... [--smoke]
// Neither has a process of its own here, which would count for both alike; cold_check.cpp has.
// Times are printed to be read; only the ratio decides the exit status.
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <fmt/format.h>

#include "app/session.hpp"
#include "cut_at_once.hpp"
#include "recipes.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;
using benchmarks::median;
using benchmarks::seconds_of_work;

constexpr double kTimesSlower = 3.0;

std::size_t check(const benchmarks::Texts& texts) {
  auto session = app::Session::open(texts.job, texts.shop);
  if (!session) throw std::runtime_error("the job cannot be read");
  return session->verdicts().size();
}

// The blank, the cutters, one cut of all of them, the volume.
double bare_kernel(const shape::Recipe& recipe) {
  GProp_GProps properties;
  BRepGProp::VolumeProperties(benchmarks::cut_at_once(recipe), properties);
  return properties.Mass();
}

bool is_fast(const std::filesystem::path& job, bool smoke) {
  const benchmarks::Texts texts = benchmarks::texts_of(job);
  const shape::Recipe recipe = benchmarks::recipe_of(texts);
  std::vector<double> ours;
  std::vector<double> kernel;
  std::size_t verdicts = 0;
  for (int i = 0; i < (smoke ? 1 : 11); ++i) {
    ours.push_back(seconds_of_work([&] { verdicts = check(texts); }));
    kernel.push_back(seconds_of_work([&] { static_cast<void>(bare_kernel(recipe)); }));
  }
  const double ratio = median(ours) / median(kernel);
  fmt::print("cold check of {} ({} cuts, {} verdicts) {:.0f} ms, bare kernel {:.0f} ms: {:.2f} times\n",
             job.filename().string(), recipe.cuts().size(), verdicts, median(ours) * 1e3,
             median(kernel) * 1e3, ratio);
  if (smoke || ratio <= kTimesSlower) return true;
  fmt::print("slower than {} times\n", kTimesSlower);
  return false;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 2) throw std::runtime_error("usage: cold_checks JOB... [--smoke]");
    const bool smoke = std::string(argv[argc - 1]) == "--smoke";
    bool all = true;
    for (int i = 1; i < argc - (smoke ? 1 : 0); ++i)
      all = is_fast(argv[i], smoke) && all;
    return all ? 0 : 1;
  });
}
