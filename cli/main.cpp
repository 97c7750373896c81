// The command line. CLI11 is read by this file alone.
#include <cstdio>
#include <exception>
#include <functional>
#include <string>
#include <vector>

#include <CLI/CLI.hpp>

#include "cli/commands.hpp"

namespace {

using sparewright::cli::Asked;

constexpr const char* kAbout =
    "Sparewright helps make a one-off replacement part on hand-operated machines: from what can still be "
    "measured to\n"
    "checked numbers for the handwheel.\n";

constexpr const char* kFoot =
    "\nExit status: 0 every verdict OK or CLOSE; 1 any NO, any NOT KNOWN or an open serious query; 2 the "
    "input is wrong\n"
    "or the output cannot be written; 3 internal.\n"
    "NOT CHECKED FOR STRENGTH by a qualified person; local codes come first.";

void add_job(CLI::App& command, Asked& asked) {
  command.add_option("JOB", asked.job, "the job text, *.job.toml")->required();
  command.add_option("--shop", asked.shop, "the shop text; else the one the job names, beside it");
}

void add_json(CLI::App& command, Asked& asked) {
  command.add_flag("--json", asked.json, "print JSON instead of text");
}

// It is long because each command is told once, with all it takes.
int run(int argc, char** argv) {
  CLI::App app{kAbout, "sparewright"};
  app.footer(kFoot);
  app.require_subcommand(1);
  app.set_version_flag("--version", SPAREWRIGHT_VERSION);
  Asked asked;
  std::function<int(const Asked&)> chosen;
  const auto add = [&](const char* name, const char* about, const char* example,
                       int (*command)(const Asked&)) {
    CLI::App* sub = app.add_subcommand(name, about);
    sub->footer(std::string("\nExample: ") + example);
    sub->callback([&chosen, command] { chosen = command; });
    return sub;
  };

  CLI::App* check = add("check", "say what is right and wrong with a job, and what to do",
                        "sparewright check bracket.job.toml", sparewright::cli::check);
  CLI::App* numbers = add("numbers", "list every number of a job, or those whose names start so",
                          "sparewright numbers bracket.job.toml feature/", sparewright::cli::numbers);
  CLI::App* dimensions = add("dimensions", "list the part's dimensions: from what, to what, limits and aim",
                             "sparewright dimensions bracket.job.toml", sparewright::cli::dimensions);
  CLI::App* why =
      add("why", "say where a number comes from, down to readings and sources",
          "sparewright why bracket.job.toml \"feature/pivot bore/diameter/aim\"", sparewright::cli::why);
  CLI::App* sheets = add("sheets", "print the job sheets as a PDF",
                         "sparewright sheets bracket.job.toml -o bracket.pdf", sparewright::cli::sheets);
  CLI::App* order = add("order", "print the order of work with what is dialled",
                        "sparewright order bracket.job.toml", sparewright::cli::order);
  CLI::App* drawing = add("drawing", "write the drawing of the part: SVG, PNG, or its lines as JSON",
                          "sparewright drawing bracket.job.toml -o bracket.svg", sparewright::cli::drawing);
  CLI::App* solid = add("solid", "write the part, or the work after a setup, as a solid: STEP, glTF or STL",
                        "sparewright solid bracket.job.toml -o bracket.step\n"
                        "         sparewright solid bracket.job.toml --after 20 -o after-op-20.glb",
                        sparewright::cli::solid);
  CLI::App* schema = add("schema", "print the JSON Schema of a text",
                         "sparewright schema job > job.schema.json", sparewright::cli::schema);
  CLI::App* keys =
      add("keys", "list every key a text may have", "sparewright keys job", sparewright::cli::keys);
  for (CLI::App* command : {check, numbers, dimensions, why, sheets, order, drawing, solid}) {
    add_job(*command, asked);
    add_json(*command, asked);
  }
  numbers->add_option("NAME", asked.name, "the start of the names wanted");
  std::vector<std::string> words;  // of a name written without quotes
  why->add_option("NAME", words, "the whole name of a number, as `numbers` lists it")->required();
  for (CLI::App* command : {sheets, drawing, solid}) {
    command->add_option("-o,--output", asked.output, "the file to write; - for standard output");
  }
  drawing->get_option("--output")
      ->description(
          "the file to write, its kind by its ending: .svg, .png, .json; - for SVG to standard output");
  solid->get_option("--output")
      ->description(
          "the file to write, its kind by its ending: .step, .stp, .glb, .stl; - for STEP to standard "
          "output");
  solid->add_option("--after", asked.after, "the op of a [[setup]]: the work as it stands after it")
      ->type_name("OP");
  solid->add_option("--piece", asked.piece,
                    "a bush by its name, or 1, 2, ... of what a split leaves, the largest first");
  for (CLI::App* command : {sheets, drawing})
    command->add_option("--paper", asked.paper, "A4 or Letter")->check(CLI::IsMember({"A4", "Letter"}));
  sheets->add_option("--only", asked.only, "the op of a [[setup]]: its sheet alone")->type_name("OP");
  drawing->add_option("--sheet", asked.sheet, "which of its sheets, where it has several");
  for (CLI::App* command : {schema, keys}) {
    command->add_option("TEXT", asked.text, "job or shop")->required()->check(CLI::IsMember({"job", "shop"}));
  }

  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    // Asked-for help and version are no errors; anything else is wrong input.
    return app.exit(error) == 0 ? sparewright::cli::kAllWell : sparewright::cli::kWrongInput;
  }
  for (const std::string& word : words)
    asked.name += (asked.name.empty() ? "" : " ") + word;
  const int status = chosen(asked);
  // A full disk or a closed pipe shows when the last of the output goes out.
  if (std::fflush(stdout) != 0) {
    std::fputs("standard output cannot be written\n", stderr);
    return sparewright::cli::kWrongInput;
  }
  return status;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return run(argc, argv);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "internal error: %s\n", error.what());
    return sparewright::cli::kInternal;
  }
}
