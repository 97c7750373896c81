#include "core/part/form.hpp"

#include <algorithm>
#include <array>

namespace sparewright::part {
namespace {

using quantity::Kind;
constexpr CutMakesIt kGrows = CutMakesIt::kLarger;
constexpr CutMakesIt kShrinks = CutMakesIt::kSmaller;

constexpr std::array kSlotSizes{
    FormSize{"length", Kind::kLength, kGrows, false, "over its round ends; open at both ends where left out"},
    FormSize{"width", Kind::kLength, kGrows, true, "across"},
    FormSize{"depth", Kind::kLength, kGrows, false, "from its side; through where left out"}};
constexpr std::array kPocketSizes{
    FormSize{"length", Kind::kLength, kGrows, true, "along the axis it runs along"},
    FormSize{"width", Kind::kLength, kGrows, true, "across"},
    FormSize{"depth", Kind::kLength, kGrows, false, "from its side; through where left out"},
    FormSize{"corner radius", Kind::kRadius, CutMakesIt::kNeither, true,
             "of its upright corners: the cutter's"}};
constexpr std::array kKeyseatSizes{
    FormSize{"length", Kind::kLength, kGrows, true, "over its round ends"},
    FormSize{"width", Kind::kLength, kGrows, true, "the key's"},
    FormSize{"depth", Kind::kLength, kGrows, true, "from the crest of what is turned there"}};
constexpr std::array kEdgeSizes{
    FormSize{"size", Kind::kLength, kGrows, true, "from the edge along both sides"},
    FormSize{"diameter", Kind::kDiameter, CutMakesIt::kNeither, false,
             "on an end: of the rim; the blank's if left out"}};
constexpr std::array kRoundedEdgeSizes{FormSize{"radius", Kind::kRadius, kGrows, true, "of the edge"},
                                       FormSize{"diameter", Kind::kDiameter, CutMakesIt::kNeither, false,
                                                "on an end: of the rim; the blank's if left out"}};
constexpr std::array kTurnedSizes{
    FormSize{"diameter", Kind::kDiameter, kShrinks, true, "as turned"},
    FormSize{"length", Kind::kLength, kGrows, true, "from the end to the shoulder"},
    FormSize{"fillet", Kind::kRadius, CutMakesIt::kNeither, false, "radius in the corner of the shoulder"},
    FormSize{"mate corner", Kind::kRadius, CutMakesIt::kNeither, false,
             "of what is pushed up to the shoulder: the radius or chamfer of its corner, the least"}};
constexpr std::array kGrooveSizes{
    FormSize{"diameter", Kind::kDiameter, kShrinks, true, "at its bottom"},
    FormSize{"from end", Kind::kLength, CutMakesIt::kNeither, true, "from the end to its near side"},
    FormSize{"width", Kind::kLength, kGrows, true, ""}};
constexpr std::array kTaperSizes{
    FormSize{"small diameter", Kind::kDiameter, kShrinks, true, "at the end"},
    FormSize{"large diameter", Kind::kDiameter, kShrinks, true, "where it stops"},
    FormSize{"length", Kind::kLength, kGrows, true, "along the axis"}};
constexpr std::array kThreadSizes{
    FormSize{"diameter", Kind::kDiameter, kShrinks, true, "what is turned for it: the greatest diameter"},
    FormSize{"length", Kind::kLength, kGrows, true, "of full thread, from the end"}};
constexpr std::array kCentreHoleSizes{
    FormSize{"diameter", Kind::kDiameter, kGrows, true, "of the 60 degree cone at the end"},
    FormSize{"pilot", Kind::kDiameter, kGrows, true, "of the drill in front of it"}};
constexpr std::array kRecessSizes{FormSize{"diameter", Kind::kDiameter, kGrows, true, "at its bottom"},
                                  FormSize{"from end", Kind::kLength, CutMakesIt::kNeither, true,
                                           "from where the hole starts to its near side"},
                                  FormSize{"width", Kind::kLength, kGrows, true, ""}};
constexpr std::array kKeywaySizes{
    FormSize{"width", Kind::kLength, kGrows, true, "the key's"},
    FormSize{"over", Kind::kLength, kGrows, true, "from its bottom to the far side of the bore"}};
constexpr std::array kSlitSizes{
    FormSize{"width", Kind::kLength, kGrows, true, "the saw's"},
    FormSize{"closes by", Kind::kLength, CutMakesIt::kNeither, false,
             "how far its screw pulls it together; what the mate leaves where left out"}};

constexpr std::array kOilGrooveSizes{
    FormSize{"radius", Kind::kRadius, CutMakesIt::kNeither, true, "of its round bottom"},
    FormSize{"depth", Kind::kLength, kGrows, true, "below the wall of the hole"},
    FormSize{"from end", Kind::kLength, CutMakesIt::kNeither, false,
             "from where the hole starts to its near end; open there where left out"},
    FormSize{"length", Kind::kLength, kGrows, false, "along the hole; right through where left out"}};
constexpr std::array kDimpleSizes{
    FormSize{"depth", Kind::kLength, kGrows, true,
             "of its point, from its side or the crest of what is turned there"},
    FormSize{"angle", Kind::kAngle, CutMakesIt::kNeither, true, "included: the screw's point, the drill's"}};
constexpr std::array kTaperPinHoleSizes{
    FormSize{"diameter", Kind::kDiameter, kGrows, true, "of the large end, on its side"},
    FormSize{"taper", Kind::kNumber, CutMakesIt::kNeither, true,
             "on the diameter for its length: 1/48 for inch pins, 1/50 for metric ones"}};
constexpr std::array kSpringPinHoleSizes{FormSize{"diameter", Kind::kDiameter, kGrows, true,
                                                  "the pin's nominal; H12 where no tolerance is given"}};
constexpr std::array kSplitSizes{
    FormSize{"from side", Kind::kLength, CutMakesIt::kNeither, true,
             "from its side to the near face of the cut"},
    FormSize{"width", Kind::kLength, kGrows, true, "the saw's and what is filed off"},
    FormSize{"shim", Kind::kLength, CutMakesIt::kNeither, false,
             "what is put between when it is joined again"}};
constexpr std::array kChuckingPieceSizes{
    FormSize{"length", Kind::kLength, CutMakesIt::kNeither, true, "left on beyond the finished end"}};
constexpr std::array kKnurlSizes{
    FormSize{"diameter", Kind::kDiameter, kShrinks, true, "what is turned for it"},
    FormSize{"pitch", Kind::kLength, CutMakesIt::kNeither, true, "from ridge to ridge, the wheel's"},
    FormSize{"from end", Kind::kLength, CutMakesIt::kNeither, true, "from the end to its near side"},
    FormSize{"length", Kind::kLength, kGrows, true, "along the axis"}};
constexpr std::array kEccentricSizes{
    FormSize{"diameter", Kind::kDiameter, kShrinks, true, "as turned"},
    FormSize{"length", Kind::kLength, kGrows, true, "from the end to the shoulder"},
    FormSize{"throw", Kind::kLength, CutMakesIt::kNeither, true, "from the bar's middle to its own"}};
constexpr std::array kCrownedEndSizes{
    FormSize{"radius", Kind::kRadius, CutMakesIt::kNeither, true, "of the ball the end is part of"}};
constexpr std::array kDovetailSizes{
    FormSize{"width", Kind::kLength, kGrows, true, "of its mouth"},
    FormSize{"depth", Kind::kLength, kGrows, true, "from its side"},
    FormSize{"angle", Kind::kAngle, CutMakesIt::kNeither, true, "of its sides with its bottom: 60, 55, 45"}};
constexpr std::array kProfileSizes{
    FormSize{"depth", Kind::kLength, kGrows, false, "from its side; through where left out"}};
constexpr std::array kBushSizes{
    FormSize{"diameter", Kind::kDiameter, kShrinks, false,
             "its outside; that of its hole and the class in press where left out"},
    FormSize{"bore", Kind::kDiameter, kGrows, true, "finished after it is in"},
    FormSize{"length", Kind::kLength, kShrinks, true, "over its ends"}};

constexpr std::array kForms{FormRow{.form = Form::kSlot,
                                    .name = "slot",
                                    .says = "a slot milled with a cutter of its width",
                                    .placed = true,
                                    .along = true,
                                    .sizes = kSlotSizes},
                            FormRow{.form = Form::kPocket,
                                    .name = "pocket",
                                    .says = "a pocket with round corners",
                                    .placed = true,
                                    .along = true,
                                    .sizes = kPocketSizes},
                            FormRow{.form = Form::kKeyseat,
                                    .name = "keyseat",
                                    .says = "a keyseat milled into round work",
                                    .placed = true,
                                    .along = true,
                                    .sizes = kKeyseatSizes},
                            FormRow{.form = Form::kChamfer,
                                    .name = "chamfer",
                                    .says = "a chamfer of 45 degrees on an edge",
                                    .edge = true,
                                    .sizes = kEdgeSizes},
                            FormRow{.form = Form::kRoundedEdge,
                                    .name = "rounded edge",
                                    .says = "an edge rounded over",
                                    .edge = true,
                                    .sizes = kRoundedEdgeSizes},
                            FormRow{.form = Form::kTurned,
                                    .name = "turned",
                                    .says = "a diameter turned from an end to a shoulder",
                                    .round_work = true,
                                    .sizes = kTurnedSizes},
                            FormRow{.form = Form::kGroove,
                                    .name = "groove",
                                    .says = "a groove turned into the outside",
                                    .round_work = true,
                                    .sizes = kGrooveSizes},
                            FormRow{.form = Form::kTaper,
                                    .name = "taper",
                                    .says = "a taper turned from an end",
                                    .round_work = true,
                                    .sizes = kTaperSizes},
                            FormRow{.form = Form::kThread,
                                    .name = "thread",
                                    .says = "an outside thread, shown as what is turned for it",
                                    .round_work = true,
                                    .sizes = kThreadSizes},
                            FormRow{.form = Form::kCentreHole,
                                    .name = "centre hole",
                                    .says = "a 60 degree centre in an end",
                                    .round_work = true,
                                    .sizes = kCentreHoleSizes},
                            FormRow{.form = Form::kRecess,
                                    .name = "recess",
                                    .says = "a groove turned inside a hole",
                                    .in_hole = true,
                                    .has_side = false,
                                    .sizes = kRecessSizes},
                            FormRow{.form = Form::kKeyway,
                                    .name = "keyway",
                                    .says = "a keyway along a hole",
                                    .in_hole = true,
                                    .sizes = kKeywaySizes},
                            FormRow{.form = Form::kSlit,
                                    .name = "slit",
                                    .says = "a saw cut from a side into a hole",
                                    .in_hole = true,
                                    .sizes = kSlitSizes},
                            FormRow{.form = Form::kOilGroove,
                                    .name = "oil groove",
                                    .says = "a groove along the wall of a hole",
                                    .in_hole = true,
                                    .sizes = kOilGrooveSizes},
                            FormRow{.form = Form::kDimple,
                                    .name = "dimple",
                                    .says = "a seat for the point of a set screw",
                                    .placed = true,
                                    .sizes = kDimpleSizes},
                            FormRow{.form = Form::kTaperPinHole,
                                    .name = "taper pin hole",
                                    .says = "a hole reamed through for a taper pin",
                                    .placed = true,
                                    .sizes = kTaperPinHoleSizes},
                            FormRow{.form = Form::kSpringPinHole,
                                    .name = "spring pin hole",
                                    .says = "a hole through for a spring pin",
                                    .placed = true,
                                    .sizes = kSpringPinHoleSizes},
                            FormRow{.form = Form::kSplit,
                                    .name = "split",
                                    .says = "sawn right through into two pieces, parallel to a side",
                                    .sizes = kSplitSizes},
                            FormRow{.form = Form::kChuckingPiece,
                                    .name = "chucking piece",
                                    .says = "metal left on an end to hold it by, cut off last",
                                    .round_work = true,
                                    .sizes = kChuckingPieceSizes},
                            FormRow{.form = Form::kKnurl,
                                    .name = "knurl",
                                    .says = "a knurl, shown as what is turned for it",
                                    .round_work = true,
                                    .sizes = kKnurlSizes},
                            FormRow{.form = Form::kEccentric,
                                    .name = "eccentric",
                                    .says = "a diameter turned about an axis beside the bar's",
                                    .towards = true,
                                    .round_work = true,
                                    .sizes = kEccentricSizes},
                            FormRow{.form = Form::kCrownedEnd,
                                    .name = "crowned end",
                                    .says = "an end turned as part of a ball",
                                    .round_work = true,
                                    .sizes = kCrownedEndSizes},
                            FormRow{.form = Form::kDovetail,
                                    .name = "dovetail",
                                    .says = "a dovetail way from side to side",
                                    .placed = true,
                                    .along = true,
                                    .sizes = kDovetailSizes},
                            FormRow{.form = Form::kProfile,
                                    .name = "profile",
                                    .says = "a line of straights and arcs that is milled out, or round",
                                    .sizes = kProfileSizes},
                            FormRow{.form = Form::kBush,
                                    .name = "bush",
                                    .says = "a bush put into a hole: a piece of its own",
                                    .in_hole = true,
                                    .has_side = false,
                                    .sizes = kBushSizes}};

}  // namespace

std::span<const FormRow> forms() {
  return kForms;
}

const FormRow& row_of(Form form) {
  return *std::find_if(kForms.begin(), kForms.end(), [&](const FormRow& row) { return row.form == form; });
}

base::Fingerprint fingerprint(const Formed& formed) {
  base::Hasher h;
  h.add(static_cast<int>(formed.form)).add(static_cast<int>(formed.side));
  for (const auto& [axis, position] : formed.at) {
    h.add(static_cast<int>(axis));
    add_to(h, position);
  }
  h.add(formed.along ? static_cast<int>(*formed.along) : -1)
      .add(formed.edge ? static_cast<int>(*formed.edge) : -1);
  h.add(formed.of).add(static_cast<int>(formed.of_into)).add(formed.thread);
  h.add(formed.is_bonded).add(formed.keeps_inside).add(formed.behind_piece);
  h.add(formed.material).add(formed.is_finished_clamped).add(formed.mate);
  for (const ProfileCorner& corner : formed.corners) {
    add_to(h, corner.first);
    add_to(h, corner.second);
    for (const auto& radius : {corner.fillet, corner.arc}) {
      h.add(radius.has_value());
      if (radius) h.add(fingerprint(*radius));
    }
    h.add(corner.bulges);
  }
  for (const auto& [name, size] : formed.sizes)
    h.add(name).add(fingerprint(size));
  return h.done();
}

}  // namespace sparewright::part
