/** An element with attributes and children; a string becomes a text node and is never read as HTML. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string>> = {},
  children: readonly (Node | string)[] = [],
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, value);
  made.append(...children);
  return made;
}

/** A button with what it does. */
export function button(
  attributes: Readonly<Record<string, string>>,
  children: readonly (Node | string)[],
  press: () => void,
): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, children);
  made.addEventListener("click", press);
  return made;
}

/** Text in which what is between backquotes is code: an example of what to write. */
export function withExamples(text: string): (Node | string)[] {
  return text.split("`").map((part, at) => (at % 2 === 0 ? part : element("code", {}, [part])));
}

/** A number at the end of a text stays on a line with the word before it: `8ths at 100` does not break before `100`. */
export function withLastNumber(text: string): string {
  return text.replace(/ (?=\S*\d\S*$)/, "\u00A0");
}

/** For who listens to the page: read out, and not seen. */
export function unseen(text: string): HTMLElement {
  return element("span", { class: "unseen" }, [text]);
}

export function quiet(text: string): HTMLElement {
  return element("span", { class: "quiet" }, [text]);
}

/** In the small size. */
export function small(text: string, name = ""): HTMLElement {
  return element("span", { class: `small quiet ${name}`.trim() }, [text]);
}

/**
 * Makes these the children in this order. What is right already is not touched, so it keeps focus and selection; what
 * is moved gets its focus back.
 */
export function arrange(parent: HTMLElement, children: readonly HTMLElement[]): void {
  const focused = document.activeElement;
  const wanted = new Set<Element>(children);
  for (const child of [...parent.children]) if (!wanted.has(child)) child.remove();
  let next = parent.firstElementChild;
  for (const child of children) {
    if (child === next) next = next.nextElementSibling;
    else parent.insertBefore(child, next);
  }
  if (focused instanceof HTMLElement && focused !== document.activeElement && parent.contains(focused))
    focused.focus({ preventScroll: true });
}

/** What can have the focus. */
const FOCUSED = "button, a, select, input, [tabindex]";

/** Puts one element in the place of another. Who was on a button of the old one is on the same of the new one. */
export function replace(old: HTMLElement, made: HTMLElement): void {
  const at = [...old.querySelectorAll(FOCUSED)].indexOf(document.activeElement as Element);
  old.replaceWith(made);
  if (at >= 0) made.querySelectorAll<HTMLElement>(FOCUSED)[at]?.focus({ preventScroll: true });
}
