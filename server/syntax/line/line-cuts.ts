import { DOTTED_BEFORE } from "../lexicon/beats.ts";
import { BEFORE_NO_TEMPO, TEMPO_WORDS, UNITS } from "../lexicon/tempo-marks.ts";
import { fold } from "../words/fold.ts";
import { FASTEST, SLOWEST } from "../words/tempo-words.ts";
import { BEATS } from "../words/terms.ts";
import { closingQuote, isQuote } from "../words/token.ts";
import { CODES } from "./character-codes.ts";
import {
  goesOnBehindDash,
  isBarBetween,
  isBracket,
  isBracketApart,
  isDash,
  isDashBetween,
  isGapBetween,
  isSentenceEnd,
  isSlashBetween,
  withoutJoint,
} from "./cut-signs.ts";
import {
  ABOUT,
  AT,
  BEHIND_BEAT,
  BEHIND_NUMBERS,
  BPM,
  COUNTED,
  CROSS,
  DECIMAL_HOURS,
  FACE,
  FREE_WORDS,
  GOAL,
  JOINS,
  JOINT_BEHIND,
  MARK_OPENERS,
  MARKS,
  MINUTES,
  ROW_SIGN,
  TO_THE_BEAT,
  UNIT,
} from "./cut-words.ts";
import { isSpace } from "./day-line.ts";

const { TAB, SPACE, DOUBLE_QUOTE, COMMA, HYPHEN, STOP, ZERO, NINE, COLON, EQUALS, GREATER, AT_SIGN } = CODES;
const { LETTER_A, LETTER_B, LETTER_Z, FIRST_BEYOND_ASCII, ARROW } = CODES;
const { SLASH, BAR } = CODES;
const SMALL = SPACE; // the one bit that tells a small letter from a capital

/** What stands before a piece: nothing, a comma, a colon, `>`, or no more than the space before a tempo. */
export const FIRST = 0;
export const AFTER_COMMA = COMMA;
export const AFTER_COLON = COLON;
export const AFTER_ARROW = GREATER;
export const JOINED = SPACE;

/**
 * One line in pieces: between commas, colons and `>`, outside quotes and before the remark; and anew before each tempo,
 * so that what was played and how it went are read by themselves, with commas or without. The arrays are used again for
 * the next line: read them before. Columns are offsets in the text that was cut; white space at both ends of a piece is
 * left out.
 */
export class LineCuts {
  count = 0;
  /** Where the remark begins; the end of the line where it has none. */
  remark = 0;
  starts = new Int32Array(64);
  ends = new Int32Array(64);
  /** What stands before each: `FIRST`, `AFTER_COMMA`, `AFTER_COLON`, `AFTER_ARROW` or `JOINED`. */
  after = new Uint8Array(64);
  /** Where the number begins that may change while the piece stays the same; -1 where there is none. */
  numbers = new Int32Array(64);
  numberEnds = new Int32Array(64);

  private text = "";
  private to = 0;
  private lineStart = 0;
  private start = 0;
  private before = FIRST;
  private number = -1;
  private numberEnd = 0;
  /** A colon stands before: what is claimed in notes may have bar lines. */
  private behindColon = false;
  /** The piece that is open began with a number of a row. */
  private inRow = false;
  /** A quote that does not close takes in all that follows, up to the next comma. */
  private unclosed = false;

  /**
   * @param from where to begin, behind a bullet or a date
   * @param to the end of the line, without its line end
   * @param lineStart where the line itself begins, as a remark may open it
   */
  cut(text: string, from: number, to: number, lineStart = from): void {
    this.text = text;
    this.to = to;
    this.lineStart = lineStart;
    this.start = from;
    this.before = FIRST;
    this.count = 0;
    this.number = -1;
    this.behindColon = false;
    this.inRow = false;
    this.unclosed = false;
    let i = from;
    while (i < to) {
      const code = text.charCodeAt(i);
      const isGap = code === SPACE && text.charCodeAt(i + 2) === SPACE && text.charCodeAt(i + 1) === SPACE;
      if ((code === SPACE && !isGap) || ((code | SMALL) >= LETTER_A && (code | SMALL) <= LETTER_Z)) {
        i++; // letters and spaces, most often
        continue;
      }
      if (code >= ZERO && code <= NINE) {
        i = this.passNumber(i);
        continue;
      }
      if (code === DOUBLE_QUOTE || code >= FIRST_BEYOND_ASCII) {
        const close = this.closeOfQuote(i, code);
        if (close >= 0) {
          i = close + 1;
          continue;
        }
      }
      if (isDash(code) && this.isRemarkAt(i, code)) break;
      const separator = this.separatorAt(i, code);
      if (separator !== FIRST) this.close(i, i + 1, separator);
      if (separator === AFTER_COLON) this.behindColon = true;
      i++;
    }
    this.remark = i;
    this.close(i, i, FIRST);
  }

  /** A further piece. */
  push(start: number, end: number, after: number, number: number, numberEnd: number): void {
    const { count } = this;
    if (count === this.starts.length) this.grow();
    this.starts[count] = start;
    this.ends[count] = end;
    this.after[count] = after;
    this.numbers[count] = number;
    this.numberEnds[count] = numberEnd;
    this.count++;
  }

  /** Ends the piece that is open, and opens the next. */
  private close(end: number, next: number, separator: number): void {
    const { text } = this;
    let from = this.start;
    let to = end;
    while (from < to && isSpace(text.charCodeAt(from))) from++;
    while (to > from && isSpace(text.charCodeAt(to - 1))) to--;
    if (separator === JOINED) to = withoutJoint(text, from, to);
    this.push(from, to, this.before, this.number, this.numberEnd);
    this.start = next;
    this.before = separator;
    this.number = -1;
    this.inRow = false;
    this.unclosed = false;
  }

  private grow(): void {
    const longer = (array: Int32Array): Int32Array<ArrayBuffer> => {
      const grown = new Int32Array(array.length * 2);
      grown.set(array);
      return grown;
    };
    this.starts = longer(this.starts);
    this.ends = longer(this.ends);
    this.numbers = longer(this.numbers);
    this.numberEnds = longer(this.numberEnds);
    const after = new Uint8Array(this.after.length * 2);
    after.set(this.after);
    this.after = after;
  }

  private closeOfQuote(i: number, code: number): number {
    if (code !== DOUBLE_QUOTE && !isQuote(this.text[i]!)) return -1;
    const close = closingQuote(this.text, i, this.to);
    if (close < 0) this.unclosed = true;
    return close;
  }

  private separatorAt(i: number, code: number): number {
    if (code === SPACE) return isGapBetween(this.text, this.start, i, this.to) ? AFTER_COMMA : FIRST;
    if (code === COMMA) return this.isDecimal(i) ? FIRST : AFTER_COMMA;
    if (isDash(code)) return isDashBetween(this.text, this.start, i, this.to) ? AFTER_COMMA : FIRST;
    if (isBracket(code)) return isBracketApart(this.text, i, this.to) ? AFTER_COMMA : FIRST;
    if (code === BAR) return !this.behindColon && isBarBetween(this.text, this.start, i, this.to) ? AFTER_COMMA : FIRST;
    if (code === SLASH) return this.isSlashBetween(i) ? AFTER_COMMA : FIRST;
    if (code === STOP) return isSentenceEnd(this.text, this.start, i, this.to) ? AFTER_COMMA : FIRST;
    if (code === GREATER || code === ARROW) return this.joinsNumbers(i, code) ? FIRST : AFTER_ARROW;
    if (code !== COLON || (this.isDigit(i - 1) && this.isDigit(i + 1))) return FIRST;
    return FACE.test(this.text.slice(i, Math.min(this.to, i + 2))) ? FIRST : AFTER_COLON;
  }

  private isSlashBetween(i: number): boolean {
    const numberEnd = this.number < 0 ? -1 : this.numberEnd;
    return isSlashBetween(this.text, { line: this.lineStart, start: this.start, numberEnd, to: this.to }, i);
  }

  /** `1,5 h`: the comma of a decimal, where hours follow. */
  private isDecimal(i: number): boolean {
    return (
      this.isDigit(i - 1) && this.isDigit(i + 1) && DECIMAL_HOURS.test(this.text.slice(i, Math.min(this.to, i + 12)))
    );
  }

  private isDigit(i: number): boolean {
    const code = i < this.lineStart || i >= this.to ? 0 : this.text.charCodeAt(i);
    return code >= ZERO && code <= NINE;
  }

  /** `60 → 72`, `60 -> 72`: tempos, where `C > G` is a chain of keys. */
  private joinsNumbers(i: number, code: number): boolean {
    const { text } = this;
    if (code === GREATER && text.charCodeAt(i - 1) !== HYPHEN) return false;
    let before = code === GREATER ? i - 2 : i - 1;
    while (before > this.start && isSpace(text.charCodeAt(before))) before--;
    let behind = i + 1;
    while (behind < this.to && isSpace(text.charCodeAt(behind))) behind++;
    return this.isDigit(before) && this.isDigit(behind);
  }

  /** A remark begins with `--`, `–` or `—`, at the start of the line or between white space. */
  private isRemarkAt(i: number, code: number): boolean {
    const length = code !== HYPHEN ? 1 : this.text.charCodeAt(i + 1) === HYPHEN && i + 1 < this.to ? 2 : 0;
    if (length === 0) return false;
    let first = this.lineStart;
    while (first < i && isSpace(this.text.charCodeAt(first))) first++;
    if (first === i) return true;
    if (!isSpace(this.text.charCodeAt(i - 1)) || !this.endsWord(i + length)) return false;
    return code === HYPHEN || !goesOnBehindDash(this.text, this.start, i, this.to);
  }

  private endsWord(i: number): boolean {
    return i >= this.to || isSpace(this.text.charCodeAt(i));
  }

  /**
   * Goes over the figures of a number. Where it may be a tempo or an amount, a piece begins with it, or with its `at`.
   */
  private passNumber(at: number): number {
    const { text, to } = this;
    let end = at + 1;
    while (end < to && text.charCodeAt(end) >= ZERO && text.charCodeAt(end) <= NINE) end++;
    const figures = end - at;
    if (figures < 2 || figures > 3 || text.charCodeAt(at) === ZERO || this.unclosed) return end;
    const isFree = this.isFree(end) || this.isBpm(end);
    const lead = isFree || this.isRange(end) ? this.leadOf(at, end) : -1;
    if (lead < 0) return end;
    const inRow = this.inRow || this.isJoined(at);
    if (this.isFilledBefore(lead)) this.close(lead, lead, JOINED);
    this.inRow = inRow;
    if (this.number < 0 && isFree) {
      this.number = at;
      this.numberEnd = end;
    }
    return end;
  }

  /** Where the tempo or amount begins whose number this is; -1 where it is neither, or cannot be told. */
  private leadOf(at: number, end: number): number {
    const { text, start } = this;
    const before = at > start ? text.charCodeAt(at - 1) : SPACE;
    if (before === AT_SIGN)
      return at - 1 === this.start || isSpace(this.text.charCodeAt(at - 2)) ? this.unlessGoal(at - 1) : -1;
    if (before !== SPACE && before !== TAB && before !== EQUALS) return -1;
    let last = at - 1;
    while (last >= start && isSpace(text.charCodeAt(last))) last--;
    if (last < start) return at;
    const code = text.charCodeAt(last);
    if (code === EQUALS) return this.leadOfBeat(last + 1);
    const word = this.wordTo(last);
    const wordBefore = fold(text.slice(word, last + 1));
    if (AT.test(wordBefore)) return this.unlessGoal(this.withMark(word, true));
    const isBehindNumber = BEHIND_NUMBERS.has(wordBefore) && this.isBehindNumber(word);
    if (isBehindNumber && wordBefore === "à") return -1; // `mes. 1 à 24`
    if (MARKS.has(wordBefore) && !isBehindNumber)
      return this.isLikely(at, end) ? this.leadOfMark(word, wordBefore, end) : -1;
    if (JOINS.test(wordBefore)) return this.isNextInRow(wordBefore, end) ? at : -1;
    if (this.isMinutes(end) && ABOUT.test(wordBefore)) return word;
    if (this.isMinutes(end) || this.isBpm(end) || TO_THE_BEAT.test(this.behind(end)))
      return BEFORE_NO_TEMPO.has(wordBefore) ? -1 : at;
    if (BEFORE_NO_TEMPO.has(wordBefore)) return -1;
    const goesOn = this.number >= 0 && this.isFree(end) && !FREE_WORDS.test(text.slice(this.numberEnd, at));
    return goesOn && (!this.isCounted(end) || CROSS.test(this.behind(end))) ? at : -1;
  }

  /** Where the word begins that ends at a column. */
  private wordTo(last: number): number {
    const { text, start } = this;
    let word = last;
    while (word > start && !isSpace(text.charCodeAt(word - 1)) && text.charCodeAt(word - 1) !== EQUALS) word--;
    return word;
  }

  /** `crotchet 60`, `mm 60`, `ca. 60`; -1 where a unit follows, and for `mm 60-80`, which may be measures. */
  private leadOfMark(word: number, mark: string, end: number): number {
    if (this.isCounted(end) || UNITS.has(UNIT.exec(this.behind(end))?.[1] ?? "")) return -1;
    if (mark === "mm" && (this.isRange(end) || JOINT_BEHIND.test(this.behind(end)))) return -1;
    const { text } = this;
    if (word > this.start && text.charCodeAt(word - 1) === EQUALS) return this.leadOfBeat(word);
    let last = word - 1;
    while (last >= this.start && isSpace(text.charCodeAt(last))) last--;
    if (last > this.start && text.charCodeAt(last) === EQUALS) return this.leadOfBeat(last + 1);
    return this.unlessGoal(this.withMark(word));
  }

  /** `about 1000` is no tempo, as `at 1000` is a wrong one. */
  private isLikely(at: number, end: number): boolean {
    const value = Number(this.text.slice(at, end));
    return value >= SLOWEST && value <= FASTEST;
  }

  private isBehindNumber(word: number): boolean {
    return /\d\s*$/.test(this.text.slice(this.start, word));
  }

  /** With the words before it that are part of the same mark: `metronome at 60`, `dotted crotchet 44`. */
  private withMark(word: number, isAt = false): number {
    let lead = word;
    for (;;) {
      let last = lead - 1;
      while (last >= this.start && isSpace(this.text.charCodeAt(last))) last--;
      if (last < this.start || last === lead - 1) return lead;
      const before = this.wordTo(last);
      const opener = fold(this.text.slice(before, last + 1));
      const isDot = DOTTED_BEFORE.includes(opener) && isAt; // `dotted at 60` is a rhythm
      if (isDot || !MARK_OPENERS.has(opener)) return lead;
      lead = before;
    }
  }

  /** `half=60`, `dotted quarter = 60`, `MM=60`: with the beat, and the `at` before it. */
  private leadOfBeat(end: number): number {
    let last = end - 1; // the equals sign
    while (last > this.start && (isSpace(this.text.charCodeAt(last)) || this.text.charCodeAt(last) === EQUALS)) last--;
    let word = this.wordTo(last);
    let name = fold(this.text.slice(word, last + 1));
    if (BEHIND_BEAT.has(name) && word > this.start) {
      last = word - 1;
      while (last > this.start && isSpace(this.text.charCodeAt(last))) last--;
      word = this.wordTo(last);
      name = fold(this.text.slice(word, last + 1));
    }
    const isBeat = BEATS.has(name) || BEATS.has(name.replace(/\.$/, "")) || TEMPO_WORDS.includes(name);
    return isBeat ? this.unlessGoal(this.withMark(word)) : -1;
  }

  /** Of three or more tempos joined by a sign one that is not the first. */
  private isNextInRow(sign: string, end: number): boolean {
    if (this.number < 0 || !ROW_SIGN.test(sign) || this.isCounted(end)) return false;
    return sign === "/" || this.inRow || JOINT_BEHIND.test(this.behind(end));
  }

  private isJoined(at: number): boolean {
    const before = this.text.slice(this.start, at).trimEnd();
    return before.length > 1 && ROW_SIGN.test(before.at(-1)!);
  }

  /** A few characters from a column on. */
  private behind(end: number): string {
    return this.text.slice(end, Math.min(this.to, end + 12));
  }

  private unlessGoal(lead: number): number {
    return GOAL.test(this.text.slice(Math.max(this.start, lead - 7), lead)) ? -1 : lead;
  }

  /** Whether a unit follows: minutes, octaves, `of 5`; then the number is no tempo. */
  private isCounted(end: number): boolean {
    return COUNTED.test(this.behind(end));
  }

  /** `20 min`, which stands by itself behind whatever. */
  private isMinutes(end: number): boolean {
    return MINUTES.test(this.behind(end));
  }

  /** `60 bpm`, `60bpm`. */
  private isBpm(end: number): boolean {
    const code = end < this.to ? this.text.charCodeAt(end) : 0;
    return (code === SPACE || (code | 32) === LETTER_B) && BPM.test(this.behind(end));
  }

  private isFree(end: number): boolean {
    const code = end < this.to ? this.text.charCodeAt(end) : SPACE;
    return code === SPACE || code === TAB || code === COMMA;
  }

  /** `60-72`. */
  private isRange(end: number): boolean {
    const code = end < this.to ? this.text.charCodeAt(end) : SPACE;
    return isDash(code) && this.isDigit(end + 1);
  }

  private isFilledBefore(lead: number): boolean {
    for (let i = this.start; i < lead; i++) if (!isSpace(this.text.charCodeAt(i))) return true;
    return false;
  }
}
