// One way to talk to the server: adds the token, renews it once when it has run out, turns refusals into
// problems. Knows nothing of screens, caches or queues.

import { isPassing, Problem, problemFrom, Unreachable } from './problem.ts';
import type { Session } from './types.ts';

export const API = '/api/v1';

/** Where a tab keeps its token, so that loading the page again does not spend the cookie's. It ends with the tab. */
const KEPT = 'gagwright-token';

let token: string | undefined;
let expiresAt = 0;
/** Server time minus this device's: clocks on set are wrong more often than one thinks. */
let clockAhead = 0;
let renewing: Promise<Session | undefined> | undefined;
/** Whose screens this tab shows. A token of anybody else is not used. */
let mine = '';

/** Who wants to know when a session begins, is renewed or ends. */
export interface SessionWatcher {
  changed: (session: Session | undefined) => void;
  /** Called before the cookie is used: finishes a sign-out the server has not heard of yet, or throws. */
  settle: () => Promise<void>;
  /** The cookie is somebody else's by now: another tab signed in as them. */
  someoneElse: (session: Session) => void;
}

let watcher: SessionWatcher = { changed: () => {}, settle: async () => {}, someoneElse: () => {} };

export function watchSession(by: SessionWatcher): void {
  watcher = by;
}

/** Says whose screens this tab shows before any token has come. */
export function actAs(account: string): void {
  mine = account;
}

export function accessToken(): string | undefined {
  return token;
}

export function serverNow(): Date {
  return new Date(Date.now() + clockAhead);
}

function keepToken(value: string | undefined, until: number): void {
  token = value;
  expiresAt = until;
  if (value) sessionStorage.setItem(KEPT, JSON.stringify({ value, until }));
  else sessionStorage.removeItem(KEPT);
}

/** Takes up this tab's token after a reload. False when there is none that still counts. */
export function resumeToken(): boolean {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEPT) ?? '{}') as { value?: string; until?: number };
    if (!kept.value || !kept.until || kept.until - Date.now() < SOON) return false;
    token = kept.value;
    expiresAt = kept.until;
    return true;
  } catch {
    return false;
  }
}

/** A token that runs out within this is renewed first. */
const SOON = 20_000;

export function adoptSession(session: Session | undefined): void {
  // The token's life is counted on this device's clock from now, whatever that clock says.
  const life = session ? Date.parse(session.expires_at) - serverNow().getTime() : 0;
  keepToken(session?.access_token, Date.now() + life);
  mine = session?.account.id ?? '';
  watcher.changed(session);
}

async function call(path: string, init: RequestInit): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(API + path, { ...init, credentials: 'same-origin', cache: 'no-store' });
  } catch {
    throw new Unreachable();
  }
  const said = Date.parse(response.headers.get('date') ?? '');
  if (Number.isFinite(said)) clockAhead = said - Date.now();
  return response;
}

/** Asks for a new access token with the cookie. Answers nothing when the sign-in has ended. */
export function renew(): Promise<Session | undefined> {
  // Tabs share the cookie and a refresh token is good once: one tab at a time.
  renewing ??= askForToken().finally(() => {
    renewing = undefined;
  });
  return renewing;
}

async function askForToken(): Promise<Session | undefined> {
  return await navigator.locks.request('session', async (): Promise<Session | undefined> => {
    await watcher.settle();
    const response = await call('/sessions/refresh', { method: 'POST' });
    if (response.ok) {
      const session = (await response.json()) as Session;
      if (mine && session.account.id !== mine) {
        // What this tab was about to send is one person's, and the token is another's.
        keepToken(undefined, 0);
        watcher.someoneElse(session);
        throw new Unreachable();
      }
      adoptSession(session);
      return session;
    }
    if (response.status === 401 || response.status === 403) {
      adoptSession(undefined);
      return undefined;
    }
    throw await problemFrom(response);
  });
}

export interface Call {
  method?: string;
  headers?: Record<string, string>;
  /** A value to send as JSON, or bytes with their own content type. */
  json?: unknown;
  bytes?: ArrayBuffer;
}

function request(path: string, options: Call): Promise<Response> {
  const headers = new Headers(options.headers);
  if (token) headers.set('Authorization', `Bearer ${token}`);
  let body: string | ArrayBuffer | undefined;
  if (options.bytes !== undefined) body = options.bytes;
  else if (options.json !== undefined) {
    body = JSON.stringify(options.json);
    headers.set('Content-Type', 'application/json');
  }
  return call(path, { method: options.method ?? 'GET', headers, body });
}

/** Addresses that need no sign-in. */
const OPEN = /^\/(sessions|setup|status|invitations|hold-codes)\b/;

/** Sends one request and gives back a good answer, or throws `Problem` or `Unreachable`. */
export async function send(path: string, options: Call = {}): Promise<Response> {
  // Renewing first saves a round trip that is certain to be refused.
  const open = OPEN.test(path);
  if (!open && (!token || expiresAt - Date.now() < SOON)) await renew();
  let response = await request(path, options);
  if (response.status === 401 && !open) {
    if (await renew()) response = await request(path, options);
  }
  if (!response.ok) throw await problemFrom(response);
  return response;
}

export async function getJson<T>(path: string): Promise<T> {
  return (await (await send(path)).json()) as T;
}

/** Sign-in, set-up and invitations: the answers that begin a session. */
export async function begin(path: string, json: unknown): Promise<Session> {
  // The sign-in before this one ends first; that it could not be ended must not keep anybody out.
  await watcher.settle().catch(() => {});
  const response = await request(path, { method: 'POST', json });
  if (!response.ok) throw await problemFrom(response);
  const session = (await response.json()) as Session;
  adoptSession(session);
  return session;
}

/** Ends the sign-in at the server. Throws when the server may not have heard of it. */
export async function end(): Promise<void> {
  const response = await request('/sessions', { method: 'DELETE' });
  if (isPassing(response.status)) throw await problemFrom(response);
}

export { Problem, Unreachable };
