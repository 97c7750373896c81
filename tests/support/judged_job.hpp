// A whole job from texts to verdicts, for tests: everything but what is asked about is the same plain block and shop.
#pragma once

#include <cmath>
#include <string>
#include <utility>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/job/job.hpp"

namespace sparewright::tests {

// Instruments so fine that only a margin of 0 is CLOSE; a mill with a 0.200 in collar; a vise 2 in deep.
inline std::string plain_shop() {
  return R"(
[shop]
title = "Test shop"
units = "in"
[[machine]]
name = "mill"
kind = "vertical mill"
speeds = [80, 160, 320, 640, 1280]
quiet_cut = "0.050"
collar.x = { turn = "0.200", divisions = 200, numbers_rise = "clockwise", clockwise_moves_work = "left", slack = "0.010", repeats = "0.0005" }
collar.y = { turn = "0.200", divisions = 200, numbers_rise = "clockwise", clockwise_moves_work = "towards", slack = "0.010", repeats = "0.0005" }
collar.z = { turn = "0.100", divisions = 100, numbers_rise = "clockwise", clockwise_moves_work = "up", slack = "0.010" }
[[holding]]
name = "vise"
kind = "vise"
jaws = { width = "6", depth = "2", opens = "4" }
parallels = ["1/4 x 1/8", "1 x 1/8", "1-1/2 x 1/8", "1-7/8 x 1/8"]
[[instrument]]
name = "fine"
kind = "comparator"
reads = "0.000002"
good_to = "0.000002"
zero = "0.0000"
[[instrument]]
name = "caliper"
kind = "dial caliper"
reads = "0.001"
good_to = "0.001"
zero = "0.000"
[[tool]]
name = "edge finder"
kind = "edge finder"
diameter = "0.200"
good_to = "0.0001"
[[tool]]
name = "spot"
kind = "spot drill"
diameter = "1/4"
[[tool]]
name = "drill 1/2"
kind = "twist drill"
diameter = "1/2"
[[tool]]
name = "drill 1-1/2"
kind = "twist drill"
diameter = "1-1/2"
[[tool]]
name = "drill 3"
kind = "twist drill"
diameter = "3"
[[tool]]
name = "boring head"
kind = "boring head"
division = "0.001"
[[tool]]
name = "counterbore"
kind = "counterbore"
diameter = "7/16"
[[tool]]
name = "end mill"
kind = "end mill"
diameter = "1/2"
flutes = 4
[[tool]]
name = "tap"
kind = "tap"
thread = "1/4-20"
[[tool]]
name = "reamer"
kind = "reamer"
diameter = "0.500"
)";
}

// A block 4 x 3 x 1 in of 1018, with a pin read 0.5000 by the fine instrument.
inline std::string job_with(
    const std::string& sections,
    const std::string& blank_size = R"({ length = "4", width = "3", thickness = "1" })") {
  return R"(
[job]
title = "Test job"
units = "in"
[[reading]]
name = "pin"
what = "outside"
of = "pin"
with = "fine"
got = ["0.500000", "0.500000"]
[blank]
shape = "block"
material = "1018 cold drawn"
size = )" +
         blank_size + "\n" + sections;
}

// One setup in the vise, the back against the fixed jaw, picked up on left end and back.
inline std::string setup_with(const std::string& works, const std::string& parallels = "1-1/2 x 1/8") {
  return R"(
[[setup]]
op = 10
name = "test"
machine = "mill"
hold = { in = "vise", sits_on = "underside", fixed_jaw = "back", parallels = ")" +
         parallels + R"(" }
pick_up = { x = "left end", y = "back", with = "edge finder" }
)" + works;
}

struct Judged {
  ledger::Ledger ledger;
  job::Job job;

  // The verdict of a check on a subject; fails the test where there is none.
  [[nodiscard]] ledger::Verdict verdict(const std::string& check, const std::string& subject) {
    for (const ledger::Verdict& v : ledger.verdicts()) {
      if (v.check == check && v.subject == subject) return v;
    }
    ADD_FAILURE() << "no verdict '" << check << "' on " << subject;
    return {};
  }
  [[nodiscard]] ledger::State state(const std::string& check, const std::string& subject) {
    return verdict(check, subject).state;
  }
  // The margin in inches.
  [[nodiscard]] double margin_in(const std::string& check, const std::string& subject) {
    return ledger.get(verdict(check, subject).margin).value / 25.4;
  }
  [[nodiscard]] double inches(const std::string& figure) { return ledger.get(figure).value / 25.4; }
  [[nodiscard]] std::size_t worse_than_close() {
    std::size_t count = 0;
    for (const ledger::Verdict& v : ledger.verdicts()) {
      count += v.state == ledger::State::kNo || v.state == ledger::State::kNotKnown ? 1 : 0;
    }
    return count;
  }
};

// Reads the texts into it and declares the stages. Returns all that is wrong with them, as the user reads it; empty where
// they can be read.
inline std::string read_into(Judged& judged, const std::string& job_text, const std::string& shop_text) {
  std::string all;
  const auto tell = [&](const base::Failures& failures) {
    for (const base::Failure& failure : failures)
      all += base::report(failure) + "\n";
  };
  const auto shop_document = text::Document::parse(shop_text, "test.shop.toml");
  if (!shop_document) return base::report(shop_document.error()) + "\n";
  const auto shop = job::read_shop(*shop_document);
  if (!shop) {
    tell(shop.error());
    return all;
  }
  const auto job_document = text::Document::parse(job_text, "test.job.toml");
  if (!job_document) return base::report(job_document.error()) + "\n";
  auto job = job::read_job(*job_document, *shop);
  if (!job) {
    tell(job.error());
    return all;
  }
  judged.job = std::move(*job);
  if (auto stages = job::stages(judged.job)) {
    judged.ledger.declare(std::move(*stages));
  } else {
    tell(stages.error());
  }
  return all;
}

inline std::string troubles_of(const std::string& job_text, const std::string& shop_text = plain_shop()) {
  Judged judged;
  return read_into(judged, job_text, shop_text);
}

inline Judged judged(const std::string& job_text, const std::string& shop_text = plain_shop()) {
  Judged result;
  const std::string troubles = read_into(result, job_text, shop_text);
  if (!troubles.empty()) ADD_FAILURE() << troubles;
  return result;
}

}  // namespace sparewright::tests
