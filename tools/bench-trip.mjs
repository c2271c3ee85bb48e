// Puts beside each other how long the planner takes for trips of twelve stops, natively
// and in WebAssembly, and how long SCIP takes for the same trips.
//
//   node tools/bench-trip.mjs MODULE NATIVE [SCIP]
//
// MODULE is the planner built for WebAssembly, NATIVE what the native bench printed,
// SCIP what random_trips.py --time printed.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { resolve } from "node:path";

const [module, nativeFile, scipFile] = process.argv.slice(2);
const planner = createRequire(import.meta.url)(resolve(module));
const native = JSON.parse(readFileSync(nativeFile, "utf8"));
const scip = scipFile ? JSON.parse(readFileSync(scipFile, "utf8")) : null;

const seconds = (run, index) => {
  const began = performance.now();
  return run(index) === undefined ? null : (performance.now() - began) / 1e3;
};
// The engine compiles the code better once it has seen it run, as it has after the
// first edit of a route.
for (let index = 0; index < 5; index += 1) planner.certificate(index);
const inWasm = native.map((trip, index) => {
  if (planner.has_fee(index) !== trip.fee) throw new Error("not the same trips");
  return { fee: trip.fee, first: seconds(planner.first_plan, index), proof: seconds(planner.certificate, index) };
});
const byScip = scip && native.map((trip, index) => ({ fee: trip.fee, first: null, proof: scip[index] }));

// A trip that was given up counts as longer than any.
const sorted = (times) => times.map((it) => it ?? Infinity).sort((a, b) => a - b);
const at = (times, part) => sorted(times)[Math.min(times.length - 1, Math.ceil(part * times.length) - 1)];
const ms = (time) => (time === Infinity ? "given up" : `${(time * 1e3).toFixed(time < 0.1 ? 1 : 0)} ms`);

function say(where, what, times, aim, part) {
  const within = times.filter((it) => it !== null && it < aim).length;
  console.log(
    `RESULT ${where}: ${what}: median ${ms(at(times, 0.5))}, 95 % within ${ms(at(times, 0.95))}, longest ${ms(at(times, 1))}; ` +
      `${within} of ${times.length} under ${ms(aim)} (aim: ${part})`,
  );
}

for (const [where, runs] of [["native", native], ["wasm", inWasm], ["SCIP", byScip]]) {
  if (!runs) continue;
  if (where !== "SCIP") {
    say(where, "first plan with its bound, 12 stops", runs.map((it) => it.first), 0.05, "median");
  }
  for (const [fee, aim] of [[false, 1], [true, 5]]) {
    const times = runs.filter((it) => it.fee === fee).map((it) => it.proof);
    say(where, `proof of 1 %, 12 stops, ${fee ? "with" : "without"} fees`, times, aim, "95 %");
  }
}
