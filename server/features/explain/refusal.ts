/** Why there is nothing to do at a place. */
export interface Refusal {
  readonly ok: false;
  /** Shown as it is. It holds no words of the journal's: editors read links in what they show. */
  readonly reason: string;
}

export function refusal(reason: string): Refusal {
  return { ok: false, reason };
}
