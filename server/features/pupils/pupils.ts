import type { PreviewPlace } from "../../../shared/preview.ts";
import type { PupilShown } from "../../../shared/pupils.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { isFarBack, weekdayDateBack } from "../../journal/date-words.ts";
import { declaredLines, ofType } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { namesIn } from "../../journal/journal-name.ts";
import { type Pupil, pupilsOf } from "../../plan/pupils.ts";
import { spokenLines } from "../preview/lesson.ts";
import { setLines } from "../preview/set-work.ts";
import { placeOf, shownText } from "../preview/text.ts";

/** What the page of pupils shows of these journals, by name. */
export function pupils(journals: Iterable<Journal>, todayOf: (journal: Journal) => DayNumber): readonly PupilShown[] {
  const found = pupilsOf(journals, todayOf);
  return found.map((pupil) => {
    const namesakes = found.filter(({ name }) => name === pupil.name);
    return shown(pupil, todayOf(pupil.journal), namesakes.length > 1);
  });
}

function shown(
  { journal, name, last, lesson, set, asked, body = [] }: Pupil,
  today: DayNumber,
  hasNamesake: boolean,
): PupilShown {
  return {
    key: journal.root,
    name: shownText(name, 60),
    folder: hasNamesake ? shownText(namesIn(journal.root).slice(-2).join("/")) : "",
    place: placeOfName(journal),
    last: last
      ? { text: weekdayDateBack(last.day, today), note: "", place: placeOf(journal, last.uri, last.block, 0) }
      : null,
    lesson:
      lesson && isFarBack(lesson.day, today)
        ? {
            text: weekdayDateBack(lesson.day, today),
            note: "",
            place: placeOf(journal, lesson.uri, lesson.block, lesson.line),
          }
        : null,
    set: setLines(journal, set, today),
    ask: spokenLines(journal, asked, today, LONGEST),
    body: spokenLines(journal, body, today, LONGEST),
  };
}

/** In characters: what was asked is read as it was written, unless it is a page of its own. */
const LONGEST = 1000;

function placeOfName(journal: Journal): PreviewPlace {
  const [player] = ofType(declaredLines(journal), "player");
  if (player) return placeOf(journal, player.uri, player.block, player.line);
  return { uri: journal.addresses[0]!, line: 0 };
}
