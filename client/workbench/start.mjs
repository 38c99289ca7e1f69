// `npm start`, also on a fresh clone: installs if needed, builds, serves, prints the address.
import { basename, join } from "node:path";
import { bringUpTo, isMonth, localDay } from "./bring-up-to.mjs";
import { isBuilt } from "./built.mjs";
import { installIfNeeded, must } from "./install.mjs";

const YEAR = "samples/year";

installIfNeeded();
if (!isBuilt()) must(process.execPath, ["build.mjs"]);

const { readSample, serveWorkbench } = await import("./serve.mjs"); // only now are its packages there
const texts = bringUpTo(await readSample(join(import.meta.dirname, "../..", YEAR)), localDay(new Date()));
const months = Object.keys(texts).filter((path) => isMonth(path));
const latest = basename(months.sort().at(-1));
const sample = { sample: YEAR, texts, open: [latest], command: "daystave.showPreview" };
const wanted = Number(process.env.PORT ?? 3000);
const server = await serveWorkbench({ ...sample, port: wanted }).catch((error) => {
  if (error.code !== "EADDRINUSE" || process.env.PORT) throw error;
  return serveWorkbench({ ...sample, port: 0 }); // 3000 is taken and was only a wish: any free port will do
});
console.log(
  `\nDaystave is running at ${server.url}\nThe sample lives in the page's memory: edit freely, reload to start over. Ctrl+C stops it.`,
);
