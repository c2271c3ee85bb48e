"""Invented trips and their optima by SCIP, to hold the planner against.

    python random_trips.py            writes random.json and twelve_stops.json beside
                                      this file
    python random_trips.py --check    solves again and compares with both
    python random_trips.py --time     solves those of twelve stops to a gap of 1 % and
                                      prints how long each takes, as JSON

Nothing here knows the planner. The trips come from a fixed seed and are of the schema
trip_schema.json; their best plans are found by SCIP as a non-convex quadratic programme
with binaries for stops and calibrations. Seconds are those of one machine and are no
part of the comparison.
"""

import json
import pathlib
import random
import sys

import pyscipopt

FOLDER = pathlib.Path(__file__).parent
# name, seed, how many trips, how many stops (drawn where none is given)
FILES = [("random.json", 20_251, 220, None), ("twelve_stops.json", 20_252, 44, 12)]
TO_TIME = "twelve_stops.json"
FLUID = {
    "lhv_gasoline_mj_per_l": 32.0,
    "lhv_ethanol_mj_per_l": 21.2,
    "mol_per_l_gasoline": 7.5,
    "mol_per_l_ethanol": 17.1,
}
CALIBRATIONS = [
    ("BASE", 0.0, 0.15, 94.0),
    ("BASE98", 0.0, 0.2, 97.0),
    ("E30", 0.25, 0.38, 98.0),
    ("E50", 0.45, 0.6, 100.0),
    ("E70", 0.65, 0.85, 103.0),
    ("ANY", 0.0, 0.9, 94.0),
]
CHOICES = [["BASE"], ["BASE", "BASE98"], ["BASE98"], ["E30"], ["E30", "E50"], ["E50"],
           ["E50", "E70"], ["E70"], ["ANY"], ["ANY"], ["E30", "BASE98"]]
# name, least and most share, least and most RON, least and most price
FUELS = [
    ("P95", 0.0, 0.1, 95.0, 95.0, 1.55, 1.95),
    ("H85", 0.7, 0.85, 104.0, 107.0, 0.95, 1.4),
    ("P98", 0.0, 0.05, 98.0, 98.0, 1.7, 2.15),
    ("M40", 0.35, 0.5, 99.0, 102.0, 1.25, 1.65),
]


def invent(chance, number, stops):
    """One trip; whether it has a plan is not looked at."""
    stops = stops or chance.choice([5, 6, 7, 8, 8, 9, 10, 12])
    fee = [0.0, 2.0][number % 2]
    by_volume = chance.random() < 0.15
    capacity = chance.choice([45, 50, 55, 60])
    names = FUELS[: chance.choice([2, 3, 3, 4])]
    places, legs = [], []
    allowed = chance.choice(CHOICES)
    for index in range(stops):
        offered = [fuel for fuel in names if chance.random() < 0.8] or [names[0]]
        fuels = []
        for name, weak, strong, low, high, cheap, dear in offered:
            fuel = {
                "id": name,
                "ethanol_share_vol": round(chance.uniform(weak, strong), 2),
                "ron": round(chance.uniform(low, high), 1),
                "price_eur_per_l": round(chance.uniform(cheap, dear), 2),
            }
            if chance.random() < 0.08:
                fuel["max_l"] = float(chance.randint(10, 30))
            fuels.append(fuel)
        places.append({"id": f"S{index}", "fixed_cost_eur": fee, "fuels": fuels})
        # A wish for another blend at every stop would leave hardly any plan.
        if chance.random() < 0.35:
            allowed = chance.choice(CHOICES)
        leg = {
            "id": f"L{index}",
            "distance_km": float(chance.randrange(80, 330, 10)),
            "allowed_calibrations": allowed,
        }
        if by_volume:
            leg["litres_per_100km"] = round(chance.uniform(7.0, 10.5), 1)
        else:
            leg["energy_mj_per_km"] = round(chance.uniform(2.2, 3.2), 2)
        legs.append(leg)
    kind = number % 10
    if kind == 8 and not by_volume:
        burnt = sum(leg["distance_km"] * leg["energy_mj_per_km"] for leg in legs)
        objective = {
            "type": "max_ethanol_energy_share",
            "max_cost_eur": round(burnt / 32.0 * chance.uniform(1.5, 1.9), 0),
        }
    elif kind == 9:
        objective = {"type": "min_stops_then_cost"}
    else:
        objective = {"type": "min_cost"}
    return {
        "schema": "trip-blend/1",
        "id": f"R{number:03}",
        "consumption_model": "volume" if by_volume else "energy",
        "fluid": FLUID,
        "car": {
            "tank_capacity_l": capacity,
            "min_arrival_l": 5,
            "start_volume_l": chance.randint(8, 30),
            "start_ethanol_share_vol": round(chance.choice([0.08, 0.1, 0.3, 0.5, 0.75]), 2),
            "start_ron": 95.0 if chance.random() < 0.5 else 100.0,
        },
        "calibrations": [
            {"id": name, "ethanol_min_share_vol": low, "ethanol_max_share_vol": high, "ron_min": ron}
            for name, low, high, ron in CALIBRATIONS
        ],
        "stops": places,
        "legs": legs,
        "objective": objective,
        "end": {"min_volume_l": 10.0} if chance.random() < 0.2 else None,
        "uncertainty": None,
    }


# Each trip is solved in two ways. Where they differ, one of them is wrong, and the
# trip is left out: at the tighter tolerance SCIP now and then cuts off the best plan.
WAYS = [
    {"numerics/feastol": 1e-8},
    {"numerics/feastol": 1e-7, "randomization/permutationseed": 7},
]


class Trip:
    """A trip as a SCIP model, in litres of petrol of equal energy."""

    def __init__(self, instance, way):
        self.model = model = pyscipopt.Model()
        model.hideOutput()
        model.setParam("limits/gap", 1e-7)
        model.setParam("limits/time", 60.0)
        for name, value in way.items():
            model.setParam(name, value)
        fluid, car = instance["fluid"], instance["car"]
        by_volume = instance["consumption_model"] == "volume"
        h_g, h_e = fluid["lhv_gasoline_mj_per_l"], fluid["lhv_ethanol_mj_per_l"]
        n_g, n_e = fluid["mol_per_l_gasoline"], fluid["mol_per_l_ethanol"]
        c = 0.0 if by_volume else 1.0 - h_e / h_g

        def worth(share, ron):
            moles = n_g + (n_e - n_g) * share
            return 1.0 - c * share, share, moles * (ron - 95.0) / n_g

        size = car["tank_capacity_l"]
        windows = {each["id"]: each for each in instance["calibrations"]}
        start = worth(car["start_ethanol_share_vol"], car["start_ron"])
        tank = [amount * car["start_volume_l"] for amount in start]
        self.spent, self.used, self.shares = [], [], []
        total = 0.0
        for index, (stop, leg) in enumerate(zip(instance["stops"], instance["legs"])):
            use = model.addVar(vtype="B")
            bought = []
            for fuel in stop["fuels"]:
                litres = model.addVar(lb=0.0, ub=min(size, fuel.get("max_l", size)))
                self.spent.append(litres * fuel["price_eur_per_l"])
                bought.append((litres, worth(fuel["ethanol_share_vol"], fuel["ron"])))
            model.addCons(pyscipopt.quicksum(litres for litres, _ in bought) <= size * use)
            self.spent.append(use * stop["fixed_cost_eur"])
            self.used.append(use)
            if by_volume:
                takes = leg["litres_per_100km"] * leg["distance_km"] / 100.0
            else:
                takes = leg["energy_mj_per_km"] * leg["distance_km"] / h_g
            energy = model.addVar(lb=0.0, ub=size)
            ethanol = model.addVar(lb=0.0, ub=size)
            octane = model.addVar(lb=-20.0 * size, ub=40.0 * size)
            u = model.addVar(lb=0.0, ub=1.0 / (1.0 - c))
            w = model.addVar(lb=-20.0, ub=60.0)
            for which, amount in enumerate((energy, ethanol, octane)):
                poured = pyscipopt.quicksum(litres * gives[which] for litres, gives in bought)
                model.addCons(amount == tank[which] + poured)
            model.addCons(ethanol == energy * u)
            model.addCons(octane == energy * w)
            model.addCons(energy + c * ethanol <= size)
            picks = [model.addVar(vtype="B") for _ in leg["allowed_calibrations"]]
            model.addCons(pyscipopt.quicksum(picks) == 1)
            for pick, name in zip(picks, leg["allowed_calibrations"]):
                window = windows[name]
                low, high = window["ethanol_min_share_vol"], window["ethanol_max_share_vol"]
                volume = energy + c * ethanol
                model.addCons(ethanol - low * volume >= -size * (1 - pick))
                model.addCons(high * volume - ethanol >= -size * (1 - pick))
                moles = energy + (n_e / n_g - (1.0 - c)) * ethanol
                surplus = octane - (window["ron_min"] - 95.0) * moles
                model.addCons(surplus >= -60.0 * size * (1 - pick))
            tank = [energy - takes, ethanol - takes * u, octane - takes * w]
            least = car["min_arrival_l"]
            if instance["end"] and index + 1 == len(instance["legs"]):
                least = max(least, instance["end"]["min_volume_l"])
            model.addCons(tank[0] + c * tank[1] >= least)
            self.shares.append(takes * (1.0 - c) * u)
            total += takes
        self.cost = pyscipopt.quicksum(self.spent)
        self.stops = pyscipopt.quicksum(self.used)
        self.share = pyscipopt.quicksum(self.shares) * (1.0 / total)

    def best(self, what, sense):
        """The optimum of an expression, with its bound; None where there is no plan."""
        value = self.model.addVar(lb=None)
        self.model.addCons(value == what)
        self.model.setObjective(value, sense)
        self.model.optimize()
        status = self.model.getStatus()
        if status == "infeasible":
            return None
        if status not in ("optimal", "gaplimit"):
            raise TimeoutError(status)
        return self.model.getObjVal(), self.model.getDualbound()


def solve(instance):
    """What is known of the answer, twice over."""
    first, second = (solve_in_one_way(instance, way) for way in WAYS)
    if not agree(first, second):
        raise Disagreement(f"{first} or {second}")
    return first


class Disagreement(Exception):
    """Two ways to solve a trip lead to two answers."""


def agree(first, second):
    """Whether two answers are the same, give or take the tolerances."""
    a, b = first.get("objective_value", 0.0), second.get("objective_value", 0.0)
    return first["status"] == second["status"] and abs(a - b) <= 1e-6 * (1.0 + abs(a))


def solve_in_one_way(instance, way):
    """What is known of the answer."""
    goal = instance["objective"]
    trip = Trip(instance, way)
    budget = goal.get("max_cost_eur")
    if budget is not None:
        trip.model.addCons(trip.cost <= budget)
    seconds = 0.0
    if goal["type"] == "min_stops_then_cost":
        fewest = trip.best(trip.stops, "minimize")
        seconds = trip.model.getSolvingTime()
        best = fewest
        if fewest is not None:
            stops = round(fewest[0])
            trip = Trip(instance, way)
            trip.model.addCons(trip.stops <= stops)
            cost = trip.best(trip.cost, "minimize")
            best = (1000.0 * stops + cost[0], 1000.0 * stops + cost[1])
    elif goal["type"] == "min_cost":
        best = trip.best(trip.cost, "minimize")
    else:
        best = trip.best(trip.share, "maximize")
    seconds += trip.model.getSolvingTime()
    version = f"SCIP {trip.model.version()}, PySCIPOpt {pyscipopt.__version__}"
    if best is None:
        return {"status": "infeasible", "scip_seconds": round(seconds, 3), "proof": [version]}
    absolute = 0.0005 if goal["type"] == "max_ethanol_energy_share" else 0.05
    return {
        "status": "optimal",
        "objective_value": round(best[0], 7),
        "proved_bound": round(best[1], 7),
        "accept_if_objective_within": {
            "absolute": absolute,
            "relative": 1e-3,
            "feasibility_tolerance_l": 1e-3,
        },
        "scip_seconds": round(seconds, 3),
        "proof": [version],
    }


def compute(seed, count, stops):
    """The trips that SCIP could settle: most have a plan, some have none."""
    chance = random.Random(seed)
    kept, without, number = [], 0, 0
    while len(kept) < count:
        number += 1
        instance = invent(chance, number, stops)
        try:
            reference = solve(instance)
        except (TimeoutError, Disagreement) as problem:
            print(instance["id"], problem, file=sys.stderr)
            continue
        if reference["status"] == "infeasible":
            without += 1
            if without > count // 10:
                continue
        instance["reference"] = reference
        kept.append(instance)
        print(len(kept), instance["id"], instance["objective"]["type"], reference["status"],
              reference.get("objective_value"), reference["scip_seconds"], file=sys.stderr, flush=True)
    return kept


def main():
    match sys.argv[1:]:
        case []:
            for name, *how in FILES:
                each = (json.dumps(trip, separators=(",", ":")) for trip in compute(*how))
                lines = ",\n".join(each)
                text = '{"schema":"trip-blend/1","instances":[\n' + lines + "\n]}\n"
                (FOLDER / name).write_text(text)
        case ["--check"]:
            for name, *_ in FILES:
                for known in read(name):
                    before = known.pop("reference")
                    after = solve(known)
                    if not agree(before, after):
                        sys.exit(f"{known['id']}: {before} became {after}")
        case ["--time"]:
            way = {"limits/gap": 0.01, "limits/time": 600.0}
            times = (solve_in_one_way(trip, way)["scip_seconds"] for trip in read(TO_TIME))
            print(json.dumps(list(times)))
        case _:
            sys.exit(__doc__)


def read(name):
    return json.loads((FOLDER / name).read_text())["instances"]


if __name__ == "__main__":
    main()
