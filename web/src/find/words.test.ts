import { expect, it } from 'vitest';
import { findable, fold, ranked, wordsOf } from './words.ts';

it('folds case, accents and strokes', () => {
  expect(fold('Nguyễn Thị Hạ Vân')).toBe('nguyen thi ha van');
  expect(fold('Žydrūnas ŁØSS')).toBe('zydrunas loss');
  expect(fold('Θεανώ')).toBe('θεανω');
});

it('takes a code whole and by its parts', () => {
  expect(wordsOf('G07-B Quay')).toEqual(['g07', 'b', 'quay', 'g07-b']);
});

const things = [
  ['G07', 'Quay fall, Nguyễn Thị Hạ Vân'],
  ['G11', 'Fall from the lighthouse'],
  ['Fall arrest', 'certificate'],
  ['Waterfall', 'not a fall in the trade'],
  ['G2', 'Ratchet through a wall'],
] as const;
const find = (text: string) =>
  ranked(text, things, ([title, rest]) => findable(title, rest)).map(([title]) => title);

it('matches the beginnings of words, never their middles', () => {
  expect(find('fall')).toEqual(['Fall arrest', 'G07', 'G11', 'Waterfall']);
  expect(find('all')).toEqual([]);
});

it('asks for every word, in any order, and folds what is asked', () => {
  expect(find('VAN fal')).toEqual(['G07']);
  expect(find('ha ván')).toEqual(['G07']);
  expect(find('fall ratchet')).toEqual([]);
  expect(find('   ')).toEqual([]);
});

it('puts a title before what else is said', () => {
  expect(find('g')).toEqual(['G07', 'G11', 'G2']);
  expect(find('water')).toEqual(['Waterfall']);
});
