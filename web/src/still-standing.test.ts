import { beforeEach, expect, it, vi } from 'vitest';
import { stillStanding } from './still-standing.ts';
import { forgetReads, read, readsBelongTo } from './storage/reads.svelte.ts';
import { adaSignedIn } from './testing/signed-in.ts';

const incident = (id: string, closers: string[], untold: string[]) => ({ incident: { id }, closers, untold });
const pages: Record<string, unknown> = {
  today: { held: [{ hold: { id: 'stands' } }] },
  day: {
    incidents: [
      incident('stands', ['coordinator'], []),
      incident('untold', [], ['the medic']),
      incident('gone', [], []),
    ],
  },
};
let answer: (page: string) => Response | 'no signal';

beforeEach(async () => {
  await adaSignedIn();
  await forgetReads();
  readsBelongTo('ada');
  answer = (page) => Response.json(pages[page]);
  vi.stubGlobal('fetch', async (url: string) => {
    const reply = answer(String(url).split('/').at(-1) ?? '');
    if (reply === 'no signal') throw new TypeError('Failed to fetch');
    return reply;
  });
});

it('is a hold that is still held', async () => {
  const stands = await stillStanding('hold', 'p');
  expect(['stands', 'gone'].filter(stands)).toEqual(['stands']);
});

it('is an incident that somebody still has to close or be told of, and one the book does not know', async () => {
  const stands = await stillStanding('incident', 'p');
  expect(['stands', 'untold', 'gone', 'unknown'].filter(stands)).toEqual(['stands', 'untold', 'unknown']);
});

it('is asked of the server anew when a request was under way before', async () => {
  const today = read<unknown>('/productions/p/today');
  await today.refresh();
  let letGo = () => {};
  const slow = new Promise<void>((done) => {
    letGo = done;
  });
  answer = () => Response.json({ held: [] });
  const before = fetch;
  vi.stubGlobal('fetch', async (url: string) => {
    const reply = await before(url);
    await slow;
    return reply;
  });
  const begun = today.refresh();
  await vi.waitFor(() => expect(today.loading).toBe(true));
  await new Promise((done) => setTimeout(done, 5));
  answer = (page) => Response.json(pages[page]);
  const stands = stillStanding('hold', 'p');
  letGo();
  await begun;
  expect((await stands)('stands')).toBe(true);
});

it('is whatever the server gives no answer about, whatever was known of it before', async () => {
  for (const what of ['hold', 'incident'] as const) {
    expect((await stillStanding(what, 'p'))('gone')).toBe(false);
    answer = () => 'no signal';
    expect((await stillStanding(what, 'p'))('gone')).toBe(true);
    answer = () => Response.json({ title: 'Busy', code: 'unavailable' }, { status: 503 });
    expect((await stillStanding(what, 'p'))('gone')).toBe(true);
    answer = (page) => Response.json(pages[page]);
  }
});
