// The command line. CLI11 is read by this file alone.
#include <cstdio>
#include <exception>
#include <string>
#include <vector>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "app/questions.hpp"
#include "cli/commands.hpp"

namespace {

using sparewright::app::Book;
using sparewright::app::EntryRow;
using sparewright::app::SubjectRow;
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

using Command = int (*)(const Asked&);

// The commands and what each may be told. Refers to `asked`, `chosen` and `words`, which outlive it.
class Commands {
 public:
  Commands(CLI::App& app, Asked& asked, Command& chosen, std::vector<std::string>& words)
      : app_(app), asked_(asked), chosen_(chosen), words_(words) {}

  void add_all() {
    add_about_numbers();
    add_about_files();
    add_about_texts();
    add_about_the_bench();
  }

 private:
  CLI::App* add(const char* name, const char* about, const char* example, Command command) {
    CLI::App* sub = app_.add_subcommand(name, about);
    sub->footer(std::string("\nExample: ") + example);
    sub->callback([this, command] { chosen_ = command; });
    return sub;
  }

  CLI::App* add_for_job(const char* name, const char* about, const char* example, Command command) {
    CLI::App* sub = add(name, about, example, command);
    sub->add_option("JOB", asked_.job, "the job text, *.job.toml")->required();
    sub->add_option("--shop", asked_.shop, "the shop text; else the one the job names, beside it");
    sub->add_flag("--json", asked_.json, "print JSON instead of text");
    return sub;
  }

  CLI::Option* add_output(CLI::App& command, const char* says) {
    return command.add_option("-o,--output", asked_.output, says);
  }
  void add_paper(CLI::App& command) {
    command.add_option("--paper", asked_.paper, "A4 or Letter")->check(CLI::IsMember({"A4", "Letter"}));
  }

  void add_about_numbers() {
    add_for_job("check", "say what is right and wrong with a job, and what to do",
                "sparewright check bracket.job.toml", sparewright::cli::check);
    CLI::App* numbers =
        add_for_job("numbers", "list every number of a job, or those whose names start so",
                    "sparewright numbers bracket.job.toml feature/", sparewright::cli::numbers);
    numbers->add_option("NAME", asked_.name, "the start of the names wanted");
    add_for_job("dimensions", "list the part's dimensions: from what, to what, limits and aim",
                "sparewright dimensions bracket.job.toml", sparewright::cli::dimensions);
    add_measure();
    add_for_job("sizes", "say what the measured sizes were made to before they wore, and the fits of mates",
                "sparewright sizes bracket.job.toml", sparewright::cli::sizes);
    CLI::App* why = add_for_job("why", "say where a number comes from, down to readings and sources",
                                "sparewright why bracket.job.toml \"feature/pivot bore/diameter/aim\"\n"
                                "         sparewright why bracket.job.toml survey/idler_pin -o card.pdf",
                                sparewright::cli::why);
    why->add_option("NAME", words_, "the whole name of a number, as `numbers` lists it")->required();
    add_output(*why, "write it as a bench card, a quarter of a sheet, to this .pdf; - for standard output");
    add_paper(*why);
    add_for_job("order", "print the order of work with what is dialled", "sparewright order bracket.job.toml",
                sparewright::cli::order);
  }

  void add_measure() {
    CLI::App* measure = add_for_job(
        "measure",
        "say what the readings make of the old part: sizes, what their doubt is made of, what fits",
        "sparewright measure bracket.job.toml\n"
        "         sparewright measure bracket.job.toml -o measuring.pdf",
        sparewright::cli::measure);
    add_output(*measure,
               "print what to write down, what to measure and what came of it to this .pdf; - for "
               "standard output");
    add_paper(*measure);
    measure->add_option(
        "--draws", asked_.draws,
        "draw the readings' errors so often and say whether the doubts hold: 100000 takes seconds");
  }

  void add_about_files() {
    CLI::App* sheets =
        add_for_job("sheets", "print the job sheets as a PDF",
                    "sparewright sheets bracket.job.toml -o bracket.pdf", sparewright::cli::sheets);
    add_output(*sheets, "the file to write; - for standard output");
    add_paper(*sheets);
    sheets->add_option("--only", asked_.only, "the op of a [[setup]]: its sheet alone")->type_name("OP");
    CLI::App* drawing =
        add_for_job("drawing", "write the drawing of the part: SVG, PNG, or its lines as JSON",
                    "sparewright drawing bracket.job.toml -o bracket.svg", sparewright::cli::drawing);
    add_output(*drawing,
               "the file to write, its kind by its ending: .svg, .png, .json; - for SVG to standard output");
    add_paper(*drawing);
    drawing->add_option("--sheet", asked_.sheet,
                        "which of its sheets; all where it is left out, each a file of its own");
    CLI::App* solid =
        add_for_job("solid", "write the part, or the work after a setup, as a solid: STEP, glTF or STL",
                    "sparewright solid bracket.job.toml -o bracket.step\n"
                    "         sparewright solid bracket.job.toml --after 20 -o after-op-20.glb",
                    sparewright::cli::solid);
    add_output(
        *solid,
        "the file to write, its kind by its ending: .step, .stp, .glb, .stl; - for STEP to standard output");
    solid->add_option("--after", asked_.after, "the op of a [[setup]]: the work as it stands after it")
        ->type_name("OP");
    solid->add_option("--piece", asked_.piece,
                      "a bush by its name, or 1, 2, ... of what a split leaves, the largest first");
  }

  void add_about_texts() {
    CLI::App* schema = add("schema", "print the JSON Schema of a text",
                           "sparewright schema job > job.schema.json", sparewright::cli::schema);
    CLI::App* keys =
        add("keys", "list every key a text may have", "sparewright keys job", sparewright::cli::keys);
    for (CLI::App* command : {schema, keys})
      command->add_option("TEXT", asked_.text, "job or shop")
          ->required()
          ->check(CLI::IsMember({"job", "shop"}));
  }

  // One command below it for every subject; what each takes is declared with the subject.
  void add_about_the_bench() {
    add_book("handbook", "look up threads, drills, fits, speeds and other standard things",
             "sparewright handbook drill \"#7\"", Book::kHandbook, sparewright::cli::handbook);
    add_book("quick", "work out one question of the bench, without a job", "sparewright quick --help",
             Book::kQuick, sparewright::cli::quick);
  }

  void add_book(const char* name, const char* about, const char* example, Book book, Command command) {
    CLI::App* shelf = app_.add_subcommand(name, about);
    shelf->footer(std::string("\nExample: ") + example);
    shelf->require_subcommand(1);
    for (const SubjectRow& row : sparewright::app::subjects(book))
      add_subject(*shelf, name, row, command);
  }

  void add_subject(CLI::App& shelf, const char* book, const SubjectRow& row, Command command) {
    CLI::App* sub = shelf.add_subcommand(row.name, row.about);
    sub->footer(fmt::format("\nExample: sparewright {} {} {}", book, row.name, row.example));
    sub->callback([this, command, name = row.name] {
      chosen_ = command;
      asked_.subject = name;
    });
    if (!row.words.empty()) sub->add_option("WORDS", words_, row.words)->required();
    for (const EntryRow& entry : row.entries) {
      CLI::Option* option = sub->add_option_function<std::string>(
          "--" + entry.name,
          [this, name = entry.name](const std::string& given) { asked_.entries[name] = given; }, entry.about);
      option->type_name(entry.takes);
      if (entry.required) option->required();
    }
    sub->add_option("--shop", asked_.shop, "the shop text: your own machines, tools and sets");
    sub->add_flag("--json", asked_.json, "print JSON instead of text");
    add_output(*sub, "write it as a bench card, a quarter of a sheet, to this .pdf; - for standard output");
    add_paper(*sub);
  }

  CLI::App& app_;
  Asked& asked_;
  Command& chosen_;
  std::vector<std::string>& words_;
};

int run(int argc, char** argv) {
  CLI::App app{kAbout, "sparewright"};
  app.footer(kFoot);
  app.require_subcommand(1);
  app.set_version_flag("--version", SPAREWRIGHT_VERSION);
  Asked asked;
  Command chosen = nullptr;
  std::vector<std::string> words;  // of a name written without quotes
  Commands commands(app, asked, chosen, words);
  commands.add_all();
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
