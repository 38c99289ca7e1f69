// The licences of the packages that went into the bundles, for the package that carries these: most ask to be passed
// on.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const PACKAGE = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/;
const LICENCE = /^licen[cs]e(?:-\w+)?(?:\.(?:md|txt))?$/i;
/** What a package was itself made of. */
const THIRD_PARTY = /^third-?party-?notices\.txt$/i;
/** Texts that a package should bring and does not: the font whose outlines it has comes under a licence of its own. */
const NOT_BROUGHT = { vexflow: ["music-font-licence.txt"] };
const RULE = `\n\n${"-".repeat(80)}\n\n`;

const HEAD = `Daystave comes under the licence in LICENSE. Its bundles hold code of the packages below, each under its own.`;

/**
 * The packages that esbuild put code of into bundles, each once, sorted by name.
 *
 * @param metafiles one of each bundle
 * @param root the folder that their paths count from
 */
export function bundledPackages(metafiles, root) {
  const used = metafiles.flatMap(({ outputs }) =>
    Object.values(outputs).flatMap(({ inputs }) =>
      Object.entries(inputs)
        .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
        .map(([path]) => PACKAGE.exec(path)?.[0]),
    ),
  );
  return [...new Set(used)]
    .filter((folder) => folder !== undefined)
    .map((folder) => packageAt(join(root, folder)))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The notices as one text. Throws where a package brings no licence: it must not be passed on then. */
export function noticesOf(packages) {
  return `${[HEAD, ...packages.map(noticeOf)].join(RULE)}\n`;
}

function packageAt(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const texts = (names) =>
    readdirSync(folder)
      .filter((file) => names.test(file))
      .map((file) => readFileSync(join(folder, file), "utf8").replaceAll("\r\n", "\n").trim());
  const own = (NOT_BROUGHT[name] ?? []).map((file) => readFileSync(join(import.meta.dirname, file), "utf8").trim());
  return { name, version, licence: license, texts: texts(LICENCE), thirdParty: [...texts(THIRD_PARTY), ...own] };
}

function noticeOf({ name, version, licence, texts, thirdParty }) {
  if (texts.length === 0)
    throw new Error(`The package ${name} is bundled and brings no text of its licence (${licence}).`);
  return [`${name} ${version} (${licence})`, ...texts, ...thirdParty].join("\n\n");
}
