/** A chart, with what it shows in words; or why there is none, as a sentence that says what to write. */
export type Drawing =
  | { readonly ok: true; readonly svg: string; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/** A number is written to two decimals; what is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/**
 * Characters that XML 1.0 does not allow, or that are not shown as themselves: controls, lone surrogates, two that are
 * no characters, line separators, a byte order mark, and those that turn the direction of what follows (Unicode
 * Bidi_Control).
 */
const UNSEEN = /[\p{Cc}\p{Cs}\uFFFE\uFFFF\u2028\u2029\uFEFF\p{Bidi_Control}]+/gu;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Any text as the text of an element or the value of an attribute, which shows it and nothing else. */
export function escapeXml(text: string): string {
  return text.replace(UNSEEN, " ").replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}

/** A number to two decimals, the same for the same value everywhere: `12.5`, `0`. */
export function figure(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** One element. Attributes are escaped here; children are markup already. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes).map(([key, value]) =>
    value === undefined ? "" : ` ${key}="${typeof value === "number" ? figure(value) : escapeXml(value)}"`,
  );
  const opening = `<${name}${written.join("")}`;
  return children.length === 0 ? `${opening}/>` : `${opening}>${children.join("")}</${name}>`;
}

/** A name for ids that no two keys share: what is neither a letter nor a digit is written as its code. */
export function idFrom(key: string): string {
  return `chart-${key.replace(/[^A-Za-z0-9]/g, (character) => `_${character.charCodeAt(0).toString(16)}_`)}`;
}
