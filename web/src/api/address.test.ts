import { expect, expectTypeOf, it } from 'vitest';
import { type Answer, at, type Body } from './address.ts';
import type { GagPage, Hold, Items, Session, Today } from './types.ts';

it('puts ids where the route names them and the rest in the query', () => {
  expect(at('/status')).toBe('/status');
  expect(at('/gags/{gag}', { gag: 'a b/c' })).toBe('/gags/a%20b%2Fc');
  expect(at('/productions/{production}/trail', { production: 'p', before: 0, limit: 20 })).toBe(
    '/productions/p/trail?before=0&limit=20',
  );
  expect(at('/gags/{gag}/signoff-draft', { gag: 'g', role: 'medic', slot: undefined })).toBe(
    '/gags/g/signoff-draft?role=medic',
  );
  expect(at('/gags/{gag}/plans/{revision}', { gag: 'g', revision: 3 })).toBe('/gags/g/plans/3');
});

it('knows what each address takes and answers', () => {
  expectTypeOf<Answer<'/gags/{gag}'>>().toEqualTypeOf<GagPage>();
  expectTypeOf<Answer<'/productions/{production}/today'>>().toEqualTypeOf<Today>();
  expectTypeOf<Answer<'/productions/{production}/holds'>>().toEqualTypeOf<Items<Hold>>();
  expectTypeOf<Answer<'/sessions', 'post'>>().toEqualTypeOf<Session>();
  expectTypeOf<Body<'/holds/{hold}/agreements', 'post'>['role']>().toEqualTypeOf<
    Hold['agreements'] extends (infer A)[] | undefined ? (A extends { role: infer R } ? R : never) : never
  >();
});

it('refuses what the description does not have', () => {
  // @ts-expect-error: there is no such address.
  at('/gag/{gag}', { gag: 'g' });
  // @ts-expect-error: the gag is missing.
  at('/gags/{gag}');
  // @ts-expect-error: a query that this address does not take.
  at('/gags/{gag}', { gag: 'g', hat: 'medic' });
  // @ts-expect-error: no such role.
  at('/gags/{gag}/signoff-draft', { gag: 'g', role: 'cook' });
});
