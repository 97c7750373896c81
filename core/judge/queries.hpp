// The queries, and what they share: numbers that cannot, or may not, be true. Used inside this room only.
//
//   query_moved.cpp   an accepted original size moves a size past its own tolerance
//   query_radius.cpp  a radius given for a diameter, or the other way round
//   query_mirror.cpp  drawn from one side, and which one is not said: the part may be its mirror image
//   query_larger.cpp  an outside size larger than the stock or than what was cut before, a bore smaller than its drill,
//                     its core or the tube's bore
//
// Each says my number, what would happen to the metal and the one thing to do in under 25 words, is silent where there is
// nothing to ask, ends when the number is put right, and can be overruled by its id (the job room does that).
#pragma once

#include "core/judge/checks.hpp"

namespace sparewright::judge {

void add_moved_queries(const Shared& subject, Stages& stages);
void add_radius_queries(const Shared& subject, Stages& stages);
void add_mirror_query(const Shared& subject, Stages& stages);
void add_larger_queries(const Shared& subject, Stages& stages);

// A stage "query/<family>/<subject>" whose definition covers everything in the subject.
[[nodiscard]] ledger::Stage query_stage(const Shared& subject, const std::string& family,
                                        const std::string& of, std::function<void(ledger::Pen&)> work);

}  // namespace sparewright::judge
