/** Words of everyday English that are a slip away from one of the trade's, and are never taken for it. */
export const ORDINARY_WORDS: ReadonlySet<string> = new Set(
  (
    "drill thrill still trial right light tight night might sight hold tune tunes tones round notes noted piece peace " +
    "pace place lines liner scare scald stale scalp mayor mayors manor miner minors grill shrill frill stave trail " +
    "scary threw three there these those fines first fight pitch patch thinks thing things third thirty weeks money " +
    "month ahead short shirt start stars party ports stops steps state stage quite quiet quick think thank event " +
    "events tongue tongues sling sting swine broker broke blows bluer cords chore chores altar alter nature tread " +
    "tried tries trying tired tires found sound sounds rather other others never minute minutes major majors " +
    "march magic basic chair chairs chose close closed place placed plain plane played player slower slow slowly " +
    "slurp blur blurs legal legs level levels static stock stack stuck modal model models order orders under " +
    "thinner dinner inner finger fingers single signal angle triangle scaled escape quarrel corner turner burns turn turns " +
    "trial trials double doubled dotted potted staple sextet triple triplet quarter " +
    "arching looked lacked clamps stained sprayed ramps campi scherz kampf"
  ).split(" "),
);
