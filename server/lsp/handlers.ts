// All that needs the core: a bundle of its own in Node, loaded while the server starts.
export { codeActions } from "./code-actions.ts";
export { runCommand } from "./commands.ts";
export { completion, resolveCompletion, resolveUri } from "./completion.ts";
export { documentDiagnostics, noDiagnostics } from "./diagnostics.ts";
export { symbols } from "./document-symbols.ts";
export { folding } from "./folding-ranges.ts";
export { format } from "./formatting.ts";
export { hover } from "./hover.ts";
export { planMinutes } from "./plan-wanted.ts";
export { announceChanges, emptyPreview, preview, readPreviewParams } from "./preview.ts";
export { pupils, readPupilsParams } from "./pupils.ts";
export { pushDiagnostics } from "./push-diagnostics.ts";
export { refreshDiagnostics } from "./refresh.ts";
export { tokens } from "./semantic-tokens.ts";
export { openSession } from "./session.ts";
export { today } from "./today.ts";
export { warmHistory } from "./warm-history.ts";
export { workspaceDiagnostics } from "./workspace-diagnostics.ts";
