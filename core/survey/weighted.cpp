#include "core/survey/weighted.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include <Eigen/QR>

#include "core/survey/triangle.hpp"

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

// Each row, as far as the other has columns, times the transpose of the other.
Matrix times_transposed(const Matrix& rows, const Matrix& other) {
  Matrix out(rows.rows, other.rows);
  for (std::size_t i = 0; i < rows.rows; ++i) {
    for (std::size_t j = 0; j < other.rows; ++j)
      out.at(i, j) = dot(rows.row(i).first(other.columns), other.row(j));
  }
  return out;
}

}  // namespace

Weighted::Weighted(const Whitening& whitening, const Matrix& slopes, std::span<const double> fitted,
                   std::span<const double> misfit)
    : whitening_(&whitening), unknowns_(slopes.columns) {
  white_ = Matrix(slopes.rows, slopes.columns + 2);
  for (std::size_t i = 0; i < white_.rows; ++i) {
    const auto from = slopes.row(i);
    const auto to = white_.row(i);
    std::copy(from.begin(), from.end(), to.begin());
    to[unknowns_] = misfit[i];
    to[unknowns_ + 1] = fitted[i];
  }
  whitening.apply(white_);
  std::vector<double> squares(white_.columns, 0.0);
  for (std::size_t i = 0; i < white_.rows; ++i) {
    const auto row = white_.row(i);
    for (std::size_t j = 0; j < row.size(); ++j)
      squares[j] += row[j] * row[j];
  }
  cost_ = squares[unknowns_];
  rounding_ = 4.0 * std::numeric_limits<double>::epsilon() * std::sqrt(squares[unknowns_ + 1]);
  for (std::size_t j = 0; j < unknowns_; ++j)
    lengths_.push_back(squares[j] > 0.0 ? std::sqrt(squares[j]) : 1.0);
  factor();
}

void Weighted::factor() {
  factor_ = Matrix(unknowns_, unknowns_);
  std::vector<double> over;
  for (const double length : lengths_)
    over.push_back(1.0 / length);
  // Two rows at a time.
  std::size_t i = 0;
  for (; i + 1 < white_.rows; i += 2) {
    const auto one = white_.row(i);
    const auto two = white_.row(i + 1);
    for (std::size_t j = 0; j < unknowns_; ++j) {
      const double first = one[j];
      const double second = two[j];
      if (first == 0.0 && second == 0.0) continue;
      add_scaled(factor_.row(j).first(j + 1), first, one.first(j + 1), second, two.first(j + 1));
    }
  }
  if (i < white_.rows) {
    const auto last = white_.row(i);
    for (std::size_t j = 0; j < unknowns_; ++j)
      add_scaled(factor_.row(j).first(j + 1), last[j], last.first(j + 1));
  }
  for (std::size_t j = 0; j < unknowns_; ++j) {
    for (std::size_t k = 0; k <= j; ++k)
      factor_.at(j, k) *= over[j] * over[k];
  }
  is_plain_ = unknowns_ > 0 && white_.rows >= unknowns_ && factor_in_place(factor_, kLeastPivot);
}

std::vector<double> Weighted::plain_step() const {
  std::vector<double> step(unknowns_, 0.0);
  for (std::size_t i = 0; i < white_.rows; ++i) {
    const auto row = white_.row(i);
    add_scaled(step, row[unknowns_], row.first(unknowns_));
  }
  for (std::size_t j = 0; j < unknowns_; ++j)
    step[j] =
        (step[j] / lengths_[j] - dot(factor_.row(j).first(j), std::span(step).first(j))) / factor_.at(j, j);
  for (std::size_t j = unknowns_; j-- > 0;) {
    step[j] /= factor_.at(j, j);
    for (std::size_t k = 0; k < j; ++k)
      step[k] -= factor_.at(j, k) * step[j];
    step[j] /= lengths_[j];
  }
  return step;
}

std::vector<double> Weighted::step(double damping) const {
  const bool is_damped = damping > 0.0;
  if (white_.rows == 0 || unknowns_ == 0) return std::vector<double>(unknowns_, 0.0);
  if (!is_damped && is_plain_) return plain_step();
  const Eigen::Index n = index(white_.rows);
  const Eigen::Index m = index(unknowns_);
  const auto lengths = view(lengths_);
  Eigen::MatrixXd stacked = Eigen::MatrixXd::Zero(n + (is_damped ? m : 0), m);
  stacked.topRows(n) = view(white_).leftCols(m) * lengths.cwiseInverse().asDiagonal();
  if (is_damped) stacked.bottomRows(m).diagonal().setConstant(std::sqrt(damping));
  Eigen::VectorXd right = Eigen::VectorXd::Zero(stacked.rows());
  right.head(n) = view(white_).col(m);
  const Eigen::VectorXd scaled = decomposed(stacked).solve(right);
  return list_of(scaled.cwiseQuotient(lengths));
}

double Weighted::reach(std::span<const double> step) const {
  double squares = 0.0;
  for (std::size_t i = 0; i < white_.rows; ++i) {
    const double moved = dot(white_.row(i).first(unknowns_), step);
    squares += moved * moved;
  }
  return std::sqrt(squares);
}

void Weighted::replace(std::span<const double> misfit) {
  Matrix column(white_.rows, 1);
  std::copy(misfit.begin(), misfit.end(), column.cells.begin());
  whitening_->apply(column);
  cost_ = 0.0;
  for (std::size_t i = 0; i < white_.rows; ++i) {
    white_.at(i, unknowns_) = column.cells[i];
    cost_ += column.cells[i] * column.cells[i];
  }
}

void Weighted::move(std::span<const double> step) {
  cost_ = 0.0;
  for (std::size_t i = 0; i < white_.rows; ++i) {
    double& misfit = white_.at(i, unknowns_);
    misfit -= dot(white_.row(i).first(unknowns_), step);
    cost_ += misfit * misfit;
  }
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
  out.gaps = Matrix(static_cast<std::size_t>(slopes.cols()), 0);
  if (qr.rank() == slopes.cols()) return;
  const Eigen::MatrixXd unfelt = qr.matrixZ().bottomRows(slopes.cols() - qr.rank()).transpose();
  out.gaps = table_of(qr.colsPermutation() * unfelt);
}

// Whether that rank is plainly full, without working it out. With E the slopes evened as above, a length d of unknowns
// scaled by E's columns moves the whitened readings by at least |d| min(l / c) / |inverse(R)|, c and l the lengths of the
// columns of E and A, and no more than |W divided by E's rows| |E d|: so E's least singular value has a floor.
bool is_plainly_full(const Matrix& slopes, const std::vector<double>& lengths,
                     const std::vector<double>& weights, double inverse_size) {
  std::vector<double> columns(slopes.columns, 0.0);
  double widest = 0.0;
  for (std::size_t i = 0; i < slopes.rows; ++i) {
    const auto row = slopes.row(i);
    const double squares = dot(row, row);
    if (squares == 0.0) continue;
    widest += squares * weights[i] * weights[i];
    const double over = 1.0 / squares;
    for (std::size_t j = 0; j < row.size(); ++j)
      columns[j] += row[j] * row[j] * over;
  }
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t j = 0; j < columns.size(); ++j)
    least = std::min(least, columns[j] > 0.0 ? lengths[j] / std::sqrt(columns[j]) : 0.0);
  const double floor = least / (inverse_size * std::sqrt(widest));
  // The first pivot is 1; the last is no less than the least singular value. Tenfold, for rounding.
  return floor > 10.0 * kRankTolerance;
}

// inverse(T) Q' turned back to the unknowns: A = Q T Z P' with columns of length 1.
Eigen::MatrixXd turned_back(const Decomposition& qr, const Eigen::MatrixXd& inverse) {
  if (qr.rank() == qr.cols()) return qr.colsPermutation() * inverse;
  const Eigen::MatrixXd turned = qr.matrixZ().topRows(qr.rank()).transpose() * inverse;
  return qr.colsPermutation() * turned;
}

// Q' W, group by group.
Matrix along_of(const Whitening& whitening, const Matrix& followed, std::size_t readings) {
  Matrix along(readings, followed.columns);
  for (const Whitening::Group& group : whitening.groups()) {
    for (std::size_t a = 0; a < group.readings.size(); ++a) {
      const auto from = followed.row(group.readings[a]);
      for (std::size_t b = 0; b <= a; ++b)
        add_scaled(along.row(group.readings[b]), group.white.at(a, b), from);
    }
  }
  return along;
}

// misfit: its column in `white`.
Traces traces_of(const Whitening& whitening, Matrix followed, const Matrix& white, std::size_t misfit) {
  Traces traces;
  traces.white = Matrix(white.rows, white.rows);
  for (const Whitening::Group& group : whitening.groups()) {
    for (std::size_t a = 0; a < group.readings.size(); ++a) {
      for (std::size_t b = 0; b <= a; ++b)
        traces.white.at(group.readings[b], group.readings[a]) = group.white.at(a, b);
    }
  }
  traces.along = along_of(whitening, followed, white.rows);
  std::vector<double> back(followed.columns, 0.0);
  for (std::size_t i = 0; i < white.rows; ++i)
    add_scaled(back, white.at(i, misfit), followed.row(i));
  for (std::size_t i = 0; i < white.rows; ++i)
    traces.misfit.push_back(white.at(i, misfit) - dot(followed.row(i), back));
  traces.followed = std::move(followed);
  traces.find_lengths();
  return traces;
}

std::vector<double> weights_of(const Whitening& whitening, std::size_t readings) {
  std::vector<double> weights(readings, 0.0);
  for (const Whitening::Group& group : whitening.groups()) {
    for (std::size_t b = 0; b < group.readings.size(); ++b) {
      double squares = 0.0;
      for (std::size_t a = b; a < group.readings.size(); ++a)
        squares += group.white.at(a, b) * group.white.at(a, b);
      weights[group.readings[b]] = std::sqrt(squares);
    }
  }
  return weights;
}

}  // namespace

Determination Weighted::determine(const Matrix& slopes) const {
  if (slopes.rows == 0 || slopes.columns == 0) {
    const Eigen::Index m = index(slopes.columns);
    Determination out;
    out.weights = weights_of(*whitening_, slopes.rows);
    out.scale.assign(slopes.columns, 1.0);
    out.gaps = table_of(Eigen::MatrixXd::Identity(m, m));
    out.covariance = Matrix(slopes.columns, slopes.columns);
    out.back = Matrix(0, slopes.columns);
    return out;
  }
  if (is_plain_) {
    Determination out = determine_plain(slopes);
    if (out.rank == unknowns_) return out;
  }
  return determine_by_rank(slopes);
}

// By the factor of the normal equations: B = inverse(L), columns of length 1. Rank 0 where that does not show that all is
// fixed.
Determination Weighted::determine_plain(const Matrix& slopes) const {
  Determination out;
  out.weights = weights_of(*whitening_, slopes.rows);
  out.back = inverse_of(factor_);
  if (!is_plainly_full(slopes, lengths_, out.weights, std::sqrt(dot(out.back.cells, out.back.cells))))
    return out;
  out.rank = unknowns_;
  out.scale.assign(unknowns_, 1.0);
  out.gaps = Matrix(unknowns_, 0);
  std::vector<double> over;
  for (const double length : lengths_)
    over.push_back(1.0 / length);
  out.covariance = Matrix(unknowns_, unknowns_);
  for (std::size_t row = 0; row < unknowns_; ++row) {
    const auto part = out.back.row(row).first(row + 1);
    for (std::size_t j = 0; j <= row; ++j)
      part[j] *= over[j];
    for (std::size_t j = 0; j <= row; ++j)
      add_scaled(out.covariance.row(j).first(row + 1), part[j], part);
  }
  return out;
}

Determination Weighted::determine_by_rank(const Matrix& slopes) const {
  const Eigen::Index n = index(slopes.rows);
  const Eigen::Index m = index(slopes.columns);
  Determination out;
  out.weights = weights_of(*whitening_, slopes.rows);
  find_rank(view(slopes), out);
  const auto lengths = view(lengths_);
  const Decomposition qr = decomposed(view(white_).leftCols(m) * lengths.cwiseInverse().asDiagonal());
  const Eigen::Index rank = qr.rank();
  Eigen::MatrixXd inverse = Eigen::MatrixXd::Identity(rank, rank);
  qr.matrixT().topLeftCorner(rank, rank).triangularView<Eigen::Upper>().solveInPlace(inverse);
  const Eigen::MatrixXd followed = qr.householderQ() * Eigen::MatrixXd::Identity(n, rank);
  out.followed = table_of(followed);
  const Eigen::MatrixXd back = lengths.cwiseInverse().asDiagonal() * turned_back(qr, inverse);
  out.back = table_of(back.transpose());
  out.covariance = table_of(back * back.transpose());
  return out;
}

Following Weighted::follow(const Determination& determination) const {
  Following out;
  const Matrix& back = determination.back;
  out.traces = traces_of(
      *whitening_,
      determination.followed.cells.empty() ? times_transposed(white_, back) : determination.followed, white_,
      unknowns_);
  out.slopes = Matrix(unknowns_, white_.rows);
  std::vector<double> follow(unknowns_);
  for (std::size_t i = 0; i < white_.rows; ++i) {
    const auto along = out.traces.along.row(i);
    std::fill(follow.begin(), follow.end(), 0.0);
    for (std::size_t row = 0; row < back.rows; ++row)
      add_scaled(follow, along[row], back.row(row));
    for (std::size_t j = 0; j < unknowns_; ++j)
      out.slopes.at(j, i) = follow[j];
  }
  return out;
}

}  // namespace sparewright::survey
