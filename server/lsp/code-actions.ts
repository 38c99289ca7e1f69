import type { CodeAction, CodeActionParams } from "vscode-languageserver";
import { dateAboveIn } from "../features/commands/date-above.ts";
import { declareTitleIn } from "../features/commands/declare-title.ts";
import { nameNotesIn } from "../features/commands/name-notes.ts";
import { respellIn } from "../features/commands/respell.ts";
import { settleConflictIn } from "../features/commands/settle-conflict.ts";
import { takeOutPlanIn } from "../features/commands/take-out-plan.ts";
import { askedFixesIn } from "../features/diagnostics/asked-fixes.ts";
import { codeActionsIn } from "../features/diagnostics/code-actions.ts";
import type { CodeAction as Action } from "../features/types.ts";
import { diagnostic, textEdit } from "./convert.ts";
import { diagnosticsNear, foundDiagnostics } from "./diagnostics.ts";
import type { Place } from "./session.ts";
import { workspaceEdit } from "./workspace-edit.ts";

export function codeActions(place: Place, { range, context, textDocument }: CodeActionParams): CodeAction[] {
  const { session, journal, uri } = place;
  if (!session.client.takesCodeActions) return []; // older clients take commands alone, and we have none
  const byHand = isAskedByHand(context);
  const mends = codeActionsIn(byHand ? foundDiagnostics(place) : diagnosticsNear(place, range), range, context.only);
  const asked = byHand
    ? [askedFixesIn, declareTitleIn, nameNotesIn, respellIn].flatMap((actionsIn) =>
        actionsIn(journal, uri, range, context.only),
      )
    : [];
  const taken = byHand ? takeOutPlanIn(journal, uri, range, session.dayOf(uri), context.only) : [];
  const sides = settleConflictIn(journal, uri, range, context.only);
  const dates = dateAboveIn(journal, uri, range, session.dayOf(uri), context.only);
  const editOf = ({ uri: key = uri, edits }: Action) => {
    const spelled = key === uri ? textDocument.uri : (session.workspace.openDocument(key)?.uri ?? key);
    return workspaceEdit(session, key, spelled, edits.map(textEdit));
  };
  return [...mends, ...sides, ...dates, ...asked, ...taken].map((action) => ({
    title: action.title,
    kind: action.kind,
    isPreferred: action.preferred,
    diagnostics: action.diagnostics.map(diagnostic),
    edit: editOf(action),
  }));
}

/** `CodeActionTriggerKind.Automatic` (3.17): the cursor moved, and nobody has asked for anything. */
const AUTOMATIC = 2;

/** What mends nothing is offered to somebody who looks for it, and lights no lamp wherever the cursor goes. */
function isAskedByHand({ triggerKind, only }: CodeActionParams["context"]): boolean {
  return triggerKind !== AUTOMATIC || only !== undefined;
}
