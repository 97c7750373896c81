#include "core/survey/mirror_pattern.hpp"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <optional>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/survey/hole_pattern.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;
using Complex = std::complex<double>;

constexpr double kSameLine = 1e-6;  // radians, doubled: lines found from different pairs of holes

std::vector<Complex> about_mean(std::span<const Point2> middles) {
  Complex mean;
  for (const Point2& p : middles)
    mean += Complex(p.x - middles.front().x, p.y - middles.front().y) / static_cast<double>(middles.size());
  std::vector<Complex> out;
  for (const Point2& p : middles)
    out.push_back(Complex(p.x - middles.front().x, p.y - middles.front().y) - mean);
  return out;
}

// A line, as exp(2it), with the mates it makes.
struct Line {
  Complex twice;
  std::vector<int> mate;
  double worst = 0.0;  // what the hole that is furthest off is off its mate's mirror image, halved
};

std::optional<std::vector<int>> mates_of(const std::vector<Complex>& q, Complex twice) {
  std::vector<int> mate;
  for (const Complex& one : q) {
    const Complex image = twice * std::conj(one);
    const auto nearest = std::min_element(q.begin(), q.end(), [&](const Complex& a, const Complex& b) {
      return std::abs(a - image) < std::abs(b - image);
    });
    mate.push_back(static_cast<int>(nearest - q.begin()));
  }
  for (std::size_t i = 0; i < mate.size(); ++i) {
    if (mate[static_cast<std::size_t>(mate[i])] != static_cast<int>(i)) return std::nullopt;
  }
  return mate;
}

// The best line for the mates that a first guess of it makes.
std::optional<Line> settled(const std::vector<Complex>& q, Complex twice) {
  Line line;
  for (int turn = 0; turn < 5; ++turn) {
    auto mate = mates_of(q, twice);
    if (!mate) return std::nullopt;
    const bool same = *mate == line.mate;
    line.mate = std::move(*mate);
    if (same) break;
    Complex sum;
    for (std::size_t i = 0; i < q.size(); ++i)
      sum += q[i] * q[static_cast<std::size_t>(line.mate[i])];
    if (!(std::abs(sum) > 0.0)) return std::nullopt;
    twice = sum / std::abs(sum);
  }
  line.twice = twice;
  for (std::size_t i = 0; i < q.size(); ++i)
    line.worst = std::max(
        line.worst, std::abs(q[static_cast<std::size_t>(line.mate[i])] - twice * std::conj(q[i])) / 2.0);
  return line;
}

// Lines that mirror some hole into another, or hold one. The line through the mean that mirrors q_i into q_j has q_i q_j as its
// doubled direction.
std::vector<Line> lines_of(const std::vector<Complex>& q, double within) {
  std::vector<Line> lines;
  for (std::size_t i = 0; i < q.size(); ++i) {
    for (std::size_t j = i; j < q.size(); ++j) {
      const Complex direction = q[i] * q[j];
      if (!(std::abs(direction) > 0.0)) continue;
      auto line = settled(q, direction / std::abs(direction));
      if (!line || line->worst > within) continue;
      const bool known = std::any_of(lines.begin(), lines.end(), [&](const Line& other) {
        return std::abs(other.twice - line->twice) < kSameLine;
      });
      if (!known) lines.push_back(std::move(*line));
    }
  }
  return lines;
}

double angle_of_line(const Line& line) {
  const double angle = std::arg(line.twice) / 2.0;
  return angle <= -std::numbers::pi / 2.0 ? angle + std::numbers::pi : angle;
}

// How far hole i lies along the line (across: to the left of it), from the mean; the line turns with its angle.
FollowingNumber part_of(const std::vector<Complex>& q, std::size_t hole, const FollowingNumber& angle,
                        bool across) {
  const auto n = static_cast<double>(q.size());
  const double c = std::cos(angle.value);
  const double s = std::sin(angle.value);
  const double along = c * q[hole].real() + s * q[hole].imag();
  const double left = -s * q[hole].real() + c * q[hole].imag();
  FollowingNumber out{across ? left : along, std::vector<double>(2 * q.size(), 0.0)};
  for (std::size_t k = 0; k < q.size(); ++k) {
    const double own = (k == hole ? 1.0 : 0.0) - 1.0 / n;
    out.slopes[2 * k] = own * (across ? -s : c);
    out.slopes[2 * k + 1] = own * (across ? c : s);
  }
  for (std::size_t k = 0; k < out.slopes.size(); ++k)
    out.slopes[k] += (across ? -along : left) * angle.slopes[k];
  return out;
}

FollowingNumber angle_number(const std::vector<Complex>& q, const Line& line) {
  Complex sum;
  for (std::size_t i = 0; i < q.size(); ++i)
    sum += q[i] * q[static_cast<std::size_t>(line.mate[i])];
  FollowingNumber out{angle_of_line(line), {}};
  for (std::size_t i = 0; i < q.size(); ++i) {
    const Complex part = q[static_cast<std::size_t>(line.mate[i])] / sum;
    out.slopes.push_back(part.imag());
    out.slopes.push_back(part.real());
  }
  return out;
}

FollowingNumber mean_number(std::span<const Point2> middles, bool is_y) {
  const auto n = static_cast<double>(middles.size());
  FollowingNumber out{0.0, std::vector<double>(2 * middles.size(), 0.0)};
  for (std::size_t i = 0; i < middles.size(); ++i) {
    out.value += (is_y ? middles[i].y : middles[i].x) / n;
    out.slopes[2 * i + (is_y ? 1 : 0)] = 1.0 / n;
  }
  return out;
}

}  // namespace

Result<MirrorPattern> mirror_pattern(std::span<const Point2> middles, double spread) {
  if (middles.size() < 3) return fail(touches_too_few("a centre line", "the middles of three holes or more"));
  if (middles.size() > static_cast<std::size_t>(kMostPatternHoles))
    return fail(Code::kTooMany, fmt::format("{} holes", middles.size()),
                fmt::format("at most {}", kMostPatternHoles), "a pattern of holes");
  const std::vector<Complex> q = about_mean(middles);
  const std::vector<Line> lines = lines_of(q, kMirrored * spread);
  if (lines.empty())
    return fail(Code::kReadingsDisagree, "no line mirrors each hole into another", "", "a centre line");
  const Line& line = *std::min_element(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
    return std::abs(angle_of_line(a)) < std::abs(angle_of_line(b));
  });
  MirrorPattern out;
  out.mate = line.mate;
  out.lines = static_cast<int>(lines.size());
  out.x = mean_number(middles, false);
  out.y = mean_number(middles, true);
  out.angle = angle_number(q, line);
  for (std::size_t i = 0; i < q.size(); ++i) {
    const auto mate = static_cast<std::size_t>(line.mate[i]);
    out.along.push_back(0.5 * (part_of(q, i, out.angle, false) + -1.0 * part_of(q, mate, out.angle, false)));
    out.across.push_back(0.5 * (part_of(q, i, out.angle, true) + part_of(q, mate, out.angle, true)));
  }
  return out;
}

}  // namespace sparewright::survey
