#!/usr/bin/env python3
"""Draws how the walks' times grow: docs/growth.py RUN.json > docs/pictures/growth.svg, RUN.json from walks_bench."""
import json
import math
import sys

SIZES = {"small": 20, "big": 100, "factory": 1000, "hall": 10000}
LINES = [  # of the benchmark, what it is called, colour
    ("cold/phone_to_every_station", "ours", "#0b6e4f"),
    ("gridBuild+gridPhone", "5 cm grid", "#b8860b"),
    ("recastBuild+recastPhone", "navigation mesh", "#a23b72"),
    ("cgal/phone_to_every_station", "CGAL (search alone)", "#2e5eaa"),
]
LEFT, TOP, WIDTH, HEIGHT = 70, 40, 420, 300
LEAST, MOST = -1, 5  # milliseconds, as powers of ten


def milliseconds(runs, names, size):
    """The sum of the named benchmarks at a size, or None where one was left out."""
    times = [r["cpu_time"] for name in names.split("+") for r in runs
             if r["name"].split("/iterations")[0].split("/min_time")[0].rsplit("/", 1)[0] == name
             and r.get("label") == size and not r.get("error_occurred")]
    return sum(times) if len(times) == len(names.split("+")) else None


def at(machines, time):
    x = LEFT + WIDTH * (math.log10(machines) - 1) / 3
    return x, TOP + HEIGHT * (MOST - math.log10(time)) / (MOST - LEAST)


def draw(runs):
    yield ('<svg xmlns="http://www.w3.org/2000/svg" width="660" height="400" viewBox="0 0 660 400" '
           'font-family="sans-serif" font-size="13" fill="#333">')
    yield '<rect width="660" height="400" fill="#fff"/>'
    yield f'<text x="{LEFT}" y="22">One phone to every station, build included: milliseconds by machines</text>'
    for power in range(LEAST, MOST + 1):
        x, y = at(10, 10 ** power)
        yield f'<path d="M{x} {y:.1f}h{WIDTH}" stroke="#ddd"/>'
        yield f'<text x="{x - 6}" y="{y + 4:.1f}" text-anchor="end">{10 ** power:,g}</text>'
    for size, machines in SIZES.items():
        x, y = at(machines, 10 ** LEAST)
        yield f'<path d="M{x:.1f} {TOP}v{HEIGHT}" stroke="#ddd"/>'
        yield f'<text x="{x:.1f}" y="{y + 20:.1f}" text-anchor="middle">{size}</text>'
        yield f'<text x="{x:.1f}" y="{y + 37:.1f}" text-anchor="middle">{machines:,}</text>'
    for names, called, colour in LINES:
        times = [(n, milliseconds(runs, names, size)) for size, n in SIZES.items()]
        points = [at(n, time) for n, time in times if time]
        if not points:
            continue
        way = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
        yield f'<polyline points="{way}" fill="none" stroke="{colour}" stroke-width="2"/>'
        yield from (f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3.5" fill="{colour}"/>' for x, y in points)
        x, y = points[-1]
        if points[-1][0] < LEFT + WIDTH - 1:  # one that ends early is named above, clear of the others' lines
            x, y = x - 50, y - 14
        yield f'<text x="{x + 9:.1f}" y="{y + 4:.1f}" fill="{colour}">{called}</text>'
    yield "</svg>"


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as file:
        print("\n".join(draw(json.load(file)["benchmarks"])))
