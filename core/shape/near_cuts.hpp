// The cuts of a work by where they are, so that a question about some of them does not go through all.
#pragma once

#include <initializer_list>
#include <optional>
#include <vector>

#include "core/shape/support.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::shape {

// The answers are those of wall.hpp: what lies beyond the box round two cuts does not change the metal between them.
class NearCuts {
 public:
  // Valid as long as what the work is a view of.
  explicit NearCuts(const Work& work);

  [[nodiscard]] const Work& work() const { return work_; }

  // It reaches into the blank by more than kTouch_mm.
  [[nodiscard]] bool cuts_metal(std::size_t cut) const { return cuts_metal_[cut]; }

  // Between the boxes of two cuts, or between what is turned off all round and a box inside it: they are at least so far
  // apart.
  [[nodiscard]] double gap_mm(std::size_t one, std::size_t other) const;

  // The other cuts with a smaller gap than the limit, nearest first; those of the same feature left out.
  struct Neighbour {
    std::size_t cut = 0;
    double gap_mm = 0.0;
  };
  [[nodiscard]] std::vector<Neighbour> within(std::size_t cut, double limit_mm) const;

  [[nodiscard]] Wall wall_between(std::size_t one, std::size_t other, double limit_mm) const;
  [[nodiscard]] std::vector<FaceWall> walls_to_outside(std::size_t cut, double limit_mm) const;

 private:
  [[nodiscard]] std::vector<Cut> in(const Bounds& box, std::initializer_list<std::size_t> first) const;

  // Metal turned off round a line along x, y or z: how near to the line it comes.
  struct Ring {
    int axis = 0;
    Point middle;
    double inner_mm = 0.0;
  };
  [[nodiscard]] static std::optional<Ring> ring_of(const Primitive& body);
  [[nodiscard]] double inside_mm(const std::optional<Ring>& ring, const Bounds& box) const;

  Work work_;
  std::vector<Bounds> bounds_;  // within the blank
  std::vector<bool> cuts_metal_;
  std::vector<std::optional<Ring>> rings_;
};

}  // namespace sparewright::shape
