// Reads the Rust files under src/ and checks how the modules depend on each other.
//
//   node tools/structure.mjs [--graph] [--self-check]
//
// --graph also prints the edges between the top folders of the library; --self-check
// only proves that each kind of violation is found, which every run does first.
//
// 1. No circle between folders at the same level. A folder is a module with child
//    modules; what happens below it counts as its own.
// 2. No circle among the files of a folder, nor among its files and folders. The parent
//    itself (mod.rs) is left out: parent and child may need each other.
//    Of a circle the edges are told that go against the order in which the fewest do:
//    those to turn around or to take away, so far as one can say by counting.
// 3. The top folders of the library depend in the direction of LAYERS only, and the
//    app and the worker depend on the library only.
// 4. No two modules of the library define a public type of the same name.
// 5. Every file begins with a line that says its one idea (`//!`).
//
// A path counts as an edge to the module that defines the item, however often the item
// is exported anew on the way. A module that is imported is no edge by itself; what is
// reached through it is. Strings, comments and tests do not count. What a macro defines
// is not known by name: it counts as an item of the module that the path ends in, and
// its types are not compared.
import { readFileSync, readdirSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

// From the top to the bottom. A folder may need those in lower brackets alone.
const LAYERS = [
  ["words"],
  ["share", "keeping", "methods"],
  ["answers"],
  ["document", "fill", "hardware", "trip"],
  ["tank", "power", "calibration"],
  ["fuel"],
  ["workings"],
  ["quantity", "source"],
  ["message"],
];

// What may be needed against the direction, item by item, and why. One that nothing
// needs any more is an error, so that the list holds no leftovers.
const EXCEPTIONS = [];

const LIBRARY = "fillwright";
const CRATES = [["library", "lib.rs"], ["app", "main.rs"], ["planner", "planner.rs"]];
const TYPES = new Set(["struct", "enum", "trait", "type", "union"]);
const DEFINES = new Set([...TYPES, "fn", "const", "static", "mod", "use"]);
const ENDS_AT_SEMICOLON = new Set(["use", "const", "static", "type", "let"]);

// ---- Reading -----------------------------------------------------------------------

const TOKEN =
  /\s+|\/\/[^\n]*|(?<comment>\/\*)|(?<raw>b?c?r(?<hashes>#*)")|(?<text>[bc]?"(?:\\[^]|[^"\\])*")|(?<letter>b?'(?:\\(?:u\{[^}]*\}|x..|[^])|[^'\\])')|(?<lifetime>'\w+)|(?<word>(?:r#)?[\p{XID_Start}_]\p{XID_Continue}*)|(?<number>\d[\w]*(?:\.\d\w*)?)|(?<mark>::|[^])/uy;

/** The words and marks of a source, each with its line, without comments and texts. */
function tokens(source) {
  const found = [];
  let at = 0;
  let line = 1;
  while (at < source.length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(source);
    const { comment, raw, hashes, text, letter, number, word, mark } = match.groups;
    let end = TOKEN.lastIndex;
    if (comment) {
      // Comments of this kind nest.
      const ends = /\/\*|\*\//g;
      ends.lastIndex = end;
      for (let depth = 1; depth > 0; ) {
        const next = ends.exec(source);
        depth += next === null ? -depth : next[0] === "/*" ? 1 : -1;
        end = next === null ? source.length : ends.lastIndex;
      }
    } else if (raw) {
      const close = source.indexOf(`"${hashes}`, end);
      end = close < 0 ? source.length : close + 1 + hashes.length;
    }
    if (word) found.push({ text: word.replace(/^r#/, ""), word: true, line });
    else if (mark) found.push({ text: mark, word: false, line });
    else if (raw || text || letter || number) found.push({ text: "\"\"", word: false, line });
    line += source.slice(at, end).split("\n").length - 1;
    at = end;
  }
  return found;
}

const OPEN = { "(": ")", "[": "]", "{": "}" };

/** The place after the bracket that opens at `at` has closed. */
function after_brackets(list, at) {
  let depth = 0;
  for (let i = at; i < list.length; i += 1) {
    if (list[i].text in OPEN) depth += 1;
    else if (")]}".includes(list[i].text)) depth -= 1;
    if (depth === 0) return i + 1;
  }
  return list.length;
}

/** The place after the item, field or variant that begins at `at`. */
function after_item(list, at) {
  let i = at;
  while (list[i]?.text === "#") i = after_brackets(list, i + 1);
  let keyword = null;
  for (; i < list.length; i += 1) {
    const { text } = list[i];
    if (text === "pub" && list[i + 1]?.text === "(") i = after_brackets(list, i + 1) - 1;
    else if (text === ";") return i + 1;
    else if (text === "," && keyword === null) return i + 1;
    else if (")]}".includes(text)) return i;
    else if (text in OPEN) {
      i = after_brackets(list, i) - 1;
      if (text === "{" && !ENDS_AT_SEMICOLON.has(keyword)) return i + 1;
    } else if (DEFINES.has(text) || text === "impl" || text === "let") {
      // A `const fn` is a function.
      if (keyword === null || keyword === "const") keyword = text;
    }
  }
  return i;
}

/** The same without what is compiled for tests only. */
function without_tests(list) {
  const kept = [];
  for (let i = 0; i < list.length; ) {
    const inner = list[i].text === "#" && list[i + 1]?.text === "!";
    const open = i + (inner ? 2 : 1);
    if (list[i].text === "#" && list[open]?.text === "[") {
      const end = after_brackets(list, open);
      const words = list.slice(open, end).map((it) => it.text);
      if (words[1] === "cfg" && words.includes("test") && !words.includes("not")) {
        if (inner) return [];
        i = after_item(list, end);
        continue;
      }
    }
    kept.push(list[i]);
    i += 1;
  }
  return kept;
}

/** The paths of a use tree that begins at `at`, and the place after it. */
function use_tree(list, at, before = []) {
  const path = [...before];
  let i = at;
  const { line } = list[at];
  for (;;) {
    const { text, word } = list[i];
    if (text === "::") i += 1;
    else if (text === "{") {
      const found = [];
      i += 1;
      while (list[i].text !== "}") {
        if (list[i].text === ",") i += 1;
        else {
          const [inner, end] = use_tree(list, i, path);
          found.push(...inner);
          i = end;
        }
      }
      return [found, i + 1];
    } else if (text === "*") return [[{ path, glob: true, line }], i + 1];
    else if (word && text === "as") {
      return [[{ path, name: list[i + 1].text, line }], i + 2];
    } else if (word) {
      // `a::{self}` is `a`.
      if (text !== "self" || path.length === 0) path.push(text);
      i += 1;
    } else return [[{ path, name: path.at(-1), line }], i];
  }
}

/** How visible the item is whose keyword stands at `at`: "pub", "within" or "". */
function visibility(list, at) {
  let i = at - 1;
  while (i >= 0 && ["unsafe", "async", "const", "extern", "auto", "\"\""].includes(list[i].text)) i -= 1;
  if (list[i]?.text === "pub") return "pub";
  if (list[i]?.text !== ")") return "";
  while (i >= 0 && list[i].text !== "(") i -= 1;
  return list[i - 1]?.text === "pub" ? "within" : "";
}

function new_module(name, parent, file, crate) {
  const names = parent ? [...parent.names, name] : [];
  const label = names.join("::") || crate;
  return { name, names, label, parent, file, crate, line: 1, visible: "pub", children: new Map(), items: new Map(), uses: [], locals: [], paths: [], words: [] };
}

/** Fills a module from its tokens, and its child modules from their files. */
function read_module(module, list, tree, problems) {
  let depth = 0;
  for (let i = 0; i < list.length; i += 1) {
    const { text, word, line } = list[i];
    if (text === "{") depth += 1;
    else if (text === "}") depth -= 1;
    if (!word) continue;
    const before = list[i - 1]?.text;
    const next = list[i + 1];
    if (text === "use" && (next?.word || next?.text === "::" || next?.text === "{")) {
      const [found, end] = use_tree(list, i + 1);
      const visible = visibility(list, i);
      for (const it of found) (depth === 0 ? module.uses : module.locals).push({ ...it, visible });
      i = end - 1;
    } else if (text === "mod" && next?.word && depth === 0) {
      const child = new_module(next.text, module, module.file, module.crate);
      child.visible = visibility(list, i);
      module.children.set(child.name, child);
      if (list[i + 2].text === "{") {
        child.inline = true;
        child.line = line;
        const end = after_brackets(list, i + 2);
        read_module(child, list.slice(i + 3, end - 1), tree, problems);
        i = end - 1;
      } else {
        const base = child.names.join("/");
        child.file = [`${base}.rs`, `${base}/mod.rs`].find((it) => tree.has(it));
        if (child.file) read_module(child, without_tests(tokens(tree.get(child.file))), tree, problems);
        else {
          child.file = module.file;
          problems.push({ rule: 3, text: `${module.label} -> ${child.label} (a module whose file is not in its place) at src/${module.file}:${line}` });
        }
      }
    } else {
      if (depth === 0 && next?.word && (DEFINES.has(text) && next.text !== "fn" || text === "macro_rules")) {
        module.items.set(next.text, { type: TYPES.has(text), visible: visibility(list, i), line });
      } else if (depth === 0 && text === "macro_rules" && next?.text === "!") {
        module.items.set(list[i + 2].text, { type: false, visible: "within", line });
      }
      if (before === "::" && list[i - 2]?.word) continue;
      // A field or a method, unless it is the end of a range or the rest of a struct.
      if (before === "." && list[i - 2]?.text !== ".") continue;
      module.words.push({ text, line });
      const path = [text];
      let end = i;
      while (list[end + 1]?.text === "::" && list[end + 2]?.word) {
        path.push(list[end + 2].text);
        end += 2;
      }
      if (path.length > 1) module.paths.push({ path, line });
    }
  }
}

// ---- Finding what a path means -----------------------------------------------------

const ELSEWHERE = { elsewhere: true };

/** What a path means in a module, seen from its inside: a module, an item, or elsewhere. */
function resolved(module, path, crates, wants_module, seen) {
  let here = module;
  let i = 0;
  let inside = true;
  for (; i < path.length; i += 1) {
    const segment = path[i];
    if (i === 0 && segment === "crate") {
      while (here.parent) here = here.parent;
    } else if (segment === "self") continue;
    else if (segment === "super") here = here.parent ?? here;
    else if (i === 0 && segment === LIBRARY && module.crate !== "library") here = crates.get("library");
    else {
      const last = i === path.length - 1;
      const found = looked_up(here, segment, crates, last ? wants_module : true, inside && i === 0, seen);
      if (found === null) return i === 0 ? ELSEWHERE : { module: here, name: segment };
      if (found.elsewhere || found.name !== undefined) return found;
      here = found.module;
    }
    if (here === undefined) return ELSEWHERE;
    inside = false;
  }
  return { module: here };
}

/** What a name means in a module. A name can be both a module and an item. */
function looked_up(module, name, crates, wants_module, inside, seen = new Set()) {
  const key = `${module.crate}:${module.names.join("::")}|${name}|${wants_module}`;
  if (seen.has(key)) return null;
  seen = new Set(seen).add(key);
  const child = module.children.get(name);
  if (child && wants_module) return { module: child };
  if (module.items.has(name)) return { module, name };
  let other = null;
  for (const it of [...module.uses, ...(inside ? module.locals : [])]) {
    if (it.glob || it.name !== name) continue;
    const found = resolved(module, it.path, crates, wants_module, seen);
    // What comes from another crate is this module's to give.
    const given = found.elsewhere ? { module, name } : found;
    const fits = wants_module === (given.name === undefined);
    if (fits && !found.elsewhere) return given;
    other ??= given;
  }
  if (child) return { module: child };
  if (other) return other;
  for (const it of [...module.uses, ...(inside ? module.locals : [])]) {
    if (!it.glob) continue;
    const source = resolved(module, it.path, crates, true, seen);
    if (source.elsewhere || source.name !== undefined || source.module === module) continue;
    const found = looked_up(source.module, name, crates, wants_module, false, seen);
    if (found) return found;
  }
  return null;
}

function* modules_of(module) {
  yield module;
  for (const child of module.children.values()) yield* modules_of(child);
}

/** A module in the text of a file counts as that file's. */
const file_module = (module) => (module.inline ? file_module(module.parent) : module);

function edges_of(crates) {
  const edges = new Map();
  const add = (from, found, line) => {
    if (found === null || found.elsewhere) return;
    const [one, other] = [file_module(from), file_module(found.module)];
    if (one === other || found.name === undefined) return;
    const key = `${one.crate} ${one.label} ${other.crate} ${other.label} ${found.name}`;
    if (!edges.has(key)) edges.set(key, { from: one, to: other, item: found.name, file: one.file, line });
  };
  for (const root of crates.values()) {
    for (const module of modules_of(root)) {
      for (const it of [...module.uses, ...module.locals]) {
        const found = resolved(module, it.path, crates, it.glob === true);
        if (!it.glob || found.name !== undefined) add(module, found, it.line);
        else if (!found.elsewhere && it.visible === "") {
          for (const word of module.words) {
            if (!module.items.has(word.text)) add(module, looked_up(found.module, word.text, crates, false, false), word.line);
          }
        }
      }
      for (const it of module.paths) add(module, resolved(module, it.path, crates, false), it.line);
    }
  }
  return [...edges.values()];
}

// ---- The checks --------------------------------------------------------------------

const told = (edge) => `${edge.from.label} -> ${edge.to.label} (${edge.item}) at src/${edge.file}:${edge.line}`;

/** The groups of nodes that reach each other, of two and more. */
function circles(nodes, next) {
  const reached = new Map(
    nodes.map((node) => {
      const found = new Set();
      const open = [...(next.get(node)?.keys() ?? [])];
      while (open.length > 0) {
        const one = open.pop();
        if (!found.has(one)) open.push(...(next.get(one)?.keys() ?? []));
        found.add(one);
      }
      return [node, found];
    }),
  );
  const groups = [];
  for (const node of nodes) {
    if (groups.some((group) => group.includes(node))) continue;
    const group = nodes.filter((it) => it === node || (reached.get(node).has(it) && reached.get(it).has(node)));
    if (group.length > 1) groups.push(group);
  }
  return groups;
}

/** An order of the nodes with few edges from a later to an earlier one: those are the circle's. */
function least_against(group, next) {
  const weight = (one, other) => next.get(one)?.get(other)?.length ?? 0;
  let order = [...group];
  const cost = (list) => list.reduce((sum, one, i) => sum + list.slice(0, i).reduce((inner, other) => inner + weight(one, other), 0), 0);
  for (let better = true; better; ) {
    better = false;
    for (let i = 0; i < order.length; i += 1) {
      for (let j = 0; j < order.length; j += 1) {
        const moved = order.filter((_, at) => at !== i);
        moved.splice(j, 0, order[i]);
        if (cost(moved) < cost(order)) {
          order = moved;
          better = true;
        }
      }
    }
  }
  return order.flatMap((one, i) => order.slice(0, i).flatMap((other) => next.get(one)?.get(other) ?? []));
}

function circle_problems(crates, edges) {
  const problems = [];
  for (const root of crates.values()) {
    for (const parent of modules_of(root)) {
      const below = (module) => {
        let it = module;
        while (it && it.parent !== parent) it = it.parent;
        return it;
      };
      const nodes = [...parent.children.values()].filter((it) => !it.inline);
      const next = new Map();
      for (const edge of edges) {
        if (edge.from.crate !== root.crate || edge.to.crate !== root.crate) continue;
        const [one, other] = [below(edge.from), below(edge.to)];
        if (!one || !other || one === other) continue;
        if (!next.has(one)) next.set(one, new Map());
        const to = next.get(one);
        to.set(other, [...(to.get(other) ?? []), edge]);
      }
      // A circle of folders alone is told as such, even where files widen it.
      const folders = nodes.filter((it) => it.children.size > 0);
      const among = new Map(
        folders.map((it) => [it, new Map([...(next.get(it) ?? [])].filter(([to]) => folders.includes(to)))]),
      );
      const cut = new Set();
      const tell = (rule, group, graph) => {
        const names = group.map((it) => it.name).join(", ");
        for (const edge of least_against(group, graph)) {
          cut.add(edge);
          problems.push({ rule, text: told(edge), head: `circle in ${parent.label} of ${names}` });
        }
      };
      for (const group of circles(folders, among)) tell(1, group, among);
      const rest = new Map(
        [...next].map(([one, to]) => [
          one,
          new Map([...to].map(([other, list]) => [other, list.filter((it) => !cut.has(it))]).filter(([, list]) => list.length > 0)),
        ]),
      );
      for (const group of circles(nodes, rest)) tell(2, group, rest);
    }
  }
  return problems;
}

function direction_problems(crates, edges, exceptions) {
  const problems = [];
  const layer = (name) => LAYERS.findIndex((it) => it.includes(name));
  for (const child of crates.get("library")?.children.values() ?? []) {
    if (layer(child.name) < 0) {
      problems.push({ rule: 3, text: `library -> ${child.label} (a folder without a place in LAYERS) at src/${child.file}:1` });
    }
  }
  const owners = new Map();
  for (const module of [...crates.values()].flatMap((it) => [...modules_of(it)])) {
    const owner = owners.get(module.file);
    if (owner && owner.crate !== module.crate) {
      problems.push({ rule: 3, text: `${module.crate} -> ${owner.crate} (a file that both compile) at src/${module.file}:1` });
    }
    owners.set(module.file, owner ?? module);
  }
  const used = new Set();
  for (const edge of edges) {
    if (edge.from.crate !== "library") {
      if (edge.to.crate !== edge.from.crate && edge.to.crate !== "library") problems.push({ rule: 3, text: told(edge) });
      continue;
    }
    const [from, to] = [edge.from.names[0], edge.to.names[0]];
    if (from === undefined || from === to) continue;
    if (to !== undefined && layer(from) < layer(to)) continue;
    const allowed = exceptions.find((it) => it.from === from && it.to === to && it.item === edge.item);
    if (allowed) used.add(allowed);
    else problems.push({ rule: 3, text: told(edge), head: `${from} may not need ${to ?? "lib.rs"}` });
  }
  for (const it of exceptions) {
    if (!used.has(it)) problems.push({ rule: 3, text: `${it.from} -> ${it.to} (${it.item}) is an exception that nothing needs, in tools/structure.mjs` });
  }
  return problems.sort((one, other) => (one.head ?? "").localeCompare(other.head ?? ""));
}

/** The public types of the library that can be named from outside, by name. */
function public_types(crates) {
  const types = new Map();
  const visited = new Set();
  const note = (module, name, line) => {
    if (!types.has(name)) types.set(name, new Map());
    types.get(name).set(module.label, { from: module, line });
  };
  const visit = (module) => {
    if (visited.has(module)) return;
    visited.add(module);
    for (const [name, it] of module.items) if (it.type && it.visible === "pub") note(module, name, it.line);
    for (const child of module.children.values()) if (child.visible === "pub") visit(child);
    for (const it of module.uses) {
      if (it.visible !== "pub") continue;
      const found = resolved(module, it.path, crates, it.glob === true);
      if (found.elsewhere) {
        if (!it.glob && /^[A-Z].*[a-z]/.test(it.name)) note(module, it.name, it.line);
      } else if (found.name === undefined) visit(found.module);
      else if (found.module.items.get(found.name)?.type) note(found.module, found.name, found.module.items.get(found.name).line);
    }
  };
  if (crates.has("library")) visit(crates.get("library"));
  return types;
}

function name_problems(crates) {
  const problems = [];
  for (const [name, places] of public_types(crates)) {
    const [first, ...others] = [...places.values()];
    for (const it of others) {
      problems.push({ rule: 4, text: `${first.from.label} -> ${it.from.label} (${name}) at src/${first.from.file}:${first.line} and src/${it.from.file}:${it.line}` });
    }
  }
  return problems;
}

/** Everything that does not hold in a tree of sources, and its edges. */
function examined(tree, exceptions) {
  const problems = [];
  const crates = new Map();
  for (const [crate, file] of CRATES) {
    if (!tree.has(file)) continue;
    const root = new_module("", null, file, crate);
    read_module(root, without_tests(tokens(tree.get(file))), tree, problems);
    crates.set(crate, root);
  }
  const edges = edges_of(crates);
  problems.push(...circle_problems(crates, edges), ...direction_problems(crates, edges, exceptions), ...name_problems(crates));
  for (const [file, text] of tree) {
    if (!text.startsWith("//!")) problems.push({ rule: 5, text: `${file} says no idea (//!) at src/${file}:1` });
  }
  return { problems, edges };
}

// ---- The check of the checks -------------------------------------------------------

const CLEAN = {
  "lib.rs": "//! The core.\npub mod answers;\npub mod fuel;\npub mod quantity;\nmod source;",
  "answers/mod.rs": "//! A\nmod one;\nmod two;\npub use one::One;\npub(crate) struct Shared;",
  "answers/one.rs": `//! A
    // use super::two::Two; crate::share::Nothing
    /* /* crate::share::x */ crate::answers::two::Two */
    use super::Shared;
    use crate::{fuel::{self as stuff, Grade}, quantity::*};
    pub struct One(Share, Shared, Grade);
    const TEXT: &str = "crate::answers::two::Two"; const RAW: &str = r#"" super::two::Two"#;
    const QUOTE: char = '"'; const LETTER: char = 'a';
    fn first<'a>(it: &'a One) -> u8 { use stuff::inner; inner::two(it); stuff::inner::one() }
    #[cfg(test)] use crate::answers::two::Two;
    #[cfg(test)] mod tests { use crate::answers::two::Two; use super::*; }`,
  "answers/two.rs": "//! A\nuse super::One;\npub(crate) struct Two(One);",
  "fuel/mod.rs": "//! F\npub mod inner;\nmod grade;\npub use grade::*;",
  "fuel/inner.rs": "//! I\npub fn one() -> u8 { 1 }\npub fn two<T>(_: T) {}",
  "fuel/grade.rs": "//! G\npub struct Grade(super::super::quantity::Share);\nstruct Share;",
  "quantity/mod.rs": "//! Q\nmod share;\npub use self::share::Share;",
  "quantity/share.rs": "//! S\npub struct Share;",
  "source.rs": "//! S\npub struct Source;",
  "main.rs": "//! The app.\nmod app;\nfn main() { app::start(); }",
  "app/mod.rs": "//! A\nuse fillwright::answers::One;\npub fn start() { let _: Option<One> = None; }",
};

// What is changed in the clean tree, and what has to be found then: rule and text.
const BROKEN = [
  [
    "a circle of folders, through a glob and an export of an export",
    {
      "app/mod.rs": "//! A\nmod one;\nmod two;\nmod three;",
      "app/one/mod.rs": "//! A\nmod deep;\npub use deep::*;",
      "app/one/deep.rs": "//! A\npub use super::super::three::Three;\npub struct Deep;\nfn f() { crate::app::two::call(1); }",
      "app/two/mod.rs": "//! A\nmod deep;\npub(crate) use deep::call;",
      "app/two/deep.rs": "//! A\nuse crate::app::one::{Deep, Three};\npub fn call(_: u8) {}",
      "app/three.rs": "//! A\npub struct Three;",
    },
    [[1, "app::two::deep -> app::one::deep (Deep) at src/app/two/deep.rs:2"]],
  ],
  [
    "a circle of files, through a function's own use",
    {
      "fuel/inner.rs": "//! I\npub fn one() -> u8 {\n  use super::grade;\n  grade::count()\n}\npub fn two<T>(_: T) {}",
      "fuel/grade.rs": "//! G\nuse super::inner::{\n  one,\n  two as other,\n};\npub struct Grade;\npub fn count() -> u8 { other(1); one() }",
    },
    [[2, "fuel::inner -> fuel::grade (count) at src/fuel/inner.rs:4"]],
  ],
  [
    "an arrow upwards, one within a bracket and one to nowhere",
    {
      "lib.rs": "//! The core.\npub mod answers;\npub mod fuel;\npub mod quantity;\npub mod tank;\npub mod power;\npub mod more;",
      "tank.rs": "//! T\npub fn t() { crate::power::p() }",
      "power.rs": "//! P\npub fn p() {}\nfn up(_: crate::answers::One) {}",
      "more.rs": "//! M",
    },
    [
      [3, "tank -> power (p) at src/tank.rs:2"],
      [3, "power -> answers::one (One) at src/power.rs:3"],
      [3, "library -> more (a folder without a place in LAYERS) at src/more.rs:1"],
    ],
  ],
  [
    "a module taken from another place",
    { "app/mod.rs": '//! A\n#[path = "../planner.rs"]\nmod planner;\npub fn start() {}' },
    [[3, "app -> app::planner (a module whose file is not in its place) at src/app/mod.rs:3"]],
  ],
  [
    "a file that two crates compile",
    { "main.rs": "//! The app.\nmod app;\nmod source;" },
    [[3, "app -> library (a file that both compile) at src/source.rs:1"]],
  ],
  [
    "the rest of a struct from above",
    { "fuel/inner.rs": "//! I\nfn f() { let _ = It { a: 1, ..crate::answers::One::new() }; }\npub fn one() {}\npub fn two() {}" },
    [
      [1, "fuel::inner -> answers::one (One) at src/fuel/inner.rs:2"],
      [3, "fuel::inner -> answers::one (One) at src/fuel/inner.rs:2"],
    ],
  ],
  [
    "one name for two public types",
    { "fuel/grade.rs": "//! G\npub struct Grade;\npub enum Share {}" },
    [[4, "fuel::grade -> quantity::share (Share) at src/fuel/grade.rs:3 and src/quantity/share.rs:2"]],
  ],
  ["a file without its idea", { "source.rs": "// S\npub struct Source;" }, [[5, "source.rs says no idea (//!) at src/source.rs:1"]]],
];

function check_self() {
  const told_of = (change, exceptions) => {
    const tree = new Map(Object.entries({ ...CLEAN, ...change }));
    return examined(tree, exceptions).problems.map((it) => `${it.rule}. ${it.text}`).sort();
  };
  const expect = (what, found, wanted) => {
    if (found.join("\n") !== wanted.join("\n")) {
      throw new Error(`the check of the checks: ${what}: found\n${found.join("\n")}\nwhere it should be\n${wanted.join("\n")}`);
    }
  };
  expect("a clean tree", told_of({}, []), []);
  for (const [what, change, wanted] of BROKEN) {
    expect(what, told_of(change, []), wanted.map(([rule, text]) => `${rule}. ${text}`).sort());
  }
  const upwards = { "fuel/inner.rs": "//! I\nuse crate::answers::One;\npub fn one() -> u8 { 1 }\npub fn two(_: One) {}" };
  // A circle at the root of the library remains one, whatever is excepted.
  const exception = { from: "fuel", to: "answers", item: "One", why: "to be seen" };
  expect("an exception", told_of(upwards, [exception]).filter((it) => it.startsWith("3.")), []);
  expect("an exception that nothing needs", told_of({}, [exception]), [
    "3. fuel -> answers (One) is an exception that nothing needs, in tools/structure.mjs",
  ]);
}

// ---- The run -----------------------------------------------------------------------

const RULES = {
  1: "No circle between folders at the same level",
  2: "No circle among the files and folders of a folder",
  3: "The direction of the top folders",
  4: "One name, one public type",
  5: "Every file says its one idea",
};

function* files(directory) {
  for (const name of readdirSync(directory).sort()) {
    const path = join(directory, name);
    if (statSync(path).isDirectory()) yield* files(path);
    else if (path.endsWith(".rs")) yield path;
  }
}

function print_graph(edges) {
  const counts = new Map();
  for (const { from, to } of edges) {
    const [one, other] = [from, to].map((it) => (it.crate === "library" ? (it.names[0] ?? "library") : it.crate));
    if (one === other) continue;
    const key = `${one} -> ${other}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  for (const [key, count] of [...counts].sort()) console.log(`${key}: ${count}`);
}

check_self();
if (!process.argv.includes("--self-check")) {
  const src = fileURLToPath(new URL("../src", import.meta.url));
  const tree = new Map([...files(src)].map((path) => [relative(src, path).split(sep).join("/"), readFileSync(path, "utf8")]));
  const { problems, edges } = examined(tree, EXCEPTIONS);
  if (process.argv.includes("--graph")) print_graph(edges);
  for (const [rule, name] of Object.entries(RULES)) {
    const broken = problems.filter((it) => it.rule === Number(rule));
    if (broken.length === 0) continue;
    console.error(`\n${name} (${broken.length}):`);
    let head;
    for (const it of broken) {
      if (it.head !== head && it.head) console.error(`  ${it.head}:`);
      head = it.head;
      console.error(`    ${it.text}`);
    }
  }
  console.log(`${tree.size} files, ${edges.length} edges, ${problems.length} violations`);
  if (problems.length > 0) process.exitCode = 1;
}
