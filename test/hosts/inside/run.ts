import * as vscode from "vscode";

// What the extension gives through the editor's own interface, with the folder of the sample's week open. Bundled, and run
// inside an editor by test/hosts/editor-interface.test.ts: there is no test library here.

const ID = "daystave-dev.daystave";
/** Milliseconds. */
const LIMIT = 30_000;

/**
 * Called by the editor; a rejection is a failure, of which it says no reason. Who runs it looks for lines with the mark
 * `[test]`.
 */
export async function run(): Promise<void> {
  await givesAll().catch((reason: unknown) => {
    console.log(`[test] failed: ${reason instanceof Error ? reason.stack : reason}`);
    throw reason;
  });
}

async function givesAll(): Promise<void> {
  const folder = vscode.workspace.workspaceFolders![0]!.uri;
  const journal = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, "week.practice"));
  await vscode.window.showTextDocument(journal);
  await underlinesAndMends(journal);
  await explains(journal);
  await completes(journal);
  await showsThePreview();
  const extension = vscode.extensions.getExtension<{ readonly host: string }>(ID)!;
  console.log(`[test] ran in the host: ${extension.exports.host}`);
  const { remoteName } = vscode.env;
  const runsWith = extension.extensionKind === vscode.ExtensionKind.Workspace ? "the files" : "the window";
  const where = remoteName === undefined ? "here" : "on another machine";
  console.log(`[test] files of ${folder.scheme}: are ${where}, and the extension runs with ${runsWith}`);
}

/** The sample says of itself that two scales are spelled wrong: F# major with F, G harmonic minor with F. */
async function underlinesAndMends(journal: vscode.TextDocument): Promise<void> {
  const codes = () => vscode.languages.getDiagnostics(journal.uri).map(({ code }) => code);
  await until("two wrong notes are underlined", () => same(codes().sort(), ["scale-note", "scale-spelling"]));
  const [wrong] = vscode.languages.getDiagnostics(journal.uri).filter(({ code }) => code === "scale-spelling");
  // Asked again, as the light bulb does: on a busy machine the findings may be followed by others, and an answer be empty.
  const fix = await untilFound("the wrong letter can be mended", async () => {
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[] | undefined>(
      "vscode.executeCodeActionProvider",
      journal.uri,
      wrong!.range,
      vscode.CodeActionKind.QuickFix.value,
    );
    return actions?.find(({ title }) => title === "Change F to E#")?.edit;
  });
  await vscode.workspace.applyEdit(fix);
  await until("the mended note is underlined no more", () => same(codes(), ["scale-note"]));
  must("the mend is in the text", journal.getText().includes("F# major: F# G# A# B C# D# E# F#"));
}

async function explains(journal: vscode.TextDocument): Promise<void> {
  const at = journal.positionAt(journal.getText().indexOf("D melodic minor, thirds"));
  // Asked before the history is read, a hover says less: asked again, as a person would.
  await untilFound("the hover says how the exercise has gone", async () => {
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>("vscode.executeHoverProvider", journal.uri, at);
    const text = hovers
      .flatMap(({ contents }) => contents)
      .map((content) => (typeof content === "string" ? content : content.value))
      .join("\n");
    const words = ["**D melodic minor, thirds**", "Start at ", "in four weeks", "26 Jan"];
    return words.every((each) => text.includes(each)) || undefined;
  });
}

async function completes(journal: vscode.TextDocument): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  edit.insert(journal.uri, new vscode.Position(journal.lineCount, 0), "\n  Eb ma");
  await vscode.workspace.applyEdit(edit);
  const end = journal.lineAt(journal.lineCount - 1).range.end;
  const list = await vscode.commands.executeCommand<vscode.CompletionList>(
    "vscode.executeCompletionItemProvider",
    journal.uri,
    end,
  );
  const labels = list.items.map(({ label }) => (typeof label === "string" ? label : label.label));
  must(`Eb major is offered among ${labels.slice(0, 5).join(", ")}`, labels.includes("Eb major"));
}

async function showsThePreview(): Promise<void> {
  await vscode.commands.executeCommand("daystave.showPreview");
  const isPreview = ({ input }: vscode.Tab): boolean =>
    input instanceof vscode.TabInputWebview && input.viewType.endsWith("daystave.preview");
  await until("the preview has a tab of its own, named after the player", () =>
    vscode.window.tabGroups.all.some(({ tabs }) => tabs.some((tab) => isPreview(tab) && /^Practice: /.test(tab.label))),
  );
}

/** Looks again and again; what is waited for here has no event in common. */
async function untilFound<T>(what: string, find: () => T | undefined | Promise<T | undefined>): Promise<T> {
  const begun = Date.now();
  for (;;) {
    const found = await unlessCancelled(find);
    if (found !== undefined) return found;
    must(what, Date.now() - begun < LIMIT);
    await new Promise((done) => setTimeout(done, 50));
  }
}

/** On a busy machine the editor takes back what it was asked, where its text or its findings have changed meanwhile. */
async function unlessCancelled<T>(find: () => T | undefined | Promise<T | undefined>): Promise<T | undefined> {
  try {
    return await find();
  } catch (reason) {
    if (reason instanceof Error && reason.name === "Canceled") return undefined;
    throw reason;
  }
}

async function until(what: string, holds: () => boolean): Promise<void> {
  await untilFound(what, () => holds() || undefined);
}

function must(what: string, holds: boolean): void {
  if (!holds) throw new Error(`[test] not so: ${what}`);
}

function same(some: readonly unknown[], others: readonly unknown[]): boolean {
  return JSON.stringify(some) === JSON.stringify(others);
}
