// Writes service-worker.js for a build: the last step, since it lists all files by
// their content.
//
//   node tools/precache.mjs DIRECTORY
import { createHash } from "node:crypto";
import { readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

const directory = process.argv[2];
const RESULT = "service-worker.js";
const source = readFileSync(new URL("../src/service-worker.js", import.meta.url), "utf8");
const sum = (bytes, form) => createHash("sha256").update(bytes).digest(form);

function* files(below) {
  for (const name of readdirSync(below).sort()) {
    const path = join(below, name);
    if (statSync(path).isDirectory()) yield* files(path);
    else yield path;
  }
}

const list = {};
for (const path of files(directory)) {
  const name = relative(directory, path).split(sep).join("/");
  // The page is known by the address of its directory.
  const address = name === "index.html" ? "./" : `./${name}`;
  if (name !== RESULT) list[address] = `sha256-${sum(readFileSync(path), "base64")}`;
}
const text = source.replace('"%FILES%"', () => JSON.stringify(list, null, 2));
const version = sum(text, "hex").slice(0, 16);
writeFileSync(join(directory, RESULT), text.replace("%VERSION%", version));
