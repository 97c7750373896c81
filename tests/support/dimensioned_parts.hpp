// Invented parts with dimensions of every duty: plates with flats, rows of holes, bolt circles, slots and pockets, and turned
// bars. All in mm, whole micrometres, so that what is typed is what is meant.
#pragma once

#include <set>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/part/part.hpp"
#include "splitmix.hpp"

namespace sparewright::tests {

struct DimensionedPart {
  part::Part part;
  std::set<std::string>
      told_by_the_first;  // figures of the further holes of a row: one note says them for all
};

class PartInventor {
 public:
  explicit PartInventor(std::uint64_t seed) : random_(seed) {}

  DimensionedPart made() {
    if (random_.one_in(3)) {
      bar();
    } else {
      plate();
    }
    return std::move(made_);
  }

 private:
  using Kind = quantity::Kind;

  // --- dimensions ---
  static quantity::Typed typed(Kind kind, double base) {
    quantity::Typed size;
    size.kind = kind;
    size.base = base;
    if (kind != Kind::kAngle) size.unit = quantity::unit::millimetre;
    if (kind == Kind::kAngle) size.unit = quantity::unit::degree;
    size.typed =
        fmt::format("{:.6g}", kind == Kind::kAngle ? base / quantity::unit::degree.to_base(1.0) : base);
    size.places = 2;
    return size;
  }
  static double rounded(double mm) { return std::round(mm * 100.0) / 100.0; }

  part::Dimension free(Kind kind, double base) {
    part::Dimension d;
    d.kind = kind;
    d.size = typed(kind, base);
    d.typed = std::get<quantity::Typed>(d.size).typed;
    return d;
  }
  // Of any duty; what fits or locates has limits of its own more often than not.
  part::Dimension dimension(Kind kind, double base) {
    part::Dimension d = free(kind, base);
    if (random_.one_in(2)) d.duty = random_.one_in(2) ? part::Duty::kFits : part::Duty::kLocates;
    if (d.duty == part::Duty::kFree || random_.one_in(4)) return d;
    const double half = rounded(random_.between(0.01, 0.2));
    quantity::Deviations deviations{typed(Kind::kLength, random_.one_in(2) ? 0.0 : -half),
                                    typed(Kind::kLength, half)};
    d.tolerance = {deviations, "limits"};
    return d;
  }
  part::Position position(double mm, std::variant<part::Face, std::string> from) {
    return {dimension(Kind::kLength, rounded(mm)), std::move(from), false};
  }

  // --- blanks ---
  void blank(part::BlankShape shape, double x, double y, double z) {
    made_.part.blank.shape = shape;
    made_.part.blank.material = "1018 cold drawn";
    const auto size = [&](double mm) {
      part::BlankSize one;
      one.nominal = typed(Kind::kLength, mm);
      return one;
    };
    made_.part.blank.sizes = {size(x), size(y), size(z)};
    made_.part.surroundings.general = part::usual_general_tolerances(quantity::UnitSystem::kInch);
    made_.part.surroundings.system = quantity::UnitSystem::kMetric;
  }

  // --- plates ---
  void plate() {
    x_ = rounded(random_.between(40.0, 260.0));
    y_ = rounded(random_.between(30.0, 140.0));
    z_ = rounded(random_.between(10.0, 50.0));
    blank(part::BlankShape::kPlate, x_, y_, z_);
    if (random_.one_in(3)) flat(false);
    if (random_.one_in(3)) flat(true);
    const std::size_t holes = 1 + random_.below(3);
    for (std::size_t i = 0; i < holes; ++i)
      hole(fmt::format("bore {}", static_cast<char>('A' + i)), random_.between(0.15, 0.85) * x_,
           random_.between(0.2, 0.8) * y_);
    if (random_.one_in(2)) row();
    if (random_.one_in(3)) bolt_circle();
    if (random_.one_in(3)) slot();
  }

  void flat(bool with_wall) {
    part::Flat f;
    f.side = part::Face::kTop;
    f.leaves = dimension(Kind::kLength, rounded((with_wall ? 0.6 : 0.9) * z_));
    if (with_wall) {
      f.region = part::Flat::Region{};
      f.region->start = position(random_.between(0.6, 0.8) * x_, part::Face::kLeftEnd);
    }
    made_.part.features.push_back({with_wall ? "step" : "top face", f});
  }

  part::Hole plain_hole(double diameter) {
    part::Hole hole;
    hole.diameter = dimension(Kind::kDiameter, diameter);
    if (random_.one_in(3)) hole.depth = dimension(Kind::kLength, rounded(random_.between(0.3, 0.5) * z_));
    if (random_.one_in(3))
      hole.counterbore = part::Counterbore{dimension(Kind::kDiameter, rounded(1.7 * diameter)),
                                           dimension(Kind::kLength, rounded(0.2 * z_))};
    return hole;
  }

  // From the sides, or from the hole before, now and then in line with it.
  void hole(const std::string& name, double x, double y) {
    part::Hole h = plain_hole(rounded(random_.between(3.0, 0.15 * y_ + 4.0)));
    h.make = random_.one_in(2) ? part::HoleMake::kReamed : part::HoleMake::kDrilled;
    const auto along = [&](part::Axis axis, double mm, double size, part::Face low, part::Face high) {
      if (!last_.empty() && random_.one_in(4)) {
        h.at[axis] = position(0.0, last_);
      } else if (random_.one_in(2)) {
        h.at[axis] = position(mm, low);
      } else {
        h.at[axis] = position(size - mm, high);
      }
    };
    along(part::Axis::kX, x, x_, part::Face::kLeftEnd, part::Face::kRightEnd);
    along(part::Axis::kY, y, y_, part::Face::kFront, part::Face::kBack);
    last_ = name;
    made_.part.features.push_back({name, h});
  }

  void tell_once(const std::string& name, const part::Hole& hole, bool by_angle) {
    const auto told = [&](std::string_view local) {
      made_.told_by_the_first.insert(fmt::format("{}/{}", part::feature_path(name), local));
    };
    told("diameter");
    if (hole.depth) told("depth");
    if (hole.counterbore) {
      told("counterbore diameter");
      told("counterbore depth");
    }
    if (by_angle) {
      told("bolt circle");
      told("angle");
    }
  }

  void row() {
    const std::size_t count = 2 + random_.below(3);
    const part::Hole like = plain_hole(rounded(random_.between(3.0, 6.0)));
    const double y = random_.between(0.15, 0.85) * y_;
    for (std::size_t i = 0; i < count; ++i) {
      part::Hole h = like;
      const double x = x_ * (0.2 + 0.6 * static_cast<double>(i) / static_cast<double>(count));
      h.at[part::Axis::kX] = position(x, part::Face::kLeftEnd);
      h.at[part::Axis::kY] = position(y, part::Face::kFront);
      const std::string name = fmt::format("screw {}", i + 1);
      if (i > 0) tell_once(name, h, false);
      made_.part.features.push_back({name, h});
    }
  }

  void bolt_circle() {
    const std::size_t count = 2 + random_.below(3);
    part::Hole like = plain_hole(4.0);
    const part::Dimension circle = dimension(Kind::kDiameter, rounded(random_.between(0.3, 0.5) * y_));
    const part::Dimension first = dimension(Kind::kAngle, quantity::unit::degree.to_base(30.0));
    for (std::size_t i = 0; i < count; ++i) {
      part::Hole h = like;
      part::Dimension angle = first;
      angle.and_more = 2.0 * 3.141592653589793 * static_cast<double>(i) / static_cast<double>(count);
      h.by_angle = part::ByAngle{"bore A", circle, true, angle};
      for (const part::Axis axis : {part::Axis::kX, part::Axis::kY}) {
        part::Dimension there;
        there.size = part::AtAngle{"bolt circle", true, axis == part::Axis::kY};
        there.typed = "on the circle";
        h.at[axis] = {there, std::string("bore A"), false};
      }
      const std::string name = fmt::format("dowel {}", i + 1);
      if (i > 0) tell_once(name, h, true);
      made_.part.features.push_back({name, h});
    }
  }

  void slot() {
    part::Formed s;
    s.form = random_.one_in(2) ? part::Form::kSlot : part::Form::kPocket;
    s.along = part::Axis::kX;
    s.at[part::Axis::kX] = position(random_.between(0.4, 0.6) * x_, part::Face::kLeftEnd);
    s.at[part::Axis::kY] = position(random_.between(0.3, 0.7) * y_, part::Face::kBack);
    const double width = rounded(random_.between(5.0, 0.25 * y_ + 2.0));
    s.sizes["length"] = dimension(Kind::kLength, rounded(width + 0.2 * x_));
    s.sizes["width"] = dimension(Kind::kLength, width);
    s.sizes["depth"] = dimension(Kind::kLength, rounded(0.25 * z_));
    if (s.form == part::Form::kPocket) s.sizes["corner radius"] = free(Kind::kRadius, 2.0);
    made_.part.features.push_back({s.form == part::Form::kSlot ? "keyslot" : "window", s});
  }

  // --- bars ---
  void bar() {
    x_ = rounded(random_.between(60.0, 220.0));
    z_ = rounded(random_.between(15.0, 50.0));
    y_ = z_;
    blank(part::BlankShape::kRoundBar, x_, z_, z_);
    turned("journal", part::Face::kLeftEnd, random_.between(0.6, 0.85), random_.between(0.15, 0.3));
    if (random_.one_in(2))
      turned("spigot", part::Face::kRightEnd, random_.between(0.5, 0.85), random_.between(0.1, 0.3));
    if (random_.one_in(2)) {
      part::Formed groove;
      groove.form = part::Form::kGroove;
      groove.side = part::Face::kRightEnd;
      groove.sizes["diameter"] = dimension(Kind::kDiameter, rounded(0.45 * z_));
      groove.sizes["from end"] = dimension(Kind::kLength, rounded(random_.between(0.4, 0.5) * x_));
      groove.sizes["width"] = dimension(Kind::kLength, rounded(random_.between(2.0, 5.0)));
      made_.part.features.push_back({"ring groove", groove});
    }
    if (random_.one_in(2)) {
      part::Hole cross;
      cross.diameter = dimension(Kind::kDiameter, rounded(random_.between(2.0, 0.2 * z_ + 1.0)));
      cross.at[part::Axis::kX] = position(random_.between(0.32, 0.38) * x_, part::Face::kLeftEnd);
      cross.at[part::Axis::kY] = {free(Kind::kLength, z_ / 2.0), part::Face::kFront, false};
      made_.part.features.push_back({"cross hole", cross});
    }
  }

  void turned(const std::string& name, part::Face end, double across, double along) {
    part::Formed t;
    t.form = part::Form::kTurned;
    t.side = end;
    t.sizes["diameter"] = dimension(Kind::kDiameter, rounded(across * z_));
    t.sizes["length"] = dimension(Kind::kLength, rounded(along * x_));
    if (random_.one_in(3)) t.sizes["fillet"] = free(Kind::kRadius, 0.5);
    made_.part.features.push_back({name, t});
  }

  SplitMix random_;
  DimensionedPart made_;
  double x_ = 0.0;
  double y_ = 0.0;
  double z_ = 0.0;
  std::string last_;  // the hole before
};

}  // namespace sparewright::tests
