import { NOTE_NAMES } from "../music/notes/note-names.ts";
import { EXPLAIN_COLUMNS } from "./check/explain-columns.ts";
import type { Command, Option } from "./command.ts";
import { EXPORT_COLUMNS } from "./export/export-columns.ts";

const HELP: Option = { type: "boolean", short: "h", help: "show this help" };
const COMMON: Readonly<Record<string, Option>> = {
  json: { type: "boolean", help: "print one JSON document for scripts, and nothing else, on standard output" },
  today: { type: "string", value: "YYYY-MM-DD", help: "take this day for today" },
  help: HELP,
};

const CONVENTIONS = NOTE_NAMES.map(({ id }) => id).join(", ");
const NAMES: Option = {
  type: "string",
  value: "CONVENTION",
  help: `the language of note names, in reading and in the answer: ${CONVENTIONS}`,
};
const PATHS =
  "PATH is a file, a folder, or - for standard input. A folder is searched for .practice files, but not the dot folders and node_modules in it. Without a PATH the current folder is meant.";

export const COMMANDS: readonly Command[] = [
  {
    name: "check",
    summary: "find what is wrong in a journal: notes, signatures, dates, words",
    usage: ["check [PATH…] [--json | --sarif]", "check --fix [PATH…]", "check --explain-lines [PATH…] [--json]"],
    about: [
      "Reads practice journals and tells what the editor would underline: scales with a wrong note, key signatures that do not fit, dates that do not exist, words that are not known. Each finding is one line: file, line, column, how much it matters, its code, and what to do.",
      "With --explain-lines it tells instead how each line was read: file, line, kind, and what was found, parted by “ | ”. Nothing is looked for then, and the exit status is 0.",
      "The exit status is 1 when there is an error or a warning, and 0 otherwise; advice (information) never makes it fail. So it can guard a commit or run on a server.",
      PATHS,
      "Given files, it reads the journal around them, for the names declared there, and lists only the files given.",
    ],
    options: {
      fix: {
        type: "boolean",
        help: "mend in place what can be mended without losing meaning, say what was done, and list the rest",
      },
      sarif: { type: "boolean", help: "print SARIF 2.1.0, which code hosts and editors read" },
      "explain-lines": { type: "boolean", help: "print how each line was read, and look for nothing" },
      ...COMMON,
    },
    prints: { heading: "The fields of --explain-lines", rows: EXPLAIN_COLUMNS },
    examples: [
      { line: "daystave check", does: "everything below the current folder" },
      { line: "daystave check week.practice", does: "one file, with the names its journal declares" },
      { line: "daystave check --fix", does: "mend what is safe to mend" },
      { line: "daystave check --explain-lines week.practice", does: "what was made of each line" },
      { line: "cat week.practice | daystave check -", does: "text from another program" },
    ],
    most: Number.POSITIVE_INFINITY,
    load: async () => (await import("./check/check.ts")).check,
  },
  {
    name: "notes",
    summary: "show an exercise note by note, with its key signature",
    usage: [
      'notes "SUBJECT, TERMS" [--instrument NAME] [--names CONVENTION] [--pitch A=415[,TEMPERAMENT]] [--explain WHAT] [--show-notes] [--json]',
    ],
    about: [
      "Says what an exercise is, in the words that you would write in the journal: its notes as written, going up, going down and as played, its key signature, steps, degrees and frequencies, and which notes the instrument does not have. For recorders also which step is hardest, with both fingerings, and which notes have a half hole.",
      "The instrument, the pitch and your own scales and patterns come from the nearest journal.practice in the current folder or above it; the options go before that. Frequencies are in the temperament declared there or named by --pitch, else in equal temperament; where it is another, the thirds and fifths of the exercise are told with their distance from pure.",
    ],
    options: {
      instrument: { type: "string", value: "NAME", help: "the instrument that plays it, as “alto recorder”" },
      names: NAMES,
      pitch: {
        type: "string",
        value: "A=415[,TEMPERAMENT]",
        help: "the pitch of A4 in hertz, and perhaps a temperament, in place of what the journal says",
      },
      explain: {
        type: "string",
        value: "signature|steps|both",
        help: "tell the key signature, the steps, or both (both unless you say so)",
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
    summary: "tell which scales some notes belong to",
    usage: ['scales --notes "D E F G A Bb C#" [--names CONVENTION] [--all] [--json]'],
    about: [
      "Names the scales in which all of the notes are found, in whatever order and octave you give them: those with the fewest further notes first, then those that begin on your first or your last note, then the usual kinds before the rare ones. Where no scale has them all, those with one note that differs, and which. A chord of exactly these notes is named as well.",
      "A note is a letter from A to G, perhaps with # or b behind it, and an octave number if you like; put all of them in quotes. A note at the right pitch under another letter counts, and is told.",
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
    usage: ["history [PATH…] [--subject S] [--since DATE] [--json [--blank-weeks]]"],
    about: [
      "Lists the exercises of a journal, the latest practised first: for each the best clean tempo of every week as a row of bars with their scale, the latest of these tempos, and whether they rise, fall or stay level. What each sign means stands below the table.",
      "An exercise may have been played in several ways (reach, tonguing, evenness; for a piece its movements and places), which are never compared with each other and are called its strands: the one practised in most weeks is shown, and named. With --json all are given, each with its weeks.",
      PATHS,
    ],
    options: {
      subject: { type: "string", value: "SUBJECT", help: "only this scale, arpeggio, figure or title" },
      since: { type: "string", value: "YYYY-MM-DD", help: "only the weeks from this day's on" },
      "blank-weeks": {
        type: "boolean",
        help: "with --json, list the weeks without practice too, from the first with some to the last",
      },
      ...COMMON,
    },
    prints: {
      heading: "The document of --json",
      rows: {
        exercises:
          "the latest practised first: subject, pattern, instrument, lastPractised, strand, strands; weeks and trend, those of the strand shown; journal, where there are several",
        strand: "the name of the strand shown, as “octave, single, even”",
        strands:
          "all of them: name; reach, tonguing and evenness, which a piece has not; movement and place, which it has; weeks and trend of each",
        weeks:
          "those with an attempt or minutes, the oldest first: week (ISO 8601); bestClean, the highest rate reached, in notes a minute (a piece: beats), or null; tested; attempts; minutes; about, some of these were shared out",
        trend:
          "slope, low and high, for a week; level, the confidence; verdict; weeks, how many tested ones it is fitted on",
        skipped: "what could not be read: path, reason",
      },
    },
    examples: [
      { line: "daystave history", does: "every exercise below the current folder" },
      { line: 'daystave history --subject "D minor melodic"', does: "one scale, in all its patterns" },
      { line: "daystave history --since 2026-01-01 --json", does: "this year's figures for a script" },
    ],
    most: Number.POSITIVE_INFINITY,
    load: async () => (await import("./history/history.ts")).history,
  },
  {
    name: "export",
    summary: "write every attempt into a table, for a spreadsheet or a script",
    usage: ["export [PATH…] (--csv | --json) [--subject S] [--since DATE] [--names CONVENTION]"],
    about: [
      "Prints the attempts of a journal as comma-separated values (RFC 4180, UTF-8), the oldest first: a header, and a row for each tempo or other attempt of each exercise; of several subjects on a line each has its rows, with its share of the minutes. Activities and planned lines are none. Where there are several journals, one follows the other.",
      "Text that a spreadsheet would take for a formula has an apostrophe before it. Control and bidirectional characters are shown as \\u202E.",
      PATHS,
    ],
    options: {
      csv: { type: "boolean", help: "print a table as comma-separated values" },
      subject: { type: "string", value: "SUBJECT", help: "only this scale, arpeggio, figure or title" },
      since: { type: "string", value: "YYYY-MM-DD", help: "only the attempts from this day on" },
      names: {
        type: "string",
        value: "CONVENTION",
        help: `the language of note names in the column subject, whatever the journal is read in: ${CONVENTIONS}`,
      },
      midi: { type: "string", value: "FILE", help: "write an exercise as MIDI; this is not there yet" },
      musicxml: { type: "string", value: "FILE", help: "write an exercise as MusicXML; this is not there yet" },
      tempo: { type: "string", value: "N", help: "the tempo of those two; not there yet either" },
      ...COMMON,
    },
    prints: { heading: "Columns", rows: EXPORT_COLUMNS },
    examples: [
      { line: "daystave export --csv > attempts.csv", does: "everything below the current folder" },
      { line: 'daystave export --csv --subject "D minor melodic"', does: "one scale, in all its patterns" },
      { line: "daystave export --csv --names english", does: "subjects in English names, however they were written" },
      { line: "daystave export week.practice --json", does: 'the same rows for a script: {"attempts": [{…}]}' },
    ],
    most: Number.POSITIVE_INFINITY,
    load: async () => (await import("./export/export.ts")).exportAttempts,
  },
  {
    name: "format",
    summary: "bring journals into the usual layout",
    usage: ["format [PATH…] [--check]"],
    about: [
      "Writes commas, spaces and indentation the usual way, in place. Words, names and figures stay as you typed them. Text from standard input goes to standard output.",
      PATHS,
    ],
    options: {
      check: {
        type: "boolean",
        help: "change nothing, name the files that would change, and exit with 1 if there are any",
      },
      ...COMMON,
    },
    examples: [
      { line: "daystave format", does: "everything below the current folder" },
      { line: "daystave format --check week.practice", does: "only ask" },
    ],
    most: Number.POSITIVE_INFINITY,
    load: async () => (await import("./format/format.ts")).format,
  },
  {
    name: "lsp",
    summary: "run the language server, for an editor",
    usage: ["lsp --stdio"],
    about: [
      "Speaks the Language Server Protocol over standard input and output. Editors start it by themselves; name this command in the settings of one that has no Daystave extension, for files that end in .practice.",
    ],
    options: {
      stdio: { type: "boolean", help: "speak over standard input and output, the only way there is here" },
      help: HELP,
    },
    examples: [{ line: "daystave lsp --stdio", does: "the command to give to the editor" }],
    most: 0,
    load: async () => (await import("./lsp/lsp.ts")).lsp,
  },
];
