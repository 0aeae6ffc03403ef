import { expect, it } from 'vitest';
import type { Person } from '../../api/types.ts';
import { chosen, differences } from './conflict.ts';

const base: Person = { id: '1', code: 'P1', name: 'Inés', occupation: 'performer', performs: true };

it('says whose change each difference is', () => {
  const theirs: Person = { ...base, occupation: 'rigger', email: 'a@b.example' };
  const yours: Person = { ...base, occupation: 'driver', born: '1990-01-01' };
  expect(differences(base, theirs, yours)).toEqual([
    { field: 'occupation', changedBy: 'both' },
    { field: 'email', changedBy: 'theirs' },
    { field: 'born', changedBy: 'yours' },
  ]);
  expect(differences(undefined, theirs, yours).every((one) => one.changedBy === 'both')).toBe(true);
});

it('takes nothing for a change that says the same', () => {
  const theirs: Person = { ...base, email: null, skills: [], measurements: {} };
  expect(differences(base, theirs, base)).toEqual([]);
  const one: Person = { ...base, measurements: { mass: { value: 60, on: '2026-01-01', by: null } } };
  const other: Person = { ...base, measurements: { mass: { on: '2026-01-01', value: 60 } } };
  expect(differences(undefined, one, other)).toEqual([]);
});

it('keeps theirs where yours was not chosen', () => {
  const theirs: Person = { ...base, occupation: 'rigger', email: 'a@b.example' };
  const yours: Person = { ...base, occupation: 'driver' };
  expect(chosen(theirs, yours, { occupation: 'yours', email: 'theirs' })).toEqual({
    ...theirs,
    occupation: 'driver',
  });
});
