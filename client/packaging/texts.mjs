/**
 * A manifest in which every `%key%` is the text that stands under it, as an editor shows it. Throws for a key that has
 * none.
 *
 * @template T
 * @param {T} manifest package.json, or a part of it
 * @param {Readonly<Record<string, string>>} texts package.nls.json, or its like in another language
 * @returns {T}
 */
export function inWords(manifest, texts) {
  return JSON.parse(JSON.stringify(manifest), (_, value) => {
    const key = keyIn(value);
    if (key === undefined) return value;
    if (!(key in texts)) throw new Error(`package.json names %${key}%, which no text stands under.`);
    return texts[key];
  });
}

/**
 * The key in a value that is one, as the editor tells: `%` at both ends.
 *
 * @param {unknown} value
 * @returns {string | undefined}
 */
export function keyIn(value) {
  return typeof value === "string" ? /^%(.+)%$/s.exec(value)?.[1] : undefined;
}
