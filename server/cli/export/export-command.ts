import type { Command } from "../command.ts";
import { COMMON, namesOption, PATHS, quietOption } from "../options.ts";
import { ALL_COLUMNS, EXPORT_COLUMNS } from "./export-columns.ts";

export const EXPORT: Command = {
  name: "export",
  summary: "write the attempts as a table, an exercise as MIDI or MusicXML, a tuning as MIDI",
  usage: [
    "export [PATH…] (--csv | --json) [--all] [--subject S] [--since DATE] [--until DATE] [--names CONVENTION]",
    'export "SUBJECT, TERMS" (--midi FILE | --musicxml FILE) [--tempo N] [--instrument NAME] [--names CONVENTION] [--force]',
    'export ["SCALE"] --mts FILE [--octave] [--pitch A=415[,TEMPERAMENT]] [--force]',
  ],
  about: [
    "Prints the attempts of a journal as comma-separated values (RFC 4180, UTF-8), the oldest first: a header, and a row for each tempo or other attempt of each exercise; of several subjects on a line each has its rows, with its share of the minutes. Activities and plans are left out. Several journals follow one another.",
    "With --all there is a row as well for each activity, day, rest, remark, question, piece of set work, aim, and what a teacher said or what hurt. A first column says which of these a row is; sum minutes over attempts and activities, or over days and rests, never over all rows. What has no date, as an aim above the first day, comes first, and is left out where you ask for days.",
    "Text that a spreadsheet would take for a formula has an apostrophe before it. Control and bidirectional characters are shown as \\u202E.",
    PATHS,
    "With --midi or --musicxml it writes one exercise, in the words that you would write in the journal, for other programs: a Standard MIDI File at concert pitch, or MusicXML 4.0 as written for the instrument, with note values, slurs and signs. The instrument and your own scales and patterns come from the nearest journal.practice in the current folder or above it. The tempo is the first one of the line, else MusicXML has none and MIDI has a note a second.",
    "With --mts it writes the journal’s pitch and temperament as a message of the MIDI Tuning Standard, which retunes an instrument that knows it: the frequency of each of the 128 keys, or with --octave how far each key of an octave is from equal temperament at A = 440. A scale that you declared in cents gets the nearest keys from its tonic up, or, with more notes than those, the keys in turn from the tonic nearest to middle C.",
    "FILE is never written over unless you add --force; - is standard output.",
  ],
  options: {
    csv: { type: "boolean", help: "print a table as comma-separated values" },
    all: {
      type: "boolean",
      help: "not only the attempts: also activities, days, remarks, set work, questions, aims",
    },
    subject: { type: "string", value: "SUBJECT", help: "only this scale, arpeggio, figure or title" },
    since: { type: "string", value: "YYYY-MM-DD", help: "only the attempts from this day on" },
    until: { type: "string", value: "YYYY-MM-DD", help: "only the attempts up to this day" },
    names: namesOption("the language of note names in the column subject, whatever the journal is read in"),
    midi: { type: "string", value: "FILE", help: "write an exercise as a MIDI file (.mid)", offers: "files" },
    musicxml: { type: "string", value: "FILE", help: "write an exercise as MusicXML (.musicxml)", offers: "files" },
    mts: {
      type: "string",
      value: "FILE",
      help: "write a tuning as a MIDI Tuning Standard message (.syx)",
      offers: "files",
    },
    tempo: { type: "string", value: "N", help: "beats a minute, in place of the line’s own" },
    instrument: {
      type: "string",
      value: "NAME",
      help: "the instrument that plays the exercise, as “alto recorder”",
      offers: "instruments",
    },
    pitch: {
      type: "string",
      value: "A=415[,TEMPERAMENT]",
      help: "with --mts, the pitch of A4 in hertz, and perhaps a temperament, in place of what the journal says",
    },
    octave: { type: "boolean", help: "with --mts, an octave tuning, which more instruments know" },
    force: { type: "boolean", help: "write over FILE where it is there already" },
    ...quietOption("show no progress, and do not say what was written"),
    ...COMMON,
  },
  prints: { heading: "Columns", rows: { ...EXPORT_COLUMNS, ...ALL_COLUMNS } },
  examples: [
    { line: "daystave export --csv > attempts.csv", does: "everything below the current folder" },
    { line: 'daystave export --csv --subject "D minor melodic"', does: "one scale, in all its patterns" },
    { line: "daystave export --csv --all > diary.csv", does: "all that the journal says, a row each" },
    { line: "daystave export --csv --names english", does: "subjects in English names, however they were written" },
    { line: "daystave export week.practice --json", does: 'the same rows for a script: {"attempts": [{…}]}' },
    { line: 'daystave export "D minor, thirds, 8ths at 60" --midi thirds.mid', does: "an exercise to listen to" },
    {
      line: 'daystave export "F major, 2 octaves, slurred" --musicxml f-major.musicxml --instrument clarinet',
      does: "for a notation program, as a clarinet reads it",
    },
    { line: 'daystave export --mts tuning.syx --pitch "A=415, Vallotti"', does: "for a keyboard that can be retuned" },
  ],
  most: Number.POSITIVE_INFINITY,
  offers: "journals",
  load: async () => (await import("./export.ts")).exportAsked,
};
