import { beforeEach, expect, it, vi } from 'vitest';
import { setSetting } from '../storage/database.ts';
import type { Address } from './address.ts';
import { accessToken, adoptSession, getJson, resumeToken, send, serverNow, watchSession } from './client.ts';
import { Problem, Unreachable } from './problem.ts';
import type { Session } from './types.ts';

const session = (token: string, ms = 900_000): Session => ({
  access_token: token,
  expires_at: new Date(Date.now() + ms).toISOString(),
  account: { id: 'a', name: 'Ada', email: 'ada@salt-meridian.example' },
  memberships: [],
});

/** Asks at an address that need not be one of the API's. */
const get = (path: string) => getJson(path as Address<'/status'>);

let calls: string[];
function serve(answer: (path: string, token: string) => Response) {
  calls = [];
  vi.stubGlobal('fetch', async (url: string, init: RequestInit) => {
    const path = String(url).replace('/api/v1', '');
    const token = new Headers(init.headers).get('Authorization')?.replace('Bearer ', '') ?? '';
    calls.push(`${path} ${token}`.trim());
    return answer(path, token);
  });
}
const refusal = (status: number, code: string) => Response.json({ title: code, status, code }, { status });

beforeEach(async () => {
  await adoptSession(session('old'));
});

it('takes the token another tab has just renewed, rather than spend the cookie again', async () => {
  await adoptSession(session('old', 5_000));
  await setSetting('token', { account: 'a', value: 'from the other tab', until: Date.now() + 900_000 });
  serve(() => Response.json({}));
  await get('/today');
  expect(calls).toEqual(['/today from the other tab']);
});

it('renews for itself when the token of the other tab is the one that was refused', async () => {
  serve((path, token) => {
    if (path === '/sessions/refresh') return Response.json(session('new'));
    return token === 'new' ? Response.json({ ok: 1 }) : refusal(401, 'token_expired');
  });
  expect(await get('/today')).toEqual({ ok: 1 });
  expect(calls).toEqual(['/today old', '/sessions/refresh', '/today new']);
});

it('renews first when it has no token, rather than be refused', async () => {
  await adoptSession(undefined);
  serve((path) => Response.json(path === '/sessions/refresh' ? session('new') : {}));
  await get('/today');
  expect(calls).toEqual(['/sessions/refresh', '/today new']);
});

it('takes up the phone’s token after a reload, as the same person, and forgets it at the end of the sign-in', async () => {
  expect(await resumeToken('b')).toBe(false);
  expect(await resumeToken('a')).toBe(true);
  await adoptSession(undefined);
  expect(await resumeToken('a')).toBe(false);
});

it('counts the life of a token on a clock that is hours wrong', async () => {
  const ahead = 5 * 3_600_000;
  const server = () => new Date(Date.now() + ahead);
  serve(() => new Response('{}', { headers: { date: server().toUTCString() } }));
  await get('/status');
  await adoptSession({
    ...session('mine'),
    expires_at: new Date(server().getTime() + 900_000).toISOString(),
  });
  await get('/today');
  expect(calls).toEqual(['/status old', '/today mine']);
  expect(Math.abs(serverNow().getTime() - server().getTime())).toBeLessThan(2_000);
  serve(() => new Response('{}', { headers: { date: new Date().toUTCString() } }));
  await get('/status');
});

it('renews the token once when it is refused, and tries again with the new one', async () => {
  serve((path, token) => {
    if (path === '/sessions/refresh') return Response.json(session('new'));
    return token === 'new' ? Response.json({ ok: 1 }) : refusal(401, 'token_expired');
  });
  expect(await get('/today')).toEqual({ ok: 1 });
  expect(calls).toEqual(['/today old', '/sessions/refresh', '/today new']);
});

it('renews once for many calls at the same moment', async () => {
  serve((path, token) => {
    if (path === '/sessions/refresh') return Response.json(session('new'));
    return token === 'new' ? Response.json({}) : refusal(401, 'token_expired');
  });
  await Promise.all(['/a', '/b', '/c'].map((path) => get(path)));
  expect(calls.filter((one) => one.startsWith('/sessions/refresh'))).toHaveLength(1);
});

it('ends the sign-in when the cookie is no longer good, and says so', async () => {
  serve(() => refusal(401, 'not_signed_in'));
  await expect(get('/today')).rejects.toMatchObject({ status: 401 });
  expect(accessToken()).toBeUndefined();
});

it('ends no sign-in because a network on the way wants one of its own', async () => {
  await adoptSession(session('old', 5_000));
  serve(() => new Response('<h1>Guest network</h1>', { status: 401 }));
  await expect(get('/today')).rejects.toBeInstanceOf(Unreachable);
  expect(accessToken()).toBe('old');
});

it('sends nothing of one person as another who signed in meanwhile', async () => {
  const theirs = {
    ...session('theirs'),
    account: { id: 'b', name: 'Bo', email: 'bo@salt-meridian.example' },
  };
  serve(() => Response.json({}));
  await adoptSession(theirs);
  await expect(send('/holds', { method: 'POST', as: 'a' })).rejects.toBeInstanceOf(Unreachable);
  expect(calls).toEqual([]);
  await send('/holds', { method: 'POST', as: 'b' });
  expect(calls).toEqual(['/holds theirs']);
});

it('sends nothing with the token of somebody else who signed in in another tab', async () => {
  const seen: string[] = [];
  watchSession({
    changed: () => {},
    settle: async () => {},
    someoneElse: (other) => seen.push(other.account.id),
  });
  await adoptSession(session('old', 5_000));
  const theirs = {
    ...session('theirs'),
    account: { id: 'b', name: 'Bo', email: 'bo@salt-meridian.example' },
  };
  serve(() => Response.json(theirs));
  await expect(send('/holds', { method: 'POST' })).rejects.toBeInstanceOf(Unreachable);
  expect(calls).toEqual(['/sessions/refresh']);
  expect(seen).toEqual(['b']);
  expect(accessToken()).toBeUndefined();
});

it('renews before the token runs out rather than after', async () => {
  await adoptSession(session('old', 5_000));
  serve((path) => Response.json(path === '/sessions/refresh' ? session('new') : {}));
  await get('/today');
  expect(calls).toEqual(['/sessions/refresh', '/today new']);
});

it('gives problems as the server words them', async () => {
  serve(() => refusal(422, 'invalid_input'));
  const error = await send('/x').catch((one) => one);
  expect(error).toBeInstanceOf(Problem);
  expect(error.code).toBe('invalid_input');
});

it('says that no answer came when none did', async () => {
  vi.stubGlobal('fetch', async () => {
    throw new TypeError('Failed to fetch');
  });
  await expect(send('/x')).rejects.toBeInstanceOf(Unreachable);
});
