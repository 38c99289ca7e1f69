import { expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import type { Declared } from "../../../server/journal/declarations/declared.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { scaleText, subjectText } from "../../../server/journal/subject-text.ts";
import { printName } from "../../../server/music/notes/note.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { temperamentText } from "../../../server/music/tuning/temperament.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { itemsOf, rowsOf } from "../../syntax/line/print.ts";
import { fractionText, noteText, tempoText } from "../print.ts";

// Every kind of declaration: what it says, and each of its faults, above the first day.

const URI = "file:///j/journal.practice";
const TODAY = parseIsoDate("2026-06-01")!;
const HEAD = 'piece "Sonata in D minor" as Sonata\n';

function journalOf(line: string): Journal {
  return new Journal("file:///j", new Map([[URI, createDocument(HEAD + line)]]));
}

/** Rows of a declaration and what it says. */
function check(rows: string): void {
  for (const [typed, says] of rowsOf(rows)) {
    const journal = journalOf(typed);
    const { declarations } = journal.model(journal.files.get(URI)!.blocks[0]!);
    const declared = declarations.find(({ line }) => line === 1)?.declaration.declared;
    expect([typed, declared ? said(declared) : "nothing"]).toEqual([typed, says]);
    expect([typed, gravest(typed)]).toEqual([typed, []]);
  }
}

function gravest(typed: string): readonly string[] {
  return diagnosticsOf(journalOf(typed), URI, TODAY)
    .filter(({ severity }) => severity !== "information")
    .map(({ code }) => code);
}

/** Rows of a declaration, and its findings: code, the words it stands on, and the texts that are offered for them. */
function checkFaults(rows: string): void {
  for (const [typed, expected] of rowsOf(rows)) {
    const shown = diagnosticsOf(journalOf(typed), URI, TODAY).map(({ code, range, fixes }) => {
      const offers = fixes.map(({ edits }) => edits[0]?.newText).join(" or ");
      return `${code}: ${typed.slice(range.start.character, range.end.character)}${offers && ` -> ${offers}`}`;
    });
    expect([typed, shown.join("; ")]).toEqual([typed, expected]);
  }
}

function said(declared: Declared): string {
  switch (declared.type) {
    case "player":
      return declared.words;
    case "instrument": {
      const { instrument: own, limit } = declared;
      const halfHoles = own?.halfHoles && `half holes ${own.halfHoles.map(noteText).join(" ")}`;
      const until = limit?.until === undefined ? "" : ` until ${isoDate(limit.until)}`;
      const most = limit && `at most ${limit.minutes} a day${until}`;
      const range = own && `${noteText(own.low)} to ${noteText(own.high)}`;
      return [declared.id, range, own?.fingering, halfHoles, most].filter(Boolean).join(", ");
    }
    case "pitch":
      return `A=${declared.a} ${temperamentText(declared.temperament, printName)}`;
    case "names":
      return declared.id;
    case "note value":
      return fractionText(declared.value);
    case "outcome":
      return `${declared.name}: ${declared.says}`;
    case "usual articulation":
      return declared.articulation.tonguing;
    case "piece":
    case "movement": {
      const { key, bars, goal, from, due, range, lastNote, signature, title } = declared;
      return [
        declared.type === "movement" ? `${title}, ${declared.movement} ${declared.name ?? ""}`.trim() : title,
        "short" in declared && declared.short && `as ${declared.short}`,
        key && `in ${scaleText(key, ENGLISH_NAMES)}`,
        bars && `${bars} bars`,
        goal && `goal ${tempoText(goal)}`,
        from && `from ${isoDate(from)}`,
        due && `due ${isoDate(due)}`,
        range && `${noteText(range.from)} to ${noteText(range.to)}`,
        lastNote && `ends on ${noteText(lastNote)}`,
        signature !== undefined && `signature ${signature}`,
      ]
        .filter(Boolean)
        .join(", ");
    }
    case "concert":
      return `${declared.name}, ${isoDate(declared.on!)}: ${declared.titles.join("; ")}`;
    case "aim":
    case "set": {
      const subject = declared.entry?.subject?.meaning;
      const what = subject && subject.type !== "faulty subject" ? subjectText(subject, ENGLISH_NAMES) : "";
      const words = "words" in declared ? declared.words : undefined;
      const days = "days" in declared && declared.days ? `${declared.days} days` : "";
      const by = declared.by === undefined ? "" : `by ${isoDate(declared.by)}`;
      return [words ? `"${words}"` : what, ...itemsOf(declared.entry?.items ?? []), days, by]
        .filter(Boolean)
        .join(", ");
    }
    case "pattern":
      return `${declared.name}: ${declared.cell!.degrees.join(" ")}${declared.cell!.step === 1 ? "" : `, step ${declared.cell!.step}`}`;
    case "hide notes":
    case "shared":
    case "share body":
      return "from now on";
    default:
      return declared.name;
  }
}

test("what is said of the journal", () => {
  check(`
    player Noor                                         => Noor
    player: Noor van Dam                                => Noor van Dam
    instrument alto recorder                            => alto recorder
    Instrument: Treble Recorder                         => alto recorder
    instrument soprano recorder, german fingering       => soprano recorder, C4 to D6, german
    instrument Descant recorder: German  fingering      => soprano recorder, C4 to D6, german
    instrument soprano recorder german fingering        => soprano recorder, C4 to D6, german
    instrument alto recorder, baroque fingering         => alto recorder, F4 to G6, baroque
    instrument alto recorder, English fingering         => alto recorder, F4 to G6, baroque
    instrument English horn                             => cor anglais
    instrument descant                                  => soprano recorder
    instrument treble                                   => alto recorder
    instrument alto recorder in F                       => alto recorder
    instrument trumpet in E flat                        => trumpet in Eb
    instrument bass viol                                => bass viol
    instrument clarinet in E flat                       => clarinet in Eb
    instrument B♭ trumpet                               => trumpet in Bb
    instrument Mezzo-Soprano                            => mezzo-soprano voice
    instrument oboe d’amore                             => oboe d'amore
    instrument piano                                    => piano
    instrument Altblockflöte                            => alto recorder
    instrument Alt-Blockflöte                           => alto recorder
    instrument flute à bec alto                         => alto recorder
    instrument flûte à bec ténor                        => tenor recorder
    instrument altviool                                 => viola
    instrument flauto dolce contralto                   => alto recorder
    instrument flauta de pico soprano                   => soprano recorder
    instrument "my flute": D4 to B5                     => my flute, D4 to B5
    instrument “my flute”: D4 to B5, half holes D#4     => my flute, D4 to B5, half holes D#4
    instrument "my flute": D4 to B5 half holes D#4 F♯4  => my flute, D4 to B5, half holes D#4 F#4
    instrument "my flute": D4 to B5\u2028half holes D#4\u2028F♯4 => my flute, D4 to B5, half holes D#4 F#4
    instrument "new alto": alto recorder                => new alto, F4 to G6
    instrument alto recorder, at most 15 min a day      => alto recorder, at most 15 a day
    instrument "new alto": Altblockflöte, at most 1 h per day until 2026-04-30 => new alto, F4 to G6, at most 60 a day until 2026-04-30
    instrument "my flute": D4 to B5, half holes D#4, at most 20' a day => my flute, D4 to B5, half holes D#4, at most 20 a day
    hide notes                                          => from now on
    shared                                              => from now on
    share body                                          => from now on
    Share-body -- my teacher asked me                   => from now on
    Hide-Notes -- by ear this year                      => from now on
    pitch A=415                                         => A=415 equal
    pitch a = 415 Hz                                    => A=415 equal
    pitch 440                                           => A=440 equal
    pitch A=380                                         => A=380 equal
    pitch A=480, equal                                  => A=480 equal
    pitch A=415, Vallotti                               => A=415 Vallotti
    pitch: A=415, werckmeister 3                        => A=415 Werckmeister III
    pitch A=415, 1/4 comma meantone                     => A=415 quarter-comma meantone
    pitch A=415, just on F♯                             => A=415 just on F#
    pitch A=415, just                                   => A=415 just on C
    pitch A=415, quarter-comma meantone                 => A=415 quarter-comma meantone
    pitch A=415, Neidhardt I                            => A=415 Neidhardt I
    pitch A=415, "Chapel organ": 0 76.0 193.2 310.3 386.3 503.4 579.5 696.6 772.6 889.7 1006.8 1082.9 => A=415 Chapel organ
    pitch A=415, "Chapel organ": 1 16/15 9/8 6/5 5/4 4/3 45/32 3/2 8/5 5/3 16/9 15/8 -- by ear => A=415 Chapel organ
    names German                                        => german
    note value 8ths                                     => 1/8
    note-value: quavers                                 => 1/8
    usual articulation slurred                          => slurred
    usual articulation t-k                              => multiple
  `);
});

test("pieces, their movements, concerts", () => {
  check(`
    piece "Ground"                                      => Ground
    piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84, due 2026-05-09 => Ground in G minor, as Ground, in G natural minor, 96 bars, goal 1/4=84, due 2026-05-09
    piece "Ground": goal quarter=84 by 2026-05-09 => Ground, goal 1/4=84, due 2026-05-09
    piece "Ground": goal 72           => Ground, goal 72
    piece "Ground" as "My Ground": G minor              => Ground, as My Ground, in G natural minor
    piece "Ground": G minor 96 bars goal ♩.=84          => Ground, in G natural minor, 96 bars, goal 3/8=84
    study "Daily": D, range G4 to F6                    => Daily, in D major, G4 to F6
    piece "Ground": last note D, 1 flat                 => Ground, ends on D, signature -1
    piece "Ground": from 2026-02-01                     => Ground, from 2026-02-01
    movement "Sonata in D minor" 2 "Allegro": D minor, goal 1/4.=66 => Sonata in D minor, 2 Allegro, in D natural minor, goal 3/8=66
    movement "sonata" II                                => Sonata in D minor, ii
    concert "Recital" on 2026-05-09: "Sonata", "Solo"   => Recital, 2026-05-09: Sonata in D minor; Solo
    concert "Recital" on 2026-05-09: Sonata             => Recital, 2026-05-09: Sonata in D minor
  `);
});

test("aims and set work", () => {
  check(`
    aim D minor melodic, thirds, 8ths at 96 by 2027-04-30 => D melodic minor, pattern thirds, note value 1/8, tempo 96, by 2027-04-30
    aim D minor, at 96 5 in a row by 2027-04-30         => D natural minor, tempo 96, tries 5/5, by 2027-04-30
    aim Sonata, by heart by 2027-04-30                  => Sonata in D minor, manner by heart, by 2027-04-30
    aim D minor                                         => D natural minor
    set D minor, thirds, 5 days                         => D natural minor, pattern thirds, 5 days
    set D minor, slow, 5 days by 2026-03-09             => D natural minor, without click slow, 5 days, by 2026-03-09
    set "clap line 4, then say it"                      => "clap line 4, then say it"
    set "clap line 4" by 2026-03-09                     => "clap line 4", by 2026-03-09
    set Sonata, bars 1-8                                => Sonata in D minor, place bars 1-8
  `);
});

test("names of one's own", () => {
  check(`
    pattern "zigzag": 1 3 2 4                           => zigzag: 1 3 2 4
    pattern "zigzag": 1 3 2 4, step 2                   => zigzag: 1 3 2 4, step 2
    pattern "round": 1 0 1 8                            => round: 1 0 1 8
    scale "double harmonic": 1 b2 3 4 5 b6 7            => double harmonic
    scale "even": cents 0 150 300                       => even
    focus "left thumb"                                  => left thumb
    phase "market band"                                 => market band
    activity "stretching"                               => stretching
    outcome "in the zone": reached                      => in the zone: reached
    outcome "half there" Nearly                         => half there: nearly
    outcome "train wreck": not                          => train wreck: not
    articulation "ghosted"                              => ghosted
    articulation "ghosted": mixed                       => ghosted
  `);
});

test("faults of what is said of the journal", () => {
  checkFaults(`
    player                                  => bad-declaration: player
    instrument                              => bad-declaration: instrument
    instrument kazoo                        => bad-declaration: kazoo
    instrument alto recoder                 => bad-declaration: alto recoder -> alto recorder
    instrument violni                       => bad-declaration: violni -> violin
    instrument fugelhorn                    => bad-declaration: fugelhorn -> flugelhorn
    instrument viol                         => bad-declaration: viol -> treble viol or tenor viol or bass viol
    instrument soprano                      => bad-declaration: soprano -> soprano recorder or soprano saxophone or soprano crumhorn or soprano voice
    instrument Contrabass                   => bad-declaration: Contrabass -> contrabass recorder or double bass
    instrument keyboard                     => bad-declaration: keyboard -> piano or harpsichord or organ
    instrument soprano, german fingering    => bad-declaration: soprano -> soprano recorder or soprano saxophone or soprano crumhorn or soprano voice
    instrument alto voice, german fingering => bad-declaration: german fingering
    instrument alto recorder, loud          => bad-declaration: loud
    instrument alto recorder, fingering     => bad-declaration: fingering
    instrument alto recorder, germn fingering => bad-declaration: germn fingering -> german fingering
    instrument alto recorder, own fingering => bad-declaration: own fingering
    instrument alto recorder, german fingering, baroque fingering => bad-declaration: baroque fingering
    instrument bassoon, german fingering    => bad-declaration: german fingering
    instrument "my flute": D4 to B5, loud   => bad-declaration: loud
    instrument "my flute": D4 to B5, half holes D => bad-declaration: half holes D
    instrument "my flute"                   => bad-declaration: instrument
    instrument cello, at most a little      => bad-declaration: at most a little
    instrument cello, at most 15 min        => bad-declaration: at most 15 min
    instrument cello, at most 15 min a day until May => bad-date: May
    instrument "my flute": D4               => bad-declaration: D4
    instrument "my flute": B5 to D4         => bad-declaration: B5 to D4
    instrument "my flute: D4 to B5          => unclosed-quote: "my flute: D4 to B5 -> "
    pitch low                               => bad-declaration: low
    pitch A=4400                            => bad-declaration: A=4400
    pitch A=20                              => bad-declaration: A=20
    pitch A=379.9                           => bad-declaration: A=379.9
    pitch A=481, Vallotti                   => bad-declaration: A=481
    pitch A=415, Valotti                    => bad-declaration: Valotti -> Vallotti
    pitch A=415, Vallotty                   => bad-declaration: Vallotty -> Vallotti
    pitch A=415, meantone                   => bad-declaration: meantone -> sixth-comma meantone or fifth-comma meantone or quarter-comma meantone
    pitch A=415, Pythagorian                => bad-declaration: Pythagorian -> Pythagorean
    pitch A=415, Neidhardt                  => bad-declaration: Neidhardt -> Neidhardt I or Neidhardt II
    pitch A=415, "Chapel organ": 0 C# 200   => bad-declaration: C#
    pitch A=415, "Chapel organ"             => bad-declaration: "Chapel organ"
    pitch A=415, "Chapel organ": 0 100      => bad-declaration: 0 100
    pitch A=415, kazoo                      => bad-declaration: kazoo
    pitch A=415, just on H#                 => bad-declaration: H#
    pitch A=415, just on D4                 => bad-declaration: D4
    pitch A=415 Vallotti                    => bad-declaration: A=415 Vallotti -> A=415, Vallotti
    pitch A=415 loud                        => bad-declaration: A=415 loud
    pitch A=415, Vallotti, loud             => bad-declaration: loud
    names germn                             => bad-declaration: germn -> german
    names klingon                           => bad-declaration: klingon
    note value                              => bad-declaration: note value
    note value thirds                       => bad-declaration: thirds
    note value 8ths at 60                   => bad-declaration: 8ths at 60
    usual articulation thirds               => bad-declaration: thirds
  `);
});

test("faults of pieces and concerts", () => {
  checkFaults(`
    piece Ground                            => bad-declaration: Ground -> "Ground"
    piece ""                                => bad-declaration: ""
    piece "Ground                           => unclosed-quote: "Ground -> "
    piece "Ground": H minor                 => bad-declaration: H minor -> B minor
    piece "Ground": d                       => bad-declaration: d
    piece "Ground": G minor, wobble         => bad-declaration: wobble
    piece "Ground": due 2026-02-30          => bad-date: 2026-02-30 -> 2026-02-28
    piece "Ground": due 09.05.2026          => bad-date: 09.05.2026 -> 2026-05-09
    movement "Sonata" "Allegro"             => bad-declaration: "Allegro"
    movement "Nothing" 2                    => bad-declaration: "Nothing"
    movement "Sonata" 2 "Allegro            => unclosed-quote: "Allegro -> "
    concert "Recital"                       => bad-declaration: "Recital"
    concert "Recital" on 2026-05-32         => bad-date: 2026-05-32
    concert "Recital" on 2026-05-09: thirds => bad-declaration: thirds
  `);
});

test("faults of aims, set work and names", () => {
  checkFaults(`
    aim                                     => bad-declaration: aim
    aim thirds by 2027-04-30                => bad-declaration: thirds by 2027-04-30
    aim H minor by 2027-04-30               => unknown-key: H minor -> B minor
    aim D minor, wobble by 2027-04-30       => unknown-term: wobble
    aim D minor by 30.04.2027               => bad-date: 30.04.2027 -> 2027-04-30
    aim D minor by 2026-04-30               => aim-past: aim D minor by 2026-04-30
    set                                     => bad-declaration: set
    set "clap                               => unclosed-quote: "clap -> "
    pattern "p"                             => bad-declaration: pattern "p"
    pattern "p": 1 3 x 4                    => bad-declaration: x
    pattern "p":                            => bad-declaration: pattern "p"
    pattern "p": , ,                        => bad-declaration: , ,
    pattern "p": step 2                     => bad-declaration: step 2
    pattern "p": 1 3 2 99                   => bad-declaration: 99
    pattern "p": -8 1                       => bad-declaration: -8
    pattern "p": 1 3 2 4, step 0            => bad-declaration: 0
    pattern "p": 1 3 2 4, step 15           => bad-declaration: 15
    pattern "p": 1 3 2 4 step wide          => bad-declaration: wide
    pattern "p": 1 3 2 4, step              => bad-declaration: step
    pattern p: 1 2 3                        => bad-declaration: p -> "p"
    scale "s": 1 3 2                        => bad-declaration: 2
    scale "s": 1 h2 3                       => bad-declaration: h2
    scale "s": 1 ###4 5                     => bad-declaration: ###4
    scale "s": 1 #1 2 #2 3 4 #4 5 #5 6 #6 7 #7 => bad-declaration: #7
    scale "s": cents 0 200 abc 500          => bad-declaration: abc
    scale "s": cents 0 200 1300             => bad-declaration: 1300
    scale "s": cents 50 200                 => bad-declaration: 50
    scale "s": cents                        => bad-declaration: cents
    scale "s":                              => bad-declaration: scale "s"
    focus "sound" more                      => bad-declaration: more
    phase band                              => bad-declaration: band -> "band"
    activity                                => bad-declaration: activity
    outcome "in the zone"                   => bad-declaration: outcome "in the zone"
    outcome "in the zone": good             => bad-declaration: good
    outcome "in the zone": reachd           => bad-declaration: reachd -> reached
    outcome zone: reached                   => bad-declaration: zone -> "zone"
  `);
});
