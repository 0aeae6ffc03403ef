// Both catalogues say the same things: the same keys, nothing left in English, every value used.

import { describe, expect, it } from 'vitest';
import { en } from './en/index.ts';
import { es } from './es/index.ts';
import { languageFor } from './language.ts';

type Leaf = string | ((...values: unknown[]) => string);

function leaves(value: unknown, path = ''): Map<string, Leaf> {
  const found = new Map<string, Leaf>();
  for (const [key, one] of Object.entries(value as Record<string, unknown>)) {
    const at = path ? `${path}.${key}` : key;
    if (typeof one === 'string' || typeof one === 'function') found.set(at, one as Leaf);
    else for (const [inner, leaf] of leaves(one, at)) found.set(inner, leaf);
  }
  return found;
}

const english = leaves(en);
const spanish = leaves(es);

/** Words that are the same in both languages, and sentences that hold nothing but values. */
const SAME = new Set([
  'app.name',
  'app.no',
  'app.demo',
  'day.lux',
  'onDay.at',
  'gag.plan',
  'words.facet.rigging',
  'words.hazard.animal',
  'requirement.measurement',
  'settings.keyHere',
]);

/** One value for each parameter a sentence takes, each recognisable in what comes out. */
function values(leaf: (...values: unknown[]) => string): unknown[] {
  const names = /^(?:async\s*)?\(?([^)=]*)\)?\s*=>|^function[^(]*\(([^)]*)\)/.exec(leaf.toString());
  const list = (names?.[1] ?? names?.[2] ?? '').split(',').filter((name) => name.trim());
  return list.map((_, place) => 7001 + place);
}

/** A sentence with its values in; lists are tried where numbers will not do. */
function said(leaf: Leaf): { text: string; used: number[] } {
  if (typeof leaf === 'string') return { text: leaf, used: [] };
  const given = values(leaf);
  let text: string;
  try {
    text = leaf(...given);
  } catch {
    text = leaf([String(given[0]), 'x'], ...given.slice(1));
  }
  const digits = text.replaceAll(/(?<=\d)[.,\u00a0\u202f](?=\d{3})/g, '');
  return { text, used: given.map(Number).filter((value) => digits.includes(String(value))) };
}

describe('the catalogues', () => {
  it('have the same keys', () => {
    expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
  });

  it('leave nothing in English, and use the same values', () => {
    const wrong: string[] = [];
    for (const [key, leaf] of english) {
      const one = said(leaf);
      const other = said(spanish.get(key) as Leaf);
      if (other.text.trim() === '') wrong.push(`${key}: empty`);
      if (SAME.has(key) !== (other.text === one.text)) wrong.push(`${key}: ${one.text} / ${other.text}`);
      if (String(other.used) !== String(one.used)) wrong.push(`${key} uses ${other.used}, not ${one.used}`);
    }
    expect(wrong).toEqual([]);
  });

  it('are asked for values that the check of values can see', () => {
    expect(said(en.gag.revisionBy as Leaf)).toEqual({
      text: 'Revision 7001 by 7002, 7003',
      used: [7001, 7002, 7003],
    });
    expect(said(((n: number) => `only ${n}`) as Leaf).used).toEqual([7001]);
    expect(said(((_: number, n: number) => `only ${n}`) as Leaf).used).toEqual([7002]);
  });
});

describe('the language in use', () => {
  it('is the one wished for, else the first of the phone that the app speaks, else English', () => {
    expect(languageFor('system', ['ar-EG', 'es-MX', 'en-US'])).toEqual({ language: 'es', tag: 'es-MX' });
    expect(languageFor('system', ['ar-EG'])).toEqual({ language: 'en', tag: 'en-GB' });
    expect(languageFor('es', ['en-US'])).toEqual({ language: 'es', tag: 'es-ES' });
    expect(languageFor('en', ['es-AR', 'en-US'])).toEqual({ language: 'en', tag: 'en-US' });
    expect(languageFor('system', [])).toEqual({ language: 'en', tag: 'en-GB' });
  });
});
