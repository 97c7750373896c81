#include "core/text/json_schema.hpp"

#include <string_view>

#include <gtest/gtest.h>

#include "text_samples.hpp"

namespace sparewright::text {
namespace {

constexpr std::string_view kPublished = R"json({
  "$schema": "http://json-schema.org/draft-07/schema#",
  "title": "Keeper",
  "description": "A latch keeper",
  "type": "object",
  "required": [
    "kind"
  ],
  "properties": {
    "kind": {
      "type": "string",
      "enum": [
        "hole",
        "flat"
      ],
      "description": "what it is (hole: a round hole)"
    }
  },
  "allOf": [
    {
      "if": {
        "properties": {
          "kind": {
            "const": "hole"
          }
        },
        "required": [
          "kind"
        ]
      },
      "then": {
        "properties": {
          "kind": {
            "const": "hole"
          },
          "d": {
            "description": "across",
            "allOf": [
              {
                "$ref": "#/definitions/size"
              }
            ]
          }
        },
        "additionalProperties": false,
        "required": [
          "kind"
        ],
        "description": "a round hole"
      }
    },
    {
      "if": {
        "properties": {
          "kind": {
            "const": "flat"
          }
        },
        "required": [
          "kind"
        ]
      },
      "then": {
        "properties": {
          "kind": {
            "const": "flat"
          },
          "d": {
            "description": "across",
            "allOf": [
              {
                "$ref": "#/definitions/size"
              }
            ]
          },
          "n": {
            "type": "array",
            "items": {
              "type": "integer"
            },
            "minItems": 1,
            "maxItems": 2
          }
        },
        "additionalProperties": false,
        "required": [
          "kind",
          "n"
        ]
      }
    }
  ],
  "definitions": {
    "size": {
      "anyOf": [
        {
          "type": [
            "number",
            "string"
          ],
          "description": "a diameter, as it is typed"
        },
        {
          "type": "object",
          "properties": {
            "size": {
              "type": [
                "number",
                "string"
              ],
              "description": "as on the drawing (a diameter, as it is typed)"
            },
            "fit": {
              "type": "string",
              "description": "H7, g6, RC4 (a fit class)"
            }
          },
          "additionalProperties": false,
          "required": [
            "size"
          ]
        }
      ]
    }
  }
}
)json";

TEST(JsonSchema, IsTheSameBytesEachTime) {
  const Shape kind =
      table_by("kind", "what it is", {field("d", samples::size_shape()).says("across")},
               {choice("hole", "a round hole"),
                choice("flat", "", {field("n", list_of(whole_number()).at_least(1).at_most(2)).required()})});
  EXPECT_EQ(json_schema(kind, "Keeper", "A latch keeper"), kPublished);
}

}  // namespace
}  // namespace sparewright::text
