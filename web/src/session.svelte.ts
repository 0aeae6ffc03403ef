// Who is signed in, on which production, and what they may do. What they may do is the server's word,
// used here only to leave out buttons that would be refused.

import { at } from './api/address.ts';
import { actAs, adoptSession, end, getJson, renew, resumeToken, watchSession } from './api/client.ts';
import { Unreachable } from './api/problem.ts';
import type { Membership, Permission, ProductionPage, ServerStatus, Session } from './api/types.ts';
import { getSetting, removeSetting, setSetting } from './storage/database.ts';
import { draftsBelongTo } from './storage/draft.svelte.ts';
import { outbox } from './storage/outbox.svelte.ts';
import { forgetPackets } from './storage/packets.ts';
import { forgetReads, type Read, read, readsBelongTo, recall } from './storage/reads.svelte.ts';
import { keptSafely } from './storage/storage.svelte.ts';

/** What is kept between visits. No token: the cookie brings a new one when there is signal. */
interface Kept {
  account: Session['account'];
  memberships: Membership[];
}

/** Kept from a sign-out until the server has heard of it: the cookie must not bring the person back. */
const SIGNED_OUT = 'signed_out';
/** Whose sign-in the server ended, until somebody signs in: said again when the app is opened again. */
const ENDED = 'ended_account';
const TRY_EVERY = 20_000;

class SessionState {
  status = $state.raw<ServerStatus | undefined>(undefined);
  account = $state.raw<Session['account'] | undefined>(undefined);
  memberships = $state.raw<Membership[]>([]);
  productionId = $state('');
  /** Until the first look at cookie and cache is done, no screen is drawn. */
  ready = $state(false);
  /** Signed in by the kept copy only: the server has not confirmed it on this visit. */
  offline = $state(false);
  /** The server ended the sign-in, rather than the person. */
  ended = $state(false);
  /** Whose sign-in it was. */
  lastAccount = $state('');

  #leaving = false;

  get membership(): Membership | undefined {
    return this.memberships.find((one) => one.production.id === this.productionId) ?? this.memberships[0];
  }

  get production(): Membership['production'] | undefined {
    return this.membership?.production;
  }

  get demo(): boolean {
    return this.production?.demo ?? this.status?.demo ?? false;
  }

  get page(): Read<ProductionPage> | undefined {
    return this.production
      ? read(at('/productions/{production}', { production: this.production.id }))
      : undefined;
  }

  may(permission: Permission): boolean {
    return this.page?.value?.me.permissions.includes(permission) ?? false;
  }

  /** Takes up the sign-in this phone has kept; what the server says of it comes later. */
  async start(): Promise<void> {
    watchSession({
      changed: (session) => void this.#take(session),
      settle: () => this.#settle(),
      someoneElse: (session) => void this.#giveWay(session),
    });
    window.addEventListener('online', () => void this.#settle().catch(() => {}));
    const [production, ended, leaving, before] = await Promise.all([
      getSetting<string>('production'),
      getSetting<string>(ENDED),
      getSetting<boolean>(SIGNED_OUT),
      getSetting<Kept>('session'),
    ]);
    this.productionId = production ?? '';
    this.lastAccount = ended ?? '';
    this.ended = this.lastAccount !== '';
    if (leaving) {
      await adoptSession(undefined);
      void this.#leave();
    }
    const kept = leaving ? undefined : before;
    let resumed = false;
    if (kept) {
      // Show what the phone has at once; the server confirms or ends the sign-in behind it.
      [resumed] = await Promise.all([resumeToken(kept.account.id), this.#adopt(kept)]);
      const { id } = this.production ?? {};
      if (id) await recall([`/productions/${id}`, `/productions/${id}/today`]);
      this.offline = !resumed;
      this.ready = true;
    }
    void this.#meetServer(resumed);
  }

  async #meetServer(resumed: boolean): Promise<void> {
    try {
      this.status = await getJson(at('/status'));
      await setSetting('status', this.status).catch(() => {});
      if (!resumed) await renew();
    } catch (error) {
      if (!(error instanceof Unreachable)) console.warn(error);
      this.status ??= await getSetting<ServerStatus>('status').catch(() => undefined);
    }
    this.ready = true;
  }

  async #take(session: Session | undefined): Promise<void> {
    this.offline = false;
    if (!session) {
      // With nobody signed in on this visit, what an earlier one was told still holds.
      if (this.account) {
        this.ended = !this.#leaving;
        this.lastAccount = this.account.id;
      }
      this.account = undefined;
      this.memberships = [];
      if (this.ended) await remember(ENDED, this.lastAccount);
      await removeSetting('session').catch(() => {});
      await outbox.belongTo('');
      return;
    }
    this.ended = false;
    await removeSetting(ENDED).catch(() => {});
    await removeSetting(SIGNED_OUT).catch(() => {});
    const known = this.account?.id === session.account.id;
    const kept: Kept = { account: session.account, memberships: session.memberships };
    await remember('session', kept);
    await rememberName(kept.account);
    await this.#adopt(kept);
    if (known) void outbox.flush('itself');
  }

  async #adopt(kept: Kept): Promise<void> {
    actAs(kept.account.id);
    if (this.account?.id !== kept.account.id) {
      readsBelongTo(kept.account.id);
      draftsBelongTo(kept.account.id);
      await outbox.belongTo(kept.account.id);
    }
    this.memberships = kept.memberships;
    this.account = kept.account;
    if (!kept.memberships.some((one) => one.production.id === this.productionId)) {
      this.productionId = kept.memberships[0]?.production.id ?? '';
    }
  }

  async choose(production: string): Promise<void> {
    this.productionId = production;
    await setSetting('production', production);
  }

  /** Ends the sign-in here at once, at the server as soon as it answers, and forgets what was read. Keys and
   *  unsent writes stay. */
  async signOut(): Promise<void> {
    await remember(SIGNED_OUT, true);
    await forgetReads();
    if (this.account) await forgetPackets(this.account.id);
    this.#leaving = true;
    await adoptSession(undefined);
    this.#leaving = false;
    await this.#leave();
  }

  /** Tells the server of a sign-out until it has heard. */
  async #leave(): Promise<void> {
    try {
      await this.#settle();
    } catch {
      setTimeout(() => void this.#leave(), TRY_EVERY);
    }
  }

  /** One tab at a time, and only while the sign-out is pending: a later sign-in must not be ended by it. */
  async #settle(): Promise<void> {
    await navigator.locks.request('sign-out', async () => {
      if (!(await getSetting<boolean>(SIGNED_OUT))) return;
      await end();
      await removeSetting(SIGNED_OUT);
    });
  }

  /** Another tab signed in as somebody else: this one begins again as them. */
  async #giveWay(session: Session): Promise<void> {
    const kept: Kept = { account: session.account, memberships: session.memberships };
    await remember('session', kept);
    location.reload();
  }
}

/** Names of those who signed in on this phone, for saying whose entries wait. */
async function rememberName(account: Session['account']): Promise<void> {
  const names = (await getSetting<Record<string, string>>('account_names')) ?? {};
  if (names[account.id] === account.name) return;
  await remember('account_names', { ...names, [account.id]: account.name });
}

/** On a phone that is full even so, a sign-in holds until the app is closed: nobody is kept out for want of room. */
async function remember(name: string, value: unknown): Promise<void> {
  await keptSafely(() => setSetting(name, value)).catch(() => {});
}

export const session = new SessionState();
