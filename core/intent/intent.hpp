// What the old part was meant to be: original sizes, and the fits of mates, as stages.
//
// "original sizes"
//   value .../together         AllProposals: every measured length and diameter weighed together (original.hpp)
// "original/<dimension>", for every measured length and diameter
//   .../proposed 1, 2, 3       standard sizes it may have been made to, the likeliest first
//   .../proposed 1 leaves over measured less that
//   .../without/<readings>/proposed 1, proposed 1 leaves over
//                              the likeliest as the size comes out without readings at odds (survey/without/...), all sizes
//                              taken without them; none where nothing else fixes it or no size stands out
//   .../size                   the size accepted: a choice, the measured one beside it
//   .../leaves over            measured less accepted: what accepting it leaves over
//   .../least, .../most        the limits accepted with it, where there are any
//   value .../proposals        Proposals
// "fit of <hole> and <shaft>", for every measured pair and for every hole of the new part on a measured mate
//   .../clearance              hole less shaft as measured; a zero error behind both cancels. Of a hole of the new part
//                              between its limits: least and most alone
//   .../least, .../most        clearance, 19 times in 20
//   of a measured pair of which one is worn (survey/worn.hpp), of their sizes where they are sound and as they are now
//   .../clearance then, now, grown
//   .../new hole for the shaft as it is, new shaft for the hole as it is   one way: the clearance of the sound places with
//                              the mate as it is now
//   .../hole restored, shaft restored   the other: both as where they are sound
//   value .../fits             FitOfPair (pair.hpp); none where a worn place leaves the clearance open to one side
//
// The mate in hand outranks the nominal: a hole made to a mate goes by the mate as measured, whatever is accepted for it.
// A formula that names the dimension goes by the accepted size.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/intent/original.hpp"
#include "core/intent/pair.hpp"
#include "core/ledger/ledger.hpp"
#include "core/part/part.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::intent {

// A size accepted as the original one.
struct Accepted {
  quantity::Typed size;
  quantity::Tolerance tolerance;   // general where none is written
  std::optional<part::Duty> duty;  // what it is for, where said
  std::string typed;               // the whole entry
};

// A measured dimension.
struct Original {
  std::string name;
  quantity::Kind kind = quantity::Kind::kLength;
  Role role = Role::kOther;
  std::optional<Accepted> accepted;
  std::string mate;  // the measured dimension that goes in it or that it goes into; empty where not said
};

struct Originals {
  std::vector<Original> all;  // every measured length and diameter
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
  Machine machine;  // that the part belongs to, as far as said
};

// The measured lengths and diameters, nothing accepted yet.
[[nodiscard]] Originals originals_of(const survey::Survey& survey);
[[nodiscard]] const Original* find_original(const Originals& originals, std::string_view name);

// "original/centres", "original/centres/size", "survey/centres"
[[nodiscard]] std::string original_path(std::string_view name);
[[nodiscard]] std::string accepted_path(std::string_view name);
[[nodiscard]] std::string measured_path(std::string_view name);
// "survey/without/a and b/centres", and the folder of its proposals: "original/centres/without/a and b"
[[nodiscard]] std::string measured_without_path(std::string_view readings, std::string_view name);
[[nodiscard]] std::string original_without_path(std::string_view readings, std::string_view name);

// A hole and what goes in it.
struct Pair {
  std::string hole;         // a measured dimension, or a feature of the new part
  std::string shaft;        // a measured dimension
  bool is_measured = true;  // the hole is a measured one
};
[[nodiscard]] std::string pair_path(const Pair& pair);
// Those the originals name as mates, then the holes of the part that have one.
[[nodiscard]] std::vector<Pair> pairs_of(const Originals& originals, const part::Part& part);

// By the names of the dimensions; of what was not measured there is none.
using ProposalsByName = std::map<std::string, Proposals, std::less<>>;
struct AllProposals {
  ProposalsByName of;
  // Without readings at odds, named as in survey/without/<readings>/...: of the dimensions that come out otherwise.
  std::map<std::string, ProposalsByName, std::less<>> without;
};

[[nodiscard]] std::vector<ledger::Stage> stages(const Originals& originals, const part::Part& part);

[[nodiscard]] base::Fingerprint fingerprint(const Originals& originals);

}  // namespace sparewright::intent
