#include "job_formulas.hpp"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/job/job.hpp"

namespace sparewright::benchmarks {
namespace {

using ledger::Figure;

std::string content_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error(path.string() + " cannot be read");
  std::string text;
  std::string line;
  while (std::getline(file, line))
    text += line + "\n";
  return text;
}

template <typename Value>
Value taken(base::ResultOrAll<Value> result) {
  if (!result) throw std::runtime_error(base::report(result.error().front()));
  return std::move(*result);
}

text::Document parsed(const std::filesystem::path& path) {
  auto document = text::Document::parse(content_of(path), path.string());
  if (!document) throw std::runtime_error(base::report(document.error()));
  return std::move(*document);
}

std::vector<ledger::Stage> stages_of(const std::filesystem::path& path) {
  const text::Document document = parsed(path);
  const auto shop_name = job::shop_name_of(document);
  if (!shop_name) throw std::runtime_error(base::report(shop_name.error()));
  const text::Document shop_document = parsed(path.parent_path() / *shop_name);
  const job::ShopText shop = taken(job::read_shop(shop_document));
  return taken(job::stages(taken(job::read_job(document, shop))));
}

// The shares of the figures as rows over all causes.
double dot(const ledger::Shares& a, const ledger::Shares& b) {
  return ledger::covariance(a, b);
}

// Least squares of the shares of a figure on those of its inputs, by Gram-Schmidt; inputs without shares of their own, or
// that depend on those before them, get no slope.
std::vector<double> slopes_of(const Figure& figure, const std::vector<const Figure*>& inputs) {
  struct Direction {
    ledger::Shares shares;
    std::vector<double> of;  // in terms of the inputs
    double square = 0.0;
  };
  constexpr double kNothing = 1e-18;  // of the square of an input's uncertainty
  std::vector<Direction> directions;
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    Direction d{inputs[i]->shares, std::vector<double>(inputs.size(), 0.0), 0.0};
    d.of[i] = 1.0;
    const double whole = dot(d.shares, d.shares);
    for (const Direction& before : directions) {
      const double share = dot(d.shares, before.shares) / before.square;
      ledger::add_scaled(d.shares, before.shares, -share);
      for (std::size_t j = 0; j < inputs.size(); ++j)
        d.of[j] -= share * before.of[j];
    }
    d.square = dot(d.shares, d.shares);
    if (whole > 0.0 && d.square > kNothing * whole) directions.push_back(std::move(d));
  }
  std::vector<double> slopes(inputs.size(), 0.0);
  for (const Direction& d : directions) {
    const double share = dot(figure.shares, d.shares) / d.square;
    for (std::size_t j = 0; j < inputs.size(); ++j)
      slopes[j] += share * d.of[j];
  }
  return slopes;
}

void expect_shares(const Figure& figure, const std::vector<const Figure*>& inputs,
                   const std::vector<double>& slopes) {
  constexpr double kRounding = 1e-6;  // of the figure's own uncertainty
  ledger::Shares left = figure.shares;
  for (std::size_t i = 0; i < inputs.size(); ++i)
    ledger::add_scaled(left, inputs[i]->shares, -slopes[i]);
  if (ledger::standard_uncertainty(left) > kRounding * figure.u())
    throw std::runtime_error(std::string(figure.name.text()) + ": no slopes give its shares");
}

// Puts numbers behind one another, each after its inputs.
class Ordering {
 public:
  Ordering(const std::vector<Figure>& figures, const std::vector<std::string>& stages) : stages_(stages) {
    for (const Figure& figure : figures) {
      if (figure.known()) figures_[std::string(figure.name.text())] = &figure;
    }
    for (const auto& [name, figure] : figures_) {
      if (!is_worked(*figure)) {
        for (const ledger::Share& share : figure->shares)
          ++roots_of_cause_[std::string(share.cause.text())];
      }
    }
  }

  std::vector<JobNumber> all() {
    for (const auto& [name, figure] : figures_)
      place(name);
    return std::move(numbers_);
  }

 private:
  // Worked out of numbers that are all known here; all else counts as a root.
  [[nodiscard]] bool is_worked(const Figure& figure) const {
    if (figure.inputs.empty() || figure.origin == ledger::Origin::kChoice) return false;
    for (const base::Name& input : figure.inputs) {
      if (!figures_.contains(std::string(input.text()))) return false;
    }
    return true;
  }

  // The longest name of a stage that the number's begins with.
  [[nodiscard]] std::string stage_of(const std::string& name) const {
    std::string best;
    for (const std::string& stage : stages_) {
      if (stage.size() > best.size() && name.starts_with(stage + "/")) best = stage;
    }
    return best;
  }

  std::size_t put(JobNumber number) {
    const std::size_t at = numbers_.size();
    places_[number.name] = at;
    numbers_.push_back(std::move(number));
    return at;
  }

  std::size_t place_cause(const std::string& cause) {
    const std::string name = "cause " + cause;
    if (const auto there = places_.find(name); there != places_.end()) return there->second;
    return put({name, "causes", 0.0, 1.0, {}, {}});
  }

  std::size_t place(const std::string& name) {
    if (const auto there = places_.find(name); there != places_.end()) return there->second;
    const Figure& figure = *figures_.at(name);
    JobNumber number{name, stage_of(name), figure.value, 0.0, {}, {}};
    if (is_worked(figure)) {
      std::vector<const Figure*> inputs;
      for (const base::Name& input : figure.inputs) {
        number.inputs.push_back(place(std::string(input.text())));
        inputs.push_back(figures_.at(std::string(input.text())));
      }
      number.slopes = slopes_of(figure, inputs);
      expect_shares(figure, inputs, number.slopes);
    } else if (figure.shares.size() == 1 &&
               roots_of_cause_[std::string(figure.shares[0].cause.text())] == 1) {
      number.u = std::abs(figure.shares[0].amount);
    } else {
      for (const ledger::Share& share : figure.shares) {
        number.inputs.push_back(place_cause(std::string(share.cause.text())));
        number.slopes.push_back(share.amount);
      }
    }
    return put(std::move(number));
  }

  std::vector<std::string> stages_;
  std::map<std::string, const Figure*> figures_;
  std::map<std::string, int> roots_of_cause_;
  std::map<std::string, std::size_t> places_;
  std::vector<JobNumber> numbers_;
};

}  // namespace

std::vector<JobNumber> numbers_of(const std::string& job_path) {
  std::vector<ledger::Stage> stages = stages_of(job_path);
  std::vector<std::string> names;
  for (const ledger::Stage& stage : stages)
    names.push_back(stage.name);
  ledger::Ledger ledger;
  ledger.declare(std::move(stages));
  const std::vector<Figure> figures = ledger.figures();
  return Ordering(figures, names).all();
}

std::string as_text(const std::vector<JobNumber>& numbers) {
  std::string text;
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    const JobNumber& number = numbers[i];
    if (number.inputs.empty()) {
      text += fmt::format("root n{} {:.17g} {:.17g}\n", i, number.value, number.u);
      continue;
    }
    text += fmt::format("formula n{} = {:.17g}", i, number.value);
    for (std::size_t j = 0; j < number.inputs.size(); ++j)
      text += fmt::format(" + ({:.17g}) * (n{} - ({:.17g}))", number.slopes[j], number.inputs[j],
                          numbers[number.inputs[j]].value);
    text += "\n";
  }
  return text;
}

}  // namespace sparewright::benchmarks
