#include "core/job/shapes.hpp"

#include "core/job/form_text.hpp"
#include "core/job/pattern_text.hpp"
#include "core/job/seat_text.hpp"
#include "core/job/stock_text.hpp"
#include "core/job/touched_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using text::choice;
using text::Field;
using text::field;
using text::free_text;
using text::list_of;
using text::measure;
using text::one_of;
using text::Shape;
using text::table;
using text::table_by;
using text::table_of;
using text::true_or_false;
using text::whole_number;
using text::word_of;

// --- a dimension of the new part ----------------------------------------------------------------------------------
std::vector<Field> dimension_fields() {
  return {
      field("size",
            measure("a size, with its tolerance if that is written there, or a formula of named dimensions"))
          .says("0.875 ±0.004, 25 H7, #7, or edge_to_bore + 0.250"),
      field("tol", measure("a tolerance")).says("±0.002, +0.000/-0.001, H7, RC4, 0.8750-0.8758, or general"),
      field("duty", word_of(kDuties))
          .says("what it is for: only what fits or locates gets an instrument and an aim"),
      field("with", free_text("an instrument")).says("the instrument it will be measured with"),
  };
}

std::vector<Field> with(std::vector<Field> fields, std::vector<Field> more) {
  for (Field& f : more)
    fields.push_back(std::move(f));
  return fields;
}

Shape dimension() {
  return one_of({measure("a size or a formula of named dimensions"), table(dimension_fields())})
      .named("dimension");
}

Field on_mate() {
  return field("on", free_text("a named dimension"))
      .says("the mate it is made to: the hole is the mate as measured plus the clearance");
}

Field clearance() {
  return field("clearance", measure("a range of clearance"))
      .says("+0.0010 to +0.0020; negative is interference");
}

Shape hole_diameter() {
  return one_of(
             {measure("a diameter or a formula of named dimensions"),
              table(with(dimension_fields(), {on_mate(),
                                              field("mate", free_text("a named dimension"))
                                                  .says("what goes in, where the hole has a size of its own"),
                                              clearance()}))})
      .named("hole_diameter");
}

Shape bush_bore() {
  return one_of({measure("a diameter or a formula of named dimensions"),
                 table(with(dimension_fields(), {on_mate(), clearance()}))})
      .named("bush_bore");
}

Shape position() {
  return one_of(
             {measure("a distance or a formula of named dimensions"),
              table(with(
                  dimension_fields(),
                  {field("from", free_text("a side or a feature"))
                       .says("a side of the work (inwards from it) or another feature; usually left end for "
                             "x, front for y, underside for z"),
                   field("towards", word_of(kFaces))
                       .says("from a feature: the side it goes towards, where that is not right end, back "
                             "or top")}))})
      .named("position");
}

// --- the old part -------------------------------------------------------------------------------------------------
Shape reading() {
  return table({
      field("name", free_text()).says("what the trail calls it; reading 1, 2, ... where it is left out"),
      field("what", word_of(kWays)).required().says("how it was measured"),
      field("of", one_of({free_text("a dimension"), list_of(free_text("a dimension"))}))
          .says("the dimensions it is of, in the order the way of measuring wants them"),
      field("is", measure("a formula of dimensions")).says("for expression: what the instrument shows"),
      field("with", free_text("an instrument")).required().says("the instrument, as the shop names it"),
      field("jaws", word_of(kJaws)).says("the faces that touched, where they are not the usual ones"),
      field("count", whole_number()).says("of pitches or of teeth, where the way of measuring wants one"),
      field("spanned", whole_number()).says("of a gear span: teeth between the jaws"),
      field("tried", word_of(kTrials))
          .says("of inside and outside: what a plug, a drill shank or a feeler of the size got did; one that "
                "goes and one that will not enclose the size"),
      field("transfer", measure(Kind::kLength))
          .says("what a spring or telescoping gauge adds, either way, that was set and then measured"),
      field("got",
            one_of({measure("a length or an angle"), list_of(measure("a length or an angle")).at_least(1)}))
          .required()
          .says("what it showed, each time it was read; of a worn place wherever it was read"),
      field("place", free_text()).says("where on the part"),
      field("condition", word_of(kConditions)).says("sound where it is left out"),
      field("material", free_text("a material"))
          .says("what was measured is of this: the size is reduced to 20 degC where a temperature is said"),
      field("temperature", measure(Kind::kTemperature))
          .says("of the work, warm from the cut; that of the shop where left out"),
      field("temperature_within", measure(Kind::kTemperatureDifference))
          .says("how far off that may be, either way"),
  });
}

Shape known() {
  return table({
      field("name", free_text()).says("what the trail calls it; known 1, 2, ... where it is left out"),
      field("is", measure("an equation of dimensions"))
          .required()
          .says("left = right; a + b + c = whole; offset = 0: equal, symmetric, concentric, parallel, a sum "
                "that closes"),
      field("within", measure("a length or an angle"))
          .says("by how much the two sides may differ, either way; exact where left out"),
      field("why", free_text()).says("how that is known: bored in one setting"),
  });
}

// --- what the old part was meant to be -----------------------------------------------------------------------------
Shape original() {
  return one_of(
      {measure("a size, with its tolerance if that is written there"),
       table({field("size", measure("a size, with its tolerance if that is written there"))
                  .says("the original size accepted, 0.7500 -0.0002/-0.0004; formulas go by it"),
              field("tol", measure("a tolerance")).says("±0.002, H7, where it is not written with the size"),
              field("duty", word_of(kDuties))
                  .says("what it is for: a size that fits or locates has to keep to what was measured"),
              field("mate", free_text("a dimension"))
                  .says("the measured dimension that goes in it, or that it goes into")})});
}

Shape overrule() {
  return table({field("query", free_text("a query")).required().says("its name, as check prints it"),
                field("because", free_text()).required().says("the reason, printed with the query")});
}

// --- the new part -------------------------------------------------------------------------------------------------
Shape blank_sizes(Shape one) {
  const auto size = [&](const char* key) { return field(key, one); };
  return table({size("length").says("along x"), size("width").says("along y"),
                size("thickness").says("along z"), size("diameter").says("of a round bar or a tube"),
                size("across").says("of a square or hex bar, across its flats"),
                size("bore").says("of a tube")});
}

Shape blank() {
  return table({
      field("shape", word_of(kBlanks)).required().says("what it is cut from"),
      field("material", free_text("a material")).required().says("1018 cold drawn, 6061-T6, SAE 660, ..."),
      field("size", blank_sizes(measure("a nominal size"))).required().says("as it is sold"),
      field("found",
            blank_sizes(one_of({measure("a size found"), list_of(measure("a size found")).at_least(1)})))
          .says("as the piece in hand measures; several readings of a size as a list"),
      field("found_with", free_text("an instrument")).says("the instrument it was found with"),
      field("lobing",
            table({field("v_block", measure(Kind::kAngle)).required().says("its included angle"),
                   field("swing", measure(Kind::kLength)).required().says("all that the indicator moves"),
                   field("lobes", whole_number()).required().says("3, 5 or 7; drawn bar mostly has 3"),
                   field("with", free_text("an instrument")).required().says("the indicator")}))
          .says("of a round bar turned in a V-block under an indicator: what a micrometer does not see"),
      field("rough",
            list_of(table({field("side", word_of(kFaces)).required().says("a side that is machined"),
                           field("uneven", measure(Kind::kLength))
                               .required()
                               .says("how far its lowest spot lies below the size; 0 where it is flat")})))
          .says("of a casting: its rough faces"),
      field(
          "cored",
          list_of(table(
              {field("name", free_text()).required().says("what the sheets call it"),
               field("into", word_of(kFaces)).says("the side it starts on; top where left out"),
               field("at", table({field("x", measure(Kind::kLength)), field("y", measure(Kind::kLength)),
                                  field("z", measure(Kind::kLength))}))
                   .required()
                   .says("its middle as found, from left end, front and underside as cast"),
               field("diameter", measure(Kind::kDiameter)).required().says("its largest as found"),
               field("finished_by", free_text("a hole")).required().says("the feature that cleans it up")})))
          .says("of a casting: holes cast in, right through"),
  });
}

Shape feature() {
  std::vector<text::Choice> kinds{
      choice(
          "hole", "a round hole",
          {field("how", word_of(kMakes)).required().says("how it is made"),
           field("into", word_of(kFaces)).says("the side it starts on; top where it is left out"),
           field(
               "leans",
               table(
                   {field("towards", word_of(kFaces)).required().says("the side it leads towards, going in"),
                    field("angle", dimension()).required().says("from square, in degrees")}))
               .says("where it is not square to its side"),
           field("diameter", hole_diameter())
               .says("of a tapped hole the tap drill; of a counterbored one the body"),
           field("depth", dimension()).says("at full diameter; through where it is left out"),
           field("thread", free_text("a thread")).says("of a tapped hole: 1/4-20 UNC-2B, M8x1.25"),
           field("screw", free_text("a screw"))
               .says("the socket head screw it takes: 1/4-20 socket head, or with its length 5/16-18 x 2 "
                     "socket head"),
           field("grade", free_text("a grade"))
               .says("of the screw: A574, 12.9, 8.8, grade 8; A574 or 12.9 where left out"),
           field("torque", measure(Kind::kTorque))
               .says("the screw is tightened to; the handbook's where left out"),
           field("through", dimension())
               .says("of a tapped hole with a screw: what the screw goes through first, under its head"),
           field("across", free_text("a slit or a split"))
               .says("of a hole that is tapped beyond a slit or a split: which; the only one where left out"),
           field("tap_drill", dimension()).says("of its tapped part; the charted one where left out"),
           field("mate_hole", dimension())
               .says("diameter of the hole in the mate that lies over it: its screw's way through"),
           field("head", word_of(kHeads))
               .says("how the screw's head is to stand; flush or below where left out"),
           field("counterbore", table({field("diameter", dimension()), field("depth", dimension())}))
               .says("where it is not the handbook's for the screw"),
           field("spotface",
                 table({field("diameter", dimension()).required(), field("depth", dimension()).required()}))
               .says("of a spotfaced hole: the seat"),
           field("countersink", table({field("diameter", dimension()).required().says("at the surface"),
                                       field("angle", dimension()).required().says("included: 82, 90")}))
               .says("of a countersunk hole")}),
      choice("flat", "a plane milled on one side",
             {field("side", word_of(kFaces)).says("the side it is milled on; top where it is left out"),
              field("leaves", dimension()).required().says("what is left, from the opposite side"),
              field("region",
                    table({field("along", word_of(kAxes)).required().says("the axis its wall is square to"),
                           field("start", position()).required().says("the wall"),
                           field("towards", word_of(kFaces))
                               .required()
                               .says("the side the milled part reaches to")}))
                  .says("where only a part of the side is milled")})};
  for (Field& place : place_fields(dimension(), position()))
    kinds.front().fields.push_back(std::move(place));
  for (text::Choice& form : form_choices(dimension(), position(), bush_bore()))
    kinds.push_back(std::move(form));
  return table_by("kind", "what it is",
                  {field("name", free_text()).required().says("what other lines and the sheets call it"),
                   field("surface", measure("a roughness"))
                       .says("Ra, with its unit: 1.6 um, 63 uin; none asked for where left out")},
                  std::move(kinds));
}

Shape space() {
  const auto length = [](const char* key, const char* says) {
    return field(key, measure(Kind::kLength)).says(says);
  };
  return table({
      field("envelope",
            table({length("length", "along x of the part").required(), length("width", "along y").required(),
                   length("height", "along z").required(),
                   field("any_way", true_or_false()).says("it may be turned by quarters to fit")}))
          .says("the box there is for the finished part"),
      field("opening", table({length("width", "and height, of a square-cornered opening"),
                              length("height", ""), length("diameter", "of a round one")}))
          .says("what the finished part has to pass through"),
  });
}

// --- the order of work --------------------------------------------------------------------------------------------
Shape setup() {
  return table({
      field("op", whole_number()).required().says("10, 20, 30"),
      field("name", free_text()).required().says("what is done"),
      field("machine", free_text("a machine")).required().says("as the shop names it"),
      field("done_before", free_text()).says("for the head of the sheet: op 10 done, ends square"),
      field(
          "hold",
          table({field("in", free_text("a holding device")).required().says("as the shop names it"),
                 field("sits_on", word_of(kFaces))
                     .says("on a mill: the side that lies on the parallels, or on the table"),
                 field("fixed_jaw", word_of(kFaces)).says("in a mill's vise: the side against the fixed jaw"),
                 field("parallels", free_text("a pair of parallels"))
                     .says("in a mill's vise: height x thickness, as the shop lists them"),
                 field("away", word_of(kFaces))
                     .says("clamped on a mill's table: the side away from you, set along the slide"),
                 field("packing", measure(Kind::kLength))
                     .says("clamped on a mill's table: how high the work is packed up; 0 where left out"),
                 field("free_end", word_of(kFaces)).says("on a lathe: the end towards the tailstock"),
                 field("on", free_text("a feature"))
                     .says("on a lathe: what it is gripped on; the blank where left out"),
                 field("gripped", measure(Kind::kLength))
                     .says("on a lathe: how much lies in the jaws and behind them; the jaws where left out"),
                 field("tail", word_of(kTails)).says("on a lathe: what holds up the free end"),
                 field("up", word_of(kFaces))
                     .says("at a drill press, a saw or a bench: the side the tool comes to")}))
          .required()
          .says("how the work is held"),
      field("pick_up",
            table({field("x", word_of(kFaces)).required().says("the side the x zero is found on"),
                   field("y", word_of(kFaces)).required().says("the side the y zero is found on"),
                   field("with", free_text("an edge finder")).required().says("as the shop names it")}))
          .says("on a mill: where the collars are set to 0"),
      field("compound", measure(Kind::kAngle))
          .says("on a lathe: the compound slide's angle to the axis, where it is the fine feed: 5.74 deg"),
      field("do", list_of(table({field("make", free_text("a feature")).says("the feature"),
                                 field("join", free_text("a split"))
                                     .says("instead: the split part whose pieces are put together again"),
                                 field("deburr", one_of({free_text("all edges, or a feature"),
                                                         list_of(free_text("a feature")).at_least(1)}))
                                     .says("instead: whose burrs come off: all edges, or these features"),
                                 field("with", list_of(free_text("a tool")).at_least(1))
                                     .says("its tools in the order they are used"),
                                 field("found", measure(Kind::kDiameter))
                                     .says("what was measured at the STOP before the last cuts")}))
                      .at_least(1))
          .required()
          .says("what is made in this setup, in order"),
  });
}

Shape make_job_shape() {
  return table({
      field(
          "job",
          table(
              {field("title", free_text()).required().says("what the part is and what it belongs to"),
               field("revision", free_text()).says("A where it is left out"),
               field("units", word_of(kUnits)).required().says("of bare numbers"),
               field("shop", free_text("a file name"))
                   .says("the shop text; one may be given instead when asking"),
               field("made_in", word_of(kCountries))
                   .says("where the machine was made: what its sizes are likely to be"),
               field("made_about", whole_number()).says("the year it was made, as near as is known: 1952"),
               field("hand", free_text()).says("left or right, and seen from where"),
               field("faces_you", word_of(kFaces))
                   .says("the side that faces you when the part is in its place on the machine"),
               field("drawn_from", free_text())
                   .says("the sketch or photograph the places were taken from: a photograph of the back"),
               field("side_seen", word_of(kFaces))
                   .says("the side of the part, as it lies here, that it shows"),
               field("turn_over", true_or_false()).says("may the part be fitted the other way round?"),
               field("projection", word_of(kProjections))
                   .says("of the drawing; third angle where it is left out"),
               field("both_units", true_or_false())
                   .says("sizes on the drawing in inches and millimetres; in the job's own where left out"),
               field("words", word_of(kDialects)).says("American where it is left out"),
               field("least_wall", measure("a length")).says("thinner walls are NO; 1/16 in where left out"),
               field("general_tolerance", table({field("two_places", measure("a tolerance")).required(),
                                                 field("three_places", measure("a tolerance")).required()}))
                   .says("for dimensions with none of their own, by decimal places written")}))
          .required(),
      field("dimension", table_of("a dimension", word_of(kKinds)))
          .says("kinds of dimensions, where the way of measuring does not say them"),
      field("reading", list_of(reading())).says("the old part and its mates, as measured"),
      field("touched", list_of(touched_shape())).says("holes, bosses and faces touched at table coordinates"),
      field("between", list_of(between_shape())).says("from one touched form to another"),
      field("hole_pattern", list_of(hole_pattern_shape())).says("touched holes that are one pattern"),
      field("known", list_of(known())).says("what is known of them without measuring"),
      field("original", table_of("a dimension", original()))
          .says("the original sizes that were accepted, and mates"),
      field("blank", blank()).says("the stock; left out while the old part is only being measured"),
      field("feature", list_of(feature())).says("what is made of it"),
      field("seat", list_of(seat_shape())).says("what sits on the part: bearings, keys, rings"),
      field("space", space()).says("the room for the part on its machine"),
      field("setup", list_of(setup())).says("the order of work"),
      field("overrule", list_of(overrule())).says("queries that are set aside, each with its reason"),
  });
}

// --- the shop -----------------------------------------------------------------------------------------------------
Shape collar() {
  return table({
      field("turn", measure(Kind::kLength)).required().says("what one turn moves, as the collar reads it"),
      field("divisions", whole_number()).required().says("around the collar"),
      field("reads", word_of(kReads)).says("travel where it is left out"),
      field("numbers_rise", word_of(kTurnings)).required().says("the way to turn for rising numbers"),
      field("clockwise_moves_work", word_of(kMoves)).says("of a mill: seen by the operator"),
      field("clockwise_moves_tool", word_of(kToolMoves)).says("of a lathe or a quill; in where left out"),
      field("slack", measure(Kind::kLength)).required().says("lost motion when the direction changes"),
      field("repeats", measure(Kind::kLength))
          .says("how well it comes back when every move ends the same way"),
  });
}

Shape machine() {
  const Shape length = measure(Kind::kLength);
  return table({
      field("name", free_text()).required(),
      field("kind", word_of(kMachines)).required(),
      field("speeds", list_of(measure(Kind::kRotationalSpeed)).at_least(1)).says("rpm it has"),
      field("power", measure(Kind::kPower)).says("1 hp, 0.75 kW"),
      field("quiet_cut", length).says("heaviest depth it takes without complaint in steel"),
      field("travel",
            table({field("x", length), field("y", length), field("z", length), field("quill", length)})),
      field("collar",
            table({field("x", collar()).says("of a mill"), field("y", collar()).says("of a mill"),
                   field("z", collar()).says("of a mill"), field("cross_slide", collar()).says("of a lathe"),
                   field("compound", collar()).says("of a lathe"),
                   field("carriage", collar()).says("of a lathe, where it has one"),
                   field("tailstock", collar()).says("of a lathe, where it has one"),
                   field("quill", collar()).says("of a drill press or a mill-drill, where it has one")})),
      field("swing", length).says("of a lathe: greatest diameter over its bed"),
      field("swing_over_slide", length).says("of a lathe: greatest diameter over its cross slide"),
      field("between_centres", length).says("of a lathe"),
      field("spindle_bore", length).says("of a lathe: greatest bar that goes into its spindle"),
      field("tapers", table({field("by", length).required(), field("over", length).required()}))
          .says("of a lathe: how much larger it turns towards the headstock, on diameter"),
      field("throat", length).says("of a drill press or a saw: spindle or blade to column"),
      field("head_tram", table({field("out", length).required(), field("over", length).required()}))
          .says("how far the head is out of square, and over what sweep"),
      field("jaw_lift", length).says("how much the moving jaw lifts the work"),
      field("out_of_use", free_text()).says("why, if it cannot be used"),
  });
}

Shape holding() {
  const Shape length = measure(Kind::kLength);
  const auto holder = [&](const char* kind, const char* says) {
    return choice(kind, says,
                  {field("grips", table({field("from", length), field("to", length).required()}))
                       .says("least and greatest size it takes"),
                   field("jaws", length).says("how far they reach along the work"),
                   field("runs_out", length).says("swing of the indicator on what it grips"),
                   field("most_rpm", measure(Kind::kRotationalSpeed)).says("as engraved on it")});
  };
  return table_by(
      "kind", "what it is", {field("name", free_text()).required()},
      {choice("vise", "a plain vise",
              {field("jaws", table({field("width", length).required(), field("depth", length).required(),
                                    field("opens", length).required()}))
                   .required(),
               field("parallels", list_of(free_text("height x thickness")))
                   .says("pairs: 1/2 x 1/8, 3/4 x 1/8")}),
       holder("three-jaw chuck", "of a lathe"), holder("four-jaw chuck", "of a lathe, jaws moved one by one"),
       holder("collet", "of a lathe"), holder("centres", "a centre in the spindle, and a dog"),
       holder("mandrel", "of a lathe: grips in a bore"), holder("faceplate", "of a lathe"),
       holder("bench vise", ""), holder("clamps", "straps on the table"), holder("V-blocks", "")});
}

Shape instrument() {
  const Shape length = measure(Kind::kLength);
  const Shape size = measure("a length; of a protractor an angle");
  return table({
      field("name", free_text()).required(),
      field("kind", free_text()).required().says("outside micrometer, dial caliper, bore gauge, ..."),
      field("reads", size).required().says("its finest step"),
      field("good_to", size)
          .says("its error at most, either way. Left out: what DIN 862, DIN 863, JIS B 7503 or the trade "
                "allows "
                "its kind; `why` says which"),
      field("repeats", size).says("how far readings of one place lie off, either way"),
      field("from", length).says("the least it measures"),
      field("to", length).says("the most it measures; of an indicator its travel"),
      field("zero", size).says("what it showed at zero; taken off every reading. Left out: not looked at"),
      field("zero_within", size).says("how much of a zero error may be left, either way"),
      field("turn", length)
          .says("what one turn of its collar, dial or thimble shows, for telling a turn missed"),
      field("shows", word_of(kShows)).says("the size where it is left out"),
      field("material", free_text("a material"))
          .says("what its scale or spindle is of, for its expansion; steel 1018 where left out"),
      field("jaws", list_of(word_of(kJaws)))
          .says("the faces it has, where its kind does not tell: a micrometer and a gauge of bores or depths "
                "do, else all three"),
  });
}

Shape tool() {
  const Shape length = measure(Kind::kLength);
  return table({
      field("name", free_text()).required(),
      field("kind", word_of(kTools)).required(),
      field("diameter", measure(Kind::kDiameter)).says("as marked; of an edge finder its tip"),
      field("measured", measure(Kind::kDiameter)).says("as measured, which counts instead"),
      field("material", word_of(kToolMaterials)).says("high-speed steel where it is left out"),
      field("flutes", whole_number()).says("of an end mill or a reamer"),
      field("reach", length).says("how deep it can go: flutes or bar; of a slitting saw, teeth to washers"),
      field("pilot", length).says("of a counterbore"),
      field("bar", length).says("of a boring head"),
      field("least_bore", length).says("of a boring head"),
      field("division", length).says("of a boring head's screw, as it reads"),
      field("reads", word_of(kReads)).says("of a boring head's screw; diameter where it is left out"),
      field("thread", free_text("a thread")).says("of a tap or a die"),
      field("good_to", length).says("of an edge finder"),
      field("nose_radius", length).says("of a turning tool or a boring bar"),
      field("width", length).says("of a parting or grooving tool, a slitting saw, a blade's cut"),
      field("pitch", length).says("of a knurling tool's wheels"),
      field("angle", measure(Kind::kAngle))
          .says("of the point of a countersink, a spot drill or a twist drill, included"),
  });
}

Shape banjo() {
  const Shape length = measure(Kind::kLength);
  const Shape slot =
      table({field("nearest", length).required().says("a stud's middle to the lead screw's"),
             field("farthest", length).required(),
             field("turned", measure(Kind::kAngle)).says("from the first slot; 0 where left out")});
  return table({
      field("module", length).required().says("of the gears; 25.4 mm over the diametral pitch"),
      field("centres", length).required().says("fixed stud to lead screw"),
      field("slots", list_of(slot).at_least(1)).required(),
      field("fixed_collar", length).says("largest thing beside the gear on the fixed stud"),
      field("screw_collar", length).says("beside the gear on the lead screw"),
      field("stud_collar", length).says("on a stud of the banjo, its nut included"),
  });
}

Shape change_gears() {
  return table({
      field("name", free_text()).required().says("the lathe"),
      field("lead_screw", free_text("8 tpi or 4 mm"))
          .required()
          .says("the pitch that equal gears cut, a gearbox as it is set included"),
      field("gears", list_of(whole_number()).at_least(2)).required().says("teeth, twice where there are two"),
      field("banjo", banjo()).says("left out: whether gears go on is not looked at"),
  });
}

Shape dividing_head() {
  return table({
      field("name", free_text()).required(),
      field("worm", whole_number()).required().says("turns of the crank for one of the spindle"),
      field("plates", list_of(list_of(whole_number()).at_least(1)).at_least(1))
          .required()
          .says("the circles of holes, a list for each side that is used at once"),
  });
}

Shape make_shop_shape() {
  return table({
      field("shop", table({field("title", free_text()).required(),
                           field("units", word_of(kUnits)).required().says("of bare numbers"),
                           field("temperature", measure(Kind::kTemperature))
                               .says("of the shop, its instruments and the work in it; left out: nothing is "
                                     "reduced to 20 degC"),
                           field("temperature_within", measure(Kind::kTemperatureDifference))
                               .says("how far off that may be, either way"),
                           field("gauge_blocks", free_text("a set"))
                               .says("81-piece inch, 88-piece metric, ...: as the handbook names it")}))
          .required(),
      field("machine", list_of(machine())),
      field("holding", list_of(holding())),
      field("instrument", list_of(instrument())),
      field("tool", list_of(tool())),
      field("stock", list_of(stock_shape()))
          .says("pieces that lie there: where any is listed, blanks are held against it"),
      field("change_gears", list_of(change_gears())),
      field("dividing_head", list_of(dividing_head())),
  });
}

}  // namespace

const text::Shape& job_shape() {
  static const Shape kShape = make_job_shape();
  return kShape;
}

const text::Shape& shop_shape() {
  static const Shape kShape = make_shop_shape();
  return kShape;
}

}  // namespace sparewright::job
