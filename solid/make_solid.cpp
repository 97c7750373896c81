#include "solid/make_solid.hpp"

#include <array>
#include <future>
#include <utility>

#include <BRepAlgoAPI_Cut.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>
#include <fmt/format.h>

#include "core/shape/cut_faults.hpp"
#include "core/shape/support.hpp"
#include "solid/bites_ahead.hpp"
#include "solid/expected_bite.hpp"
#include "solid/face_volumes.hpp"
#include "solid/kernel_guard.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

using base::Code;
using base::fail;
using base::Result;
using shape::Cut;
using shape::Primitive;
using shape::Work;

// The work while it is being cut.
struct State {
  TopoDS_Shape shape;
  double volume_mm3 = 0.0;
};

struct Setting {
  Way way = Way::kAsUsual;
  double seam_rad = 0.0;
  double fuzzy_mm = 0.0;
};

// Seams stand off the axes, and each cut's off all the others' (the golden angle spreads them evenly). The blank's goes
// before the first: it must not depend on what is cut, or a solid could not be gone on from.
constexpr double kGolden_rad = 2.399963229728653;
constexpr double kFirst_rad = 0.6154;
constexpr double kBlank_rad = kFirst_rad - kGolden_rad;

double seam_rad(std::size_t cut, bool other) {
  constexpr double kOther_rad = 1.9;
  return kFirst_rad + (other ? kOther_rad : 0.0) + kGolden_rad * static_cast<double>(cut);
}

// One lump stays itself; several stay together as the kernel gave them. None: a null shape.
TopoDS_Shape unwrapped(const TopoDS_Shape& shape) {
  TopExp_Explorer lumps(shape, TopAbs_SOLID);
  if (!lumps.More()) return {};
  const TopoDS_Shape first = lumps.Current();
  lumps.Next();
  return lumps.More() ? shape : first;
}

Result<TopoDS_Shape> less_body(const TopoDS_Shape& work, const TopoDS_Shape& body, double fuzzy_mm,
                               const std::string& feature) {
  return guarded(feature,
                 [&] {
                   TopTools_ListOfShape works;
                   TopTools_ListOfShape bodies;
                   works.Append(work);
                   bodies.Append(body);
                   BRepAlgoAPI_Cut cut;
                   cut.SetArguments(works);
                   cut.SetTools(bodies);
                   cut.SetNonDestructive(true);  // other solids share these faces
                   cut.SetRunParallel(false);
                   cut.SetToFillHistory(false);
                   cut.SetCheckInverted(false);  // metal turned inside out shows in the volume
                   if (fuzzy_mm > 0.0) cut.SetFuzzyValue(fuzzy_mm);
                   cut.Build();
                   return cut.IsDone() && !cut.HasErrors() ? cut.Shape() : TopoDS_Shape();
                 })
      .and_then([&](const TopoDS_Shape& result) -> Result<TopoDS_Shape> {
        if (result.IsNull()) return fail(Code::kKernel, "the cut cannot be computed", {}, feature);
        return unwrapped(result);
      });
}

// One cut, made and checked. The state moves on only if kernel and rays agree.
class CutMaker {
 public:
  CutMaker(const Primitive& blank, const Cut& cut, std::size_t place, std::future<ExpectedBite> expected,
           FaceVolumes& volumes)
      : blank_(blank), cut_(cut), place_(place), coming_(std::move(expected)), volumes_(volumes) {}

  [[nodiscard]] Result<CutReport> make(State& state, std::span<const Way> ways) {
    base::Failure last;
    for (const Way way : ways) {
      auto made = try_once(state, way);
      if (made) return made;
      last = std::move(made.error());
    }
    return fail(std::move(last));
  }

 private:
  // Waited for only when the kernel is done.
  [[nodiscard]] ExpectedBite& expected() {
    if (!expected_) expected_.emplace(coming_.get());
    return *expected_;
  }

  Result<CutReport> try_once(State& state, Way way) {
    constexpr double kFuzzy_mm = 1e-5;
    const double seam = seam_rad(place_, way != Way::kAsUsual);
    const auto body = guarded(cut_.feature, [&] { return kernel_body(cut_.body, seam, blank_); });
    if (!body) return tl::unexpected(body.error());
    const auto left = less_body(state.shape, *body, way == Way::kFuzzy ? kFuzzy_mm : 0.0, cut_.feature);
    if (!left) return tl::unexpected(left.error());
    if (left->IsNull()) return nothing_left(state);
    const auto volume = guarded(cut_.feature, [&] { return volumes_.volume_mm3(*left); });
    if (!volume) return tl::unexpected(volume.error());
    double taken_mm3 = state.volume_mm3 - *volume;
    if (!expected().agrees_with(taken_mm3)) {
      const auto closely = guarded(cut_.feature, [&] {
        return kernel_volume_closely_mm3(state.shape) - kernel_volume_closely_mm3(*left);
      });
      if (!closely) return tl::unexpected(closely.error());
      if (!expected().agrees_with(*closely)) return disagreement(*closely);
      taken_mm3 = *closely;
    }
    state = {*left, *volume};
    return report(way, taken_mm3);
  }

  [[nodiscard]] CutReport report(Way way, double taken_mm3) {
    const shape::RayVolume& rays = expected().volume();
    return {cut_.feature, way, taken_mm3, rays.volume_mm3, rays.error_mm3};
  }

  [[nodiscard]] tl::unexpected<base::Failure> disagreement(double taken_mm3) {
    return fail(Code::kKernel,
                fmt::format("the kernel takes {:.3f} mm3 where {:.3f} mm3 of metal are", taken_mm3,
                            expected().volume().volume_mm3),
                {}, cut_.feature);
  }

  Result<CutReport> nothing_left(const State& state) {
    if (!expected().agrees_with(state.volume_mm3)) return disagreement(state.volume_mm3);
    return fail(Code::kKernel, "no metal is left", {}, cut_.feature);
  }

  const Primitive& blank_;
  const Cut& cut_;
  std::size_t place_;
  std::future<ExpectedBite> coming_;
  std::optional<ExpectedBite> expected_;
  FaceVolumes& volumes_;
};

Result<State> blank_state(const shape::Recipe& recipe, FaceVolumes& volumes) {
  return guarded(recipe.blank().name, [&] {
    const TopoDS_Shape shape = kernel_body(recipe.blank().body, kBlank_rad, recipe.blank().body);
    return State{shape, volumes.volume_mm3(shape)};
  });
}

// The whole part anew up to and with `last`, which goes first: all seams are the other ones.
Result<State> in_other_order(const shape::Recipe& recipe, std::size_t last, FaceVolumes& volumes) {
  constexpr std::array kWays{Way::kOtherSeam, Way::kFuzzy};
  std::vector<Cut> order{recipe.cuts()[last]};
  for (const Cut& cut : recipe.cuts().first(last))
    order.push_back(cut);
  auto state = blank_state(recipe, volumes);
  for (std::size_t i = 0; state && i < order.size(); ++i) {
    if (!shape::reaches(recipe.blank().body, order[i].body)) continue;
    const Work before{recipe.blank().body, std::span<const Cut>(order).first(i)};
    auto bite = std::async(std::launch::deferred, [&] { return ExpectedBite(before, order[i].body); });
    const auto made =
        CutMaker(recipe.blank().body, order[i], i, std::move(bite), volumes).make(*state, kWays);
    if (!made) return tl::unexpected(made.error());
  }
  return state;
}

// The next cut of the recipe, in whatever way works.
Result<CutReport> next_cut(const shape::Recipe& recipe, std::size_t place, State& state, BitesAhead& bites,
                           FaceVolumes& volumes) {
  constexpr std::array kWays{Way::kAsUsual, Way::kOtherSeam, Way::kFuzzy};
  const Cut& cut = recipe.cuts()[place];
  if (!shape::reaches(recipe.blank().body, cut.body))
    return CutReport{cut.feature, Way::kNothingToCut, 0.0, 0.0, 0.0};
  auto made = CutMaker(recipe.blank().body, cut, place, bites.bite(place), volumes).make(state, kWays);
  if (made || place == 0) return made;
  const double volume_before = state.volume_mm3;
  auto anew = in_other_order(recipe, place, volumes);
  if (!anew) return made;  // the failure of the cut itself says more than one of another order
  ExpectedBite expected(recipe.work_after(place), cut.body);
  if (!expected.agrees_with(volume_before - anew->volume_mm3)) return made;
  state = std::move(*anew);
  return CutReport{cut.feature, Way::kOtherOrder, volume_before - state.volume_mm3,
                   expected.volume().volume_mm3, expected.volume().error_mm3};
}

}  // namespace

Result<CheckedSolid> make_solid(const shape::Recipe& recipe, const std::optional<Begun>& begun,
                                const Watch& watch) {
  const std::size_t first = begun ? begun->cuts : 0;
  BitesAhead bites(recipe, first);
  FaceVolumes volumes(shape::bounds(recipe.blank().body).middle());
  auto state = begun ? guarded(recipe.blank().name,
                               [&] {
                                 const TopoDS_Shape& shape = to_kernel(begun->solid);
                                 return State{shape, volumes.volume_mm3(shape)};
                               })
                     : blank_state(recipe, volumes);
  if (!state) return tl::unexpected(state.error());
  std::vector<CutReport> reports;
  for (std::size_t place = first; place < recipe.cuts().size(); ++place) {
    auto report = next_cut(recipe, place, *state, bites, volumes);
    if (!report) return tl::unexpected(std::move(report.error()));
    reports.push_back(std::move(*report));
    if (watch && !watch(place + 1, from_kernel(state->shape)))
      return fail(Code::kStopped, {}, {}, recipe.blank().name);
  }
  return CheckedSolid{from_kernel(state->shape), std::move(reports)};
}

}  // namespace sparewright::solid
