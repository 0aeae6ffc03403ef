import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import type { DayStatement, Statement } from '../api/types.ts';
import { nextId } from '../screens/settings/policy/policy-text.ts';
import { inked, inkedDay, isPhotograph } from './ink.ts';

const draft: Statement = {
  kind: 'gagwright/plan-signoff/1',
  id: 'drafted',
  production: 'p',
  gag: 'g',
  revision: 4,
  plan_digest: 'aa',
  technique: 'high-fall',
  facets: { medical: 'bb' },
  role: 'medic',
  decision: 'approve',
  attestation: 'medic/1',
  signer: 'signer',
  device: 'nobody',
  signed_at: '1970-01-01T00:00:00Z',
};

it('is signed by the witness for the signer, and names the photograph by its hash', async () => {
  const photograph = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
  const { statement: made } = await inked(
    draft,
    { decision: 'approve', conditions: [], reason: '' },
    'witness',
    'device',
    photograph.buffer,
    new Date('2026-12-04T15:00:00Z'),
  );
  expect(made.kind).toBe('gagwright/ink-signoff/1');
  expect(made).toMatchObject({ signer: 'signer', device: 'device' });
  // Node's own SHA-256, which is another's than the browser's.
  expect(made.ink).toEqual({
    witness: 'witness',
    photograph: createHash('sha256').update(photograph).digest('hex'),
  });
});

it('is so for the day as well, under a kind of its own', async () => {
  const photograph = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 4]);
  const day = { kind: 'gagwright/day-signoff/1', signer: 'signer', device: 'nobody' } as DayStatement;
  const now = new Date('2026-12-04T15:00:00Z');
  const made = await inkedDay(day, 'decline', 'witness', 'device', photograph.buffer, now);
  expect(made).toMatchObject({
    kind: 'gagwright/ink-day-signoff/1',
    signer: 'signer',
    device: 'device',
    decision: 'decline',
    signed_at: now.toISOString(),
    ink: { witness: 'witness', photograph: createHash('sha256').update(photograph).digest('hex') },
  });
});

it('knows a photograph by its first bytes', () => {
  expect(isPhotograph(new Uint8Array([0xff, 0xd8, 0xff, 0xe1]))).toBe(true);
  expect(isPhotograph(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))).toBe(true);
  expect(isPhotograph(new TextEncoder().encode('<svg/>'))).toBe(false);
});

it('gives words that differ the next id', () => {
  expect(nextId('medic/1')).toBe('medic/2');
  expect(nextId('medic/9')).toBe('medic/10');
  expect(nextId('ours')).toBe('ours/2');
});
