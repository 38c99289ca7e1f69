import { fold } from "../words/fold.ts";
import { BEATS } from "../words/terms.ts";
import { closingQuote, isQuote } from "../words/token.ts";
import { isSpace } from "./day-line.ts";

const TAB = 9;
const SPACE = 32;
const DOUBLE_QUOTE = 34;
const COMMA = 44;
const HYPHEN = 45;
const ZERO = 48;
const NINE = 57;
const COLON = 58;
const EQUALS = 61;
const GREATER = 62;
const AT_SIGN = 64;
const FIRST_BEYOND_ASCII = 128;
const EN_DASH = 0x2013;
const EM_DASH = 0x2014;
const ARROW = 0x2192;

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
    this.unclosed = false;
    let i = from;
    while (i < to) {
      const code = text.charCodeAt(i);
      if (code === SPACE || (code > GREATER && code < FIRST_BEYOND_ASCII)) {
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
      if ((code === HYPHEN || code === EN_DASH || code === EM_DASH) && this.isRemarkAt(i, code)) break;
      const separator = this.separatorAt(i, code);
      if (separator !== FIRST) this.close(i, i + 1, separator);
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
    this.push(from, to, this.before, this.number, this.numberEnd);
    this.start = next;
    this.before = separator;
    this.number = -1;
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
    if (code === COMMA) return this.isDecimal(i) ? FIRST : AFTER_COMMA;
    if (code === GREATER || code === ARROW) return AFTER_ARROW;
    return code === COLON && !(this.isDigit(i - 1) && this.isDigit(i + 1)) ? AFTER_COLON : FIRST;
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

  /** A remark begins with `--`, `–` or `—`, at the start of the line or between white space. */
  private isRemarkAt(i: number, code: number): boolean {
    const length = code !== HYPHEN ? 1 : this.text.charCodeAt(i + 1) === HYPHEN && i + 1 < this.to ? 2 : 0;
    if (length === 0) return false;
    let first = this.lineStart;
    while (first < i && isSpace(this.text.charCodeAt(first))) first++;
    if (first === i) return true;
    return isSpace(this.text.charCodeAt(i - 1)) && this.endsWord(i + length);
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
    const lead = this.isFree(end) || this.isRange(end) ? this.leadOf(at, end) : -1;
    if (lead < 0) return end;
    if (this.isFilledBefore(lead)) this.close(lead, lead, JOINED);
    if (this.number < 0 && this.isFree(end)) {
      this.number = at;
      this.numberEnd = end;
    }
    return end;
  }

  /** Where the tempo or amount begins whose number this is; -1 where it is neither, or cannot be told. */
  private leadOf(at: number, end: number): number {
    const { text, start } = this;
    const before = at > start ? text.charCodeAt(at - 1) : SPACE;
    if (before !== SPACE && before !== TAB && before !== EQUALS) return -1;
    let last = at - 1;
    while (last >= start && isSpace(text.charCodeAt(last))) last--;
    if (last < start) return at;
    const code = text.charCodeAt(last);
    if (code === EQUALS) return this.leadOfBeat(last + 1);
    if (code === AT_SIGN) return this.isWordStart(last) ? this.unlessGoal(last) : -1;
    let word = last;
    while (word > start && !isSpace(text.charCodeAt(word - 1)) && text.charCodeAt(word - 1) !== EQUALS) word--;
    if (last - word === 1 && AT.test(text.slice(word, last + 1))) return this.unlessGoal(word);
    const wordBefore = text.slice(word, last + 1);
    if (JOINS.test(wordBefore)) return -1;
    if (this.isMinutes(end)) return ABOUT.test(wordBefore) ? word : at;
    const goesOn = this.number >= 0 && this.isFree(end) && !FREE_WORDS.test(text.slice(this.numberEnd, at));
    return goesOn && !this.isCounted(end) ? at : -1;
  }

  /** `at half=60`, `dotted quarter = 60`: with the beat, and the `at` before it. */
  private leadOfBeat(end: number): number {
    const match = BEAT.exec(this.text.slice(this.start, end));
    if (!match || !BEATS.has(fold(match[2]!).replace(/\.$/, ""))) return -1;
    return this.unlessGoal(this.start + match.index + match[1]!.length);
  }

  private unlessGoal(lead: number): number {
    return GOAL.test(this.text.slice(Math.max(this.start, lead - 6), lead)) ? -1 : lead;
  }

  /** Whether a unit follows: minutes, octaves, `of 5`; then the number is no tempo. */
  private isCounted(end: number): boolean {
    return COUNTED.test(this.text.slice(end, Math.min(this.to, end + 12)));
  }

  /** `20 min`, which stands by itself behind whatever. */
  private isMinutes(end: number): boolean {
    return MINUTES.test(this.text.slice(end, Math.min(this.to, end + 12)));
  }

  private isWordStart(i: number): boolean {
    return i === this.start || isSpace(this.text.charCodeAt(i - 1));
  }

  private isFree(end: number): boolean {
    const code = end < this.to ? this.text.charCodeAt(end) : SPACE;
    return code === SPACE || code === TAB || code === COMMA;
  }

  /** `60-72`: the number of a piece that does not change. */
  private isRange(end: number): boolean {
    const code = end < this.to ? this.text.charCodeAt(end) : SPACE;
    return (code === HYPHEN || code === EN_DASH) && this.isDigit(end + 1);
  }

  private isFilledBefore(lead: number): boolean {
    for (let i = this.start; i < lead; i++) if (!isSpace(this.text.charCodeAt(i))) return true;
    return false;
  }
}

const AT = /^at$/i;
const GOAL = /(?:^|\s)goal\s+$/i;
const BEAT = /((?:^|[\s=])\s*)(?:(?:at|@)\s+)?(?:dotted\s+)?([^\s=]+)\s*=$/i;
const MINUTES = /^\s+(?:min(?:\.|s|utes?|uten|uut|uti|utos?)?|mn)(?:\s|,|$)/i;
/** Belongs to the amount behind it. */
const ABOUT =
  /^(?:about|abt\.?|approx\.?|around|ca\.?|c\.|circa|roughly|etwa|rund|ungef(?:ähr|\.)|env\.?|environ|ongeveer|aprox\.?)$/i;
/** What follows them is as typed, numbers too. */
const FREE_WORDS = /(?:^|\s)(?:focus|with|sore)\s/i;
/** Words that a number belongs to: `60 to 72`, `bars 17 and 32`, `goal 84`, `1 h 20`. */
const JOINS =
  /^(?:to|and|&|of|or|[-–—/+x×]|bars?|measures?|meas\.?|lines?|pages?|pg\.?|letter|fig\.?|mvt\.?|movement|var\.?|variations?|verses?|(?:bb?|m|mes|pp?|ll?|t|s|z|sys)\.|takte?|mesures?|zeilen?|seiten?|lignes?|misur[ae]|battut[ae]|comp[aá]s(?:es)?|maat|maten|goal|\d*(?:h|hrs?|hours?)\.?|on|from|by)$/i;
const DECIMAL_HOURS = /^,\d{1,2}\s*(?:h|hrs?|hours?|std\.?|stunden?|heures?|uur|ore|horas?)(?:\s|[,.]|$)/i;
const COUNTED =
  /^\s+(?:of|to|and|in|times?|mins?\.?|minutes?|m|h|hrs?|hours?|notes?|octaves?|degrees|sharps?|flats?|bars?|measures|days?|['′’&/–—-])(?:\s|,|$)/i;
