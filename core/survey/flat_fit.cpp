#include "core/survey/flat_fit.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <utility>

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;

constexpr double kSmallStep = 1e-13;  // of the extent, or of a rise
constexpr int kMostSteps = 200;
constexpr double kNoRise = 1e3;  // the iteration is on its way to a face square to another axis

double mean_of(const std::vector<std::vector<double>>& touches, std::size_t axis) {
  const double first = touches.front()[axis];
  double sum = 0.0;
  for (const auto& touch : touches)
    sum += touch[axis] - first;
  return first + sum / static_cast<double>(touches.size());
}

// About the mean of the touches: how far each lies along the axis, and on the others.
struct Frame {
  std::vector<double> along;
  Matrix across;
  double along_middle = 0.0;
  std::vector<double> middles;
  double extent = 0.0;
};

Frame framed(const std::vector<std::vector<double>>& touches, std::size_t along) {
  const std::size_t axes = touches.front().size();
  Frame frame;
  frame.across = Matrix(touches.size(), axes - 1);
  frame.along_middle = mean_of(touches, along);
  for (std::size_t axis = 0; axis < axes; ++axis) {
    const double middle = mean_of(touches, axis);
    for (std::size_t i = 0; i < touches.size(); ++i) {
      const double from = touches[i][axis] - middle;
      frame.extent = std::max(frame.extent, std::abs(from));
      if (axis == along) frame.along.push_back(from);
      if (axis != along) frame.across.at(i, frame.middles.size()) = from;
    }
    if (axis != along) frame.middles.push_back(middle);
  }
  return frame;
}

struct Misfit {
  std::vector<double> off;
  Matrix slopes;
};

// numbers: at, then the rises.
Misfit misfit_of(const std::vector<double>& numbers, const Frame& frame) {
  const std::size_t rises = numbers.size() - 1;
  double squares = 1.0;
  for (std::size_t k = 0; k < rises; ++k)
    squares += numbers[k + 1] * numbers[k + 1];
  const double length = std::sqrt(squares);
  Misfit out{{}, Matrix(frame.along.size(), numbers.size())};
  for (std::size_t i = 0; i < frame.along.size(); ++i) {
    double off = frame.along[i] - numbers[0];
    for (std::size_t k = 0; k < rises; ++k)
      off -= frame.across.at(i, k) * numbers[k + 1];
    off /= length;
    out.off.push_back(off);
    out.slopes.at(i, 0) = -1.0 / length;
    for (std::size_t k = 0; k < rises; ++k)
      out.slopes.at(i, k + 1) = -frame.across.at(i, k) / length - off * numbers[k + 1] / squares;
  }
  return out;
}

double steepest(const std::vector<double>& numbers) {
  double squares = 0.0;
  for (std::size_t k = 1; k < numbers.size(); ++k)
    squares += numbers[k] * numbers[k];
  return std::sqrt(squares);
}

struct Settled {
  std::vector<double> numbers;
  Misfit misfit;
  int steps = 0;
};

// The first step is the plain regression of the coordinate on the others.
Settled settle(const Frame& frame) {
  Settled out;
  out.numbers.assign(frame.middles.size() + 1, 0.0);
  out.misfit = misfit_of(out.numbers, frame);
  for (; out.steps < kMostSteps; ++out.steps) {
    const std::vector<double> step = step_of(out.misfit.slopes, out.misfit.off);
    for (std::size_t k = 0; k < step.size(); ++k)
      out.numbers[k] += step[k];
    out.misfit = misfit_of(out.numbers, frame);
    const bool still = std::abs(step[0]) <= kSmallStep * frame.extent && steepest(step) <= kSmallStep;
    if (still || !(steepest(out.numbers) < kNoRise)) break;
  }
  return out;
}

std::vector<double> normal_of(const std::vector<double>& rises, std::size_t along) {
  double squares = 1.0;
  for (const double rise : rises)
    squares += rise * rise;
  std::vector<double> normal;
  for (std::size_t axis = 0, k = 0; axis <= rises.size(); ++axis)
    normal.push_back((axis == along ? 1.0 : -rises[k++]) / std::sqrt(squares));
  return normal;
}

}  // namespace

Result<FlatFit> fit_flat(const std::vector<std::vector<double>>& touches, std::size_t along) {
  const bool is_line = touches.empty() || touches.front().size() == 2;
  const std::string subject = is_line ? "a line" : "a plane";
  const std::string wanted = is_line ? "touches at two places or more along it"
                                     : "touches at three places or more that are not in one straight line";
  if (touches.size() > kMostTouches)
    return fail(Code::kTooMany, std::to_string(touches.size()) + " touches",
                "at most " + std::to_string(kMostTouches), subject);
  if (touches.size() < (is_line ? 2U : 3U)) return fail(touches_too_few(subject, wanted));
  const Frame frame = framed(touches, along);
  double widest = 0.0;
  for (const double from : frame.across.cells)
    widest = std::max(widest, std::abs(from));
  const Misfit level = misfit_of(std::vector<double>(frame.middles.size() + 1, 0.0), frame);
  if (!(widest > kFitRank * frame.extent) || !fixes(level.slopes))
    return fail(touches_too_few(subject, wanted));
  Settled settled = settle(frame);
  if (!(steepest(settled.numbers) <= kSteepest))
    return fail(Code::kValueNotAccepted, "one this face leans away from by more than 45 degrees",
                "the side it is more nearly square to", "side");
  FlatFit fit;
  static_cast<OrthogonalFit&>(fit) =
      orthogonal_fit(std::move(settled.misfit.off), std::move(settled.misfit.slopes));
  fit.steps = settled.steps;
  fit.at = frame.along_middle + settled.numbers[0];
  fit.rises.assign(settled.numbers.begin() + 1, settled.numbers.end());
  fit.middles = frame.middles;
  fit.normal = normal_of(fit.rises, along);
  return fit;
}

}  // namespace sparewright::survey
