// The whole packet of a job, from its text to the PDF, against the bare kernel that makes the part's cuts at once and
// meshes what is left; in one run and in turn.   packet JOB [--smoke | --to-be-read]
// Times are printed to be read; only the ratio decides the exit status, and not with --to-be-read.
#include <cstdio>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include <BRepMesh_IncrementalMesh.hxx>
#include <fmt/format.h>

#include "app/session.hpp"
#include "cut_at_once.hpp"
#include "recipes.hpp"
#include "solid/mesh.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;
using benchmarks::median;
using benchmarks::recipe_of;
using benchmarks::seconds_of;
using benchmarks::Texts;
using benchmarks::texts_of;

constexpr double kTimesSlower = 3.0;

std::string packet(const Texts& texts) {
  auto session = app::Session::open(texts.job, texts.shop);
  if (!session) throw std::runtime_error("the job cannot be read");
  auto pdf = session->sheets_pdf(app::Paper::kA4);
  if (!pdf) throw std::runtime_error("no sheets");
  return *pdf;
}

// The blank, the cutters, one cut of all of them, triangles as fine as our mesh has them.
void bare_kernel(const shape::Recipe& recipe) {
  const solid::Fineness fineness;
  const BRepMesh_IncrementalMesh mesh(benchmarks::cut_at_once(recipe), fineness.chord_mm, Standard_False,
                                      fineness.angle_rad);
  if (!mesh.IsDone()) throw std::runtime_error("the kernel makes no mesh");
}

int run(const std::filesystem::path& job, bool smoke, bool to_be_read) {
  const Texts texts = texts_of(job);
  const shape::Recipe recipe = recipe_of(texts);
  std::vector<double> ours;
  std::vector<double> kernel;
  std::size_t bytes = 0;
  for (int i = 0; i < (smoke ? 1 : 11); ++i) {
    ours.push_back(seconds_of([&] { bytes = packet(texts).size(); }));
    kernel.push_back(seconds_of([&] { bare_kernel(recipe); }));
  }
  const double ratio = median(ours) / median(kernel);
  fmt::print(
      "packet of {} ({} cuts, {} kB) {:.0f} ms, bare kernel's solid and mesh {:.0f} ms: {:.2f} times\n",
      job.filename().string(), recipe.cuts().size(), bytes / 1000, median(ours) * 1e3, median(kernel) * 1e3,
      ratio);
  if (smoke || to_be_read || ratio <= kTimesSlower) return 0;
  fmt::print("slower than {} times\n", kTimesSlower);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 2) throw std::runtime_error("usage: packet JOB [--smoke | --to-be-read]");
    const std::string how = argv[argc - 1];
    return run(argv[1], how == "--smoke", argc > 2 && std::string(argv[2]) == "--to-be-read");
  });
}
