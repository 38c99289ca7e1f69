import { CancellationError, type CancellationToken, type TextDocument } from "vscode";
import type { DocumentSemanticsTokensSignature } from "vscode-languageclient";

/** A file of more lines is coloured by the part that is in sight, as the editor asks for besides. */
const MOST_LINES = 5_000;

/**
 * Tokens of a whole file, which the editor asks for again at every pause. Those of many years take it longer to unpack
 * and to draw than a keystroke may. To have none would be an answer, and all the colour there is; called off, the
 * editor goes by what is in sight.
 */
export function tokensOfFile(
  document: TextDocument,
  token: CancellationToken,
  next: DocumentSemanticsTokensSignature,
): ReturnType<DocumentSemanticsTokensSignature> {
  if (document.lineCount > MOST_LINES) throw new CancellationError();
  return next(document, token);
}
