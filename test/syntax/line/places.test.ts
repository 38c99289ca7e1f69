import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// Places in a piece. Each stands behind `Ground, `.

/** Rows of a term, as it is typed behind `Ground, `, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) {
    const line = read(`Ground, ${typed}`);
    expect([typed, line.type, lineText(line).split(" | ").slice(1).join(" | ")]).toEqual([typed, "entry", meaning]);
  }
}

test("bars", () => {
  check(`
    bars 17-32                => place bars 17-32
    bars 17–32                => place bars 17-32
    bars 17 to 32             => place bars 17-32
    bar 17                    => place bars 17
    measures 17-32            => place bars 17-32
    Bars 17-32                => place bars 17-32
    bars 5-8, 17-20           => place bars 5-8, 17-20
    bars 1-8 and 17-24        => place bars 1-8, 17-24
    bars 1-8 & 17-24          => place bars 1-8, 17-24
    bars 1-8, 17-24, 30       => place bars 1-8, 17-24, 30
    bars 1-8, 17-24 at 60, 66 => place bars 1-8, 17-24 | tempo 60 | tempo 66
    bars 1-8, at 60, 9-16     => place bars 1-8 | tempo 60 | tempo 9-16
    bars 1-8, 10 min          => place bars 1-8 | 10 min
    bars 1-8, slow, 9-16      => place bars 1-8 | without click slow | range 9-16
    bars 12a-12b              => place bars 12a-12b
    bars 17 - 32              => place bars 17-32
    b. 17-32                  => unknown b. | range 17-32
    17-32                     => range 17-32
    96 bars                   => bars 96
  `);
});

test("other places", () => {
  check(`
    upbeat to 17       => place upbeat to 17
    upbeat to 17-20    => place upbeat to 17-20
    mvt 2              => place mvt 2
    mvt. 2             => place mvt 2
    movement 2         => place mvt 2
    mvt II             => place mvt ii
    mvt ii, bars 1-8   => place mvt ii | place bars 1-8
    mvt 2 bars 1-8     => place mvt 2 | place bars 1-8
    mvt "Allegro"      => place mvt Allegro
    var 3              => place var 3
    variation 3        => place var 3
    letter B           => place letter B
    letter AA          => place letter AA
    letter b           => unknown letter | note B (lower)
    page 4             => place page 4
    pages 4-5          => place page 4-5
    p. 4               => place page 4
    lines 3-5          => place lines 3-5
    line 3             => place lines 3
    from the top       => place from the top
    from-the-top       => place from the top
    from the beginning => unknown from the beginning
    movement two       => unknown movement two
    2nd movement       => unknown 2nd movement
  `);
});
