// Asks a question of the bench; and a small shop to ask with: a mill as the farm's, a few drills, a tap.
#pragma once

#include "answer_rows.hpp"
#include "core/answers/subjects.hpp"
#include "core/base/messages.hpp"
#include "core/shop/shop.hpp"

namespace sparewright::tests {

inline base::Result<answers::Answer> handbook(std::string_view subject, std::string words,
                                              std::map<std::string, std::string> entries = {},
                                              const shop::Shop* shop = nullptr,
                                              quantity::UnitSystem system = quantity::UnitSystem::kInch) {
  answers::Question question = asked(std::move(words));
  question.entries = std::move(entries);
  question.shop = shop;
  question.system = system;
  return answers::ask(answers::handbook_subjects(), subject, question);
}

inline base::Result<answers::Answer> quick(std::string_view subject,
                                           std::map<std::string, std::string> entries, std::string words = {},
                                           const shop::Shop* shop = nullptr) {
  answers::Question question = asked(std::move(words));
  question.entries = std::move(entries);
  question.shop = shop;
  return answers::ask(answers::quick_subjects(), subject, question);
}

// The message of a refusal; empty where there was none.
inline std::string refusal(const base::Result<answers::Answer>& answer) {
  return answer ? "" : base::report(answer.error());
}

inline shop::Collar collar(double inch_per_turn, int divisions, shop::WorkMoves clockwise) {
  shop::Collar collar;
  collar.per_turn = quantity::Length::of(inch_per_turn, quantity::unit::inch);
  collar.divisions = divisions;
  collar.clockwise_moves_work = clockwise;
  return collar;
}

inline shop::Tool tool(std::string name, shop::ToolKind kind, double inch = 0.0) {
  shop::Tool tool;
  tool.name = std::move(name);
  tool.kind = kind;
  if (inch > 0.0) {
    tool.diameter.emplace();
    tool.diameter->base = inch * 25.4;
  }
  return tool;
}

inline shop::Shop quick_shop() {
  shop::Machine mill;
  mill.name = "knee mill";
  mill.travel.x = quantity::Length::of(24.0, quantity::unit::inch);
  mill.collars["x"] = collar(0.2, 200, shop::WorkMoves::kLeft);
  mill.collars["y"] = collar(0.2, 200, shop::WorkMoves::kAway);
  mill.collars["z"] = collar(0.1, 100, shop::WorkMoves::kUp);
  shop::Shop shop;
  shop.machines.push_back(mill);
  shop.tools = {tool("drill 1/4", shop::ToolKind::kTwistDrill, 0.25),
                tool("drill 13/64", shop::ToolKind::kTwistDrill, 13.0 / 64.0),
                tool("drill #7", shop::ToolKind::kTwistDrill, 0.201),
                tool("tap 1/4-20", shop::ToolKind::kTap)};
  shop.tools.back().thread = "1/4-20 UNC";
  return shop;
}

}  // namespace sparewright::tests
