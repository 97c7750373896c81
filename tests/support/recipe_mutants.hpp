// Recipes with something wrong with them: plausible parts, mutated in the ways that slips and bad luck do it.
#pragma once

#include <algorithm>
#include <limits>
#include <string>
#include <utility>
#include <vector>

#include "core/shape/support.hpp"
#include "random_shapes.hpp"

namespace sparewright::tests {

struct Mutant {
  shape::Primitive blank;
  std::vector<shape::Cutter> cutters;
};

// The sizes of a primitive that a mutation may change.
inline std::vector<double*> sizes_of(shape::Primitive& p) {
  struct Sizes {
    std::vector<double*> operator()(shape::HalfSpace& h) const { return {&h.frame.origin.z}; }
    std::vector<double*> operator()(shape::Box& b) const { return {&b.size.x, &b.size.y, &b.size.z}; }
    std::vector<double*> operator()(shape::Prism& b) const {
      return {&b.height_mm, &b.section[0].u, &b.section[1].v};
    }
    std::vector<double*> operator()(shape::Cylinder& c) const { return {&c.radius_mm, &c.height_mm}; }
    std::vector<double*> operator()(shape::Cone& c) const {
      return {&c.start_radius_mm, &c.end_radius_mm, &c.height_mm};
    }
    std::vector<double*> operator()(shape::DrilledHole& h) const {
      return {&h.radius_mm, &h.depth_mm, &h.point_rad};
    }
    std::vector<double*> operator()(shape::ProfiledBody& b) const {
      return {&b.height_mm, &b.contour[0].at.u, &b.contour[1].at.v, &b.contour[0].bow};
    }
    std::vector<double*> operator()(shape::TurnedBody& t) const {
      return {&t.half_section[0].at.u, &t.half_section[1].at.v, &t.half_section[0].bow};
    }
  };
  return std::visit(Sizes{}, p);
}

class Mutator {
 public:
  explicit Mutator(std::uint64_t seed) : random_(seed) {}

  Mutant mutant() {
    Mutant m{blank(), cutters()};
    for (int i = random_.whole(1, 4); i > 0; --i)
      mutate(m);
    return m;
  }

 private:
  shape::Primitive blank() {
    if (random_.one_in(2)) return shape::Box{{}, kSize};
    return random_.one_in(2) ? shape::Primitive(shape::Cylinder{{}, 25.0, 60.0})
                             : shape::Primitive(shape::Cone{{}, 25.0, 15.0, 60.0});
  }

  // A slot, a rounded pocket, or a groove about the z axis.
  shape::Cutter contoured(const std::string& name) {
    const double x = random_.between(5.0, 40.0);
    const double y = random_.between(5.0, 30.0);
    const double z = 5.0 * random_.whole(0, 4);
    switch (random_.whole(0, 2)) {
      case 0:
        return {name,
                shape::ProfiledBody{shape::Frame::at({0.0, 0.0, z}),
                                    shape::slot_contour({x, y}, {x + 12.0, y}, 6.0), 20.0},
                shape::Open::kEnd};
      case 1: {
        const std::vector<shape::RoundedCorner> corners{
            {{x, y}, 2.0}, {{x + 15.0, y}, 0.0}, {{x + 15.0, y + 10.0}, 3.0}, {{x, y + 10.0}, 2.0}};
        return {name,
                shape::ProfiledBody{shape::Frame::at({0.0, 0.0, z}), shape::rounded_contour(corners), 20.0},
                shape::Open::kEnd};
      }
      default:
        return {name, shape::TurnedBody{{}, shape::rectangle({15.0, z + 5.0}, {30.0, z + 9.0})},
                shape::Open::kNone};
    }
  }

  std::vector<shape::Cutter> cutters() {
    std::vector<shape::Cutter> all = grid_cutters(random_, random_.whole(1, 4), kSize);
    for (int i = random_.whole(0, 2); i > 0; --i) {
      const std::string name = "extra " + std::to_string(i);
      if (random_.one_in(2)) {
        all.push_back(contoured(name));
      } else {
        const shape::Primitive body = random_primitive(random_, 1.0, 1.0, 30.0);
        const shape::Point at{random_.between(0.0, kSize.x), random_.between(0.0, kSize.y), 12.0};
        all.push_back(
            {name, placed(body, shape::Frame::at(at)), static_cast<shape::Open>(random_.whole(0, 63))});
      }
    }
    return all;
  }

  shape::Cutter& any(Mutant& m) {
    return m.cutters[static_cast<std::size_t>(random_.whole(0, static_cast<int>(m.cutters.size()) - 1))];
  }
  shape::Primitive& any_body(Mutant& m) { return random_.one_in(8) ? m.blank : any(m).nominal; }
  double& any_size(Mutant& m) {
    const std::vector<double*> sizes = sizes_of(any_body(m));
    return *sizes[static_cast<std::size_t>(random_.whole(0, static_cast<int>(sizes.size()) - 1))];
  }

  void mutate(Mutant& m) {
    constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
    switch (random_.whole(0, 10)) {
      case 0:
        std::swap(any(m), any(m));
        break;
      case 1:
        any_size(m) *= std::pow(10.0, random_.whole(-6, 4));
        break;
      case 2: {
        const double odd[] = {0.0, -1.0, kNaN, 1e300, -0.0, std::numeric_limits<double>::infinity()};
        any_size(m) = odd[random_.whole(0, 5)];
        break;
      }
      case 3:
        m.cutters.push_back(shape::Cutter(any(m)));
        break;
      case 4:
        coincide(m);
        break;
      case 5:  // a sliver: as thin as is let through, up to a hundred times that
        any_size(m) = shape::kShortestSide_mm * std::pow(10.0, random_.whole(0, 2));
        break;
      case 6:
        lie_against(m);
        break;
      case 7:
        angle_of_nothing(any_body(m));
        break;
      case 8:
        any(m).open = static_cast<shape::Open>(random_.whole(0, 63));
        break;
      case 9:
        any(m).nominal = shape::HalfSpace{random_frame(random_, 30.0)};
        break;
      default:
        any_size(m) = std::round(any_size(m));
    }
  }

  // One cutter begins where another does, or is as wide.
  void coincide(Mutant& m) {
    const shape::Cutter from = any(m);
    shape::Cutter& to = any(m);
    std::visit([&](auto& body) { body.frame = frame_of(from.nominal); }, to.nominal);
    shape::Primitive copy = from.nominal;
    *sizes_of(to.nominal).front() = *sizes_of(copy).front();
  }

  // One cutter is moved until it comes within a few steps of the grid of where another ends.
  void lie_against(Mutant& m) {
    const shape::Cutter from = any(m);
    shape::Cutter& to = any(m);
    if (std::holds_alternative<shape::HalfSpace>(from.nominal)) return;
    const shape::Point end = farthest(from.nominal, {1.0, 0.0, 0.0});
    const double off = shape::kGrid_mm * random_.whole(-20, 20);
    std::visit([&](auto& body) { body.frame.origin.x = end.x + off; }, to.nominal);
  }

  void angle_of_nothing(shape::Primitive& body) {
    if (auto* cone = std::get_if<shape::Cone>(&body)) cone->end_radius_mm = cone->start_radius_mm;
    if (auto* hole = std::get_if<shape::DrilledHole>(&body)) hole->point_rad = 0.0;
    if (auto* profile = std::get_if<shape::ProfiledBody>(&body)) profile->contour[0].bow = 0.0;
    if (auto* box = std::get_if<shape::Box>(&body)) box->frame.z = box->frame.x;
    if (auto* bore = std::get_if<shape::Cylinder>(&body)) bore->frame.z = {};
  }

  const shape::Vector kSize{60.0, 40.0, 25.0};
  Random random_;
};

}  // namespace sparewright::tests
