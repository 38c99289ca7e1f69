import { chmodSync, existsSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseMidi } from "midi-file";
import { parse } from "musicxml-io";
import { describe, expect, test } from "vitest";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

// Files are read back with the packages `midi-file` and `musicxml-io`; what is in them, test/scores holds.

const JOURNAL = `instrument clarinet
pitch A=442, Vallotti
scale "thirteen": cents 0 150 300 450 600 750 900 1050
`;

function folder(): string {
  return temporaryFolder({ "journal.practice": JOURNAL });
}

describe("an exercise", () => {
  test("as MIDI, for the instrument of the journal", async () => {
    const cwd = folder();
    const made = await daystave(["export", "D major, thirds, 8ths at 60", "--midi", "thirds.mid"], { cwd });
    expect(made).toMatchObject({ status: 0, stdout: "", stderr: "thirds.mid is written.\n" });
    const { tracks } = parseMidi(readFileSync(join(cwd, "thirds.mid")));
    expect(tracks[0]!.find((event) => event.type === "noteOn")).toMatchObject({ noteNumber: 60 }); // D sounds C
  });

  test("as MusicXML, on standard output", async () => {
    const { status, stdout, stderr } = await daystave(["export", "G minor arpeggio", "--musicxml", "-"], {
      cwd: folder(),
    });
    expect([status, stderr]).toEqual([0, ""]);
    expect(parse(stdout).metadata.workTitle).toBe("G minor arpeggio");
  });

  test("on another instrument, at another tempo", async () => {
    const argv = ["export", "D major, 8ths at 60", "--midi", "-", "--instrument", "alto recorder", "--tempo", "90"];
    const { stdout } = await daystave(argv, { cwd: folder() });
    const [track] = parseMidi(Buffer.from(stdout, "latin1")).tracks;
    expect(track!.find((event) => event.type === "setTempo")).toMatchObject({ microsecondsPerBeat: 666_667 });
    expect(track!.find((event) => event.type === "instrumentName")).toMatchObject({ text: "alto recorder" });
  });

  test("without a tempo: what the file has is said", async () => {
    const { stderr } = await daystave(["export", "D major", "--midi", "d.mid"], { cwd: folder() });
    expect(stderr).toBe("d.mid is written.\ndaystave: The line has no tempo, so the file has a note a second.\n");
    const quiet = await daystave(["export", "D major", "--midi", "d.mid", "--quiet"], { cwd: folder() });
    expect(quiet.stderr).toBe("");
  });

  test("in the names of another language", async () => {
    const argv = ["export", "fis-Moll", "--musicxml", "-", "--names", "german"];
    expect(parse((await daystave(argv, { cwd: folder() })).stdout).metadata.workTitle).toMatch(/^fis/);
  });

  test("whose notes on the line are not right is written, and that is said", async () => {
    const { status, stdout, stderr } = await daystave(["export", "D major: D E F", "--musicxml", "-"], {
      cwd: folder(),
    });
    expect(status).toBe(1);
    expect(stdout).toContain("</score-partwise>");
    expect(stderr).toMatch(/^daystave: /);
  });
});

describe("a tuning", () => {
  test("of the journal, whole or of an octave", async () => {
    const cwd = folder();
    expect(await daystave(["export", "--mts", "whole.syx"], { cwd })).toMatchObject({ status: 0 });
    const whole = readFileSync(join(cwd, "whole.syx"));
    expect(whole).toHaveLength(408);
    expect(whole.subarray(6, 22).toString("latin1")).toBe("Vallotti 442    ");
    const octave = await daystave(["export", "--mts", "-", "--octave"], { cwd });
    expect(octave.stdout).toHaveLength(33);
  });

  test("of an option", async () => {
    const argv = ["export", "--mts", "-", "--pitch", "A=415, quarter-comma meantone"];
    expect((await daystave(argv, { cwd: folder() })).stdout).toContain("quarter-comma me");
    const { status, stderr } = await daystave([...argv, "--octave"], { cwd: folder() });
    expect(status).toBe(2);
    expect(stderr).toContain("reaches 100 cents");
  });

  test("of a scale in cents", async () => {
    const { status, stdout } = await daystave(["export", 'E "thirteen"', "--mts", "-"], { cwd: folder() });
    expect([status, stdout.length]).toEqual([0, 408]);
    expect(stdout.slice(6, 22)).toBe("D thirteen      "); // as it sounds on a clarinet in B flat
  });

  test("of no other scale", async () => {
    const { status, stderr } = await daystave(["export", "D major", "--mts", "-"], { cwd: folder() });
    expect(status).toBe(2);
    expect(stderr).toContain("Only a scale that is declared in cents has a tuning of its own.");
  });
});

describe("a file that is there already", () => {
  const argv = ["export", "D major at 60", "--midi", "d.mid"];

  test("stays as it is", async () => {
    const cwd = temporaryFolder({ "d.mid": "mine" });
    const { status, stdout, stderr } = await daystave(argv, { cwd });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toBe("daystave: d.mid is there already, and stays as it is. To write over it, add --force.\n");
    expect(readFileSync(join(cwd, "d.mid"), "utf8")).toBe("mine");
  });

  test("is written over where that is asked for; a link stays a link", async () => {
    const cwd = temporaryFolder({ "d.mid": "mine" });
    symlinkSync("d.mid", join(cwd, "link.mid"));
    const made = await daystave([...argv.slice(0, 3), "link.mid", "--force"], { cwd });
    expect(made.status).toBe(0);
    expect(parseMidi(readFileSync(join(cwd, "d.mid"))).header.format).toBe(0);
    expect(readdirSync(cwd).sort()).toEqual(["d.mid", "link.mid"]);
  });

  test("and is a folder, or stands in none, is not written", async () => {
    const cwd = temporaryFolder({ "d.mid/in.practice": "" });
    expect(await daystave([...argv, "--force"], { cwd })).toMatchObject({ status: 2 });
    const gone = await daystave([...argv.slice(0, 3), "gone/d.mid"], { cwd });
    expect(gone).toMatchObject({ status: 2 });
    expect(gone.stderr).toMatch(/^daystave: gone\/d\.mid was not written\. /);
    expect(existsSync(join(cwd, "gone"))).toBe(false);
  });

  test("and is read-only stays, whoever asks", async () => {
    const cwd = temporaryFolder();
    writeFileSync(join(cwd, "d.mid"), "mine");
    chmodSync(join(cwd, "d.mid"), 0o444);
    const { status, stderr } = await daystave([...argv, "--force"], { cwd });
    expect([status, stderr]).toEqual([2, "daystave: d.mid was not written. It is read-only.\n"]);
    expect(readFileSync(join(cwd, "d.mid"), "utf8")).toBe("mine");
  });
});

describe("what cannot be written", () => {
  test.each([
    [["--midi", "x.mid"], "Name one exercise, in quotes"],
    [["D major", "thirds", "--midi", "x.mid"], "Name one exercise, in quotes"],
    [["D major", "--midi", "a.mid", "--musicxml", "b.musicxml"], "Choose one of “--midi” and “--musicxml”."],
    [["D major", "--midi", "x.mid", "--tempo", "5"], "“--tempo” takes beats a minute from 20 to 400"],
    [["D major", "--midi", "x.mid", "--tempo", "fast"], "“--tempo” takes beats a minute from 20 to 400"],
    [["D major", "--musicxml", "x.musicxml", "--octave"], "“--octave” goes with “--mts”, not with “--musicxml”."],
    [["sight-reading", "--midi", "x.mid"], "Only scales, arpeggios and chords can be written out."],
    [['D "thirteen"', "--musicxml", "x.musicxml"], "A scale in cents has no staff"],
    [["D major", "--midi", "x.mid", "--instrument", "kazoo"], "kazoo"],
    [["--mts", "x.syx", "--pitch", "A=9"], "“--pitch A=9”"],
  ])("%j", async (argv, says) => {
    const cwd = folder();
    const { status, stdout, stderr } = await daystave(["export", ...argv], { cwd });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
    expect(readdirSync(cwd)).toEqual(["journal.practice"]);
  });

  test("bytes for a terminal", async () => {
    const asked = { cwd: folder(), isTerminal: true };
    expect((await daystave(["export", "D major", "--midi", "-"], asked)).stderr).toContain(
      "A terminal cannot show this.",
    );
    expect((await daystave(["export", "D major", "--musicxml", "-"], asked)).status).toBe(0);
  });
});
