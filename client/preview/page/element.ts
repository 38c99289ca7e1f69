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

/** Text in which what stands between backquotes is code: an example of what to write. */
export function withExamples(text: string): (Node | string)[] {
  return text.split("`").flatMap((part, at) => (at % 2 === 0 ? withWholeDates(part) : [element("code", {}, [part])]));
}

const DATES = /(\d{4}-(?:\d\d-\d\d|W\d\d))/;

/** Text whose dates and weeks are not broken at their hyphens. */
export function withWholeDates(text: string): (Node | string)[] {
  return text.split(DATES).map((part, at) => (at % 2 === 0 ? part : element("span", { class: "whole" }, [part])));
}

/** For who listens to the page: read out, and not seen. */
export function unseen(text: string): HTMLElement {
  return element("span", { class: "unseen" }, [text]);
}

export function quiet(text: string): HTMLElement {
  return element("span", { class: "quiet" }, [text]);
}

/**
 * Makes these the children in this order. What stands right already is not touched, so it keeps focus and selection.
 */
export function arrange(parent: HTMLElement, children: readonly HTMLElement[]): void {
  const wanted = new Set<Element>(children);
  for (const child of [...parent.children]) if (!wanted.has(child)) child.remove();
  let next = parent.firstElementChild;
  for (const child of children) {
    if (child === next) next = next.nextElementSibling;
    else parent.insertBefore(child, next);
  }
}

/**
 * Puts one element in the place of another. Who stood on a button of the old one stands on the same button of the new
 * one.
 */
export function replace(old: HTMLElement, made: HTMLElement): void {
  const at = [...old.querySelectorAll("button")].indexOf(document.activeElement as HTMLButtonElement);
  old.replaceWith(made);
  if (at >= 0) made.querySelectorAll("button")[at]?.focus({ preventScroll: true });
}
