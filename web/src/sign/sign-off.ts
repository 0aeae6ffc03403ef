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
import { committed, type Opening } from './openings.ts';

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
): Promise<{ statement: Statement; openings: Opening[] }> {
  const { conditions: _conditions, reason: _reason, mark: _mark, ...rest } = draft;
  const statement: Statement = {
    ...rest,
    id: uuidv7(now.getTime()),
    device,
    decision: choice.decision,
    signed_at: now.toISOString(),
  };
  const openings: Opening[] = [];
  const commit = async (text: string) => {
    const { opening, commitment } = await committed(text.trim());
    openings.push(opening);
    return commitment;
  };
  if (choice.decision === 'approve_with_conditions') {
    statement.conditions = [];
    for (const one of choice.conditions) if (one.trim()) statement.conditions.push(await commit(one));
  }
  if (choice.decision === 'decline') statement.reason = await commit(choice.reason);
  if (choice.language) statement.language = choice.language;
  if (choice.drawing) statement.mark = await hashOf(choice.drawing);
  return { statement, openings };
}

export async function signOff(draft: Draft, choice: Choice, about: string): Promise<Outcome> {
  const { production, signer, gag } = draft.statement;
  const key = await keyFor(production, signer);
  const { statement, openings } = await completeStatement(draft.statement, choice, key.device, serverNow());
  const jws = await signCompact(core.canonical(statement), key.device, key.pair.privateKey);
  return outbox.post({
    path: at('/gags/{gag}/signoffs', { gag }),
    // The drawing and the texts travel beside what is signed, which holds their hashes.
    body: {
      jws,
      ...(openings.length > 0 ? { openings } : {}),
      ...(choice.drawing ? { mark: choice.drawing } : {}),
    },
    label: { kind: 'sign_off', gag, about },
  });
}
