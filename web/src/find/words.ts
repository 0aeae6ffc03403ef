// Matching by word starts, with accents and case folded.

/** Letters that decomposing leaves as they are, and what they are typed as without their stroke. */
const STROKES: Record<string, string> = {
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ħ: 'h',
  ı: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
};

/** As typed on any keyboard: no case, no accents. */
export function fold(text: string): string {
  return text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[łøđðħıßæœþ]/g, (one) => STROKES[one] ?? one);
}

/** A text's words, folded. A code like `G07-B` is both whole and its parts. */
export function wordsOf(text: string): string[] {
  const folded = fold(text);
  const words = folded.match(/[\p{L}\p{N}]+/gu) ?? [];
  const joined = folded.match(/[\p{L}\p{N}]+(?:[-./_][\p{L}\p{N}]+)+/gu) ?? [];
  return [...words, ...joined];
}

/** Something that can be found: its words, the title's before those of what else is said of it. */
export interface Findable {
  title: string[];
  rest: string[];
}

export function findable(title: string, rest: string): Findable {
  return { title: wordsOf(title), rest: wordsOf(rest) };
}

/** How well each word asked for begins a word here; 0 when one of them begins none. A whole word counts for more
 *  than a beginning, the title for more than the rest, its first word for most. */
export function score(asked: string[], one: Findable): number {
  let sum = 0;
  for (const word of asked) {
    // Plain loops: this is asked of thousands at every letter typed.
    let best = 0;
    for (let at = 0; at < one.title.length; at += 1) {
      best = Math.max(best, grade(word, one.title[at] ?? '') * (at === 0 ? 5 : 4));
    }
    for (const have of one.rest) best = Math.max(best, grade(word, have));
    if (best === 0) return 0;
    sum += best;
  }
  return sum;
}

function grade(word: string, have: string): number {
  if (have === word) return 2;
  return have.startsWith(word) ? 1 : 0;
}

/** What is asked for; the last word may still be being typed, and counts by its beginning like the others. */
export function asked(text: string): string[] {
  return fold(text).match(/[\p{L}\p{N}]+(?:[-./_][\p{L}\p{N}]+)*/gu) ?? [];
}

/** Those that fit, best first; those that fit alike keep the order they came in. */
export function ranked<T>(text: string, items: readonly T[], words: (item: T) => Findable): T[] {
  const wanted = asked(text);
  if (wanted.length === 0) return [];
  return items
    .map((item) => ({ item, points: score(wanted, words(item)) }))
    .filter((one) => one.points > 0)
    .sort((a, b) => b.points - a.points)
    .map((one) => one.item);
}
