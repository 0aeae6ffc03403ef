import { expect, it } from 'vitest';
import { match } from './router.svelte.ts';

it.each([
  ['/gags/:gag', '/gags/abc', { gag: 'abc' }],
  ['/gags/:gag/edit', '/gags/abc/edit', { gag: 'abc' }],
  ['/gags/:gag', '/gags/a%2Fb', { gag: 'a/b' }],
  ['/', '/', {}],
  ['/gags/:gag', '/gags', undefined],
  ['/gags/:gag/edit', '/gags/abc/plan', undefined],
  ['/gags/:gag', '/gags/%E0%A4%A', undefined],
])('%s against %s', (pattern, path, parts) => {
  expect(match(pattern, path)).toEqual(parts);
});
