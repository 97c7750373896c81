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
    FormSize{"depth", Kind::kLength, kGrows, true, "from the crest of the bar"}};
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
             "of what is pushed up to the shoulder: the radius or chamfer of its corner"}};
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
constexpr std::array kSlitSizes{FormSize{"width", Kind::kLength, kGrows, true, "the saw's"}};

constexpr std::array kForms{
    FormRow{Form::kSlot, "slot", "a slot milled with a cutter of its width", true, true, false, false, false,
            kSlotSizes},
    FormRow{Form::kPocket, "pocket", "a pocket with round corners", true, true, false, false, false,
            kPocketSizes},
    FormRow{Form::kKeyseat, "keyseat", "a keyseat milled into round work", true, true, false, false, false,
            kKeyseatSizes},
    FormRow{Form::kChamfer, "chamfer", "a chamfer of 45 degrees on an edge", false, false, true, false, false,
            kEdgeSizes},
    FormRow{Form::kRoundedEdge, "rounded edge", "an edge rounded over", false, false, true, false, false,
            kRoundedEdgeSizes},
    FormRow{Form::kTurned, "turned", "a diameter turned from an end to a shoulder", false, false, false,
            false, true, kTurnedSizes},
    FormRow{Form::kGroove, "groove", "a groove turned into the outside", false, false, false, false, true,
            kGrooveSizes},
    FormRow{Form::kTaper, "taper", "a taper turned from an end", false, false, false, false, true,
            kTaperSizes},
    FormRow{Form::kThread, "thread", "an outside thread, shown as what is turned for it", false, false, false,
            false, true, kThreadSizes},
    FormRow{Form::kCentreHole, "centre hole", "a 60 degree centre in an end", false, false, false, false,
            true, kCentreHoleSizes},
    FormRow{Form::kRecess, "recess", "a groove turned inside a hole", false, false, false, true, false,
            kRecessSizes},
    FormRow{Form::kKeyway, "keyway", "a keyway along a hole", false, false, false, true, false, kKeywaySizes},
    FormRow{Form::kSlit, "slit", "a saw cut from a side into a hole", false, false, false, true, false,
            kSlitSizes}};

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
  for (const auto& [name, size] : formed.sizes)
    h.add(name).add(fingerprint(size));
  return h.done();
}

}  // namespace sparewright::part
