// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
//
// node check.mjs PAGES PICTURES: opens every page below PAGES from disk, without a network, in light and in dark, and tells
// what is wrong: a message on the console, a request for anything but the page, a finding of axe. Pictures of each page at
// 390 and 1280 pixels, and its print on A4 and Letter, are written below PICTURES.
import { readdirSync, readFileSync, mkdirSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join, relative, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const [pages, pictures] = process.argv.slice(2).map((path) => resolve(path));
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
let wrong = 0;

function say(page, what) {
  wrong += 1;
  console.error(`${page}: ${what}`);
}

function below(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory()
      ? below(join(folder, entry.name))
      : /\.(html|svg)$/.test(entry.name) ? [join(folder, entry.name)] : []);
}

async function open(browser, file, name, scheme, width) {
  const page = await browser.newPage();
  page.on("console", (message) => say(name, `console: ${message.text()}`));
  page.on("pageerror", (error) => say(name, `error: ${error.message}`));
  const url = pathToFileURL(file).href;
  page.on("request", (request) => {
    if (request.url() !== url && !request.url().startsWith("data:")) say(name, `asks for ${request.url()}`);
  });
  await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
  await page.setViewport({ width, height: 900, deviceScaleFactor: 1 });
  await page.goto(url, { waitUntil: "load" });
  return page;
}

async function judge(page, name) {
  await page.evaluate(axe);
  const found = await page.evaluate((only) => globalThis.axe.run(document, { runOnly: only }), tags);
  for (const violation of found.violations) {
    say(name, `axe: ${violation.id}: ${violation.help}: ${violation.nodes.map((node) => node.html.slice(0, 200)).join(" | ")}`);
  }
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  if (overflow > 0) say(name, `is ${overflow} pixels wider than the window`);
}

const browser = await puppeteer.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-background-networking", "--host-resolver-rules=MAP * ~NOTFOUND"],
});
const files = below(pages);
for (const file of files) {
  const name = relative(pages, file);
  const folder = join(pictures, relative(pages, join(file, "..")));
  mkdirSync(folder, { recursive: true });
  const stem = join(folder, basename(file));
  for (const scheme of ["light", "dark"]) {
    for (const width of [390, 1280]) {
      const page = await open(browser, file, `${name}, ${scheme}, ${width} px`, scheme, width);
      if (file.endsWith(".html")) await judge(page, `${name}, ${scheme}, ${width} px`);
      await page.screenshot({ path: `${stem}-${scheme}-${width}.png`, fullPage: true });
      await page.close();
    }
  }
  if (file.endsWith(".html")) {
    const page = await open(browser, file, `${name}, print`, "light", 1280);
    for (const format of ["A4", "Letter"]) {
      await page.pdf({ path: `${stem}-${format}.pdf`, format, preferCSSPageSize: false });
    }
    await page.close();
  }
}
await browser.close();
console.log(`${files.length} pages, ${wrong} things wrong`);
process.exit(wrong === 0 && files.length > 0 ? 0 : 1);
