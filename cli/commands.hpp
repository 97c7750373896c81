// What the program does, one function a command. Each prints to standard output, troubles to standard error, and gives
// the exit status:
//   0  every verdict OK or CLOSE
//   1  any NO, any NOT KNOWN, or an open serious query
//   2  the input is wrong or the output cannot be written
#pragma once

#include <map>
#include <optional>
#include <string>

namespace sparewright::cli {

enum ExitStatus : int { kAllWell = 0, kNotWell = 1, kWrongInput = 2, kInternal = 3 };

struct Asked {
  std::string job;   // path of the job text
  std::string shop;  // path of the shop text; empty: the one the job names, beside the job
  bool json = false;
  std::string name;    // of a number, or the start of names
  std::string output;  // path; empty: a name made from the job's
  std::string paper = "A4";
  std::optional<int> after;          // the op after which the work is wanted; none: the finished part
  std::optional<int> only;           // the op whose sheet is wanted; none: all sheets
  std::optional<int> sheet;          // of the drawing; none: all
  std::optional<std::size_t> draws;  // of the readings' errors; none
  std::string piece;                 // a bush, or the number of a piece; empty: all
  std::string text;                  // job or shop: which text is asked about
  std::string subject;               // of a question of the bench; its words are in `name`
  std::map<std::string, std::string> entries;  // of the question
};

int check(const Asked& asked);
int numbers(const Asked& asked);
int dimensions(const Asked& asked);
int measure(const Asked& asked);
int sizes(const Asked& asked);
int why(const Asked& asked);
int sheets(const Asked& asked);
int drawing(const Asked& asked);
int order(const Asked& asked);
int solid(const Asked& asked);
int handbook(const Asked& asked);
int quick(const Asked& asked);
int schema(const Asked& asked);
int keys(const Asked& asked);

}  // namespace sparewright::cli
