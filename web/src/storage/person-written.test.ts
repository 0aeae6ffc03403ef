import { expect, it } from 'vitest';
import type { Person, PersonPage } from '../api/types.ts';
import type { QueuedWrite } from './database.ts';
import { personWritten } from './person-written.ts';

const path = '/productions/p/people/1';
const person = (name: string): Person => ({ id: '1', code: 'P1', name, occupation: '', performs: true });
const page: PersonPage = {
  person: person('As read'),
  version: 3,
  roles: [],
  devices: [],
  visible: { personal: true, medical: true },
};
const write = (name: string, over: Partial<QueuedWrite> = {}): QueuedWrite => ({
  id: name,
  account: 'a',
  method: 'PUT',
  path,
  body: person(name),
  headers: {},
  label: { kind: 'person', about: name },
  state: 'waiting',
  queued_at: 0,
  ...over,
});

it('shows what was read where nothing waits', () => {
  expect(personWritten(page, [], path)).toEqual({ person: page.person, version: 3, waiting: 0 });
  expect(personWritten(undefined, [], path)).toBeUndefined();
});

it('builds the next entry on those that wait, and counts a version for each', () => {
  const found = personWritten(page, [write('first'), write('second')], path);
  expect(found).toEqual({ person: person('second'), version: 5, waiting: 2 });
});

it('shows somebody new whom the server has not heard of', () => {
  expect(personWritten(undefined, [write('new')], path)?.version).toBe(1);
});

it('counts nothing that was sent, was refused, or is about somebody else', () => {
  const others = [
    write('sent', { state: 'sent' }),
    write('refused', { state: 'refused' }),
    write('other', { path: '/productions/p/people/2' }),
    write('post', { method: 'POST' }),
  ];
  expect(personWritten(page, others, path)).toEqual({ person: page.person, version: 3, waiting: 0 });
});
