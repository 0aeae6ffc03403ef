// What was handed over, checked here: whose it is, what it asks, whether its signature holds. What does not
// verify is not kept.

import { serverNow } from '../api/clock.ts';
import type { Device, GagPage, Statement } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { moment } from '../format.ts';
import { payloadOf } from '../sign/jws.ts';
import { type Opening, textOf } from '../sign/openings.ts';
import type { HandedItem } from '../storage/database.ts';
import { said, t } from '../texts/index.ts';
import { HandError } from './bytes.ts';
import type { Known } from './known.ts';
import { type Handed, unpack } from './message.ts';
import type { HandedRequest } from './request.ts';

export type Verdict =
  | { state: 'holds'; name: string }
  /** The device is not known here; the server will check it. */
  | { state: 'unknown' }
  | { state: 'bad'; why: string };

/** The rest of an item; whose account carries it is added by whoever keeps it. */
export type Item = Omit<HandedItem, 'account'>;

export interface Taken {
  item: Item;
  verdict: Verdict;
  by: string;
  madeAt: string;
  /** The gag as this phone has it. */
  page: GagPage | undefined;
  content:
    | { kind: 'sign_off'; statement: Statement; texts: string[] }
    | { kind: 'request'; request: HandedRequest };
}

const PATHS: [RegExp, HandedItem['kind']][] = [
  [/^\/productions\/[^/]+\/holds$/, 'hold'],
  [/^\/holds\/[^/]+\/agreements$/, 'release'],
  [/^\/gags\/[^/]+\/readings$/, 'reading'],
  [/^\/gags\/[^/]+\/runs$/, 'run'],
  [/^\/gags\/[^/]+\/test-shots$/, 'test_shot'],
  [/^\/gags\/[^/]+\/plans$/, 'revision'],
  [/^\/productions\/[^/]+\/incidents$/, 'incident'],
  [/^\/productions\/[^/]+\/stand-downs$/, 'stand_down'],
  [/^\/productions\/[^/]+\/equipment\/[^/]+\/quarantine$/, 'quarantine'],
  [/^\/productions\/[^/]+\/equipment\/[^/]+\/shock-loads$/, 'shock_load'],
  [/^\/gags\/[^/]+\/briefings$/, 'briefing'],
  [/^\/gags\/[^/]+\/day-signoffs$/, 'day_mark'],
  [/^\/gags\/[^/]+\/takes$/, 'go'],
  [/^\/gags\/[^/]+\/takes\/[^/]+\/outcome$/, 'take_end'],
];

interface Claim {
  kind: HandedItem['kind'];
  key: string;
  production: string;
  person: string;
  device: string;
  madeAt: string;
  gag: string | undefined;
  content: Taken['content'];
  /** The core's check; throws with the reason. */
  verify: (device: Device) => unknown;
}

function unreadable(): HandError {
  return new HandError('damaged', 'what is signed is not what its kind says');
}

/** Reads what is claimed, before anything is believed. */
function claimOf(handed: Handed): Claim {
  const { jws } = handed;
  const texts = (...values: unknown[]) => values.every((one) => typeof one === 'string' && one !== '');
  try {
    if (handed.kind === 'sign_off') {
      const stated = payloadOf<Statement>(jws);
      if (
        !texts(
          stated.id,
          stated.production,
          stated.gag,
          stated.signer,
          stated.device,
          stated.role,
          stated.signed_at,
        )
      )
        throw unreadable();
      return {
        kind: 'sign_off',
        key: handed.key,
        production: stated.production,
        person: stated.signer,
        device: stated.device,
        madeAt: stated.signed_at,
        gag: stated.gag,
        content: { kind: 'sign_off', statement: stated, texts: [] },
        verify: (device) => {
          if (device.person !== stated.signer) throw new Error(t.hand.why.owner);
          if (device.revoked_at) throw new Error(t.hand.why.revoked(moment(device.revoked_at)));
          return core.verifySignoff(jws, device.key);
        },
      };
    }
    const asked = payloadOf<HandedRequest>(jws);
    if (!texts(asked.key, asked.production, asked.person, asked.device, asked.path, asked.made_at))
      throw unreadable();
    const kind = PATHS.find(([path]) => path.test(asked.path))?.[1];
    if (!kind || typeof asked.body !== 'object' || asked.body === null) throw unreadable();
    if (kind === 'day_mark') payloadOf(String(asked.body.jws));
    const named = /^\/gags\/([^/]+)\//.exec(asked.path)?.[1] ?? asked.body.gag;
    return {
      kind,
      key: asked.key,
      production: asked.production,
      person: asked.person,
      device: asked.device,
      madeAt: asked.made_at,
      gag: typeof named === 'string' ? named : undefined,
      content: { kind: 'request', request: asked },
      verify: (device) => core.acceptHanded(jws, device, serverNow()),
    };
  } catch (error) {
    throw error instanceof HandError ? error : unreadable();
  }
}

function judge(claim: Claim, device: Device | undefined, name: string): Verdict {
  if (!device) return { state: 'unknown' };
  try {
    claim.verify(device);
    return { state: 'holds', name };
  } catch (error) {
    return { state: 'bad', why: said(error instanceof Error ? error.message : String(error)) };
  }
}

/** Checks once more what was kept while nobody here knew its device. Undefined while that is still so. */
export async function checkAgain(
  { jws, key, kind }: HandedItem,
  known: Known,
): Promise<{ from?: string; why?: string } | undefined> {
  const claim = claimOf(kind === 'sign_off' ? { kind, jws, key } : { kind: 'request', jws });
  const page = claim.gag ? await known.page(claim.gag) : undefined;
  const device = await known.device(claim.device, claim.production, page);
  const from = await known.nameOf(claim.production, claim.person, page);
  const verdict = judge(claim, device, from ?? t.hand.somebody);
  if (verdict.state === 'unknown') return undefined;
  return verdict.state === 'bad' ? { from, why: verdict.why } : { from };
}

/** What its signer wrote, each text where it is the one that was signed. */
async function textsOf(statement: Statement, openings: readonly Opening[] | undefined): Promise<string[]> {
  const signed = [...(statement.conditions ?? []), ...(statement.reason ? [statement.reason] : [])];
  const texts = await Promise.all(signed.map((one) => textOf(one, openings)));
  return texts.map((text) => text ?? t.signOffs.erased);
}

/** Throws a `HandError` for what is no message; says of a message whether it verifies. */
export async function taken(
  message: Uint8Array,
  known: Known,
  productions: readonly string[],
  now: number,
): Promise<Taken> {
  const handed = await unpack(message);
  const claim = claimOf(handed);
  const openings = handed.kind === 'sign_off' ? handed.openings : undefined;
  if (claim.content.kind === 'sign_off')
    claim.content.texts = await textsOf(claim.content.statement, openings);
  const page = claim.gag ? await known.page(claim.gag) : undefined;
  const name = await known.nameOf(claim.production, claim.person, page);
  const device = await known.device(claim.device, claim.production, page);
  const verdict: Verdict = productions.includes(claim.production)
    ? judge(claim, device, name ?? t.hand.somebody)
    : { state: 'bad', why: t.hand.why.production };
  const item: Item = {
    key: claim.key,
    production: claim.production,
    gag: claim.gag,
    kind: claim.kind,
    jws: handed.jws,
    verified: verdict.state === 'holds',
    ...(openings ? { openings } : {}),
    packed: message,
    received_at: now,
    from: name,
    state: 'waiting',
  };
  return {
    item,
    verdict,
    by: name ?? t.hand.somebody,
    madeAt: claim.madeAt,
    page,
    content: claim.content,
  };
}
