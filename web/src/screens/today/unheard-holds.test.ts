import { afterEach, expect, it } from 'vitest';
import type { Today } from '../../api/types.ts';
import type { HandedItem, QueuedWrite } from '../../storage/database.ts';
import { outbox } from '../../storage/outbox.svelte.ts';
import { unheardHolds } from './unheard-holds.ts';

afterEach(() => {
  outbox.items = [];
  outbox.handed = [];
});

const knowing = (...ids: string[]) => ({ held: ids.map((id) => ({ hold: { id } })) }) as unknown as Today;
const part = (value: object) => Buffer.from(JSON.stringify(value)).toString('base64url');

function own(id: string, state: QueuedWrite['state']): QueuedWrite {
  return {
    id: `key-${id}`,
    account: 'ada',
    method: 'POST',
    path: '/productions/p/holds',
    body: { id },
    headers: {},
    label: { kind: 'hold', about: 'G07' },
    state,
    queued_at: 0,
  };
}

function handed(id: string, state: HandedItem['state']): HandedItem {
  return {
    key: `key-${id}`,
    account: 'ada',
    production: 'p',
    kind: 'hold',
    jws: `${part({})}.${part({ body: { id } })}.x`,
    received_at: 0,
    from: 'Ines',
    state,
  };
}

it('counts own and handed-over holds until the server tells of them, each once', () => {
  outbox.items = [own('a', 'waiting'), own('b', 'sent'), own('c', 'waiting')];
  outbox.handed = [handed('d', 'waiting'), handed('e', 'sent'), handed('f', 'waiting')];
  expect(unheardHolds(knowing('c', 'f')).map((one) => [one.id, one.handed])).toEqual([
    ['a', false],
    ['d', true],
  ]);
});
