"""The peer of survey.cpp: SciPy's least_squares on whole arrays, with a Jacobian. Prints seconds a trial, sizes, their u."""

import statistics
import sys
import time

import numpy as np
from scipy.linalg import cholesky, solve_triangular
from scipy.optimize import least_squares

lines = open(sys.argv[1], encoding="utf-8").read().split("\n")
holes = int(lines[0])
start = np.array(lines[1].split(), float)
values = np.array(lines[2].split(), float)
rows = np.array(lines[3].split(), float).reshape(-1, 4)
covariance = np.array(lines[4].split(), float).reshape(len(values), len(values))
of, one, other = rows[:, 0].astype(int), rows[:, 1].astype(int), rows[:, 2].astype(int)
is_d, is_edge, is_two = (np.flatnonzero(of == kind) for kind in range(3))
one_of, other_of, sign = one[is_two], other[is_two], rows[is_two, 3]
edge_at, edge_d = 3 * one[is_edge] + other[is_edge], 3 * one[is_edge] + 2
fixed = np.zeros((len(values), 3 * holes))
fixed[is_d, 3 * one[is_d] + 2] = 1.0
fixed[is_edge, edge_at] = 1.0
fixed[is_edge, edge_d] = -0.5
fixed[is_two, 3 * one_of + 2] = sign / 2
fixed[is_two, 3 * other_of + 2] = sign / 2


def solve():
    # W with W S W' = 1, once for all steps.
    white = solve_triangular(cholesky(covariance, lower=True), np.eye(len(values)), lower=True)

    def misfit(x):
        fitted = fixed @ x
        fitted[is_two] += np.hypot(x[3 * other_of] - x[3 * one_of], x[3 * other_of + 1] - x[3 * one_of + 1])
        return white @ (fitted - values)

    def jacobian(x):
        dx, dy = x[3 * other_of] - x[3 * one_of], x[3 * other_of + 1] - x[3 * one_of + 1]
        centres = np.hypot(dx, dy)
        slopes = fixed.copy()
        slopes[is_two, 3 * other_of] += dx / centres
        slopes[is_two, 3 * one_of] -= dx / centres
        slopes[is_two, 3 * other_of + 1] += dy / centres
        slopes[is_two, 3 * one_of + 1] -= dy / centres
        return white @ slopes

    best = least_squares(misfit, start, jac=jacobian, method="lm", xtol=1e-12, ftol=1e-15, gtol=1e-15)
    slopes = jacobian(best.x)
    return best.x, np.sqrt(np.diag(np.linalg.inv(slopes.T @ slopes)))


seconds = []
for _ in range(int(sys.argv[2])):
    begin = time.perf_counter()
    result = solve()
    seconds.append(time.perf_counter() - begin)
print(repr(statistics.median(seconds)))
print(*(repr(float(x)) for x in result[0]))
print(*(repr(float(x)) for x in result[1]))
