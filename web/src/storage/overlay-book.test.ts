// The register with no signal: what was entered here shows at once, and never as inspected.

import { expect, it } from 'vitest';
import type { DayBook } from '../api/types.ts';
import type { QueuedWrite, WriteLabel } from './database.ts';
import { layBook } from './overlay-book.ts';
import { setAside } from './overlay-day.ts';

const ME = { id: 'c02', name: 'Key rigger' };
const known = { id: 'one', serial: 'SMW-31', name: 'Wire', rating: '', quarantined: null, shock_loads: [] };
const book = {
  equipment: [known],
  equipment_states: { one: 'ready' },
  open_takes: [],
  stand_downs: [],
  may_bring_back: [],
  incidents: [],
  names: {},
} as unknown as DayBook;

function write(kind: WriteLabel['kind'], path: string, body: object): QueuedWrite {
  const label = { kind, about: '' };
  const plain = { id: kind, account: 'a', method: 'POST' as const, headers: {}, queued_at: 0 };
  return { ...plain, path, body, label, state: 'waiting' };
}

it('shows a new piece at once, in its place by serial, and not as ready', () => {
  const body = { id: 'two', serial: 'SMB-09', name: 'Bag', inspected_until: '2030-01-01' };
  const laid = layBook(book, [write('equipment', '/productions/p/equipment', body)], ME);
  expect(laid.equipment.map((one) => one.serial)).toEqual(['SMB-09', 'SMW-31']);
  expect(laid.equipment_states).toEqual({ one: 'ready' });
});

it('sets aside what took a shock load, and says who', () => {
  const body = { id: 's', what: 'It snatched', at: '2026-11-21T10:00:00Z' };
  const laid = layBook(book, [write('shock_load', '/productions/p/equipment/one/shock-loads', body)], ME);
  expect(laid.equipment[0]?.quarantined).toMatchObject({ by: 'c02', reason: 'it took a shock load' });
  expect(laid.names.c02).toBe('Key rigger');
  expect(book.equipment[0]?.quarantined).toBeNull();
});

it('does not call a piece ready that came back into use and that nobody else has heard of', () => {
  const body = { found: 'Sound', inspected_until: '2030-01-01' };
  const laid = layBook(book, [write('back_in_use', '/productions/p/equipment/one/release', body)], ME);
  expect(laid.equipment_states.one).toBeUndefined();
});

it('keeps aside what befell after it was inspected, as the server does', () => {
  const piece = '/productions/p/equipment/one';
  const at = (time: string) => `2026-11-21T${time}:00Z`;
  const shock = write('shock_load', `${piece}/shock-loads`, {
    id: 's',
    what: 'It snatched',
    at: at('10:05'),
  });
  const found = { found: 'Sound', inspected_until: '2030-01-01' };
  const back = (time: string) => write('back_in_use', `${piece}/release`, { ...found, at: at(time) });
  expect(layBook(book, [shock, back('10:01')], ME).equipment[0]?.quarantined).not.toBeNull();
  expect(layBook(book, [shock, back('10:09')], ME).equipment[0]?.quarantined).toBeNull();
});

it('tells the earliest of two who set a piece aside, and when the last of them did', () => {
  const [early, late] = ['2026-11-21T10:00:00.000Z', '2026-11-21T10:05:00.000Z'];
  const [first, last] = [
    setAside(null, early, 'A frayed strap.', 'c02'),
    setAside(null, late, 'It smells.', 'm01'),
  ];
  const both = { since: early, reason: 'A frayed strap.', by: 'c02', again_at: late };
  expect(setAside(first, late, 'It smells.', 'm01')).toEqual(both);
  expect(setAside(last, early, 'A frayed strap.', 'c02')).toEqual(both);
  // The server has it already.
  expect(setAside(first, early, 'A frayed strap.', 'c02')).toBeUndefined();
});
