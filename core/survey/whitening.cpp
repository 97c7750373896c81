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

  void whiten_in_place(Eigen::MatrixXd& right) const {
    if (deviations.size() == 0) return;
    right = deviations.cwiseInverse().asDiagonal() * right;
    correlation.matrixL().solveInPlace(right);
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

Matrix Whitening::weights() const {
  const Eigen::VectorXd inverse = factor_->deviations.cwiseInverse();
  const Eigen::Index n = inverse.size();
  if (n == 0) return {};
  const Eigen::MatrixXd unit = factor_->correlation.solve(Eigen::MatrixXd::Identity(n, n));
  return table_of(inverse.asDiagonal() * unit * inverse.asDiagonal());
}

bool Whitening::mended() const {
  return factor_->mended;
}

struct Weighted::Parts {
  const Whitening::Factor* whitening;
  const Matrix* slopes;
  Eigen::MatrixXd white;    // A
  Eigen::VectorXd misfit;   // r
  Eigen::VectorXd lengths;  // of the columns of A
  Decomposition straight;   // of A with columns of length 1
  double cost = 0.0;
  double rounding = 0.0;
};

Weighted::Weighted(const Whitening& whitening, const Matrix& slopes, std::span<const double> fitted,
                   std::span<const double> misfit)
    : parts_(std::make_unique<Parts>()) {
  parts_->whitening = whitening.factor_.get();
  parts_->slopes = &slopes;
  const auto j = view(slopes);
  const Eigen::Index n = j.rows();
  const Eigen::Index m = j.cols();
  Eigen::MatrixXd all(n, m + 2);
  all.leftCols(m) = j;
  all.col(m) = view(misfit);
  all.col(m + 1) = view(fitted);
  parts_->whitening->whiten_in_place(all);
  parts_->white = all.leftCols(m);
  parts_->misfit = all.col(m);
  parts_->cost = parts_->misfit.squaredNorm();
  parts_->rounding = 4.0 * std::numeric_limits<double>::epsilon() * all.col(m + 1).norm();
  if (n == 0 || m == 0) return;
  parts_->lengths = lengths_of(parts_->white);
  parts_->straight = decomposed(parts_->white * parts_->lengths.cwiseInverse().asDiagonal());
}

Weighted::~Weighted() = default;
Weighted::Weighted(Weighted&&) noexcept = default;
Weighted& Weighted::operator=(Weighted&&) noexcept = default;

double Weighted::cost() const {
  return parts_->cost;
}

double Weighted::rounding() const {
  return parts_->rounding;
}

std::vector<double> Weighted::step(double damping) const {
  const Eigen::Index n = parts_->white.rows();
  const Eigen::Index m = parts_->white.cols();
  if (n == 0 || m == 0) return std::vector<double>(static_cast<std::size_t>(m), 0.0);
  Eigen::VectorXd scaled;
  if (damping > 0.0) {
    Eigen::MatrixXd stacked = Eigen::MatrixXd::Zero(n + m, m);
    stacked.topRows(n) = parts_->white * parts_->lengths.cwiseInverse().asDiagonal();
    stacked.bottomRows(m).diagonal().setConstant(std::sqrt(damping));
    Eigen::VectorXd right = Eigen::VectorXd::Zero(n + m);
    right.head(n) = parts_->misfit;
    scaled = decomposed(stacked).solve(right);
  } else {
    scaled = parts_->straight.solve(parts_->misfit);
  }
  return list_of(scaled.cwiseQuotient(parts_->lengths));
}

double Weighted::reach(std::span<const double> step) const {
  return (parts_->white * view(step)).norm();
}

namespace {

// What is fixed by geometry alone, whatever the readings weigh.
void find_rank(const Eigen::Map<const Table>& slopes, Determination& out) {
  const Eigen::VectorXd of_rows = lengths_of(slopes.transpose());
  const Eigen::MatrixXd even = of_rows.cwiseInverse().asDiagonal() * slopes;
  const Eigen::VectorXd of_columns = lengths_of(even);
  const auto qr = decomposed(even * of_columns.cwiseInverse().asDiagonal());
  out.rank = static_cast<std::size_t>(qr.rank());
  out.scale = list_of(of_columns);
  if (qr.rank() == slopes.cols()) {
    out.gaps = Matrix(static_cast<std::size_t>(slopes.cols()), 0);
    return;
  }
  const Eigen::MatrixXd unfelt = qr.matrixZ().bottomRows(slopes.cols() - qr.rank()).transpose();
  out.gaps = table_of(qr.colsPermutation() * unfelt);
}

// The traces, from W and the directions Q that moving the unknowns can follow.
Traces traces_of(const Eigen::MatrixXd& white, const Eigen::MatrixXd& followed, const Eigen::MatrixXd& along,
                 const Eigen::VectorXd& misfit) {
  Traces traces;
  traces.white = table_of(white.transpose());
  traces.followed = table_of(followed);
  traces.along = table_of(along.transpose());
  traces.misfit = list_of(misfit - followed * (followed.transpose() * misfit));
  traces.find_lengths();
  return traces;
}

}  // namespace

Determination Weighted::determine() const {
  const auto j = view(*parts_->slopes);
  const Eigen::Index n = j.rows();
  const Eigen::Index m = j.cols();
  Eigen::MatrixXd w = Eigen::MatrixXd::Identity(n, n);
  parts_->whitening->whiten_in_place(w);
  Determination out;
  if (n == 0 || m == 0) {
    out.scale.assign(static_cast<std::size_t>(m), 1.0);
    out.gaps = table_of(Eigen::MatrixXd::Identity(m, m));
    out.slopes = Matrix(parts_->slopes->columns, parts_->slopes->rows);
    out.covariance = Matrix(parts_->slopes->columns, parts_->slopes->columns);
    out.traces = traces_of(w, Eigen::MatrixXd(n, 0), Eigen::MatrixXd(0, n), parts_->misfit);
    return out;
  }
  find_rank(j, out);
  const Decomposition& qr = parts_->straight;
  const Eigen::Index rank = qr.rank();
  const Eigen::MatrixXd followed = qr.householderQ() * Eigen::MatrixXd::Identity(n, rank);
  const Eigen::MatrixXd along = followed.transpose() * w;
  // A = Q T Z P' with columns of length 1: the unknowns follow the whitened readings by P Z' inverse(T) Q'.
  Eigen::MatrixXd back = Eigen::MatrixXd::Identity(rank, rank);
  qr.matrixT().topLeftCorner(rank, rank).template triangularView<Eigen::Upper>().solveInPlace(back);
  Eigen::MatrixXd follow = Eigen::MatrixXd::Zero(m, rank);
  if (rank < m)
    follow = qr.matrixZ().topRows(rank).transpose() * back;
  else
    follow = back;
  follow = parts_->lengths.cwiseInverse().asDiagonal() * (qr.colsPermutation() * follow);
  out.slopes = table_of(follow * along);
  out.covariance = table_of(follow * follow.transpose());
  out.traces = traces_of(w, followed, along, parts_->misfit);
  return out;
}

}  // namespace sparewright::survey
