// Completes a drafted statement on this phone and signs it. The canonical bytes come from the core.

import { at } from '../api/address.ts';
import { serverNow } from '../api/client.ts';
import type { Decision, Draft, Statement } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { type Outcome, outbox } from '../storage/outbox.svelte.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { keyFor } from './device-key.ts';
import { type Drawing, hashOf } from './drawing.ts';
import { signCompact } from './jws.ts';

export interface Choice {
  decision: Decision;
  conditions: string[];
  reason: string;
  /** What the signer drew, where they drew something. */
  drawing?: Drawing;
  /** The language in which the words were shown; none: English. */
  language?: string;
}

/** The draft with what only the device and its owner can say. */
export async function completeStatement(
  draft: Statement,
  choice: Choice,
  device: string,
  now: Date,
): Promise<Statement> {
  const { conditions: _conditions, reason: _reason, mark: _mark, ...rest } = draft;
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
  if (choice.language) statement.language = choice.language;
  if (choice.drawing) statement.mark = await hashOf(choice.drawing);
  return statement;
}

export async function signOff(draft: Draft, choice: Choice, about: string): Promise<Outcome> {
  const { production, signer, gag } = draft.statement;
  const key = await keyFor(production, signer);
  const statement = await completeStatement(draft.statement, choice, key.device, serverNow());
  const jws = await signCompact(core.canonical(statement), key.device, key.pair.privateKey);
  return outbox.post({
    path: at('/gags/{gag}/signoffs', { gag }),
    // The drawing travels beside what is signed, which holds its hash.
    body: choice.drawing ? { jws, mark: choice.drawing } : { jws },
    label: { kind: 'sign_off', gag, about },
  });
}
