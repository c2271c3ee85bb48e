// Completes a release build; Trunk runs it when all files are there (see Trunk.toml).
//
//   node tools/finish-page.mjs DIRECTORY
//
// - The files of the worker that plans get names with a checksum, as Trunk gives all
//   others, and the page says the new name.
// - The app is fetched once the page is on the screen: half a megabyte on the way would
//   keep the styles waiting for it.
// - The styles, a file for each thing that they style, become one file: each would be
//   a request that the first picture waits for.
// - The page gets its content security policy, which knows its one inline script by
//   its checksum, and the checksums of the styles and scripts that it names.
import { createHash } from "node:crypto";
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const directory = process.argv[2];
const read = (name) => readFileSync(join(directory, name), "utf8");
const write = (name, text) => writeFileSync(join(directory, name), text);

// Replaces a text that has to be there.
function replaced(text, from, to) {
  if (!text.includes(from)) throw new Error(`${from} is not where it is looked for`);
  return text.replaceAll(from, to);
}

// Gives a file a name with a checksum; returns that.
function named_by_content(name) {
  const sum = createHash("sha256").update(readFileSync(join(directory, name))).digest("hex");
  const [, stem, end] = name.match(/^(.*?)((?:_bg|_loader)?\.\w+)$/);
  const better = `${stem}-${sum.slice(0, 16)}${end}`;
  renameSync(join(directory, name), join(directory, better));
  return better;
}

// From the innermost outwards, since each names the next.
function named_worker() {
  const wasm = named_by_content("planner_bg.wasm");
  write("planner.js", replaced(read("planner.js"), "planner_bg.wasm", wasm));
  const script = named_by_content("planner.js");
  write("planner_loader.js", replaced(read("planner_loader.js"), "planner.js", script));
  return named_by_content("planner_loader.js");
}

// Those for paper alone stay apart: a screen does not wait for them.
function with_one_style(page) {
  const links = [...page.matchAll(/<link (?![^>]*media=)[^>]*rel=stylesheet[^>]*>/g)].map(([tag]) => tag);
  const names = links.map((tag) => tag.match(/href=\.\/([^ >]+)/)[1]);
  write("style.css", names.map(read).join("\n"));
  for (const name of names) rmSync(join(directory, name));
  const [first, ...others] = links;
  const one = replaced(page, first, first.replace(names[0], named_by_content("style.css")));
  return others.reduce((text, tag) => replaced(text, tag, ""), one);
}

function policy(page) {
  const inline = [...page.matchAll(/<script(?![^>]* src=)[^>]*>([^]+?)<\/script>/g)];
  const sums = inline.map(([, text]) => createHash("sha256").update(text).digest("base64"));
  return [
    "default-src 'none'",
    `script-src 'self' 'wasm-unsafe-eval' ${sums.map((sum) => `'sha256-${sum}'`).join(" ")}`,
    ...["style-src", "img-src", "connect-src", "worker-src", "manifest-src"].map((it) => `${it} 'self'`),
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

// The WASM file is left out: browsers warn that they ignore a checksum there. What is
// kept on the device is checked file by file (src/service-worker.js).
function with_checksums(page) {
  const named = /<link [^>]*rel=(?:stylesheet|modulepreload)>|<script src=[^>]*>/g;
  return page.replace(named, (tag) => {
    const [, name] = tag.match(/(?:href|src)=\.\/([^ >]+)/);
    const sum = createHash("sha384").update(readFileSync(join(directory, name))).digest("base64");
    return tag.replace(" ", ` integrity=sha384-${sum} `);
  });
}

// A page that nobody looks at is never drawn, so it does not wait for that.
const PICTURE = `await new Promise((there) => {
  if (document.hidden) there();
  else requestAnimationFrame(() => setTimeout(there));
});
`;

function with_picture_first(page) {
  const [preload] = page.match(/<link [^>]*rel=preload type=application\/wasm>/);
  const load = "const wasm = await init(";
  return replaced(replaced(page, preload, ""), load, PICTURE + load);
}

const trunk = replaced(read("index.html"), "planner_loader.js", named_worker());
const named = with_one_style(with_picture_first(trunk));
const page = with_checksums(named);
if (page === named) throw new Error("no style or script is named where it is looked for");
const first = "<meta charset=utf-8>";
const meta = `<meta http-equiv=Content-Security-Policy content="${policy(page)}">`;
write("index.html", replaced(page, first, first + meta));
