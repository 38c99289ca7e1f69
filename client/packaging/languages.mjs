import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";

// What people read stands in modules of its own, `*-texts.ts`, each of which exports one object; `*-texts.de.ts`
// beside it exports the same in German. The core is bundled with the English ones and takes those of another language
// from where they were put before it was loaded, so that a language costs its texts alone; a page is small and bundled
// for each.

const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

/** The languages beside English, by their codes of ISO 639-1. */
export const LANGUAGES = ["de"];

const TEXTS = /-texts\.ts$/;

/** Where the texts of another language are put before the core is loaded: one name for Node and web workers. */
export const IN_USE = "daystaveTexts";

/**
 * The file of a module of texts in a language.
 *
 * @param {string} path
 * @param {string} language
 * @returns {string}
 */
export function translated(path, language) {
  return path.replace(TEXTS, `-texts.${language}.ts`);
}

/**
 * The modules of texts below some folders of the checkout, from its root.
 *
 * @param {readonly string[]} folders
 * @returns {readonly string[]}
 */
export function textModules(folders) {
  return folders
    .flatMap((folder) =>
      readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" }).map((path) => join(folder, path)),
    )
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => TEXTS.test(path))
    .sort();
}

/** The name of the one object that a module of texts exports. */
function exportedBy(path) {
  const names = [...readFileSync(path, "utf8").matchAll(/^export const (\w+)/gm)].map((match) => match[1]);
  if (names.length !== 1) throw new Error(`${path} exports ${names.length} values; a module of texts exports one.`);
  return names[0];
}

/** For a bundle that speaks the language that is in use when it is loaded, and English where none is. */
export const inLanguageInUse = {
  name: "texts-in-language-in-use",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: TEXTS }, ({ path, resolveDir, namespace }) =>
      namespace === "texts" ? undefined : { path: resolve(resolveDir, path), namespace: "texts" },
    );
    onLoad({ filter: TEXTS, namespace: "texts" }, ({ path }) => {
      const name = exportedBy(path);
      const key = JSON.stringify(relative(ROOT, path).replaceAll("\\", "/"));
      return {
        contents: `import { ${name} as english } from ${JSON.stringify(path)};
export const ${name} = globalThis.${IN_USE}?.[${key}] ?? english;`,
        resolveDir: dirname(path),
        loader: "js",
      };
    });
  },
};

/**
 * For a bundle that speaks one language alone.
 *
 * @param {string} language
 */
export function inLanguage(language) {
  return {
    name: `texts-in-${language}`,
    setup({ onResolve }) {
      onResolve({ filter: TEXTS }, ({ path, resolveDir }) => {
        const own = translated(resolve(resolveDir, path), language);
        return existsSync(own) ? { path: own } : undefined;
      });
    },
  };
}

/**
 * The module that puts the core's texts of a language in use: a bundle of its own.
 *
 * @param {string} language
 */
export function textsOf(language) {
  return {
    stdin: {
      contents: textModules(["server", "shared"])
        .filter((path) => existsSync(join(ROOT, translated(path, language))))
        .map((path, at) => {
          const name = exportedBy(join(ROOT, translated(path, language)));
          return `import { ${name} as text${at} } from "./${translated(path, language)}";
(globalThis.${IN_USE} ??= {})[${JSON.stringify(path)}] = text${at};`;
        })
        .join("\n"),
      resolveDir: ROOT,
      sourcefile: `texts.${language}.ts`,
      loader: "ts",
    },
    plugins: [inLanguage(language)],
  };
}

/**
 * The same for tests, whose modules are not bundled: a plugin of Vite.
 *
 * @param {string} language
 */
export function vitePluginIn(language) {
  return {
    name: `texts-in-${language}`,
    enforce: /** @type {const} */ ("pre"),
    resolveId(path, importer) {
      if (!importer || !TEXTS.test(path)) return undefined;
      const own = translated(resolve(dirname(importer), path), language);
      return existsSync(own) && own !== importer ? own : undefined;
    },
  };
}
