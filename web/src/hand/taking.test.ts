import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Case, Device, GagPage, ProductionPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { publicKey } from '../sign/device-key.ts';
import { HANDED, signCompact } from '../sign/jws.ts';
import { database } from '../storage/database.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { COORDINATOR, emptyCase, MEDIC, pageOf, signed, startCore } from '../testing/case.ts';
import { HandError } from './bytes.ts';
import { fileOf, messageIn } from './files.ts';
import { frameText } from './frames.ts';
import { Known } from './known.ts';
import { pack } from './message.ts';
import { linesOf } from './said.ts';
import { checkAgain, type Taken, taken } from './taking.ts';

beforeAll(startCore);

const ACCOUNT = 'ada';
const NOW = Date.parse('2026-11-22T10:00:00Z');
let one: Case;
let message: Uint8Array;

async function keep(path: string, value: unknown): Promise<void> {
  await (await database()).put('reads', { key: `${ACCOUNT} ${path}`, value, fetched_at: NOW });
}

/** The phone has read the gag before the signature was made. */
async function keepPage(change: (page: GagPage) => void = () => {}): Promise<void> {
  const page = structuredClone(pageOf({ ...one, signoffs: [] }));
  change(page);
  await keep(`/gags/${page.gag.id}`, page);
}

const take = () => taken(message, new Known(ACCOUNT), [one.production], NOW);

beforeEach(async () => {
  await (await database()).clear('reads');
  one = await signed(emptyCase(), 'medic', MEDIC);
  const jws = one.signoffs[0]?.jws ?? '';
  message = await pack({ kind: 'sign_off', jws, key: uuidv7() });
});

describe('a signature that was handed over', () => {
  it('holds when the device is known, and says whose it is and of which plan', async () => {
    await keepPage();
    const found = await take();
    expect(found.verdict).toEqual({ state: 'holds', name: 'Bo' });
    expect(found.item).toMatchObject({
      kind: 'sign_off',
      gag: one.plan.gag,
      from: 'Bo',
      state: 'waiting',
      jws: one.signoffs[0]?.jws,
    });
    const said = linesOf(found).map((line) => line.said);
    expect(said).toContain('Medic: Approve');
    expect(said).toContain('G07, High fall');
    expect(said).toContain('It is for revision 1, the plan on this phone.');
  });

  it('says which facets differ from the plan on this phone', async () => {
    await keepPage((page) => {
      page.plan.revision = 2;
      page.plan.facets.medical.cover = 'Doctor';
    });
    const said = linesOf(await take()).map((line) => line.said);
    expect(said).toContain(
      'It is for revision 1; the plan on this phone is revision 2. They differ in: Medical.',
    );
  });

  it('says that a later revision is the same in what it covers', async () => {
    await keepPage((page) => {
      page.plan.revision = 3;
      page.plan.facets.camera.notes = 'From the crane';
    });
    const said = linesOf(await take()).map((line) => line.said);
    expect(said).toContain(
      'It is for revision 1; the plan on this phone is revision 3, the same in what it covers.',
    );
  });

  it('is left to the server when the device is not known here', async () => {
    await keepPage((page) => {
      page.case.devices = [];
    });
    expect((await take()).verdict).toEqual({ state: 'unknown' });
  });

  it('is checked once the production’s page, as just read, knows the device', async () => {
    const item = { ...(await take()).item, account: ACCOUNT };
    expect(await checkAgain(item, new Known(ACCOUNT))).toBeUndefined();
    const whole = {
      id: one.production,
      devices: one.devices,
      members: one.members,
    } as unknown as ProductionPage;
    expect(await checkAgain(item, new Known(ACCOUNT, whole))).toEqual({ from: 'Bo' });
    const other = await signed(emptyCase(), 'medic', MEDIC);
    const key = other.devices[0]?.key;
    const wrong = { ...whole, devices: one.devices.map((each) => ({ ...each, key })) } as ProductionPage;
    expect((await checkAgain(item, new Known(ACCOUNT, wrong)))?.why).toBeTruthy();
  });

  it('holds by the devices of the production when the gag was never read', async () => {
    const whole: Partial<ProductionPage> = { devices: one.devices, members: [] };
    await keep(`/productions/${one.production}`, whole);
    const found = await take();
    expect(found.verdict.state).toBe('holds');
    expect(found.page).toBeUndefined();
    expect(linesOf(found).map((line) => line.said)).toContain('Not on this phone');
  });

  it.each([
    [
      'the key is another one',
      (page: GagPage, other: Case) => {
        page.case.devices = page.case.devices.map((each) => ({
          ...each,
          key: other.devices[0]?.key ?? each.key,
        }));
      },
    ],
    [
      'the device is someone else’s',
      (page: GagPage) => {
        page.case.devices = page.case.devices.map((each) => ({ ...each, person: uuidv7() }));
      },
    ],
    [
      'the device was revoked',
      (page: GagPage) => {
        page.case.devices = page.case.devices.map((each) => ({
          ...each,
          revoked_at: '2026-11-21T09:00:00Z',
        }));
      },
    ],
  ] as const)('does not verify when %s', async (_, change) => {
    const other = await signed(emptyCase(), 'medic', MEDIC);
    await keepPage((page) => change(page, other));
    expect((await take()).verdict).toMatchObject({ state: 'bad', why: expect.stringMatching(/\w/) });
  });

  it('does not verify with one digit of a hash changed, though it was packed again', async () => {
    await keepPage();
    const [head = '', body = '', signature = ''] = (one.signoffs[0]?.jws ?? '').split('.');
    const statement = atob(body.replaceAll('-', '+').replaceAll('_', '/'));
    const changed = statement.replace(
      /"medical":"(.)/,
      (_, digit) => `"medical":"${digit === '0' ? '1' : '0'}`,
    );
    expect(changed).not.toBe(statement);
    const again = btoa(changed).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
    message = await pack({ kind: 'sign_off', jws: `${head}.${again}.${signature}`, key: uuidv7() });
    expect((await take()).verdict.state).toBe('bad');
  });

  it('is not taken on a production one is not on', async () => {
    await keepPage();
    const found = await taken(message, new Known(ACCOUNT), [uuidv7()], NOW);
    expect(found.verdict).toMatchObject({ state: 'bad', why: expect.stringContaining('production') });
  });

  it('whose payload is something else is damaged', async () => {
    const text = (value: string) => btoa(value).replace(/=+$/, '');
    const jws = `${text('{}')}.${text('{"id":"x"}')}.${btoa('x'.repeat(64)).replace(/=+$/, '')}`;
    for (const handed of [
      { kind: 'sign_off', jws, key: uuidv7() } as const,
      { kind: 'request', jws } as const,
    ]) {
      message = await pack(handed);
      await expect(take()).rejects.toMatchObject({ refusal: 'damaged' });
    }
  });
});

describe('a request that was handed over', () => {
  const made = async (made_at: string): Promise<Device> => {
    const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, [
      'sign',
      'verify',
    ]);
    const device: Device = {
      id: uuidv7(),
      person: MEDIC,
      name: 'Tablet',
      key: await publicKey(pair),
      registered_at: '2026-11-20T09:00:00Z',
      revoked_at: null,
    };
    const request = {
      production: one.production,
      person: MEDIC,
      device: device.id,
      made_at,
      key: uuidv7(),
      method: 'POST',
      path: `/gags/${one.plan.gag}/readings`,
      body: { id: uuidv7(), kind: 'wind', value: 4, at: made_at, place: 'the lip' },
    };
    const jws = await signCompact(core.canonical(request), device.id, pair.privateKey, HANDED);
    message = await pack({ kind: 'request', jws });
    return device;
  };
  const known = (device: Device) => keepPage((page) => page.case.devices.push(device));
  const now = () => new Date().toISOString();

  it('holds when its device may have made it, and says what was read', async () => {
    await known(await made(now()));
    const found = await take();
    expect(found.verdict).toEqual({ state: 'holds', name: 'Bo' });
    expect(found.item).toMatchObject({ kind: 'reading', gag: one.plan.gag });
    expect(linesOf(found).map((line) => line.said)).toContain('Wind 4 m/s, the lip');
  });

  it.each([
    ['is someone else’s', { person: COORDINATOR }, 'the device "Tablet" belongs to someone else'],
    [
      'was revoked',
      { revoked_at: '2026-11-21T09:00:00Z' },
      'the device "Tablet" was revoked on 2026-11-21 09:00 UTC',
    ],
  ] as const)('is refused in the words of the core when its device %s', async (_, change, why) => {
    await known({ ...(await made(now())), ...change });
    expect((await take()).verdict).toMatchObject({ state: 'bad', why: expect.stringContaining(why) });
  });

  it('is refused when its clock said what cannot be', async () => {
    await known(await made('2026-11-01T09:00:00.000Z'));
    expect((await take()).verdict).toMatchObject({
      state: 'bad',
      why: expect.stringContaining('set its clock'),
    });
  });
});

describe('a test shot that was handed over', () => {
  it('is said with what was shot and what was measured', async () => {
    await keepPage();
    const found = await take();
    const body = { technique: 'high-fall', load: 'bag', measured: { impact_speed: 12.2 } };
    const shot = {
      ...found,
      item: { ...found.item, kind: 'test_shot' },
      content: { kind: 'request', request: { body } },
    } as unknown as Taken;
    expect(linesOf(shot).map((line) => line.said)).toContain('Test shot: Weight bag, Impact speed 12.2 m/s');
  });
});

describe('a file', () => {
  it('gives back the message, whatever a chat put around it', async () => {
    expect(await messageIn(fileOf(message, 'x'))).toEqual(message);
    const forwarded = new Blob([`> sent from my phone\r\n${frameText(message, 0, 1)}\r\n--\r\nend`]);
    expect(await messageIn(forwarded)).toEqual(message);
  });

  it('says of any other file that it is not ours', async () => {
    await expect(messageIn(new Blob(['a shopping list']))).rejects.toMatchObject({ refusal: 'not_ours' });
    await expect(messageIn(new Blob(['x'.repeat(2_000_001)]))).rejects.toBeInstanceOf(HandError);
    await expect(messageIn(new Blob([frameText(message, 1, 2)]))).rejects.toMatchObject({
      refusal: 'damaged',
    });
  });
});
