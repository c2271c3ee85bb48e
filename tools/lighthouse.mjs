// lighthouse.mjs SITE CHROMIUM: audits the first start, and then each view with the
// invented example in it, and prints the four scores of each and the times they rest on.
// What else the machine does shows in a run, most of all in the blocking time, so each
// view is audited several times and the run in the middle by performance is told, as
// Lighthouse's own advice on variability has it, with the lowest and the highest.
//
// The first start comes over the network. Whoever has something entered has been there
// before, so the other views come from what the service worker keeps.

import { writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [site, chromium, ...wanted] = process.argv.slice(2);
const installed = createRequire(`${process.cwd()}/.tools/npm/lighthouse/package.json`);
const { default: lighthouse } = await import(pathToFileURL(installed.resolve("lighthouse")));
const { default: puppeteer } = await import(pathToFileURL(installed.resolve("puppeteer-core")));

const RUNS = 5;
const VIEWS = ["", "#/fill", "#/tank", "#/hardware", "#/trip", "#/car", "#/methods"];
// The same switches as in the browser tests, so that nothing but the page is at work.
const SWITCHES = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-dev-shm-usage",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
const TIMES = [
  ["FCP", "first-contentful-paint"],
  ["LCP", "largest-contentful-paint"],
  ["TBT", "total-blocking-time"],
  ["CLS", "cumulative-layout-shift"],
];

async function takeExample(browser) {
  const page = await browser.newPage();
  await page.goto(site);
  await page.locator("::-p-text(Look at an invented example)").click();
  await page.locator("#outcome").wait();
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
  await page.close();
}

/** One run over a view. The first start begins with nothing stored, each time. */
async function run(browser, view) {
  const page = await browser.newPage();
  const result = await lighthouse(
    `${site}${view}`,
    { output: "html", disableStorageReset: view !== "", logLevel: "error" },
    undefined,
    page,
  );
  await page.close();
  if (result.lhr.runtimeError) throw new Error(result.lhr.runtimeError.message);
  return result;
}

const performance = ({ lhr }) => Math.round(lhr.categories.performance.score * 100);

async function audit(browser, view) {
  const runs = [];
  while (runs.length < RUNS) runs.push(await run(browser, view));
  runs.sort((one, other) => performance(one) - performance(other));
  const { lhr, report } = runs[Math.floor(RUNS / 2)];
  const name = view.replace("#/", "") || "first start";
  writeFileSync(`.tools/lighthouse-${name.replace(" ", "-")}.html`, report);
  const scores = Object.values(lhr.categories).map(({ score }) => Math.round(score * 100));
  const spread = `(${performance(runs[0])} to ${performance(runs.at(-1))})`;
  const times = TIMES.map(([short, id]) => `${short} ${lhr.audits[id].displayValue}`);
  console.log(`RESULT lighthouse: ${name.padEnd(11)} ${scores.join(" / ").padEnd(21)} ${spread.padEnd(11)} ${times.join(", ")}`);
  for (const { id, auditRefs } of Object.values(lhr.categories)) {
    for (const { id: one, weight } of auditRefs) {
      const { score, title } = lhr.audits[one];
      if (weight > 0 && score !== null && score < 0.9) console.log(`  less than good (${id}): ${title}`);
    }
  }
}

const views = VIEWS.filter((view) => wanted.length === 0 || wanted.includes(view));
const browser = await puppeteer.launch({ executablePath: chromium, args: SWITCHES });
try {
  console.log("performance / accessibility / best practices / SEO (performance of the other runs), as on a phone");
  if (views.includes("")) await audit(browser, "");
  await takeExample(browser);
  for (const view of views.filter((it) => it !== "")) await audit(browser, view);
} finally {
  await browser.close();
}
