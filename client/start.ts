import { commands, type ExtensionContext, window, workspace } from "vscode";
import { type BaseLanguageClient, type LanguageClientOptions, State } from "vscode-languageclient";
import type { InitialisationOptions } from "../shared/protocol.ts";
import { CHANGE_NAMES, changeNames } from "./commands/change-names.ts";
import { DECLARE_TITLE, declareTitle } from "./commands/declare-title.ts";
import { EXPORT_EXERCISE, exportExercise } from "./commands/export-exercise.ts";
import { FINGER_CHANGE, fingerChange } from "./commands/finger-change.ts";
import { FOLLOW_TEXT, followText } from "./commands/follow-text.ts";
import { GO_TO_LAST_TIME, goToLastTime } from "./commands/go-to-last-time.ts";
import { KEEP_BOTH_SIDES, keepBothSides } from "./commands/keep-both-sides.ts";
import { MOVE_YEAR, moveYear } from "./commands/move-year.ts";
import { NEW_DAY, newDay } from "./commands/new-day.ts";
import { NEW_DAY_WITH_PHASES, newDayWithPhases } from "./commands/new-day-with-phases.ts";
import { NEW_JOURNAL, newJournal } from "./commands/new-journal.ts";
import { OPEN_SAMPLE, openSample } from "./commands/open-sample.ts";
import { PRINT_SHEET, printSheet } from "./commands/print-sheet.ts";
import { REPEAT_FASTER, repeatFaster } from "./commands/repeat-faster.ts";
import { REPEAT_SLOWER, repeatSlower } from "./commands/repeat-slower.ts";
import { RESPELL, respell } from "./commands/respell.ts";
import { SHOW_PREVIEW, showPreview } from "./commands/show-preview.ts";
import { SHOW_PUPILS, showPupils } from "./commands/show-pupils.ts";
import { STAY_WITH_JOURNAL, stayWithJournal } from "./commands/stay-with-journal.ts";
import { WRITE_NOTES, writeNotes } from "./commands/write-notes.ts";
import { WRITE_PLAN, writePlan } from "./commands/write-plan.ts";
import { answerFiles } from "./files.ts";
import { JournalNews } from "./journal-news.ts";
import { openAtToday } from "./open-at-today.ts";
import { followTheme, paletteOf } from "./palette.ts";
import { PREVIEW_TYPE, PreviewPanels } from "./preview/panels.ts";
import { PUPILS_TYPE, PupilsPanel } from "./pupils/panel.ts";
import { tokensOfFile } from "./semantic-tokens.ts";
import { showDocument } from "./show-document.ts";
import { foundSymbolsAsText, symbolsAsText } from "./symbols-as-text.ts";

export const CLIENT_ID = "daystave";
export const CLIENT_NAME = "Daystave";

/**
 * What both hosts tell the language client; `bundles` is where a server in a web worker finds its own. Its watcher
 * lives as long as the extension.
 */
export function clientOptions(context: ExtensionContext, bundles?: string): LanguageClientOptions {
  const journals = workspace.createFileSystemWatcher("**/*.practice");
  context.subscriptions.push(journals);
  return {
    documentSelector: [{ language: "practice-journal" }],
    // Called whenever a server is asked to initialize, also one that takes the place of one that died. The mark tells
    // the wait for its start from our own work.
    initializationOptions: () => {
      performance.mark("daystave/willWaitForServer");
      return initialisationOptions(bundles);
    },
    synchronize: { fileEvents: journals, configurationSection: "daystave" },
    middleware: {
      window: { showDocument },
      provideDocumentSymbols: symbolsAsText,
      provideWorkspaceSymbols: foundSymbolsAsText,
      provideDocumentSemanticTokens: tokensOfFile,
    },
  };
}

/** Starts the language server and all that leans on it; everything ends with the extension. */
export async function startDaystave(context: ExtensionContext, client: BaseLanguageClient): Promise<void> {
  const news = new JournalNews(client);
  const panels = new PreviewPanels(context.extensionUri, client, news);
  const pupils = new PupilsPanel(context.extensionUri, client, news);
  context.subscriptions.push(
    client,
    news,
    panels,
    pupils,
    answerFiles(client),
    followTheme(client),
    client.onDidChangeState(({ newState }) => {
      if (newState === State.Running) performance.mark("daystave/didWaitForServer");
    }),
    openAtToday(context, client),
    commands.registerCommand(NEW_JOURNAL, () => newJournal(client)),
    commands.registerCommand(OPEN_SAMPLE, () => openSample(context.extensionUri)),
    commands.registerCommand(NEW_DAY, (uri?: unknown) => newDay(client, uri)),
    commands.registerCommand(NEW_DAY_WITH_PHASES, (uri?: unknown) => newDayWithPhases(client, uri)),
    commands.registerCommand(WRITE_PLAN, (uri?: unknown) => writePlan(client, context, uri)),
    commands.registerCommand(REPEAT_FASTER, () => repeatFaster(client)),
    commands.registerCommand(REPEAT_SLOWER, () => repeatSlower(client)),
    commands.registerCommand(WRITE_NOTES, () => writeNotes(client)),
    commands.registerCommand(FINGER_CHANGE, () => fingerChange(client)),
    commands.registerCommand(GO_TO_LAST_TIME, () => goToLastTime(client)),
    commands.registerCommand(EXPORT_EXERCISE, () => exportExercise(client)),
    commands.registerCommand(PRINT_SHEET, () => printSheet(client)),
    commands.registerCommand(KEEP_BOTH_SIDES, () => keepBothSides(client)),
    commands.registerCommand(DECLARE_TITLE, () => declareTitle(client)),
    commands.registerCommand(RESPELL, () => respell(client)),
    commands.registerCommand(MOVE_YEAR, () => moveYear(client)),
    commands.registerCommand(CHANGE_NAMES, () => changeNames(client)),
    commands.registerCommand(SHOW_PREVIEW, (uri?: unknown, line?: unknown) => showPreview(panels, uri, line)),
    commands.registerCommand(STAY_WITH_JOURNAL, () => stayWithJournal(panels)),
    commands.registerCommand(FOLLOW_TEXT, () => followText(panels)),
    commands.registerCommand(SHOW_PUPILS, () => showPupils(pupils)),
    window.registerWebviewPanelSerializer(PREVIEW_TYPE, panels),
    window.registerWebviewPanelSerializer(PUPILS_TYPE, pupils),
  );
  await client.start();
}

function initialisationOptions(bundles: string | undefined): InitialisationOptions {
  return {
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    canReadFiles: true,
    canShowPreview: true,
    palette: paletteOf(window.activeColorTheme),
    bundles,
  };
}
