#!/usr/bin/env python3
"""The same draws with numpy, on the same machine in the same run: prints the ratio of the times, and fails
where the figures differ by more than the draws waver.

    tests/tool/numpy_compare.py [--measured MILLISECONDS]

With --measured the time is one taken elsewhere, such as in a browser; without it the native benchmark's.
numpy is installed into an environment of its own below target/; where that fails, nothing is compared, and
it is said so. The model here is written anew from its description, so that it checks the other one.
"""

import argparse
import json
import os
import subprocess
import sys
import time
import venv

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
TARGET = os.environ.get("CARGO_TARGET_DIR", os.path.join(ROOT, "target"))
PLACE = os.path.join(TARGET, "numpy")
RUNS = 7


def with_numpy():
    """Goes on in an environment that has numpy."""
    try:
        import numpy  # noqa: F401

        return
    except ImportError:
        pass
    python = os.path.join(PLACE, "bin", "python")
    if os.path.realpath(sys.prefix) == os.path.realpath(PLACE):
        skip("numpy cannot be imported though it was installed")
    try:
        if not os.path.exists(python):
            venv.create(PLACE, with_pip=True)
        subprocess.run([python, "-m", "pip", "install", "--quiet", "numpy"], check=True)
    except (subprocess.CalledProcessError, OSError) as error:
        skip(f"numpy cannot be installed ({error})")
    os.execv(python, [python, os.path.abspath(__file__), *sys.argv[1:]])


def skip(why):
    print(f"skipped: {why}; nothing was compared")
    sys.exit(0)


def ours():
    """Inputs, figures and time of the native benchmark."""
    command = ["cargo", "bench", "--quiet", "--bench", "monte_carlo", "--", "--json"]
    out = subprocess.run(command, cwd=ROOT, check=True, stdout=subprocess.PIPE, text=True).stdout
    return json.loads(out.strip().splitlines()[-1])


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
    vapour = net * (mat - x["exit_moisture"]) + x["surface_spray"] * area
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
    arguments = argparse.ArgumentParser()
    arguments.add_argument("--measured", type=float, help="milliseconds of a run measured elsewhere")
    measured = arguments.parse_args().measured
    with_numpy()
    import numpy as np

    task = ours()
    times = []
    for seed in range(RUNS):
        start = time.perf_counter()
        found = run(np, task, seed)
        times.append((time.perf_counter() - start) * 1e3)
    wrong = compare(task, found)
    own, other = measured if measured is not None else task["ms"], min(times)
    where = "measured" if measured is not None else "native"
    print(f"{task['draws']} draws, {len(task['inputs'])} inputs, {len(task['figures'])} figures")
    print(f"ours ({where}) {own:.1f} ms, numpy {np.__version__} {other:.1f} ms, ratio {own / other:.2f}")
    for line in wrong:
        print(line)
    print(f"{4 * len(task['figures']) - len(wrong)} passed, {len(wrong)} failed")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
