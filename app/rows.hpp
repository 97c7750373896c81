// What a job's readers get: plain rows, numbers in the reader's unit beside the unit's name. Programs outside this room
// see nothing else of the house.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sparewright::app {

// A number of the job.
struct NumberRow {
  std::string name;                  // a path
  std::string kind;                  // "diameter"
  std::optional<double> value;       // in `unit`; none where it is not known
  std::string unit;                  // "in", "mm", "rpm"; empty for a plain number
  std::optional<double> u;           // standard uncertainty, in `unit`
  std::optional<double> dof;         // effective degrees of freedom; none where they are without limit
  std::string bound;                 // "", "at least", "at most", "not bounded"
  std::string typed;                 // as the user wrote it
  std::string state;                 // "known" or "NOT KNOWN"
  std::vector<std::string> missing;  // what is not known
  std::string origin;                // "reading", "standard", "choice", "default", "worked out"
  std::string formula;               // in words
  std::vector<std::string> inputs;
  std::string source;
  std::optional<double> flips_after;  // of a choice: standard uncertainties that would turn it
  std::string shown;                  // for people: "0.6258 in"
  std::string good_to;                // "0.0003 in, 19 times in 20"; empty where nothing is uncertain
};

// A dimension of the new part: what it is measured from and to, and its numbers.
struct DimensionRow {
  std::string of;          // the feature, or "blank"
  std::string name;        // "x", "diameter", "leaves"
  std::string from;        // "left end", "pivot bore"; empty for a size across
  std::string to;          // "its middle"; empty for a size across
  int links = 0;           // dimensions of other features between it and a side of the work
  std::string duty;        // "fits", "locates", "clears", "free"; empty for the blank
  std::string instrument;  // it will be measured with; empty where not said
  NumberRow nominal;
  NumberRow least;
  NumberRow most;
  std::optional<NumberRow> aim;  // of what fits or locates
};

struct VerdictRow {
  std::string check;
  std::string subject;
  std::string verdict;  // "OK", "CLOSE", "NO", "NOT KNOWN"
  std::string figure;   // name of the number judged
  std::optional<double> low;
  std::optional<double> high;
  std::optional<double> margin;
  std::string unit;
  std::string margin_shown;
  std::string reason;
  std::string source;
  std::string todo;
  std::vector<std::string> missing;
};

struct QueryRow {
  std::string id;
  std::string about;
  std::string says;
  std::string happens;
  std::string todo;
  bool serious = false;
  std::string state;  // "open", "overruled"
  std::string reason;
};

// A size a measured one may have been made to.
struct CandidateRow {
  std::string name;  // "3/4 in", "19 mm"
  NumberRow size;
  NumberRow leaves_over;   // measured less this
  double chance = 0.0;     // how likely it was made to this, 0 to 1
  std::string odds;        // "19 to 1 on"
  bool may_be_it = false;  // off by no more than the readings leave open
  std::string reason;
};

// A size as it comes out without readings at odds, and what that was likeliest made to.
struct WithoutRow {
  NumberRow size;  // its formula says without which
  std::optional<CandidateRow> made_to;
};

// What a measured dimension was made to.
struct SizeRow {
  std::string name;
  NumberRow measured;
  std::vector<WithoutRow> without;       // where it is disputed: it hangs on readings at odds
  std::vector<std::string> in_question;  // names of open serious queries about readings it hangs on
  std::vector<CandidateRow> candidates;  // the likeliest first, at most three
  bool is_settled =
      false;  // the first is right 19 times in 20 and nothing is disputed; else what it was made to is NOT KNOWN
  std::string decides;  // not settled: the reading that would decide, a sentence
  double none = 1.0;    // how likely it was made to no standard size
  std::optional<NumberRow> accepted;
  std::optional<NumberRow> leaves_over;  // measured less accepted
  std::optional<NumberRow> least;        // the limits accepted with it
  std::optional<NumberRow> most;
  std::string duty;                  // of what is accepted; empty where not said
  std::vector<std::string> mate_of;  // holes of the new part that go by it as measured, whatever is accepted
};

// A standard fit near to that of a pair; clearances in `unit` of the pair, negative is interference.
struct NearFitRow {
  std::string duty;      // "running"
  std::string standard;  // "ISO 286"
  std::string fit;       // "H7/g6"
  std::string name;      // "sliding"
  double least = 0.0;
  double most = 0.0;
  double out = 0.0;       // how far the pair reaches out of it
  std::string shown;      // "+0.0005 to +0.0020"
  std::string out_shown;  // empty where the pair lies within
  std::string source;
};

// A hole and what goes in it.
struct PairRow {
  std::string hole;
  std::string shaft;
  bool is_measured = true;             // both as measured; else the hole is one of the new part
  std::optional<NumberRow> clearance;  // of a measured pair
  NumberRow least;                     // NOT KNOWN where a worn place leaves it open
  NumberRow most;
  std::string unit;
  std::vector<NearFitRow> near;      // the nearest first
  std::vector<std::string> made_to;  // fits within whose limits both lie, the likelier first
};

struct Sizes {
  std::vector<SizeRow> sizes;
  double chance_of_inch = 0.5;  // how likely the machine has inch sizes, by all of them together
  std::string machine;          // "an inch machine, more than 1000 to 1 on"; empty where nothing was measured
  std::vector<PairRow> pairs;
  std::vector<QueryRow> queries;  // about the readings, open and serious
};

// What one cause brings to the doubt of a measured dimension.
struct DoubtRow {
  std::string cause;  // "'over both', good to", "zero of caliper 6, outside jaws"
  double part = 0.0;  // of the square of its standard uncertainty
};

// What one reading has in it; negative where what it shares with the others takes some away.
struct PartRow {
  std::string reading;
  double part = 0.0;
};

// How a measured dimension follows one reading: by so much for each 1 the reading is more.
struct FollowsRow {
  std::string reading;
  double by = 0.0;
};

// Another measured dimension that is out where this one is.
struct TogetherRow {
  std::string name;
  double correlation = 0.0;
};

// A measured dimension, and what its doubt is made of.
struct MeasuredRow {
  std::string name;
  NumberRow size;
  std::optional<double> expanded;  // what holds the truth 19 times in 20, in the unit of the size
  std::optional<double> k;         // that over the standard uncertainty
  bool is_checked =
      false;  // a slip in any reading it hangs on would show in another, and none is at odds or in question
  std::vector<std::string> unchecked;  // readings it hangs on that nothing checks
  std::vector<DoubtRow> doubts;        // by causes, the largest first
  std::vector<PartRow> by_reading;     // what each reading has in the variance, the largest first
  std::vector<FollowsRow> follows;     // in the order of the text
  std::vector<TogetherRow> together;   // in the order of the text
  std::vector<NumberRow> without;  // as it comes out without a reading at odds; its name says without which
  std::vector<std::string> in_question;  // names of open serious queries about readings it hangs on
  std::optional<NumberRow> now;          // of a worn place: as it is
  std::optional<NumberRow> wear;         // and the metal gone there
};

// A reading and what became of it.
struct ReadingRow {
  std::string name;
  std::string way;  // "over pins"
  std::vector<std::string> of;
  std::string is;  // an expression; empty otherwise
  std::string instrument;
  std::string place;
  NumberRow counts;  // as it counts: corrected.hpp
  std::string use;   // "used", "set aside", "worn: at least"
  std::optional<NumberRow>
      differs;  // less what the sizes found make it; where others check it or it was set aside
  std::optional<double>
      times_its_doubt;      // how far it is out of what the others say, in standard uncertainties
  double redundancy = 0.0;  // the part of a slip in it that shows in its own misfit
};

// What touches tell, and the measured dimension that gets it.
struct GivesRow {
  std::string what;  // "diameter", "lean along x"
  std::string dimension;
};

// A form that was touched, and how its touches lie on it.
struct TouchedRow {
  std::string name;
  std::string form;                               // "circle"
  std::string side;                               // "inside", "left"
  std::vector<std::vector<std::string>> touches;  // as typed
  std::string instrument;
  std::string tip;
  std::string place;
  std::string use;                        // "used"; of a place that is not sound "set aside, bent"
  std::vector<GivesRow> gives;            // in the order of the text
  std::optional<NumberRow> form_error;    // most less least; none, or NOT KNOWN, with no touch to spare
  std::optional<NumberRow> furthest_off;  // of the worst touch, either way; its formula says which
};

// A size as it comes out of many draws of the readings' errors, beside what the adjustment says of it.
struct DrawnRow {
  std::string name;
  double mean = 0.0;  // in `unit`
  double deviation = 0.0;
  double low = 0.0;  // 19 times in 20 between these
  double high = 0.0;
  std::string unit;
  std::string shown;  // "0.6248 in, 19 times in 20 between 0.6246 and 0.6250"
  bool holds = true;  // its ends are those of the adjustment, to a tenth of the doubt
};

// Draws of all errors at once.
struct Drawn {
  std::vector<DrawnRow> sizes;
  std::size_t draws = 0;
  std::size_t unsettled = 0;  // that came to no answer
};

// A size that has to be measured, and with what.
struct PlanRow {
  std::string what;
  bool of_new_part = false;
  std::string needed_for;
  std::string verdict;  // whether an instrument of the shop reaches its tolerance
  std::string says;
  std::vector<std::string> with;  // the instruments that reach it or barely do, the best first
};

// A fit, held against what is asked of it, 19 times in 20.
struct MetRow {
  std::string feature;
  std::string mate;
  std::string verdict;
  std::string says;
  std::vector<std::string> todo;  // which doubts to make smaller, the largest first
  std::vector<std::string> missing;
};

// Everything that came of measuring up.
struct Measured {
  std::vector<MeasuredRow> sizes;
  std::vector<ReadingRow> readings;
  std::vector<TouchedRow> touched;
  int spare_readings = 0;       // more than needed
  std::optional<double> total;  // squares of the misfits over their doubts; none without spare readings
  std::optional<double> limit;  // what the total stays below 19 times in 20
  std::vector<PlanRow> plan;
  std::vector<MetRow> met;
  std::vector<QueryRow> queries;  // about the readings
};

// Where a number comes from, down to readings and sources.
struct TrailRow {
  NumberRow number;
  std::vector<TrailRow> inputs;
  bool shown_before = false;
};

// Something wrong with what was given.
struct Trouble {
  std::string code;  // stable: "key-unknown"
  std::string says;  // one sentence
  std::string accepted;
  std::string file;  // empty where no text is to blame
  int line = 0;
  int column = 0;
};
// "pad.job.toml:12:8: [[feature]] has no key 'diametr'", and what is accepted on a second line.
[[nodiscard]] std::string report(const Trouble& trouble);

// A line of the order of work, for people.
struct OrderRow {
  int op = 0;
  std::string name;
  std::string machine;
  std::vector<std::string> lines;
};

}  // namespace sparewright::app
