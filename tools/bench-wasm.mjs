// Times the solver that was built for WebAssembly: the median of several rounds,
// beside the native figure of the same run where there is one.
import { createRequire } from "node:module";
import { resolve } from "node:path";

const [module, native] = process.argv.slice(2);
const { solve_times: solveTimes } = createRequire(import.meta.url)(resolve(module));
const SOLUTIONS = 2000;
const ROUNDS = 15;

// The engine compiles the code better once it has seen it run.
for (let round = 0; round < 5; round += 1) {
  if (Number.isNaN(solveTimes(SOLUTIONS))) throw new Error("the fill has no solution");
}
const times = Array.from({ length: ROUNDS }, () => {
  const start = process.hrtime.bigint();
  solveTimes(SOLUTIONS);
  return Number(process.hrtime.bigint() - start) / 1e3 / SOLUTIONS;
}).sort((a, b) => a - b);
const median = times[Math.floor(ROUNDS / 2)];
const beside = native ? `, ${(median / Number(native)).toFixed(2)} times the native ${Number(native).toFixed(1)}` : "";
console.log(`RESULT wasm: ${median.toFixed(1)} microseconds for a full fill solution${beside}`);
