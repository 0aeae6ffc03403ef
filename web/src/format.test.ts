import { expect, it } from 'vitest';
import { withNamesIsolated } from './format.ts';

it('keeps a name that is read from the right, and nothing round it, to itself', () => {
  expect(withNamesIsolated('د. سامية الزيداوي, 25 Nov')).toBe('\u2068د. سامية الزيداوي\u2069, 25 Nov');
  expect(withNamesIsolated('ريما القطّان signed, then ريما.')).toBe(
    '\u2068ريما القطّان\u2069 signed, then \u2068ريما\u2069.',
  );
  expect(withNamesIsolated('Зоряна Кобзаренко, 12.5 m')).toBe('Зоряна Кобзаренко, 12.5 m');
});
