#!/usr/bin/python3
"""Counts passes with skyfield's find_events, its own way to ask for them. Prints passes and seconds.

Usage: passes_skyfield.py FILE   (Debian: python3-skyfield)
"""
import sys
import time

from skyfield.api import EarthSatellite, load, wgs84

lines = open(sys.argv[1]).read().splitlines()
scale = load.timescale(builtin=True, delta_t=69.184)
birds = [EarthSatellite(lines[i + 1], lines[i + 2], ts=scale) for i, line in enumerate(lines) if line == "tle"]
sites = [wgs84.latlon(float(a), float(b), elevation_m=float(c))
         for a, b, c in (line.split()[1:] for line in lines if line.startswith("site"))]
start, end = (int(word) for word in next(line for line in lines if line.startswith("window")).split()[1:])


def at(seconds):
    return scale.utc(1970, 1, 1, 0, 0, seconds)


began = time.perf_counter()
passes = 0
for bird in birds:
    for site in sites:
        _, events = bird.find_events(site, at(start), at(end), altitude_degrees=0.0)
        passes += sum(1 for event in events if event == 0) + (1 if len(events) and events[0] != 0 else 0)
print(passes, time.perf_counter() - began)
