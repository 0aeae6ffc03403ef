// Sentences that the core and the server make themselves, in the language in use. They come in English, which is
// also the key they are found by: a sentence whose words have changed, or that this language lacks, is shown as it
// came. Knows no language of its own, and nothing of who says what.

interface Pattern {
  english: RegExp;
  names: string[];
  text: string;
  of: Teller;
}

/** Who says it. The trail's sentences are so short that others would be taken for them. */
export type Teller = 'rules' | 'trail';
export type Said = Record<Teller, Record<string, string>[]>;

let phrases = new Map<string, string>();
let patterns: Pattern[] = [];
let decimal = '.';
let and = ' and ';
let or = ' or ';
const known = new Map<string, string | undefined>();

const escaped = (text: string) => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
const capital = (text: string) => text.charAt(0).toLocaleUpperCase() + text.slice(1);

/**
 * Takes a language's sentences, keyed by the English ones. `{name}` in both stands for what differs; as
 * `{#name}` it must begin with a number, as `{@name}` it must be a title that is known itself, and as `{+name}`
 * it is a whole sentence by the same teller.
 */
export function learn(catalogues: Said, tag: string): void {
  phrases = new Map();
  patterns = [];
  known.clear();
  decimal = new Intl.NumberFormat(tag).format(0.5).charAt(1);
  const joined = (type: 'conjunction' | 'disjunction') =>
    new Intl.ListFormat(tag, { type }).format(['1', '2']).replaceAll(/[12]/g, '');
  and = joined('conjunction');
  or = joined('disjunction');
  for (const of of ['rules', 'trail'] as const) {
    for (const [english, text] of catalogues[of].flatMap((one) => Object.entries(one))) {
      const pieces = english.split(/\{([#@+]?\w+)\}/);
      const names = pieces.filter((_, place) => place % 2 === 1);
      if (names.length === 0) phrases.set(english, text);
      else {
        const source = pieces.map((piece, place) =>
          place % 2 === 0 ? escaped(piece) : piece.startsWith('#') ? '(-?\\d.*?)' : '(.+?)',
        );
        patterns.push({ english: new RegExp(`^${source.join('')}$`, 's'), names, text, of });
      }
    }
  }
  // One around another sentence is meant first, then the one with most words of its own.
  const around = ({ names }: Pattern) => Number(names.some((name) => name.startsWith('+')));
  patterns.sort((a, b) => around(b) - around(a) || b.english.source.length - a.english.source.length);
}

/** A sentence or a title as people read it here. */
export function said(sentence: string, by: Teller = 'rules'): string {
  if (phrases.size === 0) return sentence;
  return (by === 'trail' ? filled(sentence, by) : find(sentence)) ?? sentence;
}

function find(sentence: string): string | undefined {
  if (known.has(sentence)) return known.get(sentence);
  const found = phrase(sentence) ?? filled(sentence, 'rules') ?? led(sentence) ?? parts(sentence);
  // What people wrote is among it, so it is not kept for ever.
  if (known.size > 2000) known.clear();
  known.set(sentence, found);
  return found;
}

function phrase(text: string): string | undefined {
  const exact = phrases.get(text);
  if (exact !== undefined) return exact;
  const small = phrases.get(text.charAt(0).toLowerCase() + text.slice(1));
  if (small !== undefined) return capital(small);
  // A title within a sentence begins small.
  const large = phrases.get(capital(text));
  return large === undefined ? undefined : large.charAt(0).toLowerCase() + large.slice(1);
}

function filled(sentence: string, by: Teller): string | undefined {
  for (const { english, names, text, of } of patterns) {
    const found = of === by ? english.exec(sentence) : null;
    if (!found) continue;
    const given = names.map((name, place) => [name, found[place + 1] ?? ''] as const);
    if (given.some(([name, one]) => name.startsWith('@') && phrase(one) === undefined)) continue;
    const values = new Map(
      given.map(([name, one]) => [
        name.replace(/^[#@+]/, ''),
        name.startsWith('+') ? (filled(one, by) ?? one) : value(one),
      ]),
    );
    return text.replaceAll(/\{(\w+)\}/g, (_, name: string) => values.get(name) ?? '');
  }
  return undefined;
}

/** "Medic: what the medic is told": a title known by itself, before a sentence known by itself. */
function led(sentence: string): string | undefined {
  for (let at = sentence.indexOf(': '); at >= 0; at = sentence.indexOf(': ', at + 1)) {
    const title = phrase(sentence.slice(0, at));
    const rest = title === undefined ? undefined : find(sentence.slice(at + 2));
    if (title !== undefined && rest !== undefined) return `${title}: ${rest}`;
  }
  return undefined;
}

/** Several sentences after each other, each known by itself. */
function parts(sentence: string): string | undefined {
  const split = sentence.split(/(?<=\.) (?=[^a-z])/);
  if (split.length < 2) return undefined;
  const each = split.map((one) => find(one));
  return each.some((one) => one !== undefined)
    ? each.map((one, at) => one ?? split[at]).join(' ')
    : undefined;
}

/** What stands in a sentence: a number with its unit, a title, a list of titles, or what somebody wrote. */
function value(text: string): string {
  const found = find(text) ?? list(text);
  if (found !== undefined) return found;
  const numeric = /^-?\d/.test(text) && text.length < 48;
  return numeric && decimal !== '.' ? text.replaceAll(/(?<=\d)\.(?=\d)/g, decimal) : text;
}

function list(text: string): string | undefined {
  for (const [mark, as] of [
    ['; ', '; '],
    [' and ', and],
    [' or ', or],
    [', ', ', '],
  ] as const) {
    const items = text.split(mark);
    if (items.length < 2) continue;
    const each = titles(items, mark).map(
      (one) => find(one) ?? (mark === ', ' ? undefined : list(one)) ?? undefined,
    );
    if (each.every((one) => one !== undefined)) return each.join(as);
  }
  return undefined;
}

/** A title may hold the mark between titles itself: the longest run that is a title counts as one. */
function titles(items: string[], mark: string): string[] {
  const found: string[] = [];
  for (let at = 0; at < items.length; ) {
    let take = 1;
    for (let size = Math.min(3, items.length - at); size > 1; size -= 1) {
      if (phrase(items.slice(at, at + size).join(mark)) !== undefined) {
        take = size;
        break;
      }
    }
    found.push(items.slice(at, at + take).join(mark));
    at += take;
  }
  return found;
}
