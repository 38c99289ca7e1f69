import type { CancellationToken, TextDocument } from "vscode";
import type { DocumentSemanticsTokensSignature } from "vscode-languageclient";

/** A file of more lines is coloured by the part that is in sight, as the editor asks for besides. */
const MOST_LINES = 5_000;

/**
 * Tokens of a whole file, which the editor asks for again at every pause. Those of many years take it longer to unpack and to
 * draw than a keystroke may.
 */
export function tokensOfFile(
  document: TextDocument,
  token: CancellationToken,
  next: DocumentSemanticsTokensSignature,
): ReturnType<DocumentSemanticsTokensSignature> {
  return document.lineCount > MOST_LINES ? undefined : next(document, token);
}
