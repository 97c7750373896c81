#include "core/survey/orthogonal_fit.hpp"

#include <algorithm>
#include <utility>

#include <Eigen/Dense>

namespace sparewright::survey {
namespace {

using Dense = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

// J with its columns scaled to length 1, taken apart.
class Columns {
 public:
  explicit Columns(const Matrix& slopes)
      : scaled_(Eigen::Map<const Dense>(slopes.cells.data(), static_cast<Eigen::Index>(slopes.rows),
                                        static_cast<Eigen::Index>(slopes.columns))),
        scale_(scaled_.colwise().norm()) {
    for (Eigen::Index j = 0; j < scaled_.cols(); ++j)
      scaled_.col(j) /= scale_(j) > 0.0 ? scale_(j) : 1.0;
    svd_.compute(scaled_, Eigen::ComputeThinU | Eigen::ComputeThinV);
  }
  [[nodiscard]] bool fixes() const {
    const auto& values = svd_.singularValues();
    return scaled_.rows() >= scaled_.cols() && values(values.size() - 1) > kFitRank * values(0);
  }
  [[nodiscard]] Eigen::VectorXd solve(const Eigen::VectorXd& off) const {
    return svd_.solve(off).cwiseQuotient(scale_);
  }
  // inverse(J'J) J'
  [[nodiscard]] Dense pseudo_inverse() const {
    const Dense own =
        svd_.matrixV() * svd_.singularValues().cwiseInverse().asDiagonal() * svd_.matrixU().transpose();
    return scale_.cwiseInverse().asDiagonal() * own;
  }

 private:
  Dense scaled_;
  Eigen::VectorXd scale_;
  Eigen::JacobiSVD<Dense> svd_;
};

}  // namespace

double OrthogonalFit::form_error() const {
  return spare() > 0 ? off[most()] - off[least()] : 0.0;
}
std::size_t OrthogonalFit::most() const {
  return static_cast<std::size_t>(std::max_element(off.begin(), off.end()) - off.begin());
}
std::size_t OrthogonalFit::least() const {
  return static_cast<std::size_t>(std::min_element(off.begin(), off.end()) - off.begin());
}
int OrthogonalFit::spare() const {
  return static_cast<int>(off.size()) - static_cast<int>(slopes.rows);
}
double OrthogonalFit::redundancy(std::size_t touch) const {
  double left = 1.0;
  for (std::size_t k = 0; k < slopes.rows; ++k)
    left += equation_slopes.at(touch, k) * slopes.at(k, touch);
  return std::max(0.0, left);
}
Matrix OrthogonalFit::covariance() const {
  Matrix out(slopes.rows, slopes.rows);
  for (std::size_t a = 0; a < slopes.rows; ++a) {
    for (std::size_t b = 0; b < slopes.rows; ++b)
      out.at(a, b) = dot(slopes.row(a), slopes.row(b));
  }
  return out;
}

OrthogonalFit orthogonal_fit(std::vector<double> off, Matrix equation_slopes) {
  OrthogonalFit fit;
  fit.off = std::move(off);
  const Dense follow = -Columns(equation_slopes).pseudo_inverse();
  fit.slopes = Matrix(equation_slopes.columns, equation_slopes.rows);
  std::copy(follow.data(), follow.data() + follow.size(), fit.slopes.cells.begin());
  fit.equation_slopes = std::move(equation_slopes);
  return fit;
}

bool fixes(const Matrix& slopes) {
  return slopes.rows > 0 && slopes.columns > 0 && Columns(slopes).fixes();
}

std::vector<double> step_of(const Matrix& slopes, std::span<const double> off) {
  const Eigen::VectorXd misfit =
      Eigen::Map<const Eigen::VectorXd>(off.data(), static_cast<Eigen::Index>(off.size()));
  const Eigen::VectorXd step = -Columns(slopes).solve(misfit);
  return {step.data(), step.data() + step.size()};
}

base::Failure touches_too_few(std::string subject, std::string wanted) {
  base::Failure failure;
  failure.code = base::Code::kReadingsTooFew;
  failure.subject = std::move(subject);
  failure.accepted = std::move(wanted);
  return failure;
}

}  // namespace sparewright::survey
