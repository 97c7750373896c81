// What tells two threads apart that what was measured does not.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/identify_threads.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

// Fewer are counted anyhow; more are seldom on a screw, and rarely worth counting (common practice).
constexpr int kFewestThreads = 10;
constexpr int kMostThreads = 40;

double degrees(const ThreadCandidate& one) {
  return profile_of(shape_of(one.thread).form).flank_angle.in(unit::degree);
}

// How many threads a calliper has to span for their lengths to differ; none where too many.
std::optional<int> threads_to_span(const ThreadCandidate& one, const ThreadCandidate& other) {
  constexpr double kSame_mm = 1e-6;
  constexpr double kSame = 1e-9;  // of a number of threads
  const double apart_mm = std::abs((one.pitch - other.pitch).base());
  if (apart_mm < kSame_mm) return std::nullopt;
  const double threads = std::floor(kToldApart.base() / apart_mm + kSame) + 1.0;
  if (threads > kMostThreads) return std::nullopt;
  return std::max(static_cast<int>(threads), kFewestThreads);
}

bool limits_lie_apart(const ThreadCandidate& one, const ThreadCandidate& other) {
  return one.made.low > other.made.high || other.made.low > one.made.high;
}

std::string millimetres(Length length) {
  return quantity::fixed(length.in(unit::millimetre), 2);
}

const char* crests(const ThreadCandidate& one) {
  return has_rounded_crests(shape_of(one.thread).form) ? "rounded" : "flat";
}

const char* taper(const ThreadCandidate& one) {
  return shape_of(one.thread).tapered ? "tapered" : "straight";
}

}  // namespace

bool has_rounded_crests(ThreadForm form) {
  return form == ThreadForm::kWhitworth || form == ThreadForm::kBritishAssociation ||
         form == ThreadForm::kBritishCycle;
}

std::vector<ThreadCandidate> not_ruled_out(const std::vector<ThreadCandidate>& candidates) {
  constexpr double kNextTo = 0.5;
  std::vector<ThreadCandidate> left;
  for (const ThreadCandidate& one : candidates) {
    if (one.misfit <= std::max(kRuledOut, candidates.front().misfit + kNextTo)) left.push_back(one);
  }
  return left;
}

WhatDecides what_decides(const MeasuredThread& measured, const ThreadCandidate& one,
                         const ThreadCandidate& other) {
  const ThreadShape first = shape_of(one.thread);
  const ThreadShape second = shape_of(other.thread);
  const auto threads = threads_to_span(one, other);
  if (!measured.flank_angle && std::abs(degrees(one) - degrees(other)) > 1.0)
    return {ThreadDecider::kFlankAngle, 0};
  if (!measured.tapered && first.tapered != second.tapered) return {ThreadDecider::kTaper, 0};
  if (threads) return {ThreadDecider::kPitch, *threads};
  if (!measured.rounded && has_rounded_crests(first.form) != has_rounded_crests(second.form))
    return {ThreadDecider::kCrests, 0};
  if (limits_lie_apart(one, other)) return {ThreadDecider::kMajor, 0};
  return {};
}

std::string words_of(const WhatDecides& decides, const ThreadCandidate& one, const ThreadCandidate& other) {
  switch (decides.by) {
    case ThreadDecider::kFlankAngle:
      return fmt::format("the flank angle: {:g} or {:g} degrees", degrees(one), degrees(other));
    case ThreadDecider::kTaper:
      return fmt::format("a straightedge along it: {} or {}", taper(one), taper(other));
    case ThreadDecider::kPitch: {
      const auto n = static_cast<double>(decides.threads);
      return fmt::format("the pitch over {} threads: {} or {} mm", decides.threads,
                         millimetres(n * one.pitch), millimetres(n * other.pitch));
    }
    case ThreadDecider::kCrests:
      return fmt::format("its crests: {} or {}", crests(one), crests(other));
    case ThreadDecider::kMajor:
      return fmt::format("the diameter of threads that are not worn: {} to {} or {} to {} mm",
                         millimetres(across(one.made.low)), millimetres(across(one.made.high)),
                         millimetres(across(other.made.low)), millimetres(across(other.made.high)));
    case ThreadDecider::kNothing:
      break;
  }
  return "no reading of it: go by its nut, or by where the machine was made";
}

}  // namespace sparewright::handbook
