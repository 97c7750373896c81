// The one file that sees Eigen: its decompositions take seconds to compile.
#include "core/survey/whitening.hpp"

#include <cmath>
#include <limits>

#include <Eigen/Cholesky>
#include <Eigen/QR>

namespace sparewright::survey {
namespace {

using Table = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

Eigen::Index index(std::size_t i) {
  return static_cast<Eigen::Index>(i);
}

Eigen::Map<const Table> view(const Matrix& m) {
  return {m.cells.data(), index(m.rows), index(m.columns)};
}
Eigen::Map<const Eigen::VectorXd> view(std::span<const double> v) {
  return {v.data(), index(v.size())};
}

template <typename Expression>
Matrix table_of(const Expression& expression) {
  Matrix out(static_cast<std::size_t>(expression.rows()), static_cast<std::size_t>(expression.cols()));
  Eigen::Map<Table>(out.cells.data(), expression.rows(), expression.cols()) = expression;
  return out;
}

std::vector<double> list_of(const Eigen::VectorXd& v) {
  return {v.data(), v.data() + v.size()};
}

// The standard uncertainties, with a stand-in for those that are nothing.
Eigen::VectorXd deviations_of(const Eigen::Map<const Table>& covariance, bool& mended) {
  Eigen::VectorXd deviations = covariance.diagonal().cwiseMax(0.0).cwiseSqrt();
  double least = std::numeric_limits<double>::infinity();
  for (const double d : deviations) {
    if (d > 0.0) least = std::fmin(least, d);
  }
  const double stand_in = std::isfinite(least) ? kOwnPart * least : 1.0;
  for (double& d : deviations) {
    if (d > 0.0) continue;
    d = stand_in;
    mended = true;
  }
  return deviations;
}

// The lengths of the columns, 1 where a column is nothing.
template <typename Slopes>
Eigen::VectorXd lengths_of(const Slopes& slopes) {
  Eigen::VectorXd lengths = slopes.colwise().norm();
  for (double& length : lengths) {
    if (length == 0.0) length = 1.0;
  }
  return lengths;
}

using Decomposition = Eigen::CompleteOrthogonalDecomposition<Eigen::MatrixXd>;

Decomposition decomposed(const Eigen::MatrixXd& scaled) {
  Decomposition qr;
  qr.setThreshold(kRankTolerance);
  qr.compute(scaled);
  return qr;
}

}  // namespace

struct Whitening::Factor {
  Eigen::VectorXd deviations;
  Eigen::LLT<Eigen::MatrixXd> correlation;  // of the readings, each divided by its deviation
  bool mended = false;

  template <typename Right>
  [[nodiscard]] Eigen::MatrixXd whiten(const Right& right) const {
    Eigen::MatrixXd scaled = deviations.cwiseInverse().asDiagonal() * right;
    if (deviations.size() > 0) correlation.matrixL().solveInPlace(scaled);
    return scaled;
  }
};

Whitening::Whitening(const Matrix& covariance) : factor_(std::make_unique<Factor>()) {
  const auto given = view(covariance);
  factor_->deviations = deviations_of(given, factor_->mended);
  if (given.rows() == 0) return;
  const Eigen::VectorXd inverse = factor_->deviations.cwiseInverse();
  Eigen::MatrixXd correlation = inverse.asDiagonal() * given * inverse.asDiagonal();
  correlation.diagonal().setOnes();
  factor_->correlation.compute(correlation);
  // A pivot is what a reading has that the readings before it do not share.
  const bool has_own = factor_->correlation.info() == Eigen::Success &&
                       factor_->correlation.matrixLLT().diagonal().minCoeff() >= kOwnPart;
  if (has_own) return;
  factor_->mended = true;
  // n rounding errors may stand against it, so a large network needs a larger part.
  const double n = static_cast<double>(correlation.rows());
  const double part = std::fmax(kOwnPart * kOwnPart, 16.0 * n * std::numeric_limits<double>::epsilon());
  correlation.diagonal().array() += part;
  factor_->correlation.compute(correlation);
}

Whitening::~Whitening() = default;
Whitening::Whitening(Whitening&&) noexcept = default;
Whitening& Whitening::operator=(Whitening&&) noexcept = default;

std::vector<double> Whitening::apply(std::span<const double> readings) const {
  return list_of(factor_->whiten(view(readings)));
}

Matrix Whitening::apply(const Matrix& slopes) const {
  return table_of(factor_->whiten(view(slopes)));
}

Matrix Whitening::matrix() const {
  const Eigen::Index n = factor_->deviations.size();
  return table_of(factor_->whiten(Eigen::MatrixXd::Identity(n, n)));
}

bool Whitening::mended() const {
  return factor_->mended;
}

std::vector<double> damped_step(const Matrix& slopes, std::span<const double> misfit, double damping) {
  const auto a = view(slopes);
  const Eigen::Index n = a.rows();
  const Eigen::Index m = a.cols();
  if (n == 0 || m == 0) return std::vector<double>(slopes.columns, 0.0);
  const Eigen::VectorXd lengths = lengths_of(a);
  const bool is_damped = damping > 0.0;
  Eigen::MatrixXd stacked = Eigen::MatrixXd::Zero(n + (is_damped ? m : 0), m);
  stacked.topRows(n) = a * lengths.cwiseInverse().asDiagonal();
  if (is_damped) stacked.bottomRows(m).diagonal().setConstant(std::sqrt(damping));
  Eigen::VectorXd right = Eigen::VectorXd::Zero(stacked.rows());
  right.head(n) = view(misfit);
  const Eigen::VectorXd scaled = decomposed(stacked).solve(right);
  return list_of(scaled.cwiseQuotient(lengths));
}

namespace {

// What is fixed by geometry alone, whatever the readings weigh.
void find_rank(const Eigen::Map<const Table>& slopes, Determination& out) {
  const Eigen::VectorXd of_rows = lengths_of(slopes.transpose());
  const Eigen::MatrixXd even = of_rows.cwiseInverse().asDiagonal() * slopes;
  const Eigen::VectorXd of_columns = lengths_of(even);
  const auto qr = decomposed(even * of_columns.cwiseInverse().asDiagonal());
  const Eigen::MatrixXd unfelt = qr.matrixZ().bottomRows(slopes.cols() - qr.rank()).transpose();
  out.rank = static_cast<std::size_t>(qr.rank());
  out.scale = list_of(of_columns);
  out.gaps = table_of(qr.colsPermutation() * unfelt);
}

}  // namespace

Determination determine(const Matrix& slopes, const Whitening& whitening) {
  const auto j = view(slopes);
  const Eigen::Index n = j.rows();
  const Eigen::Index m = j.cols();
  const Matrix white = whitening.matrix();
  const auto w = view(white);
  Determination out;
  out.weights = list_of(w.colwise().norm().transpose());
  if (n == 0 || m == 0) {
    out.scale.assign(slopes.columns, 1.0);
    out.gaps = table_of(Eigen::MatrixXd::Identity(m, m));
    out.slopes = Matrix(slopes.columns, slopes.rows);
    out.covariance = Matrix(slopes.columns, slopes.columns);
    out.blunders = table_of(w.transpose());
    return out;
  }
  find_rank(j, out);
  const Matrix whitened = whitening.apply(slopes);
  const auto a = view(whitened);
  const Eigen::VectorXd lengths = lengths_of(a);
  const auto qr = decomposed(a * lengths.cwiseInverse().asDiagonal());
  const Eigen::MatrixXd follow = lengths.cwiseInverse().asDiagonal() * qr.pseudoInverse();
  out.slopes = table_of(follow * w);
  out.covariance = table_of(follow * follow.transpose());
  const Eigen::MatrixXd reached = qr.householderQ() * Eigen::MatrixXd::Identity(n, qr.rank());
  const Eigen::MatrixXd along = reached.transpose() * w;
  out.blunders = table_of((w - reached * along).transpose());
  return out;
}

}  // namespace sparewright::survey
