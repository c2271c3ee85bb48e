// Keeps a whole build on the device, so that the app works without a network.
//
// The build fills in the version and the files with their checksums (tools/precache.mjs).
// What makes up a build has a checksum in its name, all but the page itself, the
// manifest and the icons: so a page never gets code of another build than its own.

const VERSION = "%VERSION%";
const FILES = "%FILES%";
// Other things of the same host may keep caches too.
const OURS = "fillwright-build-";
const CACHE = OURS + VERSION;
const HERE = new URL("./", location).href;

// All or nothing: where one file is missing, or is of another build than the list
// since the host is just being updated, the version in use stays.
addEventListener("install", (event) => event.waitUntil(store()));

async function store() {
  const cache = await caches.open(CACHE);
  // What the page has just loaded is asked about, not loaded again.
  const asked = ([path, integrity]) => new Request(path, { cache: "no-cache", integrity });
  try {
    await cache.addAll(Object.entries(FILES).map(asked));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

// On a first visit the page is there before this is. It should find all of its parts
// even if the network goes before it has asked for them.
addEventListener("activate", (event) => event.waitUntil(begin()));

async function begin() {
  const known = new Set((await versions()).flatMap(({ users }) => users));
  const found = (await clients.matchAll({ includeUncontrolled: true })).map(({ id }) => id);
  await Promise.all(found.filter((id) => !known.has(id)).map(note));
  await clients.claim();
}

// A version that is there waits until it is asked for, or until no window is left:
// nobody is to be interrupted with the nozzle in hand.
addEventListener("message", (event) => {
  if (event.data === "use") event.waitUntil(skipWaiting());
  if (event.data === "started") event.waitUntil(tidy());
});

addEventListener("fetch", (event) => {
  const { request } = event;
  const { href } = new URL(request.url);
  if (request.method !== "GET" || !href.startsWith(HERE)) return;
  if (request.mode === "navigate" && is_page(href)) {
    event.respondWith(page(request));
    event.waitUntil(note(event.resultingClientId));
  } else {
    event.respondWith(file(request));
  }
});

function is_page(href) {
  const path = href.slice(HERE.length).split(/[?#]/)[0];
  return path === "" || path === "index.html";
}

async function page(request) {
  const cache = await caches.open(CACHE);
  return (await cache.match("./")) ?? fetch(request);
}

async function file(request) {
  const cache = await caches.open(CACHE);
  // A window that was opened with an older version may ask for a part of it.
  return (await cache.match(request)) ?? (await caches.match(request)) ?? fetch(request);
}

// Which windows were opened with a version is kept beside its files, and goes with
// them: this program is ended whenever it has nothing to do, and forgets.
const WINDOWS = HERE + "windows/";

async function note(id) {
  const cache = await caches.open(CACHE);
  await cache.put(WINDOWS + id, new Response());
}

// All versions that are kept, the oldest first, with those who were given them.
async function versions() {
  const names = (await caches.keys()).filter((name) => name.startsWith(OURS));
  return Promise.all(
    names.map(async (name) => {
      const kept = (await (await caches.open(name)).keys()).map(({ url }) => url);
      const users = kept.filter((url) => url.startsWith(WINDOWS));
      return { name, users: users.map((url) => url.slice(WINDOWS.length)) };
    }),
  );
}

// Drops the older versions that no window uses any more.
async function tidy() {
  // What is only just coming in has no window yet.
  if (registration.installing || registration.waiting) return;
  const open = new Set((await clients.matchAll({ includeUncontrolled: true })).map(({ id }) => id));
  const all = await versions();
  const older = all.slice(0, all.findIndex(({ name }) => name === CACHE));
  const unused = older.filter(({ users }) => !users.some((id) => open.has(id)));
  await Promise.all(unused.map(({ name }) => caches.delete(name)));
}
