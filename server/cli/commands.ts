import { AIMS } from "./aims/aims-command.ts";
import { EXPLAIN_COLUMNS } from "./check/explain-columns.ts";
import type { Command } from "./command.ts";
import { COMPLETION } from "./completion/completion-command.ts";
import { DAY } from "./day/day-command.ts";
import { EXPLAIN } from "./explain/explain-command.ts";
import { EXPORT } from "./export/export-command.ts";
import { INIT } from "./init/init-command.ts";
import { KEYS } from "./keys/keys-command.ts";
import { LIST } from "./list/list-command.ts";
import { MAN } from "./man/man-command.ts";
import { COMMON, GENERAL, NAMES, PATHS, quietOption, STDIN_PATH } from "./options.ts";
import { PLAN } from "./plan/plan-command.ts";
import { PUPILS } from "./pupils/pupils-command.ts";
import { REPORT } from "./report/report-command.ts";
import { SHEET } from "./sheet/sheet-command.ts";

export const COMMANDS: readonly Command[] = [
  INIT,
  DAY,
  {
    name: "check",
    summary: "find what is wrong in a journal: notes, signatures, dates, words",
    usage: [
      "check [PATH…] [--json | --sarif] [--quiet]",
      "check - --stdin-path PATH",
      "check --fix [PATH…]",
      "check --watch [PATH…]",
      "check --staged [--json | --sarif]",
      "check --explain-lines [PATH…] [--json]",
    ],
    about: [
      "Reads practice journals and lists what the editor would underline: scales with a wrong note, key signatures that do not fit, dates that do not exist, words that are not known. Each finding is one line: file, line, column, how much it matters, its code, and what to do.",
      "With --explain-lines it shows instead how each line was read: file, line, kind, and what was found, separated by “ | ”. It looks for no mistakes then, and the exit status is 0.",
      "With --watch it goes on, checks again whenever a .practice file there changes, and says which; Ctrl+C ends it, with exit status 0.",
      "The exit status is 1 when there is an error or a warning, and 0 otherwise; advice (information) never makes it fail. So it can guard a commit or run on a server.",
      PATHS,
      "Given files, it reads the journal around them, for the names declared there, and lists only the files given.",
    ],
    options: {
      fix: {
        type: "boolean",
        help: "fix in place whatever cannot change your meaning, say what was done, and list the rest",
      },
      watch: { type: "boolean", help: "check again whenever a file changes, until Ctrl+C" },
      staged: { type: "boolean", help: "check what git would commit, for a hook; print nothing where that is sound" },
      sarif: { type: "boolean", help: "print SARIF 2.1.0, which code hosts and editors read" },
      "explain-lines": { type: "boolean", help: "print how each line was read, without looking for mistakes" },
      ...STDIN_PATH,
      ...quietOption("print findings alone: no summary, no progress, nothing of what was fixed"),
      ...COMMON,
    },
    prints: { heading: "The fields of --explain-lines", rows: EXPLAIN_COLUMNS },
    examples: [
      { line: "daystave check", does: "everything below the current folder" },
      { line: "daystave check week.practice", does: "one file, with the names its journal declares" },
      { line: "daystave check --fix", does: "fix what is safe to fix" },
      { line: "daystave check --explain-lines week.practice", does: "what was made of each line" },
      { line: "daystave check --watch", does: "again at each change, in a terminal beside the editor" },
      { line: "cat week.practice | daystave check -", does: "text from another program" },
      {
        line: "daystave check - --stdin-path week.practice < draft",
        does: "text that is to become that file, in the light of its journal",
      },
    ],
    most: Number.POSITIVE_INFINITY,
    offers: "journals",
    load: async () => (await import("./check/check.ts")).check,
  },
  {
    name: "notes",
    summary: "show an exercise note by note, with its key signature",
    usage: [
      'notes "SUBJECT, TERMS" [--instrument NAME] [--names CONVENTION] [--pitch A=415[,TEMPERAMENT]] [--explain WHAT] [--show-notes] [--json]',
    ],
    about: [
      "Says what an exercise is, in the words that you would write in the journal: its notes as written, going up, going down and as played, its key signature, steps, degrees and frequencies, and which notes the instrument does not have. For recorders also the hardest finger change, with both fingerings, and which notes have a half hole.",
      "The instrument, the pitch and your own scales and patterns come from the nearest journal.practice in the current folder or above it; the options go before that. Frequencies are in the temperament declared there or named by --pitch, else in equal temperament; in any other, the thirds and fifths of the exercise are shown with their distance from pure.",
    ],
    options: {
      instrument: {
        type: "string",
        value: "NAME",
        help: "the instrument that plays it, as “alto recorder”",
        offers: "instruments",
      },
      names: NAMES,
      pitch: {
        type: "string",
        value: "A=415[,TEMPERAMENT]",
        help: "the pitch of A4 in hertz, and perhaps a temperament, in place of what the journal says",
      },
      explain: {
        type: "string",
        value: "signature|steps|both",
        offers: ["signature", "steps", "both"],
        help: "show the key signature, the steps, or both (the default)",
      },
      "show-notes": {
        type: "boolean",
        help: "name the notes where the journal or the line has “hide notes”; --json always does",
      },
      ...COMMON,
    },
    examples: [
      { line: 'daystave notes "F# major"', does: "the scale" },
      { line: 'daystave notes "D minor melodic, thirds, twelfth"', does: "a pattern over an octave and a fifth" },
      {
        line: 'daystave notes "G minor arpeggio, 2 octaves" --instrument "tenor recorder"',
        does: "where it lies on another instrument",
      },
      { line: 'daystave notes "D minor" --pitch "A=415, Vallotti"', does: "in another tuning" },
      { line: 'daystave notes "fis-Moll" --names german', does: "in German names" },
    ],
    most: 1,
    load: async () => (await import("./notes/notes.ts")).notes,
  },
  {
    name: "scales",
    summary: "find which scales some notes belong to",
    usage: ['scales --notes "D E F G A Bb C#" [--names CONVENTION] [--all] [--json]'],
    about: [
      "Names the scales in which all of the notes are found, in whatever order and octave you give them: those with the fewest further notes first, then those that begin on your first or your last note, then the usual kinds before the rare ones. Where no scale has them all, those with one note that differs, and which. A chord of exactly these notes is named as well.",
      "A note is a letter from A to G, perhaps with # or b after it, and an octave number if you like; put all of them in quotes. A note at the right pitch under another letter counts, and the answer says so.",
      "Scales of your own come from the nearest journal.practice in the current folder or above it. The chromatic scale, which has every note, is named for all twelve only; a scale in cents between the keys is not.",
    ],
    options: {
      notes: { type: "string", value: '"D E F…"', help: "the notes, at least one" },
      names: NAMES,
      all: { type: "boolean", help: "show all that are found, not the nearest twelve; --json always has all" },
      ...COMMON,
    },
    prints: {
      heading: "The document of --json",
      rows: {
        notes: "as given, each name once",
        chords: "those of exactly these notes: name, root, kind, inversion, notes, respelled",
        scales: "those that have them all: name, tonic, kind, alsoCalled, notes, notGiven, respelled, usual",
        nearMisses: "where there are none, those with one note that differs: the same, and differs: given, instead",
      },
    },
    examples: [
      { line: 'daystave scales --notes "D E F G A Bb C#"', does: "D harmonic minor" },
      { line: 'daystave scales --notes "G A B C D" --all', does: "five notes of many scales" },
      { line: 'daystave scales --notes "B D F Ab"', does: "a chord, and the scales it is found in" },
    ],
    most: 0,
    load: async () => (await import("./scales/scales.ts")).scales,
  },
  {
    name: "history",
    summary: "show how the tempos of each exercise went, week by week",
    usage: [
      "history [PATH…] [--subject S] [--weeks N | --since DATE] [--until DATE] [--rates | --json [--blank-weeks]]",
    ],
    about: [
      "Lists the exercises of a journal, the latest practised first: for each the best clean tempo of every week as a row of bars, the lowest and the highest of them, the latest, and which way they go. Below the table is what each sign means.",
      "All rows have the same weeks, whose first and last are named by their Mondays above them: half a year up to the last practised week, unless you ask for others. The trend is over the weeks drawn. Exercises that you left off before come last, with the tempos and the trend of their own last half year.",
      "An exercise may have been played in several ways (reach, tonguing, evenness; for a piece its movements and places), which are never compared with each other and are called its strands: the one practised in most of the weeks is shown, and named. With --subject every strand has its row, and with --json all are given, each with its weeks.",
      PATHS,
    ],
    options: {
      subject: { type: "string", value: "SUBJECT", help: "only this scale, arpeggio, figure or title" },
      weeks: { type: "string", value: "N", help: "only so many weeks, up to the last practised one or --until" },
      since: { type: "string", value: "YYYY-MM-DD", help: "only the weeks from this day's on" },
      until: { type: "string", value: "YYYY-MM-DD", help: "only the weeks up to this day's, as things were then" },
      rates: {
        type: "boolean",
        help: "tempos in notes a minute (pieces: beats), which can be compared, and the trend in these",
      },
      "blank-weeks": {
        type: "boolean",
        help: "with --json, list the weeks without practice too, from the first with some to the last",
      },
      ...quietOption("show no progress"),
      ...COMMON,
    },
    prints: {
      heading: "The document of --json",
      rows: {
        exercises:
          "the latest practised first: subject, pattern, instrument, lastPractised, strand, strands; weeks and trend, those of the strand shown; journal, where there are several",
        strand: "the name of the strand shown, as “octave, single, even”",
        strands:
          "all of them: name; reach, tonguing and evenness, which a piece has not; movement and place, which it has; weeks, trend and lastPractised of each; steady, the fastest rate that is steady today (with --until, at the end of that week), or null; shares",
        shares:
          "of each rate tried at least five times on two days in the twelve weeks before today: rate, reached, tries, days; low and high, the ends of the 95 % interval of the share",
        weeks:
          "those with an attempt or minutes, the oldest first: week (ISO 8601); bestClean, the highest rate reached, in notes a minute (a piece: beats), or null; usual, the week's number for the trend, or null; tested; attempts; minutes; about, some of these were shared out",
        trend:
          "slope, low and high, for a week; level, the confidence; verdict; weeks, how many tested ones it is fitted on; from and to, the first and the last of them",
        skipped: "what could not be read: path, reason",
      },
    },
    examples: [
      { line: "daystave history", does: "every exercise below the current folder" },
      { line: 'daystave history --subject "D minor melodic"', does: "one scale, in all its patterns and ways" },
      { line: "daystave history --weeks 8 --until 2026-01-31", does: "eight weeks up to the end of January" },
      { line: "daystave history --since 2026-01-01 --json", does: "this year's numbers for a script" },
    ],
    most: Number.POSITIVE_INFINITY,
    offers: "journals",
    load: async () => (await import("./history/history.ts")).history,
  },
  EXPORT,
  {
    name: "format",
    summary: "bring journals into the usual layout",
    usage: ["format [PATH…] [--check] [--quiet]", "format - [--stdin-path PATH]"],
    about: [
      "Writes commas, spaces and indentation the usual way, in place. Words, names and numbers stay as you typed them. Text from standard input goes to standard output.",
      PATHS,
    ],
    options: {
      check: {
        type: "boolean",
        help: "change nothing, name the files that would change, and exit with 1 if there are any",
      },
      ...STDIN_PATH,
      ...quietOption("say nothing of files that were changed; no progress"),
      ...COMMON,
    },
    examples: [
      { line: "daystave format", does: "everything below the current folder" },
      { line: "daystave format --check week.practice", does: "only ask" },
    ],
    most: Number.POSITIVE_INFINITY,
    offers: "journals",
    load: async () => (await import("./format/format.ts")).format,
  },
  LIST,
  EXPLAIN,
  {
    name: "hook",
    summary: "check a journal before each commit to git",
    usage: ["hook [--install]"],
    about: [
      "Prints a pre-commit hook for git. Before each commit it checks the journal as the commit would leave it: what is staged, not what is in your folder. An error or a warning stops the commit, and so does a journal that cannot be read. Advice lets it pass.",
      "It checks the files that you commit, and what they bring about in others, as a day that comes twice; after a change to a declaration, all files of the journal. By hand: daystave check --staged.",
    ],
    options: {
      install: { type: "boolean", help: "put it into this repository, never in place of another hook" },
      ...GENERAL,
    },
    examples: [
      { line: "daystave hook --install", does: "from now on in this repository" },
      { line: "daystave hook", does: "only show it" },
    ],
    most: 0,
    load: async () => (await import("./hook/hook.ts")).hook,
  },
  {
    name: "lsp",
    summary: "run the language server, for an editor",
    usage: ["lsp --stdio"],
    about: [
      "Speaks the Language Server Protocol over standard input and output. Editors start it by themselves; name this command in the settings of one that has no Daystave extension, for files that end in .practice.",
    ],
    options: {
      stdio: { type: "boolean", help: "speak over standard input and output, the only way for now" },
      ...GENERAL,
    },
    examples: [{ line: "daystave lsp --stdio", does: "the command to give to the editor" }],
    most: 0,
    load: async () => (await import("./lsp/lsp.ts")).lsp,
  },
  COMPLETION,
  MAN,
  AIMS,
  KEYS,
  PLAN,
  PUPILS,
  REPORT,
  SHEET,
];
