// Puts the languages that a page can load when it is asked for them beside it: the build
// script of the program (tools/words) compiled them, and Cargo says where to.
//
//   node tools/languages.mjs DIRECTORY
//
// The first language is part of the program, and the one for tests goes with no page; all
// others have a checksum in their names.
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";

const into = join(process.argv[2], "words");
// Trunk has just built the same, so nothing is compiled: Cargo only repeats what it knows.
const build = "build --offline --locked --quiet --message-format json --lib --profile web --features web";
const target = "--no-default-features --target wasm32-unknown-unknown";
const lines = execFileSync("cargo", `${build} ${target}`.split(" "), { encoding: "utf8", maxBuffer: 2 ** 28 });
const said = lines.split("\n").filter((line) => line.includes('"build-script-executed"')).map((line) => JSON.parse(line));
const ours = said.find(({ package_id }) => package_id.includes("fillwright"));
if (!ours) throw new Error("Cargo does not say where the build script wrote");
const languages = readdirSync(ours.out_dir).filter((name) => /-[0-9a-f]{16}\.words$/.test(name));
if (languages.length) mkdirSync(into, { recursive: true });
for (const name of languages) copyFileSync(join(ours.out_dir, name), join(into, name));
