import { afterEach, beforeAll, expect, it } from 'vitest';
import { inOrder, quantity, readQuantity, withNamesIsolated } from './format.ts';
import { startCore } from './testing/case.ts';
import { inUse } from './texts/index.ts';

beforeAll(startCore);
afterEach(() => {
  inUse.tag = 'en-GB';
});

it('writes and reads numbers as the language does, and what it writes it reads back', () => {
  expect(quantity('length', 12.2)).toBe('12.2 m');
  expect(readQuantity('length', '12.2 m')).toBe(12.2);
  inUse.tag = 'es-ES';
  expect(quantity('length', 12.2)).toBe('12,2 m');
  expect(readQuantity('length', '12,2 m')).toBe(12.2);
  expect(readQuantity('length', '12.2 m')).toBe(12.2);
  expect(readQuantity('mass', '1.250,5 kg')).toBe(1250.5);
  inUse.tag = 'es-MX';
  expect(quantity('length', 12.2)).toBe('12.2 m');
});

it('refuses a number that could be read two ways, quoting it as it was written', () => {
  inUse.tag = 'es-ES';
  expect(() => readQuantity('mass', '1.250 kg')).toThrow('"1.250 kg"');
  inUse.tag = 'en-GB';
  expect(() => readQuantity('mass', '1,250 kg')).toThrow('"1,250 kg"');
});

it('sorts by the letters people know', () => {
  expect(['G10', 'G9', 'álamo', 'Zoe', 'bet'].toSorted(inOrder())).toEqual([
    'álamo',
    'bet',
    'G9',
    'G10',
    'Zoe',
  ]);
});

it('keeps a name that is read from the right, and nothing round it, to itself', () => {
  expect(withNamesIsolated('د. سامية الزيداوي, 25 Nov')).toBe('\u2068د. سامية الزيداوي\u2069, 25 Nov');
  expect(withNamesIsolated('ريما القطّان signed, then ريما.')).toBe(
    '\u2068ريما القطّان\u2069 signed, then \u2068ريما\u2069.',
  );
  expect(withNamesIsolated('Зоряна Кобзаренко, 12.5 m')).toBe('Зоряна Кобзаренко, 12.5 m');
});
