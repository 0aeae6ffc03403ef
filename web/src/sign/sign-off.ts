// Completes a drafted statement on this phone and signs it. The canonical bytes come from the core.

import { serverNow } from '../api/client.ts';
import type { Decision, Draft, Statement } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { type Outcome, outbox } from '../storage/outbox.svelte.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { keyFor } from './device-key.ts';
import { signCompact } from './jws.ts';

export interface Choice {
  decision: Decision;
  conditions: string[];
  reason: string;
}

/** The draft with what only the device and its owner can say. */
export function completeStatement(draft: Statement, choice: Choice, device: string, now: Date): Statement {
  const { conditions: _conditions, reason: _reason, ...rest } = draft;
  const statement: Statement = {
    ...rest,
    id: uuidv7(now.getTime()),
    device,
    decision: choice.decision,
    signed_at: now.toISOString(),
  };
  if (choice.decision === 'approve_with_conditions') {
    statement.conditions = choice.conditions.map((one) => one.trim()).filter(Boolean);
  }
  if (choice.decision === 'decline') statement.reason = choice.reason.trim();
  return statement;
}

export async function signOff(draft: Draft, choice: Choice, about: string): Promise<Outcome> {
  const { production, signer, gag } = draft.statement;
  const key = await keyFor(production, signer);
  const statement = completeStatement(draft.statement, choice, key.device, serverNow());
  const jws = await signCompact(core.canonical(statement), key.device, key.pair.privateKey);
  return outbox.post({
    path: `/gags/${gag}/signoffs`,
    body: { jws },
    label: { kind: 'sign_off', gag, about },
  });
}
