#!/usr/bin/env python3
"""Makes the records of an ordinary farm, and what really happened on it besides. The same every time.

animals.csv, events.csv: what the farm has typed in on day one. found.csv: what it types in when it signs for services and bulls.
truth.csv: all that is true besides and that nobody wrote down. The herd and every number are invented.
"""
from datetime import date, timedelta

seed = 20261004


def draw(n):
    """A number from 0 to n - 1 (Park and Miller's generator)."""
    global seed
    seed = seed * 48271 % 2147483647
    return seed % n


def day(text):
    return date.fromisoformat(text)


animals, events, found, truth = [], [], [], []


def row(to, when, animal, kind, value=""):
    to.append((when.isoformat(), animal, kind, value))


served, bull_from, bull_to = day("2025-10-10"), day("2025-11-15"), day("2025-12-13")
row(events, bull_from, "herd", "bull in")
row(events, bull_to, "herd", "bull out")
animals.append(("119", "982000000000119", "2022-08-20", "M", "", ""))

for n in range(1, 101):
    number = str(n)
    age = 3 + draw(7)
    born = date(2026 - age, 7, 20) + timedelta(draw(50))
    identity = "" if n in (17, 71) else f"982000000000{n:03d}"
    index = "" if n in (23, 58, 90) else str(60 + draw(180))
    animals.append((number, identity, born.isoformat(), "F", str(age - 2), index))
    by_bull = draw(10) < 2
    conceived = bull_from + timedelta(draw(28)) if by_bull else served + timedelta(draw(35))
    first = served + timedelta(draw(20))
    if not by_bull and (conceived - first).days >= 18:
        row(events, first, number, "mating")
    if not by_bull:
        row(events, conceived, number, "mating")
    else:
        row(events, first, number, "mating")
    calved = conceived + timedelta(277 + draw(10))
    row(events, day("2026-01-28"), number, "pregnancy test", "pregnant")
    row(events, day("2026-05-24") + timedelta(draw(16)), number, "drying off")
    row(events, calved, number, "calving")
    row(events, day("2026-03-10"), number, "body condition", f"{4 + draw(4) / 2}")
    row(events, day("2026-09-01"), number, "body condition", f"{3.5 + draw(4) / 2}")
    if n in (31, 64, 97):
        row(events, day("2026-09-28"), number, "BVD virus", "pending")
        row(truth, day("2026-09-29"), number, "BVD virus", "negative")
    elif n in (12, 45, 78, 83):
        row(truth, day("2026-09-01"), number, "BVD virus", "positive" if n == 78 else "negative")
    else:
        row(events, born + timedelta(40 + draw(30)), number, "BVD virus", "negative")
    hard = draw(100)
    if hard < 10:
        row(events, calved, number, ("hard calving", "retained membranes", "twins")[hard % 3])
        row(truth, min(calved + timedelta(24), day("2026-10-03")), number, "uterine check", "discharge" if hard == 0 else "clean")
    cycling = draw(100) < 88
    heat = calved + timedelta(30 + draw(25))
    seen = 0
    while cycling and heat <= day("2026-10-03"):
        if heat >= day("2026-09-01") and draw(100) < 60:
            row(events, heat, number, "heat")
        else:
            row(truth, heat, number, "heat")
        heat += timedelta(20 + draw(3))
    ill = draw(100)
    if ill < 18:
        kind = ("mastitis", "mastitis", "lameness", "milk fever", "ketosis", "fever")[ill % 6]
        row(events, calved + timedelta(2 + draw(50)) if calved + timedelta(52) < day("2026-10-03") else calved + timedelta(2), number, kind)
    if draw(100) < 8:
        row(events, day("2025-11-01") + timedelta(draw(200)), number, "lameness")

for n in range(101, 119):
    number = str(n)
    animals.append((number, f"982000000000{n:03d}", (day("2025-07-22") + timedelta(draw(45))).isoformat(), "F", "0", str(90 + draw(160))))
    row(events, day("2025-10-20"), number, "BVD virus", "negative")
    heat = day("2026-08-25") + timedelta(draw(20))
    while heat <= day("2026-10-03"):
        row(events if draw(100) < 60 else truth, heat, number, "heat")
        heat += timedelta(20 + draw(3))

# Two cows bought in May, in calf, with papers; one has had her blood tested here since.
for number, tested in (("201", True), ("202", False)):
    animals.append((number, f"982000000000{number}", "2021-08-10", "F", "3", "120"))
    row(events, day("2026-05-02"), number, "purchase")
    row(events, day("2026-08-05"), number, "calving")
    row(events, day("2025-09-20"), number, "BVD virus", "negative")
    row(events, day("2026-09-18"), number, "heat")
    row(events if tested else truth, day("2026-06-10"), number, "BVD virus", "negative")

# The relief milker had three cows served and wrote it on the wall; the neighbour's bull was in with two heifers for a night.
for number, when in (("5", "2026-09-12"), ("38", "2026-09-20"), ("66", "2026-09-27")):
    row(found, day(when), number, "mating")
for number in ("104", "111"):
    row(found, day("2026-09-05"), number, "bull in")
    row(found, day("2026-09-06"), number, "bull out")


def write(name, heading, rows):
    with open(name, "w", newline="\n") as file:
        file.write(heading + "\n" + "".join(",".join(cells) + "\n" for cells in rows))


write("animals.csv", "animal,official_id,born,sex,parity,breeding index", animals)
write("events.csv", "date,animal,kind,value", sorted(events))
write("found.csv", "date,animal,kind,value", sorted(found))
write("truth.csv", "date,animal,kind,value", sorted(truth))
