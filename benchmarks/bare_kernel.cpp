// The peer of a cold check: a program that does nothing but make the example's cuts with the geometry kernel and
// measure the volume. Sizes in mm, as in examples/bracket.job.toml.
#include <cstdio>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <GProp_GProps.hxx>
#include <TopTools_ListOfShape.hxx>
#include <gp_Ax2.hxx>

namespace {

TopoDS_Shape drill(double x, double y, double from, double diameter) {
  return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(x, y, from), gp_Dir(0, 0, 1)), diameter / 2.0, 40.0).Shape();
}

}  // namespace

int main() {
  TopTools_ListOfShape blank;
  blank.Append(BRepPrimAPI_MakeBox(107.95, 50.8, 19.05).Shape());
  TopTools_ListOfShape cutters;
  cutters.Append(BRepPrimAPI_MakeBox(gp_Pnt(76.2, -1.0, 14.2748), gp_Pnt(110.0, 52.0, 30.0)).Shape());
  cutters.Append(drill(26.9748, 25.4, -1.0, 15.9029));
  for (const double y : {38.1, 12.7}) {
    cutters.Append(drill(57.15, y, -1.0, 7.14375));
    cutters.Append(drill(57.15, y, 12.446, 11.1125));
  }
  BRepAlgoAPI_Cut cut;
  cut.SetArguments(blank);
  cut.SetTools(cutters);
  cut.Build();
  if (!cut.IsDone()) return 1;
  GProp_GProps properties;
  BRepGProp::VolumeProperties(cut.Shape(), properties);
  std::printf("%.3f mm3\n", properties.Mass());
  return 0;
}
