// The wire to the server, the same for the page and for the background worker: one access token for the whole
// phone, renewed by one of them at a time. Says nothing in words: the page puts words to it.

import { getSetting, removeSetting, setSetting } from '../storage/database.ts';
import { hearTime, serverNow } from './clock.ts';
import type { Session } from './types.ts';

export const API = '/api/v1';

/** No answer came, or not in time. */
export class NoAnswer extends Error {}

/** A token that runs out within this is renewed first. */
const SOON = 20_000;
/** With one bar a request may hang for minutes; then it is as good as lost, and the same key makes it safe to repeat. */
const PATIENCE = 25_000;

/** Kept where every tab and the worker find it, so that none renews what another has just renewed. */
interface KeptToken {
  account: string;
  value: string;
  /** On this device's clock. */
  until: number;
}
const KEPT = 'token';

let token: KeptToken | undefined;

/** Who wants to know when a session begins, is renewed or ends. */
export interface SessionWatcher {
  changed: (session: Session | undefined) => void;
  /** Called before the cookie is used: finishes a sign-out the server has not heard of yet, or throws. */
  settle: () => Promise<void>;
  /** The cookie is somebody else's by now: another tab signed in as them. */
  someoneElse: (session: Session) => void;
}

let watcher: SessionWatcher = { changed: () => {}, settle: async () => {}, someoneElse: () => {} };
/** Whose requests these are. A token of anybody else is not used. */
let mine = '';

export function watchSession(by: SessionWatcher): void {
  watcher = by;
}

export function settle(): Promise<void> {
  return watcher.settle();
}

/** Says whose requests these are before any token has come. */
export function actAs(account: string): void {
  mine = account;
}

export function accessToken(): string | undefined {
  return token?.value;
}

function good(kept: KeptToken | undefined): kept is KeptToken {
  return kept !== undefined && kept.until - Date.now() >= SOON;
}

/** Takes up the phone's token, whichever tab renewed it. False when there is none that still counts. */
export async function resumeToken(account: string): Promise<boolean> {
  const kept = await getSetting<KeptToken>(KEPT);
  if (!good(kept) || kept.account !== account) return false;
  token = kept;
  return true;
}

export async function adoptSession(session: Session | undefined): Promise<void> {
  // The token's life is counted on this device's clock from now, whatever that clock says.
  const life = session ? Date.parse(session.expires_at) - serverNow().getTime() : 0;
  token = session && {
    account: session.account.id,
    value: session.access_token,
    until: Date.now() + life,
  };
  mine = session?.account.id ?? '';
  watcher.changed(session);
  try {
    if (token) await setSetting(KEPT, token);
    else await removeSetting(KEPT);
  } catch {
    // A full phone keeps no token; each tab then renews for itself.
  }
}

export async function call(path: string, init: RequestInit): Promise<Response> {
  let response: Response;
  try {
    const signal = init.signal ?? AbortSignal.timeout(PATIENCE);
    response = await fetch(API + path, { ...init, signal, credentials: 'same-origin', cache: 'no-store' });
  } catch {
    throw new NoAnswer();
  }
  hearTime(response.headers.get('date'));
  return response;
}

let renewing: Promise<boolean> | undefined;

/** Sees to it that there is a token other than the one refused. False when the sign-in has ended. */
export function renew(refused = token?.value): Promise<boolean> {
  renewing ??= askForToken(refused).finally(() => {
    renewing = undefined;
  });
  return renewing;
}

async function askForToken(refused: string | undefined): Promise<boolean> {
  // A refresh token is good once, and tabs and worker share the cookie: one at a time, and whoever comes second
  // takes what the first brought.
  return await navigator.locks.request('session', async (): Promise<boolean> => {
    await watcher.settle();
    const kept = await getSetting<KeptToken>(KEPT);
    if (good(kept) && kept.value !== refused && kept.account === mine) {
      token = kept;
      return true;
    }
    const response = await call('/sessions/refresh', { method: 'POST' });
    if (response.ok) {
      let session: Session;
      try {
        session = (await response.json()) as Session;
      } catch {
        throw new NoAnswer();
      }
      if (mine && session.account.id !== mine) {
        // What was about to be sent is one person's, and the token is another's.
        token = undefined;
        watcher.someoneElse(session);
        throw new NoAnswer();
      }
      await adoptSession(session);
      return true;
    }
    if (response.status === 401 && (await isOurs(response))) {
      await adoptSession(undefined);
      return false;
    }
    throw new NoAnswer();
  });
}

/** A refusal of the server's own carries a code. A network that wants a sign-in of its own refuses as well, and
 *  must end nobody's here. */
async function isOurs(refusal: Response): Promise<boolean> {
  const problem = (await refusal.json().catch(() => undefined)) as { code?: unknown } | null | undefined;
  return typeof problem?.code === 'string';
}

/** Sees to it that there is a token that still counts. False when the sign-in has ended. */
export async function ready(): Promise<boolean> {
  return good(token) || (await renew());
}

export interface Call {
  method?: string;
  headers?: Record<string, string>;
  /** A value to send as JSON, or bytes with their own content type. */
  json?: unknown;
  bytes?: ArrayBuffer;
  /** The account it must go out as; it does not go out at all while anybody else is signed in. */
  as?: string;
}

export function request(path: string, options: Call): Promise<Response> {
  const headers = new Headers(options.headers);
  if (token) headers.set('Authorization', `Bearer ${token.value}`);
  let body: string | ArrayBuffer | undefined;
  if (options.bytes !== undefined) body = options.bytes;
  else if (options.json !== undefined) {
    body = JSON.stringify(options.json);
    headers.set('Content-Type', 'application/json');
  }
  return call(path, { method: options.method ?? 'GET', headers, body });
}

/** Addresses that need no sign-in. */
const OPEN = /^\/(setup|status|invitations|hold-codes)\b/;

/** Sends one request as whoever is signed in and gives back whatever answer came. Throws when none did. */
export async function transmit(path: string, options: Call = {}): Promise<Response> {
  if (OPEN.test(path)) return request(path, options);
  // Renewing first saves a round trip that is certain to be refused.
  if (!good(token)) await renew();
  const used = token?.value;
  const response = await requestAs(path, options);
  if (response.status === 401 && (await renew(used))) return requestAs(path, options);
  return response;
}

/** While one person's entries are being sent, they may sign out and another may sign in. */
async function requestAs(path: string, options: Call): Promise<Response> {
  if (options.as && token && token.account !== options.as) throw new NoAnswer();
  return request(path, options);
}
