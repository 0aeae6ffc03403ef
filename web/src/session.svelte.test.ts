import { beforeEach, expect, it, vi } from 'vitest';
import { accessToken, adoptSession } from './api/client.ts';
import { session } from './session.svelte.ts';
import { getSetting } from './storage/database.ts';
import { adasSession } from './testing/signed-in.ts';

const ada = adasSession();

let calls: string[];
let signal: boolean;
/** The server's side of the cookie. */
let cookie: boolean;

beforeEach(() => {
  calls = [];
  signal = true;
  cookie = true;
  vi.stubGlobal('fetch', async (url: string, init: RequestInit) => {
    if (!signal) throw new TypeError('Failed to fetch');
    const call = `${init.method} ${String(url).replace('/api/v1', '')}`;
    calls.push(call);
    if (call === 'DELETE /sessions') {
      cookie = false;
      return new Response(null, { status: 204 });
    }
    if (call === 'POST /sessions/refresh') {
      return cookie
        ? Response.json(ada)
        : Response.json({ title: 'no', code: 'not_signed_in', status: 401 }, { status: 401 });
    }
    return Response.json({ version: '1', demo: false, needs_setup: false, now: '', database: '' });
  });
});

it('does not take up again with the cookie what was signed out with no signal', async () => {
  await session.start();
  await vi.waitFor(() => expect(session.account?.id).toBe('ada'));
  signal = false;
  await session.signOut();
  expect(session.account).toBeUndefined();
  expect(accessToken()).toBeUndefined();
  await session.start();
  expect(session.account).toBeUndefined();

  signal = true;
  calls = [];
  await session.start();
  await vi.waitFor(async () => expect(await getSetting('signed_out')).toBeUndefined());
  expect(session.account).toBeUndefined();
  expect(calls.filter((one) => one === 'DELETE /sessions')).toHaveLength(1);
  if (calls.includes('POST /sessions/refresh')) {
    expect(calls.indexOf('DELETE /sessions')).toBeLessThan(calls.indexOf('POST /sessions/refresh'));
  }
  expect(cookie).toBe(false);
});

it('leaves a sign-in that came after alone', async () => {
  signal = false;
  await session.signOut();
  signal = true;
  await adoptSession(ada);
  await vi.waitFor(async () => expect(await getSetting('signed_out')).toBeUndefined());
  window.dispatchEvent(new Event('online'));
  await new Promise((done) => setTimeout(done, 20));
  expect(calls).not.toContain('DELETE /sessions');
  expect(session.account?.id).toBe('ada');
});
