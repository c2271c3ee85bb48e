// compress.mjs DIRECTORY: a .br and a .gz twin beside every file that compresses
// well, at the highest setting, since it is done once per build.
// compress.mjs --sizes DIRECTORY: the brotli size of each file, and their sum.

import { readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { extname, join, relative } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const COMPRESSIBLE = new Set([".css", ".html", ".js", ".json", ".svg", ".txt", ".wasm", ".webmanifest"]);

function* files(directory) {
  for (const name of readdirSync(directory).sort()) {
    const path = join(directory, name);
    if (statSync(path).isDirectory()) yield* files(path);
    else yield path;
  }
}

function brotli(bytes) {
  return brotliCompressSync(bytes, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: 11,
      [constants.BROTLI_PARAM_LGWIN]: 24,
      [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
    },
  });
}

const sizesOnly = process.argv[2] === "--sizes";
const directory = process.argv[sizesOnly ? 3 : 2];
let total = 0;

for (const path of [...files(directory)]) {
  const bytes = readFileSync(path);
  const compressible = COMPRESSIBLE.has(extname(path));
  if (sizesOnly) {
    const size = compressible ? brotli(bytes).length : bytes.length;
    total += size;
    console.log(`${String(bytes.length).padStart(9)} ${String(size).padStart(9)}  ${relative(directory, path)}`);
  } else if (compressible) {
    writeFileSync(`${path}.br`, brotli(bytes));
    writeFileSync(`${path}.gz`, gzipSync(bytes, { level: 9 }));
  }
}

if (sizesOnly) console.log(`${"".padStart(9)} ${String(total).padStart(9)}  total`);
