// Numbers that stand on a sheet and are not among those `numbers` lists: a decimal number or a collar reading must be one
// of them, rounded as it is printed, or stand as typed in the job or the shop text.
#pragma once

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

namespace sparewright::tests {

class PrintedNumbers {
 public:
  // listed: what `numbers --json` prints. typed: the texts of job and shop.
  PrintedNumbers(const nlohmann::json& listed, const std::string& typed) {
    for (const auto& row : listed.at("numbers")) {
      if (row.at("value").is_null()) continue;
      const double value = std::abs(row.at("value").get<double>());
      values_.push_back(value);
      const std::string name = row.at("name");
      constexpr std::string_view kTurns = " turns";
      if (name.ends_with(kTurns))
        turns_.emplace_back(name.substr(0, name.size() - kTurns.size()), value);
      else if (name.ends_with(" division"))
        divisions_[name.substr(0, name.size() - std::string_view(" division").size())] = value;
    }
    for (const std::string& number : decimals(typed))
      typed_.insert(number);
    for (const auto& verdict : listed.at("verdicts")) {
      for (const std::string& number : decimals(verdict.dump()))
        typed_.insert(number);
    }
  }

  // Of a text that was read back from the PDF.
  [[nodiscard]] std::vector<std::string> strange_in(const std::string& sheet) const {
    std::vector<std::string> strange;
    for (const std::string& number : decimals(sheet)) {
      if (!is_listed(number)) strange.push_back(number);
    }
    for (const std::string& reading : readings(sheet)) {
      if (!is_a_reading(reading)) strange.push_back(reading);
    }
    return strange;
  }

 private:
  static constexpr std::string_view kBetween = "t + ";

  static bool is_figure(char c) { return c >= '0' && c <= '9'; }

  // Figures with one point among them and at least one figure after it.
  static std::vector<std::string> decimals(const std::string& text) {
    std::vector<std::string> all;
    std::string number;
    for (const char c : text + " ") {
      if (is_figure(c) || c == '.') {
        number += c;
        continue;
      }
      while (number.ends_with('.'))  // of the sentence
        number.pop_back();
      if (std::count(number.begin(), number.end(), '.') == 1) all.push_back(number);
      number.clear();
    }
    return all;
  }

  // "5t + 62": turns and division.
  static std::vector<std::string> readings(const std::string& text) {
    std::vector<std::string> all;
    for (std::size_t at = text.find(kBetween); at != std::string::npos; at = text.find(kBetween, at + 1)) {
      std::size_t from = at;
      while (from > 0 && is_figure(text[from - 1]))
        --from;
      const std::size_t after = at + kBetween.size();
      std::size_t to = after;
      while (to < text.size() && is_figure(text[to]))
        ++to;
      if (from < at && after < to) all.push_back(text.substr(from, to - from));
    }
    return all;
  }

  // Limits are printed to their inner side, everything else to the nearest: less than one in the last place off. Also in
  // the other system of units.
  [[nodiscard]] bool is_listed(const std::string& number) const {
    if (typed_.contains(number)) return true;
    const double printed = std::stod(number);
    const double place = std::pow(10.0, -static_cast<double>(number.size() - number.find('.') - 1));
    for (const double value : values_) {
      for (const double factor : {1.0, 25.4, 1.0 / 25.4}) {
        if (std::abs(value * factor - printed) < place * 0.999) return true;
      }
    }
    return false;
  }

  [[nodiscard]] bool is_a_reading(const std::string& reading) const {
    const double turns = std::stod(reading);
    const double division = std::stod(reading.substr(reading.find(kBetween) + kBetween.size()));
    for (const auto& [name, value] : turns_) {
      const auto found = divisions_.find(name);
      if (value == turns && found != divisions_.end() && found->second == division) return true;
    }
    return false;
  }

  std::vector<double> values_;
  std::vector<std::pair<std::string, double>> turns_;
  std::map<std::string, double> divisions_;
  std::set<std::string> typed_;
};

}  // namespace sparewright::tests
