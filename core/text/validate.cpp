#include "core/text/validate.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/text/limits.hpp"

namespace sparewright::text {
namespace {

using base::Code;
using base::Failure;

class Check {
 public:
  base::Failures run(const Node& root, const Shape& shape) {
    value(root, shape);
    std::stable_sort(problems_.begin(), problems_.end(),
                     [](const Problem& a, const Problem& b) { return a.offset < b.offset; });
    base::Failures failures;
    for (Problem& problem : problems_)
      failures.push_back(std::move(problem.failure));
    if (is_full()) {
      failures.pop_back();
      Failure more;
      more.code = Code::kTooMany;
      more.subject = root.place().file;
      more.found = fmt::format("it has more problems than the {} told", kMostProblems);
      more.place = base::Place{root.place().file, 0, 0};
      failures.push_back(std::move(more));
    }
    return failures;
  }

 private:
  struct Problem {
    std::size_t offset = 0;
    Failure failure;
  };

  void value(const Node& node, const Shape& shape) {
    if (is_full()) return;
    if (!shape.takes(node.type())) {
      tell(Code::kValueOfAnotherType, node, node.label(), std::string(name_of(node.type())),
           shape.accepted());
      return;
    }
    std::visit([&](const auto& sort) { inside(node, sort); }, shape.sort());
  }

  // Of the right type there is nothing more to check.
  template <HoldsNothing Plain>
  void inside(const Node& /*node*/, const Plain& /*sort*/) {}

  void inside(const Node& node, const WordOf& accepted) {
    const std::vector<std::string> words = words_of(accepted.words);
    if (std::find(words.begin(), words.end(), node.typed()) != words.end()) return;
    tell(Code::kValueNotAccepted, node, node.label(), std::string(node.typed()),
         base::known_words(node.typed(), words));
  }

  void inside(const Node& node, const ListOf& list) {
    if (node.size() < list.least) {
      tell(Code::kValueNotAccepted, node, node.label(), std::string(node.written()),
           fmt::format("a list of at least {}, each item {}", list.least, list.item->accepted()));
    }
    if (list.most && node.size() > *list.most) {
      tell(Code::kTooMany, node, node.label(), fmt::format("{} items", node.size()),
           fmt::format("at most {}", *list.most));
    }
    for (const Node item : node)
      value(item, *list.item);
  }

  void inside(const Node& node, const OneOf& one) {
    for (const Shape& shape : one.shapes) {
      if (shape.takes(node.type())) value(node, shape);
    }
  }

  void inside(const Node& node, const TableOf& table) {
    for (const Node child : node)
      value(child, *table.value);
  }

  void inside(const Node& node, const TableWith& table) { fields(node, table.fields, node.label()); }

  void inside(const Node& node, const TableBy& table) {
    const auto decider = node.find(table.key);
    if (decider && decider->type() == Type::kText) {
      for (const Choice& choice : table.choices) {
        if (choice.word != decider->typed()) continue;
        fields(node, choice.fields, fmt::format("{} ({} \"{}\")", node.label(), table.key, choice.word));
        return;
      }
    }
    undecided(node, table);
  }

  // Which keys belong is not known, so none of a choice's own is looked at.
  void undecided(const Node& node, const TableBy& table) {
    std::vector<Field> all = table.common;
    for (const Choice& choice : table.choices) {
      const auto own = choice.fields.begin() + static_cast<std::ptrdiff_t>(table.common.size());
      all.insert(all.end(), own, choice.fields.end());
    }
    for (const Node child : node) {
      const bool of_a_choice =
          find(table.common, child.key()) == nullptr && find(all, child.key()) != nullptr;
      if (!of_a_choice) field_value(child, all, node.label());
    }
    missing(node, table.common, node.label());
  }

  void fields(const Node& node, const std::vector<Field>& known, const std::string& subject) {
    for (const Node child : node)
      field_value(child, known, subject);
    missing(node, known, subject);
  }

  void field_value(const Node& child, const std::vector<Field>& known, const std::string& subject) {
    if (const Field* field = find(known, child.key())) {
      value(child, field->shape);
    } else {
      tell(Code::kKeyUnknown, child, subject, std::string(child.key()),
           base::known_words(child.key(), keys_of(known)));
    }
  }

  void missing(const Node& node, const std::vector<Field>& known, const std::string& subject) {
    for (const Field& field : known) {
      if (!field.is_required || node.find(field.key)) continue;
      tell(Code::kKeyMissing, node, subject, field.key, field.shape.accepted());
    }
  }

  static const Field* find(const std::vector<Field>& fields, std::string_view key) {
    const auto found =
        std::find_if(fields.begin(), fields.end(), [&](const Field& f) { return f.key == key; });
    return found == fields.end() ? nullptr : &*found;
  }

  void tell(Code code, const Node& node, const std::string& subject, std::string found,
            std::string accepted) {
    if (is_full()) return;
    const bool at_key = code == Code::kKeyUnknown;
    Problem problem;
    problem.offset = (at_key ? node.key_span().value_or(node.span()) : node.span()).offset;
    problem.failure.code = code;
    problem.failure.subject = subject;
    problem.failure.found = std::move(found);
    problem.failure.accepted = std::move(accepted);
    problem.failure.place = at_key ? node.key_place() : node.place();
    if (node.is_root()) problem.failure.place = base::Place{node.place().file, 0, 0};
    problems_.push_back(std::move(problem));
  }

  [[nodiscard]] bool is_full() const { return problems_.size() > kMostProblems; }

  std::vector<Problem> problems_;
};

}  // namespace

base::Failures validate(const Document& document, const Shape& shape) {
  return Check().run(document.root(), shape);
}

}  // namespace sparewright::text
