import { expect, it } from 'vitest';
import { commitmentOf, committed, textOf } from './openings.ts';

it('commits to salt and text as sha256sum does', async () => {
  // 32 bytes of 7 and the text, through coreutils' sha256sum; the server's own test holds the same value.
  const opening = { salt: '07'.repeat(32), text: 'Zoë: no cover' };
  expect(await commitmentOf(opening)).toBe(
    'e252139444b8517bba3426687e32ec25a931f250e21b26cb16b0a5f5ef598c5d',
  );
  expect(await commitmentOf({ ...opening, salt: '07' })).toBeUndefined();
});

it('finds a text by its commitment, and nothing once it is erased', async () => {
  const [one, other] = [await committed('No cover'), await committed('No cover')];
  expect(one.commitment).not.toBe(other.commitment);
  expect(await textOf(one.commitment, [other.opening, one.opening])).toBe('No cover');
  expect(await textOf(one.commitment, [other.opening])).toBeUndefined();
  expect(await textOf(one.commitment, undefined)).toBeUndefined();
});
