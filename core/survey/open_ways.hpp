// The ways the unknowns can still move that no chosen reading feels.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/survey/matrix.hpp"

namespace sparewright::survey {

class OpenWays {
 public:
  // directions: unknowns x ways, as Adjustment::gap_directions.
  explicit OpenWays(const Matrix& directions);

  // Whether a reading with these slopes (one for each unknown) feels one of them. If so that way is closed, and the rest
  // are bent so that the reading does not feel them.
  bool close(std::span<const double> slopes);

  // Whether the unknown moves along one that is still open.
  [[nodiscard]] bool moves(std::size_t unknown) const;

 private:
  std::vector<std::vector<double>> ways_;
};

}  // namespace sparewright::survey
