// What the stages of this room share. Used inside this room only.
#pragma once

#include <memory>
#include <string>

#include "core/ledger/pen.hpp"
#include "core/measuring/measuring.hpp"
#include "core/route/printing.hpp"

namespace sparewright::measuring {

using Shared = std::shared_ptr<const Subject>;

// The jaws a dimension of the new part says are to touch it.
[[nodiscard]] survey::Jaws jaws_named(std::string_view name);

// The clearance asked of a hole on its mate: figures of the part's stages.
struct Asked {
  std::string least;
  std::string most;
};
[[nodiscard]] Asked asked_of(const part::Feature& feature, const part::Hole& hole);

void write_plan(ledger::Pen& pen, const Subject& subject);
void write_met(ledger::Pen& pen, const Subject& subject);
void write_as_found(ledger::Pen& pen, const Subject& subject);
void write_plug_gauge(ledger::Pen& pen, const Subject& subject, const part::Feature& feature);

// Holes that go on a mate and fit or locate.
[[nodiscard]] bool has_fit(const part::Feature& feature);

}  // namespace sparewright::measuring
