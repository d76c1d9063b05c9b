"""Minimises the calibration's own residuals with SciPy's least_squares and compares optimum and time with ours."""
import json
import subprocess
import sys
import time

import numpy
import scipy
from scipy.optimize import least_squares

bench = sys.argv[1]
ours = json.loads(subprocess.run(["dotnet", bench, "fit", "ours"], capture_output=True, text=True, check=True).stdout.strip().splitlines()[-1])
server = subprocess.Popen(["dotnet", bench, "fit", "serve"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
about = json.loads(server.stdout.readline())
calls = 0


def residuals(values):
    global calls
    calls += 1
    server.stdin.write(json.dumps([float(v) for v in values]) + "\n")
    server.stdin.flush()
    return numpy.array(json.loads(server.stdout.readline()))


priors = numpy.array(ours["priors"])
start = time.perf_counter()
found = least_squares(
    residuals, numpy.zeros(about["unknowns"]), method="trf", loss="huber", f_scale=about["huber"], x_scale=priors, diff_step=None,
    jac=lambda x: numpy.column_stack([(residuals(x + d) - residuals(x)) / d[i] for i, d in enumerate(numpy.diag(0.15 * priors))]), ftol=1e-8, xtol=1e-6)
seconds = time.perf_counter() - start
server.stdin.close()
apart = numpy.max(numpy.abs(found.x - numpy.array(ours["values"])) / priors)
print(f"{about['unknowns']} unknowns, {about['readings']} readings; SciPy {scipy.__version__}")
print(f"ours : {ours['seconds']:.2f} s, {ours['evaluations']} computations, cost {ours['cost']:.4f}, {ours['ending']}")
print(f"SciPy: {seconds:.2f} s, {calls} computations, cost {found.cost:.4f}, status {found.status}")
print(f"times as long: {seconds / ours['seconds']:.1f}; cost apart {abs(found.cost / ours['cost'] - 1):.2e}; parameters apart by {apart:.3f} of their prior's deviation at most")
sys.exit(0 if found.cost > ours["cost"] * 0.999 else 1)
