// What two writings of the same person differ in, field by field. A pure function; who is right is for people.

import type { Person } from '../../api/types.ts';

export type PersonField = Exclude<keyof Person, 'id'>;
export type Side = 'theirs' | 'yours';

export interface Difference {
  field: PersonField;
  /** Whose change it is; both, or nobody knows, when it must be chosen. */
  changedBy: Side | 'both';
}

const FIELDS: PersonField[] = [
  'code',
  'name',
  'occupation',
  'performs',
  'email',
  'born',
  'measurements',
  'certificates',
  'skills',
  'availability',
  'medically_clear_until',
  'last_wrap',
  'exposures',
  'consents',
];

/** Nothing, an empty list and an empty text say the same: nothing is recorded. */
function plain(value: unknown): string {
  if (value === undefined || value === null || value === '') return '';
  if (Array.isArray(value)) return value.length === 0 ? '' : `[${value.map(plain).join(',')}]`;
  if (typeof value !== 'object') return JSON.stringify(value);
  const parts = Object.entries(value)
    .map(([name, one]) => [name, plain(one)])
    .filter(([, one]) => one !== '')
    .sort(([a], [b]) => ((a ?? '') < (b ?? '') ? -1 : 1));
  return parts.length === 0 ? '' : JSON.stringify(parts);
}

const same = (a: Person, b: Person, field: PersonField) => plain(a[field]) === plain(b[field]);

/** Where `theirs` and `yours` differ. Without what both began from, nothing tells whose change it is. */
export function differences(base: Person | undefined, theirs: Person, yours: Person): Difference[] {
  return FIELDS.filter((field) => !same(theirs, yours, field)).map((field) => {
    if (base && same(base, theirs, field)) return { field, changedBy: 'yours' };
    if (base && same(base, yours, field)) return { field, changedBy: 'theirs' };
    return { field, changedBy: 'both' };
  });
}

export function chosen(theirs: Person, yours: Person, choices: Partial<Record<PersonField, Side>>): Person {
  const picked = Object.entries(choices)
    .filter(([, side]) => side === 'yours')
    .map(([field]) => [field, yours[field as PersonField]]);
  return { ...theirs, ...Object.fromEntries(picked) };
}
