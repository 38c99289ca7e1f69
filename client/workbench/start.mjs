// `npm start`, also on a fresh clone: installs if needed, builds, serves, prints the address.
import { isBuilt } from "./built.mjs";
import { installIfNeeded, must } from "./install.mjs";

installIfNeeded();
if (!isBuilt()) must(process.execPath, ["build.mjs"]);

const { serveWorkbench } = await import("./serve.mjs"); // only now are its packages there
const sample = { sample: "samples/year", open: ["2026-11.practice"], command: "daystave.showPreview" };
const wanted = Number(process.env.PORT ?? 3000);
const server = await serveWorkbench({ ...sample, port: wanted }).catch((error) => {
  if (error.code !== "EADDRINUSE" || process.env.PORT) throw error;
  return serveWorkbench({ ...sample, port: 0 }); // 3000 is taken and was only a wish: any free port will do
});
console.log(
  `\nDaystave is running at ${server.url}\nThe sample lives in the page's memory: edit freely, reload to start over. Ctrl+C stops it.`,
);
