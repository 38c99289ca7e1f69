import { readdirSync, readFileSync } from "node:fs";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

/** The journal in a folder of the samples, and all that is written in it. */
export function sample(folder: string): { readonly journal: Journal; readonly written: string } {
  const root = `file:///samples/${folder}`;
  const texts = readdirSync(`samples/${folder}`)
    .filter((name) => name.endsWith(".practice"))
    .map((name) => [`${root}/${name}`, readFileSync(`samples/${folder}/${name}`, "utf8")] as const);
  const documents = texts.map(([uri, text]) => [uri, createDocument(text)] as const);
  return { journal: new Journal(root, new Map(documents)), written: texts.map(([, text]) => text).join("\n") };
}
