import { commands, type ExtensionContext, window, workspace } from "vscode";
import type { BaseLanguageClient, LanguageClientOptions } from "vscode-languageclient";
import type { InitialisationOptions, Settings } from "../shared/protocol.ts";
import { SHOW_PREVIEW, showPreview } from "./commands/show-preview.ts";
import { answerFiles } from "./files.ts";
import { followTheme, paletteOf } from "./palette.ts";
import { PREVIEW_TYPE, PreviewPanels } from "./preview/panels.ts";

export const CLIENT_ID = "daystave";
export const CLIENT_NAME = "Daystave";

/** What both hosts tell the language client. Its watcher lives as long as the extension. */
export function clientOptions(context: ExtensionContext): LanguageClientOptions {
  const journals = workspace.createFileSystemWatcher("**/*.practice");
  context.subscriptions.push(journals);
  return {
    documentSelector: [{ language: "practice-journal" }],
    initializationOptions: initialisationOptions(),
    synchronize: { fileEvents: journals, configurationSection: "daystave" },
  };
}

/** Starts the language server and all that leans on it; everything ends with the extension. */
export async function startDaystave(context: ExtensionContext, client: BaseLanguageClient): Promise<void> {
  const panels = new PreviewPanels(context.extensionUri, client);
  context.subscriptions.push(
    client,
    panels,
    answerFiles(client),
    followTheme(client),
    commands.registerCommand(SHOW_PREVIEW, (uri?: unknown) => showPreview(panels, uri)),
    window.registerWebviewPanelSerializer(PREVIEW_TYPE, panels),
  );
  await client.start();
}

function initialisationOptions(): InitialisationOptions {
  const { timeZone } = workspace.getConfiguration().get<Settings>("daystave") ?? {};
  return {
    timeZone: timeZone || Intl.DateTimeFormat().resolvedOptions().timeZone,
    canReadFiles: true,
    palette: paletteOf(window.activeColorTheme),
  };
}
