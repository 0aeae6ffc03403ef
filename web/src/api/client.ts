// One way for screens to talk to the server: what comes back is a good answer, or a problem in words. Knows
// nothing of screens, caches or queues; tokens and waiting are the wire's.

import type { Address, Answer, RouteOf } from './address.ts';
import { isPassing, Problem, problemFrom, Unreachable } from './problem.ts';
import type { Session } from './types.ts';
import * as wire from './wire.ts';

export { serverNow } from './clock.ts';
export {
  API,
  accessToken,
  actAs,
  adoptSession,
  type Call,
  resumeToken,
  type SessionWatcher,
  watchSession,
} from './wire.ts';

/** The wire's silence, in words. */
async function spoken<T>(work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    throw error instanceof wire.NoAnswer ? new Unreachable() : error;
  }
}

/** Asks for a new access token with the cookie. False when the sign-in has ended. */
export function renew(): Promise<boolean> {
  return spoken(wire.renew());
}

/** Sends one request and gives back a good answer, or throws `Problem` or `Unreachable`. */
export async function send(path: string, options: wire.Call = {}): Promise<Response> {
  const response = await spoken(wire.transmit(path, options));
  if (!response.ok) throw await problemFrom(response);
  return response;
}

export async function getJson<R extends RouteOf<'get'>>(address: Address<R>): Promise<Answer<R>> {
  const response = await send(address);
  try {
    return (await response.json()) as Answer<R>;
  } catch {
    // Half an answer, or none of the server's own.
    throw new Unreachable();
  }
}

/** Sign-in, set-up and invitations: the answers that begin a session. */
export async function begin(path: string, json: unknown): Promise<Session> {
  // The sign-in before this one ends first; that it could not be ended must not keep anybody out.
  await wire.settle().catch(() => {});
  const response = await spoken(wire.request(path, { method: 'POST', json }));
  if (!response.ok) throw await problemFrom(response);
  const session = (await response.json()) as Session;
  await wire.adoptSession(session);
  return session;
}

/** Ends the sign-in at the server. Throws when the server may not have heard of it. */
export async function end(): Promise<void> {
  const response = await spoken(wire.request('/sessions', { method: 'DELETE' }));
  if (isPassing(response.status)) throw await problemFrom(response);
}

export { Problem, Unreachable };
