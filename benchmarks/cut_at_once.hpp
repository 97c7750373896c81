// A recipe's part as the bare kernel makes it: the blank, the cutters, one cut of all of them.
#pragma once

#include <stdexcept>

#include <BRepAlgoAPI_Cut.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>

#include "core/shape/recipe.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::benchmarks {

[[nodiscard]] inline TopoDS_Shape cut_at_once(const shape::Recipe& recipe) {
  double seam_rad = 0.6;
  TopTools_ListOfShape blank;
  blank.Append(solid::kernel_body(recipe.blank().body, seam_rad, recipe.blank().body));
  TopTools_ListOfShape cutters;
  for (const shape::Cut& cut : recipe.cuts())
    cutters.Append(solid::kernel_body(cut.body, seam_rad += 2.4, recipe.blank().body));
  BRepAlgoAPI_Cut cut;
  cut.SetArguments(blank);
  cut.SetTools(cutters);
  cut.Build();
  if (!cut.IsDone()) throw std::runtime_error("the kernel makes no solid");
  return cut.Shape();
}

}  // namespace sparewright::benchmarks
