// Times a function that was built for WebAssembly: the median of several rounds,
// beside the native figure of the same run where there is one.
//
//   node tools/bench-wasm.mjs MODULE FUNCTION REPETITIONS WHAT [NATIVE]
//
// The function takes a number of repetitions; the native figure is in microseconds.
import { createRequire } from "node:module";
import { resolve } from "node:path";

const [module, name, repetitions, what, native] = process.argv.slice(2);
const run = createRequire(import.meta.url)(resolve(module))[name];
const count = Number(repetitions);
const ROUNDS = 15;

// The engine compiles the code better once it has seen it run.
for (let round = 0; round < 5; round += 1) {
  if (Number.isNaN(run(count))) throw new Error(`no result: ${what}`);
}
const times = Array.from({ length: ROUNDS }, () => {
  const start = process.hrtime.bigint();
  run(count);
  return Number(process.hrtime.bigint() - start) / 1e3 / count;
}).sort((a, b) => a - b);
const median = times[Math.floor(ROUNDS / 2)];
const beside = native ? `, ${(median / Number(native)).toFixed(2)} times the native ${Number(native).toFixed(1)}` : "";
console.log(`RESULT wasm: ${median.toFixed(1)} microseconds for ${what}${beside}`);
