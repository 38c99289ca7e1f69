import type { PreviewLine, PreviewPlace } from "../../../shared/preview.ts";
import type { PupilShown } from "../../../shared/pupils.ts";
import { button, element, quiet, small, unseen, withLastNumber } from "../../preview/page/element.ts";
import { lineTexts } from "../../preview/page/line-texts.ts";
import { rove } from "../../preview/page/rove.ts";
import { pupilsTexts } from "./pupils-texts.ts";

/** Takes the reader to a line of a journal. */
export type Reveal = (place: PreviewPlace) => void;

/**
 * One pupil: the name, the last day, what is set, what there is to ask, and of the body what the journal shares. One
 * stop of the Tab key; Up and Down go from line to line.
 */
export function pupilRow(
  { name, folder, place, last, lesson, set, ask, body }: PupilShown,
  reveal: Reveal,
): HTMLElement {
  const head = element("div", { class: "pupil-head" }, [
    element("h2", { class: "cell-row", dir: "auto" }, [
      button(
        { class: "cell", title: `${name}\n${pupilsTexts.keys}`, "aria-description": pupilsTexts.keys },
        [name],
        () => reveal(place),
      ),
      ...(folder === "" ? [] : [small(folder, "folder")]),
    ]),
    element(
      "p",
      { class: "cell-row last" },
      last
        ? [quiet(pupilsTexts.last), " ", button({ class: "cell place" }, [last.text], () => reveal(last.place))]
        : [quiet(pupilsTexts.nothingPlayed)],
    ),
    ...(lesson
      ? [
          element("p", { class: "cell-row last" }, [
            quiet(pupilsTexts.sinceLesson),
            " ",
            button({ class: "cell place" }, [lesson.text], () => reveal(lesson.place)),
          ]),
        ]
      : []),
  ]);
  const parts = [
    part([{ label: lineTexts.set, lines: set }], reveal),
    part(
      [
        { label: lineTexts.ask, lines: ask },
        { label: pupilsTexts.body, lines: body },
      ],
      reveal,
    ),
  ];
  const row = element("section", { class: "pupil", "aria-label": name }, [head, ...parts]);
  return rove(row, { rows: ".cell-row", items: "button" });
}

interface Labelled {
  readonly label: string;
  readonly lines: readonly PreviewLine[];
}

/** A column of the row, also where there is nothing for it: the columns of all rows are one below the other. */
function part(groups: readonly Labelled[], reveal: Reveal): HTMLElement {
  const filled = groups.filter(({ lines }) => lines.length > 0);
  return element("div", { class: "pupil-part" }, [
    ...(filled.length === 0
      ? []
      : [
          element(
            "dl",
            { class: "labelled" },
            filled.flatMap(({ label, lines }) => [
              element("dt", {}, [label]),
              element("dd", {}, [
                element(
                  "ul",
                  { class: "lines" },
                  lines.map((line) => cellOf(line, reveal)),
                ),
              ]),
            ]),
          ),
        ]),
  ]);
}

/** Words in the place of a day lead nowhere by themselves, and look like it. */
function isDate(day: string): boolean {
  return /\d/.test(day);
}

/** All of it leads to its line: the text, the day at the right, and what is said below. */
function cellOf({ text, below, day, place }: PreviewLine, reveal: Reveal): HTMLElement {
  const words = [
    element("span", { class: "line-text", dir: "auto" }, [withLastNumber(text)]),
    unseen(", "), // with it they are read out as several
    element("span", { class: isDate(day) ? "day place" : "day" }, [day]),
    ...(below === "" ? [] : [unseen(", "), small(below, "below")]),
  ];
  return element("li", { class: "cell-row" }, [button({ class: "cell line" }, words, () => reveal(place))]);
}
