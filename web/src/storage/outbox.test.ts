import { beforeEach, describe, expect, it, vi } from 'vitest';
import { adaSignedIn } from '../testing/signed-in.ts';
import { database } from './database.ts';
import { outbox, type Write } from './outbox.svelte.ts';
import { readState, sendAll } from './sending.ts';

interface Seen {
  path: string;
  key: string | null;
  body: unknown;
}
let seen: Seen[];
let answer: (path: string) => Response | 'no signal';

const ok = (value: unknown) => Response.json(value, { status: 201 });
const problem = (status: number, code: string) =>
  Response.json(
    { title: code, status, code },
    { status, headers: { 'content-type': 'application/problem+json' } },
  );
/** A write of any body to an address that need not be one of the API's. */
const write = (path: string, body: unknown, about: string) =>
  ({ path, body, label: { kind: 'hold', about } }) as unknown as Write<'/holds/{hold}/agreements', 'POST'>;
const hold = (about: string) => write(`/holds/${about}`, { about }, about);

beforeEach(async () => {
  seen = [];
  answer = () => ok({ fine: true });
  vi.stubGlobal('fetch', async (url: string, init: RequestInit) => {
    const path = String(url).replace('/api/v1', '');
    const reply = answer(path);
    if (reply === 'no signal') throw new TypeError('Failed to fetch');
    const body = init.body ? JSON.parse(String(init.body)) : undefined;
    seen.push({ path, key: new Headers(init.headers).get('Idempotency-Key'), body });
    return reply;
  });
  await (await database()).clear('outbox');
  await adaSignedIn();
  await outbox.belongTo('ada');
});

describe('with signal', () => {
  it('sends at once, with a key, and hands back the answer', async () => {
    expect(await outbox.post(hold('a'))).toEqual({ state: 'sent', answer: { fine: true } });
    expect(seen).toHaveLength(1);
    expect(seen[0]?.key).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7/);
    expect(outbox.waiting).toHaveLength(0);
  });

  it('keeps what was refused, with the reason, and goes on with the next', async () => {
    answer = (path) => (path.endsWith('bad') ? problem(422, 'invalid_input') : ok({}));
    const refused = await outbox.post(hold('bad'));
    expect(refused.state).toBe('refused');
    expect(outbox.refused.map((one) => one.problem?.code)).toEqual(['invalid_input']);
    expect((await outbox.post(hold('good'))).state).toBe('sent');
    await outbox.dismiss(outbox.refused[0]?.id ?? '');
    expect(outbox.refused).toHaveLength(0);
  });
});

describe('without signal', () => {
  it('can be taken back while the browser is offline, and not once a request was begun', async () => {
    answer = () => 'no signal';
    vi.stubGlobal('navigator', Object.create(navigator, { onLine: { value: false } }));
    try {
      await outbox.post(hold('here'));
    } finally {
      vi.unstubAllGlobals();
    }
    expect(outbox.waiting.map((one) => outbox.mayTakeBack(one))).toEqual([true]);
    await outbox.takeBack(outbox.waiting[0]?.id ?? '');
    expect(outbox.waiting).toEqual([]);
  });

  it('stays wholly here while an online phone reaches nothing and nobody waits for it', async () => {
    answer = () => 'no signal';
    const phone = Object.create(navigator, { onLine: { value: false, writable: true } });
    vi.stubGlobal('navigator', phone);
    try {
      await outbox.post(hold('here'));
      await outbox.post(hold('there'));
      phone.onLine = true;
      expect(await sendAll('ada', () => {}, 'itself')).toBe(false);
      expect((await readState()).writes.map((one) => one.here_only)).toEqual([true, true]);
      answer = () => ok({});
      expect(await sendAll('ada', () => {}, 'itself')).toBe(true);
      // It is asked once, however much waits.
      expect(seen.map((one) => one.path)).toEqual(['/status', '/holds/here', '/holds/there']);
    } finally {
      vi.unstubAllGlobals();
    }
  });

  it('is marked as begun before the request leaves', async () => {
    let atLeaving: Promise<(true | undefined)[]> | undefined;
    answer = () => {
      atLeaving = database().then(async (db) => (await db.getAll('outbox')).map((one) => one.here_only));
      return 'no signal';
    };
    await outbox.post(hold('tried'));
    expect(await atLeaving).toEqual([undefined]);
    const tried = outbox.waiting[0];
    expect(tried && outbox.mayTakeBack(tried)).toBe(false);
    await outbox.takeBack(tried?.id ?? '');
    expect(outbox.waiting.map((one) => one.label.about)).toEqual(['tried']);
  });

  it('waits, survives a reload, and goes out once, in order, with the same keys', async () => {
    answer = () => 'no signal';
    expect((await outbox.post(hold('one'))).state).toBe('waiting');
    expect((await outbox.post(hold('two'))).state).toBe('waiting');
    const keys = outbox.waiting.map((one) => one.id);
    await outbox.belongTo('');
    expect(outbox.items).toHaveLength(0);
    answer = () => ok({});
    await outbox.belongTo('ada');
    await outbox.flush();
    await outbox.flush();
    // Nobody waits for what an app that opens sends, so it asks first whether it reaches anybody.
    expect(seen.map((one) => one.path)).toEqual(['/status', '/holds/one', '/holds/two']);
    expect(seen.slice(1).map((one) => one.key)).toEqual(keys);
  });

  it('uses the same key again when the answer was lost on the way', async () => {
    let first = true;
    answer = () => {
      if (!first) return ok({});
      first = false;
      return 'no signal';
    };
    await outbox.post(hold('one'));
    const key = outbox.waiting[0]?.id;
    await outbox.flush();
    expect(seen.map((one) => one.key)).toEqual([key]);
  });

  it('stops at a fault of the server and tries again later, dropping nothing', async () => {
    answer = () => problem(500, 'internal');
    expect((await outbox.post(hold('one'))).state).toBe('waiting');
    answer = () => ok({});
    await outbox.flush();
    expect(outbox.items.map((one) => one.state)).toEqual(['sent']);
  });

  it('waits when the connection is lost while the answer arrives, and sends it again with the same key', async () => {
    const cut = new ReadableStream({
      pull: (controller) => controller.error(new TypeError('network error')),
    });
    answer = () => new Response(cut, { status: 201, headers: { 'content-type': 'application/json' } });
    expect((await outbox.post(hold('one'))).state).toBe('waiting');
    const key = outbox.waiting[0]?.id;
    answer = () => new Response('<p>Sign in to this network</p>', { status: 200 });
    await outbox.flush();
    expect(outbox.waiting.map((one) => one.id)).toEqual([key]);
    answer = () => ok({});
    await outbox.flush();
    expect(outbox.items.map((one) => one.state)).toEqual(['sent']);
    expect(seen.map((one) => one.key)).toEqual([key, key, key]);
  });

  it.each([408, 425, 429, 500, 503])(
    'waits after an answer of %i, which says nothing about the write',
    async (status) => {
      answer = () => problem(status, 'later');
      expect((await outbox.post(hold('one'))).state).toBe('waiting');
    },
  );

  it('never sends one person’s writes as another', async () => {
    answer = () => 'no signal';
    await outbox.post(hold('adas'));
    answer = () => ok({});
    await outbox.belongTo('bo');
    await outbox.flush();
    expect(seen).toHaveLength(0);
    expect(outbox.items).toHaveLength(0);
  });

  it('queues what was written, not what the form became since', async () => {
    answer = () => 'no signal';
    const body = { reason: 'wind' };
    await outbox.post(write('/holds/x', body, 'x'));
    body.reason = 'changed';
    answer = () => ok({});
    await outbox.flush();
    expect(seen[0]?.body).toEqual({ reason: 'wind' });
  });
});
