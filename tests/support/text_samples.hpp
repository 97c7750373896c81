// Invented texts, and a shape for them, that the tests of core/text share.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/text/document.hpp"
#include "core/text/shape.hpp"

namespace sparewright::text::samples {

inline constexpr std::string_view kJob = R"(# The keeper of a garden gate latch.
[job]
title = "Latch keeper"        # what it is called
units = "in"
turn_over = false
revision = 3

[[reading]]
what = "outside"
of   = "bolt"
got  = ["0.4985", 0.498, "0.4990"]

[[reading]]
what = "inside"
of   = "old \"keeper\""
got  = [
  "0.531",   # worn
  "17/32",
]

# the sizes that were settled on
[original]
bolt = "1/2"
"latch throw" = { size = "1.250", fit = "H7" }

[blank]
shape = 'flat bar'
size.thickness = "3/8"
size.width = 1.5   # as it comes

[[feature]]
name = "bolt hole"
kind = "hole"
at   = { x = "0.750", y = 0 }
diameter = { size = "0.5156", fit = "H11" }

  [[feature.note]]
  says = """
two lines, é
\u00b1 \
   joined"""

[[feature]]
name = "back face"
kind = "flat"
leaves = 0.3125

[machine.mill]
collar.x = { turn = "0.200", divisions = 200 }
collar.y = { turn = "0.100", divisions = 100 }
)";

// Everything TOML can write, in few lines.
inline constexpr std::string_view kEverything = R"(a = 1
b = -0.5
c = 1e3
d = 0x1F
e = inf
f = true
g = 1979-05-27T07:32:00Z
h = 1979-05-27
i = 07:32:00
"quoted key" = 'literal \ text'
'literal key' = """a "quoted" word"""
j = '''
x'''
k = [ 1, [ 2, [] ], { l = 3 }, ]
m = {}
n.o . "p q" = 4
n.r = 5
"é is quoted"."é" = 6
[s]
[s.t.u]
v = 7
[[w]]
[[w]]
x = 8
[w.y]
z = 9
)";

inline Shape size_shape() {
  using quantity::Kind;
  return one_of({measure(Kind::kDiameter),
                 table({field("size", measure(Kind::kDiameter)).required().says("as on the drawing"),
                        field("fit", free_text("a fit class")).says("H7, g6, RC4")})})
      .named("size");
}

inline Shape job_shape() {
  using quantity::Kind;
  const Shape size = size_shape();
  const Shape note = table({field("says", free_text()).required()});
  const Shape point =
      table({field("x", measure("a formula of dimensions")), field("y", measure(Kind::kCoordinate))});
  const Shape feature = table_by(
      "kind", "what it is",
      {field("name", free_text("a name of your own")).required().says("what other lines call it"),
       field("note", list_of(note))},
      {choice(
           "hole", "a round hole",
           {field("at", point).required().says("where its middle is"), field("diameter", size).required()}),
       choice("flat", "a flat face", {field("leaves", measure(Kind::kLength)).required()})});
  const Shape collar = table(
      {field("turn", measure(Kind::kLength)).required(), field("divisions", whole_number()).required()});
  return table({
      field("job", table({
                       field("title", free_text()).required(),
                       field("units", word_of({{"in", "inches"}, {"mm", "millimetres"}})).required(),
                       field("turn_over", true_or_false()).says("may it be fitted the other way round"),
                       field("revision", whole_number()),
                       field("scale", number()),
                   }))
          .required()
          .says("what the job is"),
      field("reading", list_of(table({
                           field("what", word_of({{"outside"}, {"inside"}})).required(),
                           field("of", free_text()).required(),
                           field("got", list_of(measure(Kind::kLength)).at_least(1).at_most(5)).required(),
                       }))),
      field("original", table_of("dimension", size)),
      field("blank",
            table({field("shape", free_text()), field("size", table_of("side", measure(Kind::kLength)))})),
      field("feature", list_of(feature)).says("in any order"),
      field("machine", table_of("machine", table({field("collar", table_of("axis", collar))}))),
  });
}

// Never fails on a text that can be read; for tests only.
inline Document parsed(std::string_view text) {
  return Document::parse(std::string(text), "keeper.job.toml").value();
}

}  // namespace sparewright::text::samples
