// The texts of a job, and the recipe of its part.
#pragma once

#include <filesystem>

#include "app/session.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::benchmarks {

struct Texts {
  app::Text job;
  app::Text shop;
};

// Throw std::runtime_error with what is wrong.
[[nodiscard]] Texts texts_of(const std::filesystem::path& job);
[[nodiscard]] shape::Recipe recipe_of(const Texts& texts);

}  // namespace sparewright::benchmarks
