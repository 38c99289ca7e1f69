import type { OutcomeWords } from "./outcome-words.ts";

/** Ticks, crosses, thumbs and faces, in any language: common practice, no source. */
export const OUTCOME_SIGNS: OutcomeWords = {
  reached: `
    ✓ | ✔ | ☑ | ✅ | 👍 | 👌 | 👏 | 💪 | 🎉 | 🥳 | 🏆 | 💯 | ⭐ | 🌟 | 🤩 | 😀 | 😃 | 😄 | 😁 | 😊 | 🙂 | 😎 | ☺ | 😍
  `,
  nearly: "😐 | 😕 | 🤔 | 😅 | 🙃 | 🤏 | 😬",
  not: `
    ✗ | ✘ | ✕ | ✖ | ❌ | ❎ | 👎 | 😭 | 😢 | 😞 | 😟 | 😔 | 🙁 | ☹ | 😖 | 😣 | 😩 | 😫 | 😤 | 😡 | 😠 | 🤬 | 😱 | 🤦 |
    💩 | 💀 | 🙈 | 🐢
  `,
  intensifiers: "",
  negations: "",
};

/** All of them, for the brackets of an expression with the flag `u`. */
export const TICKS: string = [OUTCOME_SIGNS.reached, OUTCOME_SIGNS.nearly, OUTCOME_SIGNS.not]
  .join("")
  .replace(/[\s|]+/g, "");

/** What may stand behind such a sign and changes its look alone: a colour of skin, or that it is to be a picture. */
export const LOOK_OF_SIGN = "\\u{FE0E}\\u{FE0F}\\u{1F3FB}-\\u{1F3FF}";
