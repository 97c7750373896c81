// A list of texts without repeats.
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

namespace sparewright::base {

// In the order of first mention.
class Once {
 public:
  void add(std::string text) {
    if (seen_.insert(text).second) texts_.push_back(std::move(text));
  }
  [[nodiscard]] const std::vector<std::string>& texts() const { return texts_; }

 private:
  std::set<std::string> seen_;
  std::vector<std::string> texts_;
};

}  // namespace sparewright::base
