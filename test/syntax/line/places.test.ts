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
    bars 1-8, at 60, 9-16     => place bars 1-8 | tempo 60 | place bars 9-16
    bars 1-8, 10 min          => place bars 1-8 | 10 min
    bars 1-8, slow, 9-16      => place bars 1-8 | without click slow | place bars 9-16
    bars 12a-12b              => place bars 12a-12b
    bars 17 - 32              => place bars 17-32
    b. 17-32                  => place bars 17-32
    17-32                     => place bars 17-32
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
    page 4             => place page 4
    pages 4-5          => place page 4-5
    p. 4               => place page 4
    lines 3-5          => place lines 3-5
    line 3             => place lines 3
    from the top       => place from the top
    from-the-top       => place from the top
    from the beginning => place from the beginning
    movement two       => place mvt 2
    2nd movement       => place mvt 2
  `);
});

test("bars as people write them", () => {
  check(`
    b1-24            => place bars 1-24
    bars1-8          => place bars 1-8
    b.9-14           => place bars 9-14
    bb. 33-48        => place bars 33-48
    m. 9-12          => place bars 9-12
    m. 14            => place bars 14
    mm. 1-8          => place bars 1-8
    mm 1-8           => place bars 1-8
    t.25-40          => place bars 25-40
    T. 25            => place bars 25
    bars 17-end      => place bars 17-end
    bars 17 to end   => place bars 17-end
    bar 17 to the end => place bars 17-end
    bars 5 & 6       => place bars 5, 6
    bar 17 onwards   => place bars 17-end
    from bar 17      => place bars 17-end
    from bar 17 to 32 => place bars 17-32
    page 3 bars 41 to 48 => place page 3 | place bars 41-48
    complete bb 33-48 => place complete | place bars 33-48
    8 bars before fig. 5 => place 8 bars before fig. 5
  `);
});

test("lines, pages, movements and letters as people write them", () => {
  check(`
    line 3           => place lines 3
    line one         => place lines 1
    line 1 and 2     => place lines 1, 2
    l.1-4            => place lines 1-4
    second line      => place second line
    sys. 3           => place lines 3
    p.1              => place page 1
    p12              => place page 12
    pg 4             => place page 4
    1st page         => place 1st page
    p12 first line   => place page 12 | place first line
    2nd mvt          => place mvt 2
    second movement  => place mvt 2
    II               => place mvt ii
    letter C to end  => place letter C to end
    figs C to E      => place figure C to E
    fig. 5           => place figure 5
    A section        => place A section
    section B        => place section B
    first half       => place first half
    first 8 bars     => place first 8 bars
    the last line    => place last line
    last line        => place last line
    verse 2          => place verse 2
    verses 1 and 2   => place verse 1, 2
    2nd strain       => place 2nd strain
    vars 4           => place var 4
  `);
});

test("places by their names", () => {
  check(`
    opening          => place opening
    coda             => place coda
    dev              => place dev
    da capo          => place da capo
    theme            => place theme
    whole thing      => place whole thing
    complete         => place complete
    with repeats     => place with repeats
    from the top to bar 16 => place from the top to bar 16
    from the top to letter C => place from the top to letter C
    to the end       => place to the end
  `);
});

test("a number in front of the bars is the title's", () => {
  const rows = rowsOf(`
    Fantasia 1 bars 1-16 q=60       => entry: title Fantasia 1 (undeclared) | place bars 1-16 | tempo 1/4=60
    Fantasia no. 1, bars 9–12       => entry: title Fantasia no. 1 (undeclared) | place bars 9-12
    Sonata 2 bar 7                  => entry: title Sonata 2 (undeclared) | place bars 7
  `);
  for (const [typed, meaning] of rows) expect([typed, lineText(read(typed!))]).toEqual([typed, meaning]);
});
