// Measuring up as stages of the ledger.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/ledger/ledger.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// Stages, and those of touches (touched_stages.hpp), whose results are readings too where a dimension gets them.
// Readings and dimensions are taken in the order of their names, so the order they were typed
// in does not touch a bit of the answer.
//
// "instrument"
//   instrument/<name>/<jaws>/zero   (of a readout: <axis>) half-width of the zero error that the pair's readings share, for each pair in
//                                   use; marked a default where nobody stated it. The cause of that name is
//                                   behind all readings taken with the pair
// "reading"
//   reading/<name>                  a root: what counts of the repeats less the zero offset found; its shares as
//                                   corrected.hpp says, its bound as bound_of() says
//   reading/<name>/most worn        a root: of a worn place read several times, what is left where most has gone
// "trial", where something was tried at sound places: trial.hpp
// "known", where something is known without measuring: known.hpp
// "survey"
//   survey/<dimension>              value, with every reading, enclosed trial and known thing it hangs on; its bound
//   survey/wanted/a reading of ...  not known: a reading that is missing. The dimensions it would fix are not
//                                   known either, naming it; replaced, it stands for the dimension if that is one
//   survey/differs/<reading>        a reading less what the sizes found make it: of readings that others check,
//                                   and of those set aside because the place is not sound
//                                   set aside too are trials that others enclose or readings outdo. Of what is known: how
//                                   far the sizes are from it
//   survey/without/<readings>/<dimension>, hangs on/<readings>/<dimension>
//                                   where the readings do not agree: the dimension without what is most at odds, and by how
//                                   much it hangs on that (left_aside.hpp)
//   survey/agreement/total, limit   how far the readings are out in all (chi-square), and what that stays below
//                                   19 times in 20
//   survey/agreement/spare readings how many more there are than needed
//   survey/agreement/most at odds   how many times its own doubt the reading is out that is furthest out; none
//                                   where no reading checks another
//   value survey/report             MeasuredUp (measure_up.hpp); none where it could not be worked out
//   queries                         a reading that is probably misread; readings that disagree; a worn place that
//                                   has more metal than the sound one; a trial, or something known, that the readings
//                                   contradict; a survey that fails
// "next reading": next_reading.hpp
// "worn", where a worn place was read: worn.hpp
//
// Fails with all that troubles() finds, in its order.
[[nodiscard]] base::ResultOrAll<std::vector<ledger::Stage>> survey_stages(const Survey& survey);

}  // namespace sparewright::survey
