"""The peer of monte_carlo.cpp: the same network by a batched Gauss-Newton in NumPy, the same exactness.

Prints seconds, and mean and standard deviation of the last place."""

import sys
import time

import numpy as np

draws, holes = int(sys.argv[1]), int(sys.argv[2])
own, shared = float(sys.argv[3]), float(sys.argv[4])
readings = np.array([float(word) for word in sys.argv[5:]])
n = len(readings)

x0 = np.array([40.0 * (h % 3) + 3.0 * (h // 3) for h in range(holes)])
y0 = np.array([35.0 * (h // 3) + 2.0 * (h % 3) - (2.0 if h == 1 else 0.0) for h in range(holes)])
pairs = [(a, b) for a in range(holes) for b in range(a + 1, holes)] + [(a, a + 5) for a in range(4)]
first = np.array([a for a, _ in pairs])
second = np.array([b for _, b in pairs])

column_of_x = {h: 0 if h == 1 else 2 * h - 3 for h in range(1, holes)}
column_of_y = {h: 2 * h - 2 for h in range(2, holes)}
m = 2 * holes - 3
start = np.zeros(m)
for h, column in column_of_x.items():
    start[column] = x0[h]
for h, column in column_of_y.items():
    start[column] = y0[h]

covariance = np.full((n, n), shared * shared) + np.eye(n) * own * own
weights = np.linalg.inv(covariance)


def fitted_and_slopes(values):
    batch = values.shape[0]
    x = np.zeros((batch, holes))
    y = np.zeros((batch, holes))
    for h, column in column_of_x.items():
        x[:, h] = values[:, column]
    for h, column in column_of_y.items():
        y[:, h] = values[:, column]
    dx = x[:, second] - x[:, first]
    dy = y[:, second] - y[:, first]
    distance = np.sqrt(dx * dx + dy * dy)
    ux, uy = dx / distance, dy / distance
    slopes = np.zeros((batch, n, m))
    for i, (a, b) in enumerate(pairs):
        if a > 0:
            slopes[:, i, column_of_x[a]] -= ux[:, i]
        if a > 1:
            slopes[:, i, column_of_y[a]] -= uy[:, i]
        slopes[:, i, column_of_x[b]] += ux[:, i]
        if b > 1:
            slopes[:, i, column_of_y[b]] += uy[:, i]
    return distance, slopes


def adjusted(drawn):
    values = np.repeat(start[None, :], drawn.shape[0], axis=0)
    for _ in range(20):
        fitted, slopes = fitted_and_slopes(values)
        transposed = slopes.transpose(0, 2, 1)
        weighted = np.matmul(transposed, weights)
        step = np.linalg.solve(np.matmul(weighted, slopes), np.matmul(weighted, (drawn - fitted)[:, :, None]))[:, :, 0]
        values += step
        if np.abs(step).max() < 1e-7 * own:
            break
    return values


generator = np.random.default_rng(1)
begin = time.perf_counter()
last = np.empty(draws)
chunk = 2000  # stays in the cache; larger ones are slower
for at in range(0, draws, chunk):
    count = min(chunk, draws - at)
    drawn = readings + own * generator.standard_normal((count, n)) + shared * generator.standard_normal((count, 1))
    last[at : at + count] = adjusted(drawn)[:, -1]
seconds = time.perf_counter() - begin
print(seconds, last.mean(), last.std(ddof=1))
