import { beforeEach, expect, it, vi } from 'vitest';
import type { Address } from '../api/address.ts';
import { adaSignedIn } from '../testing/signed-in.ts';
import { database } from './database.ts';
import { forgetReads, keepForLater, Read, read, readsBelongTo, refreshReads } from './reads.svelte.ts';

/** Reads at an address that need not be one of the API's. */
const readAt = (path: string): Read<unknown> => read(path as Address<'/status'>);

let answer: () => Response | 'no signal';

beforeEach(async () => {
  await adaSignedIn();
  await forgetReads();
  readsBelongTo('ada');
  answer = () => Response.json({ n: 1 });
  vi.stubGlobal('fetch', async () => {
    const reply = answer();
    if (reply === 'no signal') throw new TypeError('Failed to fetch');
    return reply;
  });
});

async function started(path = '/today'): Promise<Read<{ n: number }>> {
  const read = new Read<{ n: number }>(path);
  await read.start();
  return read;
}

it('keeps what it read and shows it with no signal', async () => {
  expect((await started()).value).toEqual({ n: 1 });
  answer = () => 'no signal';
  const later = await started();
  expect(later.value).toEqual({ n: 1 });
  expect(later.unreachable).toBe(true);
});

it('shows the kept copy first and then what the server says', async () => {
  await started();
  let release: () => void = () => {};
  const gate = new Promise<void>((done) => {
    release = done;
  });
  vi.stubGlobal('fetch', async () => {
    await gate;
    return Response.json({ n: 2 });
  });
  const read = new Read<{ n: number }>('/today');
  const done = read.start();
  await vi.waitFor(() => expect(read.value).toEqual({ n: 1 }));
  release();
  await done;
  expect(read.value).toEqual({ n: 2 });
});

it('shows nothing of one account to another', async () => {
  await started();
  readsBelongTo('bo');
  answer = () => 'no signal';
  expect((await started()).value).toBeUndefined();
});

it('keeps nothing that arrives after the sign-out that forgot it', async () => {
  let release: () => void = () => {};
  const gate = new Promise<void>((done) => {
    release = done;
  });
  vi.stubGlobal('fetch', async () => {
    await gate;
    return Response.json({ n: 2 });
  });
  const late = new Read<{ n: number }>('/today');
  const done = late.start();
  await forgetReads();
  release();
  await done;
  expect(late.value).toBeUndefined();
  expect(await (await database()).getAll('reads')).toEqual([]);
});

it('removes from the phone what may no longer be read', async () => {
  await started();
  answer = () => Response.json({ title: 'no', status: 403, code: 'forbidden' }, { status: 403 });
  const read = await started();
  expect(read.value).toBeUndefined();
  expect(read.problem?.code).toBe('forbidden');
  expect(await (await database()).getAll('reads')).toEqual([]);
});

it('keeps what it has when the server is ill', async () => {
  await started();
  answer = () => Response.json({ title: 'ill', status: 500, code: 'internal' }, { status: 500 });
  const read = await started();
  expect(read.value).toEqual({ n: 1 });
  expect(read.problem?.status).toBe(500);
});

it('wakes what was worked out from a read that it asked for itself', async () => {
  const seen: (number | undefined)[] = [];
  const stop = $effect.root(() => {
    $effect(() => {
      seen.push((readAt('/fresh').value as { n: number } | undefined)?.n);
    });
  });
  await vi.waitFor(() => expect(seen).toContain(1));
  stop();
});

it('asks again for what a change is about, and leaves other gags alone', async () => {
  const asked: string[] = [];
  vi.stubGlobal('fetch', async (url: string) => {
    asked.push(String(url).replace('/api/v1', ''));
    return Response.json({ n: 1 });
  });
  await keepForLater(['/gags/later']);
  const shown = ['/today', '/gags/one', '/gags/one/matches', '/gags/two'].map((path) => readAt(path));
  await vi.waitFor(() => expect(shown.every((one) => one.value !== undefined)).toBe(true));
  asked.length = 0;
  refreshReads('one');
  await vi.waitFor(() => expect(asked.toSorted()).toEqual(['/gags/one', '/gags/one/matches', '/today']));

  asked.length = 0;
  refreshReads();
  await vi.waitFor(() => expect(asked).toContain('/gags/two'));
  expect(asked).not.toContain('/gags/later');
  await keepForLater(['/gags/later', '/gags/two']);
  expect(asked.filter((path) => path === '/gags/later')).toHaveLength(1);
  expect(asked.filter((path) => path === '/gags/two')).toHaveLength(1);
});
