// What .ci/audit runs once its tools are there: node .ci/audit.mjs SITE STYLES. Prints a table of figures; ends with 1 if something does not hold.
import { spawnSync } from "node:child_process";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { extname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";

const [site, styles] = process.argv.slice(2);
const require = createRequire(join(process.env.AUDIT_TOOLS, "package.json"));
const bring = name => import(pathToFileURL(require.resolve(name)).href);
const CHROMIUM = process.env.CHROMIUM ?? ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"].find(existsSync);
const LIGHTHOUSE_PAGES = { home: "index.html", fault: "faults/charge-air-hose-split.html", code: "codes/p0299.html", tree: "trees/reduced-power.html", weigh: "weigh.html" };
const LEAST = { performance: 98, accessibility: 100, "best-practices": 100, seo: 100 };
const TYPES = { ".html": "text/html; charset=utf-8", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml", ".json": "application/json", ".webmanifest": "application/manifest+json", ".txt": "text/plain" };
const failures = [];

/** Fails the audit, and says why. */
const must = (holds, text) => { if (!holds) failures.push(text); };

/** Of every kind of page the longest and the shortest, by the class of its body. */
function pagesOfEveryKind() {
  const kinds = new Map();
  for (const file of readdirSync(site, { recursive: true }).filter(f => f.endsWith(".html")).sort()) {
    const text = readFileSync(join(site, file), "utf8");
    const kind = /<body class="on-([a-z-]+)/.exec(text)?.[1];
    if (kind) kinds.set(kind, [...(kinds.get(kind) ?? []), { file: file.replaceAll("\\", "/"), length: text.length }]);
  }
  return [...kinds.values()].flatMap(pages => { pages.sort((a, b) => a.length - b.length); return pages.length > 1 ? [pages[0].file, pages.at(-1).file] : [pages[0].file]; });
}

/** The site as a plain host serves it, packed. */
async function serve() {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url, "http://x").pathname);
    const file = join(site, path.endsWith("/") ? path + "index.html" : path);
    if (relative(site, file).startsWith("..") || !existsSync(file)) return response.writeHead(404).end();
    const bytes = readFileSync(file), type = TYPES[extname(file)];
    const head = { "Content-Type": type ?? "application/octet-stream", "Cache-Control": path.startsWith("/assets/") ? "max-age=31536000, immutable" : "no-cache" };
    return type ? response.writeHead(200, { ...head, "Content-Encoding": "gzip" }).end(gzipSync(bytes)) : response.writeHead(200, head).end(bytes);
  });
  await new Promise(done => server.listen(0, "127.0.0.1", done));
  return server;
}

function check(name, files, ...options) {
  const jar = ["build/dist/vnu.jar", "vnu.jar"].map(j => join(process.env.AUDIT_TOOLS, "node_modules/vnu-jar", j)).find(existsSync);
  const run = spawnSync("java", ["-jar", jar, "--errors-only", "--format", "gnu", ...options, ...files], { encoding: "utf8", maxBuffer: 1 << 28 });
  const errors = (run.stderr + run.stdout).split("\n").filter(line => line.includes(": error"));
  errors.slice(0, 20).forEach(line => console.log("  " + line));
  console.log(`| ${name} | ${files.length} files | ${errors.length} errors |`);
  must(run.error === undefined && errors.length === 0 && run.status === 0, `${name}: ${run.error ?? errors.length + " errors"}`);
}

async function axe(browser, root, pages) {
  const script = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
  let count = 0;
  for (const address of pages) {
    const page = await browser.newPage();
    for (const width of [390, 1280]) {
      for (const scheme of ["light", "dark"]) {
        await page.setViewport({ width, height: 844 });
        await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
        await page.goto(root + address, { waitUntil: "load" });
        await page.evaluate(script);
        const found = await page.evaluate(async () => {
          document.querySelectorAll("details").forEach(d => { d.open = true; });
          return (await axe.run({ preload: false, resultTypes: ["violations"] })).violations.flatMap(v => v.nodes.map(n => v.id + " " + n.target.join(" ")));
        });
        found.slice(0, 5).forEach(text => console.log(`  ${address} ${width} ${scheme}: ${text}`));
        count += found.length;
      }
    }
    await page.close();
  }
  console.log(`| axe-core | ${pages.length} pages, 2 widths, light and dark | ${count} violations |`);
  must(count === 0, `axe-core: ${count} violations`);
}

async function lighthouse(root, port) {
  const { default: run } = await bring("lighthouse");
  for (const [name, address] of Object.entries(LIGHTHOUSE_PAGES)) {
    const { lhr } = await run(root + address, { port, logLevel: "silent", output: "json" });
    const scores = Object.keys(LEAST).map(key => [key, Math.round((lhr.categories[key].score ?? 0) * 100)]);
    console.log(`| Lighthouse, ${name} | ${scores.map(([key, score]) => `${key} ${score}`).join(", ")} | ${lhr.audits["total-byte-weight"].displayValue ?? ""} |`);
    for (const [key, score] of scores.filter(([key, score]) => score < LEAST[key])) {
      must(false, `Lighthouse, ${name}: ${key} ${score}`);
      const weak = lhr.categories[key].auditRefs.filter(r => r.weight > 0 && (lhr.audits[r.id].score ?? 1) < 1);
      weak.forEach(r => console.log(`  ${r.id}: ${lhr.audits[r.id].displayValue ?? lhr.audits[r.id].title}`));
    }
  }
}

const pages = pagesOfEveryKind();
check("Nu HTML checker", pages.map(p => join(site, p)));
check("CSS checker", readdirSync(styles).filter(f => f.endsWith(".css")).map(f => join(styles, f)), "--css");
const server = await serve();
const root = `http://127.0.0.1:${server.address().port}/`;
const { default: puppeteer } = await bring("puppeteer-core");
// Lighthouse leaves the sessions of the browser it was in behind it, so axe gets one of its own.
const launch = () => puppeteer.launch({ executablePath: CHROMIUM, args: ["--disable-gpu", ...(process.getuid?.() === 0 ? ["--no-sandbox"] : [])] });
const measured = await launch();
await lighthouse(root, Number(new URL(measured.wsEndpoint()).port));
await measured.close();
const looked = await launch();
await axe(looked, root, pages);
await looked.close();
server.close();
failures.forEach(text => console.log("does not hold: " + text));
process.exitCode = failures.length > 0 ? 1 : 0;
