// From figures to rows. Used inside this room only.
#pragma once

#include "app/rows.hpp"
#include "app/session.hpp"
#include "core/base/result.hpp"
#include "core/ledger/ledger.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::app {

[[nodiscard]] NumberRow row_of(const ledger::Figure& figure, quantity::UnitSystem system);
[[nodiscard]] QueryRow row_of(const ledger::Query& query);
[[nodiscard]] TrailRow row_of(const ledger::Trail& trail, quantity::UnitSystem system);
[[nodiscard]] VerdictRow row_of(const ledger::Verdict& verdict, const ledger::Snapshot& figures,
                                quantity::UnitSystem system);
[[nodiscard]] Trouble trouble_of(const base::Failure& failure);
[[nodiscard]] Troubles troubles_of(const base::Failures& failures);

}  // namespace sparewright::app
