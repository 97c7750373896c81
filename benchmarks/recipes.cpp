#include "recipes.hpp"

#include <fstream>
#include <sstream>
#include <stdexcept>

#include "core/job/job.hpp"
#include "core/ledger/ledger.hpp"

namespace sparewright::benchmarks {
namespace {

std::string content_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error(path.string() + " cannot be read");
  std::ostringstream content;
  content << file.rdbuf();
  return content.str();
}

}  // namespace

Texts texts_of(const std::filesystem::path& path) {
  Texts texts{{content_of(path), path.filename().string()}, {}};
  const auto shop = app::shop_named_in(texts.job);
  if (!shop) throw std::runtime_error("the job names no shop");
  texts.shop = {content_of(path.parent_path() / *shop), *shop};
  return texts;
}

shape::Recipe recipe_of(const Texts& texts) {
  const auto shop = text::Document::parse(texts.shop.content, texts.shop.name);
  const auto job = text::Document::parse(texts.job.content, texts.job.name);
  if (!shop || !job) throw std::runtime_error("a text cannot be parsed");
  const auto shop_read = job::read_shop(*shop);
  if (!shop_read) throw std::runtime_error("the shop cannot be read");
  const auto job_read = job::read_job(*job, *shop_read);
  if (!job_read) throw std::runtime_error("the job cannot be read");
  auto stages = job::stages(*job_read);
  if (!stages) throw std::runtime_error("the job has no stages");
  ledger::Ledger ledger;
  ledger.declare(std::move(*stages));
  const auto recipe = ledger.value<shape::Recipe>(part::kRecipe);
  if (!recipe) throw std::runtime_error("the part has no geometry");
  return *recipe;
}

}  // namespace sparewright::benchmarks
