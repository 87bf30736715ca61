#!/usr/bin/env python3
"""Monte Carlo here and with numpy, on the same machine in the same run: prints the ratio of the times, and
fails where the figures differ by more than the draws waver.

    tests/tool/numpy_compare.py [--native]

Builds the app's draws as they ship and runs them in Chromium (tests/wasm_draws.rs), with --native as machine
code (tests/bench/monte_carlo.rs); then makes the same draws with numpy. What is missing for that is said, and
the script ends with 2. The model here is written anew from its description, so that it checks the other one.
"""

import argparse
import json
import os
import shutil
import subprocess
import sys
import time

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
RUNS = 7
# The one that Debian's packages belong to.
DEBIAN = "/usr/bin/python3"


def missing(what):
    print(f"missing: {what}; nothing was compared")
    sys.exit(2)


def with_numpy():
    """numpy; where this Python has none, goes on in Debian's."""
    try:
        import numpy

        return numpy
    except ImportError:
        pass
    has = [DEBIAN, "-c", "import numpy"]
    if os.path.realpath(sys.executable) == os.path.realpath(DEBIAN) or not os.path.exists(DEBIAN):
        missing("numpy (Debian: apt-get install python3-numpy)")
    if subprocess.run(has, stderr=subprocess.DEVNULL, check=False).returncode != 0:
        missing("numpy (Debian: apt-get install python3-numpy)")
    sys.stdout.flush()
    os.execv(DEBIAN, [DEBIAN, os.path.abspath(__file__), *sys.argv[1:]])


def output(command, env=None):
    """What a command prints; its own words where it fails."""
    done = subprocess.run(command, cwd=ROOT, env=env, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False)
    if done.returncode != 0:
        print(done.stdout)
        sys.exit(f"failed: {' '.join(command)}")
    return done.stdout


def ours(native):
    """Inputs, figures and time of the draws here."""
    if native:
        out = output(["cargo", "bench", "--quiet", "--bench", "monte_carlo", "--", "--json"])
    else:
        driver = os.environ.get("CHROMEDRIVER") or shutil.which("chromedriver")
        if not driver:
            missing("chromedriver (Debian: apt-get install chromium-driver)")
        if not shutil.which("wasm-bindgen-test-runner"):
            missing("wasm-bindgen-test-runner (bash tests/tool/check.sh sets it up)")
        command = "cargo test --release --target wasm32-unknown-unknown --test wasm_draws -- --nocapture".split()
        out = output(command, {**os.environ, "CHROMEDRIVER": driver})
    lines = [line[line.index("{") :] for line in out.splitlines() if '{"draws"' in line or '"figures"' in line]
    if not lines:
        print(out)
        sys.exit("failed: the draws here printed no figures")
    return json.loads(lines[-1])


def balance(np, x, heat):
    """The seven figures of a recipe whose first and fourth liquid are dosed on fibre, the others on the first."""
    solids = {1: x["dose.1"] * x["fibre_flow"], 4: x["dose.4"] * x["fibre_flow"]}
    solids[2] = x["dose.2"] * solids[1]
    solids[3] = x["dose.3"] * solids[1]
    liquid = {number: mass / x[f"solids.{number}"] for number, mass in solids.items()}
    furnish = x["fibre_flow"] + sum(solids.values())
    on_hand = x["fibre_flow"] * x["fibre_moisture"] + sum(liquid.values()) - sum(solids.values())
    needed = (x["mat_moisture"] + x["drying_loss"]) * furnish
    dose = np.maximum(0.0, needed - on_hand)
    out = (on_hand + dose) / furnish
    mat = out - x["drying_loss"]
    raw = x["board_density"] * (x["thickness"] + x["surface_ratio"] * (x["sand_top"] + x["sand_bottom"]))
    dry = raw / (1.0 + x["board_moisture"])
    net = furnish * (1.0 - x["reject"])
    area = net / dry
    vapour = net * (mat - x["exit_moisture"]) + 2.0 * x["surface_spray"] * area
    volume = area * x["area_yield"] * x["thickness"]
    money = x["fibre_price"] * x["fibre_flow"] + sum(x[f"price.{number}"] * mass for number, mass in liquid.items())
    return {
        "water_dose": dose,
        "blender_moisture": out,
        "mat_wet": dry * (1.0 + mat),
        "line_speed": area / x["mat_width"],
        "press_heat": vapour * heat,
        "finished_volume": volume,
        "cost": money / volume,
    }


def run(np, task, seed):
    """One run: draws, balance, mean, standard deviation and the ends of the 95 % interval."""
    draw = np.random.default_rng(seed)
    x = dict(task["recipe"])
    for one in task["inputs"]:
        at, width = x[one["field"]], one["width"]
        if one["rectangular"]:
            x[one["field"]] = draw.uniform(at - width, at + width, task["draws"])
        else:
            x[one["field"]] = draw.normal(at, width, task["draws"])
    found = {}
    for name, values in balance(np, x, task["heat_per_water"]).items():
        low, high = np.quantile(values, [0.025, 0.975])
        found[name] = (values.mean(), values.std(ddof=1), low, high)
    return found


def compare(task, found):
    """Holds both against each other: the wavering of 100 000 draws, six times."""
    wrong = []
    for figure in task["figures"]:
        mean, standard, low, high = found[figure["figure"]]
        scale = figure["first_order"]
        # Standard errors of the mean 0.003, of the standard deviation 0.0022, of an end 0.0085 of u; both waver.
        for what, mine, other, limit in [
            ("mean", figure["mean"], mean, 0.027),
            ("standard deviation", figure["standard"], standard, 0.02),
            ("low", figure["low"], low, 0.075),
            ("high", figure["high"], high, 0.075),
        ]:
            if not abs(mine - other) <= limit * scale:
                wrong.append(f"{figure['figure']}: {what} {mine} here, {other} with numpy, u_c {scale}")
    return wrong


def main():
    arguments = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    arguments.add_argument("--native", action="store_true", help="machine code in place of Chromium")
    native = arguments.parse_args().native
    np = with_numpy()
    task = ours(native)
    times = []
    for seed in range(RUNS):
        start = time.perf_counter()
        found = run(np, task, seed)
        times.append((time.perf_counter() - start) * 1e3)
    wrong = compare(task, found)
    own, other = task["ms"], min(times)
    where = "native" if native else "Chromium"
    print(f"{task['draws']} draws, {len(task['inputs'])} inputs, {len(task['figures'])} figures, the least of {RUNS} runs")
    print(f"here ({where}) {own:.1f} ms, numpy {np.__version__} {other:.1f} ms, ratio {own / other:.2f}")
    for line in wrong:
        print(line)
    figures = 4 * len(task["figures"])
    print(f"figures: {'agree' if not wrong else 'DIFFER'}, {figures - len(wrong)} of {figures}")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
