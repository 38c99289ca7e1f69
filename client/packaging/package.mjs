// `npm run package`: builds, and puts the extension into the checkout as a .vsix.
import { writeFileSync } from "node:fs";
import { must, ROOT } from "../workbench/install.mjs";
import { vsixOf } from "./vsix.mjs";

must(process.execPath, ["build.mjs"]);
const { name, bytes } = vsixOf(`${ROOT}dist`);
writeFileSync(ROOT + name, bytes);
console.log(`Packaged ${name}, ${Math.round(bytes.length / 1024)} KB`);
