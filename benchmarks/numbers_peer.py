"""The peer of numbers.cpp and after_edit.cpp: the same formulas by python3-uncertainties. Prints seconds of work a trial, and the sum of all u.

numbers_peer.py FILE TRIALS [carried]: with "carried" an exact number is one that carries no uncertainty, else a bare float.
"""

import statistics
import sys
import time
from math import pi

from uncertainties import ufloat
from uncertainties.umath import sqrt

entries = []
for line in open(sys.argv[1], encoding="utf-8"):
    words = line.split()
    if words[:1] == ["root"]:
        entries.append((words[1], None, float(words[2]), float(words[3])))
    elif words[:1] == ["formula"]:
        entries.append((words[1], compile(line.split("=", 1)[1].strip(), words[1], "eval"), 0.0, 0.0))


carried = sys.argv[3:] == ["carried"]


def trial():
    names = {"pi": pi, "sqrt": sqrt}
    total = 0.0
    for name, code, value, u in entries:
        names[name] = eval(code, names) if code else ufloat(value, u) if u or carried else value
        total += getattr(names[name], "std_dev", 0.0)
    return total


seconds = []
for _ in range(int(sys.argv[2])):
    begin = time.process_time()
    result = trial()
    seconds.append(time.process_time() - begin)
print(statistics.median(seconds), result)
