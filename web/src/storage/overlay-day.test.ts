// A day worked with no signal: what waits is in the case once, whatever came first, and the core judges it here.

import { beforeAll, expect, it } from 'vitest';
import type { GagPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { COORDINATOR, emptyCase, MEDIC, PERFORMER, pageOf, startCore } from '../testing/case.ts';
import type { QueuedWrite, WriteLabel } from './database.ts';
import { overlay } from './overlay.ts';
import { uuidv7 } from './uuid.ts';

const AT = '2026-11-21T10:00:00Z';
let page: GagPage;

beforeAll(async () => {
  await startCore();
  page = pageOf(emptyCase());
});

function write(
  kind: WriteLabel['kind'],
  path: string,
  body: Record<string, unknown>,
  gag?: string,
): QueuedWrite {
  const label = { kind, about: 'G07', ...(gag && { gag }) };
  const queued_at = Date.parse(AT);
  return {
    id: uuidv7(),
    account: 'a',
    method: 'POST',
    path,
    body,
    headers: {},
    label,
    state: 'waiting',
    queued_at,
  };
}

function laid(writes: QueuedWrite[]) {
  const hashes = core.facetHashes.bind(core);
  return overlay(page, { writes, handed: [], me: COORDINATOR, devices: [], hashes });
}

it('lays a go, its end, a stand-down and a near miss, and the core sees them', () => {
  const gag = page.gag.id;
  const [take, down, incident] = [uuidv7(), uuidv7(), uuidv7()];
  const person = page.plan.facets.cast.slots?.[0]?.person ?? PERFORMER;
  const go = write(
    'go',
    `/gags/${gag}/takes`,
    {
      id: take,
      number: 1,
      at: AT,
      revision: 1,
      plan_digest: page.clearance.plan_digest,
      day: '2026-11-21',
      place: '',
    },
    gag,
  );
  const end = write(
    'take_end',
    `/gags/${gag}/takes/${take}/outcome`,
    { result: 'good', note: '', at: AT },
    gag,
  );
  const away = write('stand_down', '/productions/p/stand-downs', { id: down, person, from: AT, until: null });
  const near = write(
    'incident',
    '/productions/p/incidents',
    { id: incident, kind: 'near_miss', gag, at: AT, what: '' },
    gag,
  );
  const told = write(
    'told',
    `/productions/p/incidents/${incident}/told`,
    { who: 'coordinator', at: AT },
    gag,
  );

  const skills = ['high_fall'];
  const said = { id: uuidv7(), day: '2026-11-21', place: 'Silo', revision: 1, at: AT, next_time: 'A net' };
  const debrief = write(
    'debrief',
    `/gags/${gag}/debriefs`,
    { ...said, led_by: MEDIC, attended: [], used: [{ person, skills }] },
    gag,
  );

  const open = laid([go]);
  const now = new Date('2026-11-21T10:05:00Z');
  expect(core.clearance(open.page.case, now).go.open?.number).toBe(1);

  const all = [told, near, away, debrief, end, go];
  const over = laid(all);
  expect(over.counted).toBe(6);
  const kept = over.page.case.day?.debriefs[0];
  expect(kept).toMatchObject({ by: COORDINATOR, led_by: MEDIC, next_time: 'A net', differently: '' });
  const judged = core.clearance(over.page.case, now);
  expect(judged.go.open ?? null).toBeNull();
  expect(judged.go.next).toBe(2);
  expect(judged.state).toBe('held');
  expect(judged.day.people[0]?.stood_down).toBeTruthy();
  expect(over.page.case.day?.incidents[0]?.told?.map((one) => one.who)).toEqual(['coordinator']);

  // What the server has by now counts once.
  const had = { ...page, case: over.page.case };
  const again = overlay(had, {
    writes: all,
    handed: [],
    me: MEDIC,
    devices: [],
    hashes: (one) => core.facetHashes(one),
  });
  expect(again.counted).toBe(0);
});
