import { expect, it } from 'vitest';
import type { Statement } from '../api/types.ts';
import { hashOf } from './drawing.ts';
import { textOf } from './openings.ts';
import { completeStatement } from './sign-off.ts';

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
  signer: 'me',
  device: 'nobody',
  signed_at: '1970-01-01T00:00:00Z',
};
const now = new Date('2026-12-04T15:00:00Z');

it('fills in what only the device can say and leaves the rest as drafted', async () => {
  const { statement: made, openings } = await completeStatement(
    draft,
    { decision: 'approve', conditions: [], reason: '' },
    'device',
    now,
  );
  expect(made).toMatchObject({
    revision: 4,
    plan_digest: 'aa',
    technique: 'high-fall',
    facets: { medical: 'bb' },
    device: 'device',
    signed_at: '2026-12-04T15:00:00.000Z',
  });
  expect(openings).toEqual([]);
  expect(made.id).not.toBe('drafted');
  expect(made).not.toHaveProperty('conditions');
  expect(made).not.toHaveProperty('reason');
});

it('carries conditions only with an approval that has them', async () => {
  const conditions = ['  Second ambulance by 14:00 ', '', '   '];
  const choice = { conditions, reason: 'left over' };
  const { statement: conditional, openings } = await completeStatement(
    draft,
    { ...choice, decision: 'approve_with_conditions' },
    'd',
    now,
  );
  expect(openings.map((one) => one.text)).toEqual(['Second ambulance by 14:00']);
  expect(conditional.conditions).toHaveLength(1);
  expect(await textOf(conditional.conditions?.[0] ?? '', openings)).toBe('Second ambulance by 14:00');
  expect(JSON.stringify(conditional)).not.toContain('ambulance');
  expect(conditional).not.toHaveProperty('reason');
  const yes = await completeStatement(draft, { ...choice, decision: 'approve' }, 'd', now);
  expect(yes.statement).not.toHaveProperty('conditions');
  expect(yes.openings).toEqual([]);
});

it('carries a reason only with a decline', async () => {
  const { statement: made, openings } = await completeStatement(
    draft,
    { decision: 'decline', conditions: ['x'], reason: ' No cover ' },
    'd',
    now,
  );
  expect(await textOf(made.reason ?? '', openings)).toBe('No cover');
  expect(made).not.toHaveProperty('conditions');
});

it('binds what was drawn by its hash, and says nothing of a mark where nothing was drawn', async () => {
  const choice = { decision: 'approve' as const, conditions: [], reason: '' };
  const plain = await completeStatement(draft, choice, 'd', now);
  expect(plain.statement).not.toHaveProperty('mark');
  const drawing = [[1, 2, 3, 4]];
  const { statement: made } = await completeStatement(draft, { ...choice, drawing }, 'd', now);
  expect(made.mark).toBe(await hashOf(drawing));
});
