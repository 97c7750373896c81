#include "core/answers/subjects.hpp"

#include <iterator>

#include "core/answers/groups.hpp"
#include "core/base/nearest.hpp"

namespace sparewright::answers {
namespace {

std::vector<Subject> joined(std::vector<std::vector<Subject>> groups) {
  std::vector<Subject> all;
  for (std::vector<Subject>& group : groups)
    std::move(group.begin(), group.end(), std::back_inserter(all));
  return all;
}

}  // namespace

std::span<const Subject> handbook_subjects() {
  static const std::vector<Subject> all =
      joined({thread_subjects(), size_subjects(), fastener_subjects(), machine_subjects(),
              dividing_subjects(), cutting_subjects()});
  return all;
}

std::span<const Subject> quick_subjects() {
  static const std::vector<Subject> all =
      joined({quick_place_subjects(), quick_part_subjects(), quick_measuring_subjects(), quick_fit_subjects(),
              quick_machine_subjects(), quick_thread_subjects()});
  return all;
}

base::Result<Answer> ask(std::span<const Subject> subjects, std::string_view name, const Question& question) {
  std::vector<std::string> known;
  for (const Subject& subject : subjects) {
    if (subject.name == name) return subject.answer(question);
    known.emplace_back(subject.name);
  }
  return base::fail(base::Code::kNameUnknown, name, base::known_words(name, known), "question");
}

}  // namespace sparewright::answers
