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
