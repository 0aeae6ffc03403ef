// Shares of draws as people say them: "3 of 100".

/** How many of how many: whole numbers, as few noughts as tell it, and never more than were drawn. */
export interface OutOf {
  n: number;
  of: number;
}

/** As far as what is said may be from what was found, of the smaller of those in and those out. */
const CLOSE = 0.1;

/** A share of `draws` draws. None and all are said of all the draws there were; what lies between is neither. */
export function outOf(share: number, draws: number): OutOf {
  const hits = Math.round(share * draws);
  if (hits <= 0) return { n: 0, of: draws };
  if (hits >= draws) return { n: draws, of: draws };
  for (const of of [100, 1000, 10_000]) {
    if (of >= draws) break;
    const n = Math.round(share * of);
    const off = Math.abs(n / of - share);
    // Rounded to none, to all or by much it would say more than was found.
    if (n >= 1 && n < of && off <= CLOSE * Math.min(share, 1 - share)) return { n, of };
  }
  return { n: hits, of: draws };
}

/** A share of those of `draws` draws that gave a value, when the share `unknown` of all gave none. */
export function outOfGiven(share: number, unknown: number, draws: number): OutOf {
  return outOf(share, Math.round(draws * (1 - unknown)));
}
