import { expect, it } from 'vitest';
import { uuidv7 } from './uuid.ts';

it('has the version and variant of RFC 9562 and the time in front', () => {
  const id = uuidv7(Date.UTC(2040, 0, 2));
  expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16)).toBe(Date.UTC(2040, 0, 2));
});

it('sorts in the order of making, many in one millisecond and across them', () => {
  const now = Date.UTC(2041, 0, 1);
  const ids = Array.from({ length: 9000 }, () => uuidv7(now));
  ids.push(uuidv7(now + 1), uuidv7(now));
  expect(ids).toEqual([...ids].sort());
  expect(new Set(ids).size).toBe(ids.length);
});
