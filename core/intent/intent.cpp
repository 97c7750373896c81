#include "core/intent/intent.hpp"

#include <algorithm>
#include <map>
#include <memory>

#include <fmt/format.h>

#include "core/intent/writing.hpp"

namespace sparewright::intent {
namespace {

using survey::Way;

// What a reading says of the dimension at a place in `of`.
Role role_in(Way way, std::size_t place) {
  switch (way) {
    case Way::kInside:
      return Role::kHole;
    case Way::kOutside:
      return Role::kShaft;
    case Way::kEdgeToHoleNear:
    case Way::kEdgeToHoleFar:
      return place == 1 ? Role::kHole : Role::kOther;
    case Way::kBetweenHoles:
    case Way::kOverHoles:
    case Way::kSameSides:
      return place > 0 ? Role::kHole : Role::kOther;
    case Way::kOverPins:
    case Way::kBetweenPins:
      return place > 0 ? Role::kShaft : Role::kOther;
    case Way::kFaceToPinNear:
    case Way::kFaceOverPin:
      return place == 1 ? Role::kShaft : Role::kOther;
    case Way::kPitch:
      return Role::kPitch;
    case Way::kGearOutside:
      return Role::kModule;
    case Way::kOverWires:
      return place == 2 ? Role::kPitch : place == 1 ? Role::kShaft : Role::kOther;
    default:
      return Role::kOther;
  }
}

// Readings of it alone count first; two that contradict each other leave it open.
Role role_of(const survey::Survey& survey, const std::string& name) {
  for (const bool alone : {true, false}) {
    Role role = Role::kOther;
    for (const survey::Reading& reading : survey.readings) {
      for (std::size_t i = 0; i < reading.of.size(); ++i) {
        const Role here = role_in(reading.way, i);
        if (reading.of[i] != name || here == Role::kOther || (reading.of.size() == 1) != alone) continue;
        if (role != Role::kOther && role != here) return Role::kOther;
        role = here;
      }
    }
    if (role != Role::kOther) return role;
  }
  return Role::kOther;
}

void add(base::Hasher& h, const quantity::Typed& t) {
  h.add(t.base).add(static_cast<int>(t.kind)).add(t.typed).add(t.places);
}

void add(base::Hasher& h, const quantity::Tolerance& t) {
  h.add(static_cast<std::uint64_t>(t.form.index())).add(t.typed);
  if (const auto* d = std::get_if<quantity::Deviations>(&t.form)) {
    add(h, d->lower);
    add(h, d->upper);
  } else if (const auto* l = std::get_if<quantity::WrittenLimits>(&t.form)) {
    add(h, l->low);
    add(h, l->high);
  } else if (const auto* f = std::get_if<quantity::FitClass>(&t.form)) {
    h.add(f->name);
  }
}

}  // namespace

Originals originals_of(const survey::Survey& survey) {
  Originals originals;
  originals.system = survey.system;
  for (const survey::Dimension& dimension : survey.dimensions) {
    if (dimension.kind != quantity::Kind::kLength && dimension.kind != quantity::Kind::kDiameter) continue;
    Original original;
    original.name = dimension.name;
    original.kind = dimension.kind;
    original.role = role_of(survey, dimension.name);
    originals.all.push_back(std::move(original));
  }
  return originals;
}

const Original* find_original(const Originals& originals, std::string_view name) {
  const auto found = std::find_if(originals.all.begin(), originals.all.end(),
                                  [&](const Original& one) { return one.name == name; });
  return found == originals.all.end() ? nullptr : &*found;
}

std::string original_path(std::string_view name) {
  return fmt::format("original/{}", name);
}
std::string accepted_path(std::string_view name) {
  return fmt::format("original/{}/size", name);
}
std::string measured_path(std::string_view name) {
  return fmt::format("survey/{}", name);
}
std::string measured_without_path(std::string_view readings, std::string_view name) {
  return fmt::format("survey/without/{}/{}", readings, name);
}
std::string original_without_path(std::string_view readings, std::string_view name) {
  return fmt::format("original/{}/without/{}", name, readings);
}

std::string pair_path(const Pair& pair) {
  return fmt::format("fit of {} and {}", pair.hole, pair.shaft);
}

std::vector<Pair> pairs_of(const Originals& originals, const part::Part& part) {
  std::vector<Pair> pairs;
  const auto add = [&](Pair pair) {
    const bool there = std::any_of(pairs.begin(), pairs.end(),
                                   [&](const Pair& one) { return pair_path(one) == pair_path(pair); });
    if (!there) pairs.push_back(std::move(pair));
  };
  for (const Original& one : originals.all) {
    if (one.mate.empty()) continue;
    const Original* mate = find_original(originals, one.mate);
    const bool is_hole = one.role == Role::kHole || (mate != nullptr && mate->role == Role::kShaft);
    add(is_hole ? Pair{one.name, one.mate, true} : Pair{one.mate, one.name, true});
  }
  for (const part::Feature& feature : part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const std::string mate = hole == nullptr ? "" : part::mate_of(*hole);
    if (!mate.empty()) add({feature.name, mate, false});
  }
  return pairs;
}

std::vector<ledger::Stage> stages(const Originals& originals, const part::Part& part) {
  const auto shared = std::make_shared<const Originals>(originals);
  const base::Fingerprint whole = fingerprint(originals);
  std::vector<ledger::Stage> all;
  all.push_back({"original sizes", base::Hasher().add("original sizes").add(whole).done(),
                 [shared](ledger::Pen& pen) { write_together(pen, *shared); }});
  for (std::size_t i = 0; i < shared->all.size(); ++i) {
    const std::string name = original_path(shared->all[i].name);
    all.push_back({name, base::Hasher().add(name).add(whole).done(),
                   [shared, i](ledger::Pen& pen) { write_original(pen, shared->all[i]); }});
  }
  for (const Pair& pair : pairs_of(originals, part)) {
    all.push_back({pair_path(pair),
                   base::Hasher().add(pair_path(pair)).add(pair.is_measured).add(whole).done(),
                   [shared, pair](ledger::Pen& pen) { write_pair(pen, *shared, pair); }});
  }
  return all;
}

base::Fingerprint fingerprint(const Originals& originals) {
  base::Hasher h;
  h.add(static_cast<int>(originals.system)).add(fingerprint(originals.machine));
  for (const Original& one : originals.all) {
    h.add(one.name).add(static_cast<int>(one.kind)).add(static_cast<int>(one.role)).add(one.mate);
    h.add(one.accepted.has_value());
    if (!one.accepted) continue;
    add(h, one.accepted->size);
    add(h, one.accepted->tolerance);
    h.add(one.accepted->duty ? static_cast<int>(*one.accepted->duty) : -1).add(one.accepted->typed);
  }
  return h.done();
}

}  // namespace sparewright::intent
