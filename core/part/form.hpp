// Features that are one cut of a known form: slots, pockets, keyseats, turned diameters, grooves, tapers and the like.
//
// Each form is a row of one table: what it is called, which sizes it has, whether it has a place on its side. Reading,
// writing, fingerprints and the lists of keys all go by the table; only the cutters are written out (form_cutters.cpp).
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/part/dimension.hpp"
#include "core/part/face.hpp"
#include "core/part/position.hpp"

namespace sparewright::part {

enum class Form {
  kSlot,
  kPocket,
  kKeyseat,
  kChamfer,
  kRoundedEdge,
  kTurned,
  kGroove,
  kTaper,
  kThread,
  kCentreHole,
  kRecess,
  kKeyway,
  kSlit,
  kOilGroove,
  kDimple,
  kTaperPinHole,
  kSpringPinHole,
  kSplit,
  kChuckingPiece,
  kKnurl,
  kEccentric,
  kCrownedEnd,
  kDovetail,
  kProfile,
  kBush,
};

// One size of a form. name: its figure's local name; the key in the text has '_' for blanks.
struct FormSize {
  std::string_view name;
  quantity::Kind kind = quantity::Kind::kLength;
  CutMakesIt cut_makes_it = CutMakesIt::kNeither;
  bool required = true;
  std::string_view says;
};

struct FormRow {
  Form form;
  std::string_view name;
  std::string_view says;
  bool placed = false;      // has a place along the two axes that lie in its side
  bool along = false;       // runs along one of them
  bool edge = false;        // lies on the edge towards another side; on round work on the rim of its end
  bool towards = false;     // leads towards another side, which has to be said
  bool in_hole = false;     // belongs to a hole, which is named
  bool has_side = true;     // else it lies on the side its hole starts on
  bool round_work = false;  // only on round, hex and square bar and tube: its side is an end
  std::span<const FormSize> sizes;
};

// A corner of a profile, and the edge that leads on to the next one.
struct ProfileCorner {
  Position first;  // along the first and the second axis of its side
  Position second;
  std::optional<Dimension> fillet;  // rounds the corner, touching both edges
  std::optional<Dimension> arc;     // radius of the edge that leads on; straight where left out
  bool bulges = true;               // the arc bulges out of the profile, else into it
};

[[nodiscard]] std::span<const FormRow> forms();
[[nodiscard]] const FormRow& row_of(Form form);

struct Formed {
  Form form = Form::kSlot;
  Face side = Face::kTop;       // the side or the end it is cut from
  std::map<Axis, Position> at;  // the middle of a slot, a pocket, a keyseat
  std::optional<Axis> along;
  std::optional<Face> edge;            // or the side it leads towards
  std::string of;                      // the hole a recess, a keyway or a slit belongs to
  Face of_into = Face::kTop;           // the side that hole starts on
  std::string thread;                  // of a thread, as written
  bool is_bonded = false;              // of a bush: with retaining compound; else it is pressed in
  std::string material;                // of a bush, as written; empty where not said
  bool is_finished_clamped = false;    // of a slit: its hole is finished while the screw holds it closed
  bool keeps_inside = false;           // of a profile: what lies outside it comes off
  bool behind_piece = false;           // a chucking piece is left on at its end while it is cut
  std::vector<ProfileCorner> corners;  // of a profile, counterclockwise seen from outside the work
  std::string mate;  // of a bush: the named dimension that runs in its bore; empty where none
  std::map<std::string, Dimension, std::less<>> sizes;  // by FormSize::name; those left out are not there
};

[[nodiscard]] base::Fingerprint fingerprint(const Formed& formed);

}  // namespace sparewright::part
