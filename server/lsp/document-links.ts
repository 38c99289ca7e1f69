import type { DocumentLink, DocumentLinkParams } from "vscode-languageserver";
import { documentLinks } from "../features/links/document-links.ts";
import type { LinkTarget } from "../features/links/links-in-text.ts";
import type { Place } from "./session.ts";

export function links({ journal, uri }: Place, { textDocument }: DocumentLinkParams): DocumentLink[] {
  return documentLinks(journal, uri).map(({ range, target }) => ({
    range,
    target: addressOf(target, textDocument.uri),
  }));
}

/** A file's beside the one it is named in, which the client has spelled. */
function addressOf(target: LinkTarget, from: string): string {
  if (target.type === "address") return target.address;
  const folder = from.split("/").slice(0, -1);
  const up = target.path.filter((step) => step === "..").length;
  const down = target.path.slice(up).map(encodeURIComponent);
  return [...folder.slice(0, folder.length - up), ...down].join("/");
}
