import { codeOf } from '../src/hand/code.ts';
import { frameText } from '../src/hand/frames.ts';
import { pack } from '../src/hand/message.ts';
import { Api } from './api.ts';
import { expect, type Page, test as plain, press } from './demo.ts';
import { film, type Phone, phone, readyOffline, shotOfCode, shotOfText } from './phones.ts';
import { type Gag, newGag, readKept, ready, signIn } from './steps.ts';

/** Opens a phone, whose camera sees the film; all are closed at the end. */
const test = plain.extend<{ open: (camera?: string) => Promise<Page> }>({
  open: async ({ demo }, use) => {
    const phones: Phone[] = [];
    await use(async (camera) => {
      const one = await phone(demo.url, camera);
      phones.push(one);
      return one.page;
    });
    for (const one of phones) await one.close();
  },
});
test.setTimeout(240_000);
/** A camera looks again and again, and a busy machine is slow to. */
const SEEN = { timeout: 90_000 };

/** Opens the taking screen; the camera is allowed, so it opens by itself. */
async function take(page: Page): Promise<void> {
  await page.goto('/hand/take');
}

async function online(page: Page): Promise<void> {
  await page.context().setOffline(false);
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
}

async function signedBy(api: Api, gag: string): Promise<string[]> {
  const page = await api.get(`/gags/${gag}`);
  return page.case.signoffs.map((one: { jws: string }) => one.jws);
}

/** The coordinator makes a gag and signs it with no signal. The server knows the key, from a gag before. */
async function signedOffline(page: Page): Promise<Gag> {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  const before = await newGag(page);
  await page.goto(`/gags/${before.id}/sign?role=coordinator`);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('Signed', { exact: true })).toBeVisible();

  await ready(page);
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.locator('blockquote')).toBeVisible();
  await readKept(page, `/gags/${gag.id}`);
  await page.context().setOffline(true);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('It goes to the server when there is a connection.')).toBeVisible();
  return gag;
}

/** The JWS and key of the signature that waits on a phone. */
async function waitingSignature(page: Page): Promise<{ jws: string; key: string }> {
  return await page.evaluate(async () => {
    const open = indexedDB.open('gagwright');
    const db = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = db.transaction('outbox').objectStore('outbox').getAll();
    const writes = await new Promise<{ id: string; state: string; body: { jws: string } }[]>((done) => {
      all.onsuccess = () => done(all.result);
    });
    const one = writes.find((each) => each.state === 'waiting' && each.body.jws);
    return { jws: one?.body.jws ?? '', key: one?.id ?? '' };
  });
}

test('a signature goes from phone to phone to phone with no signal, and reaches the server once', async ({
  demo,
  open,
}) => {
  const a = await open();
  const gag = await signedOffline(a);
  await press(a.getByRole('link', { name: 'Hand over' }));
  const version = Number(await a.locator('svg.code').getAttribute('data-version'));
  expect(version).toBeLessThanOrEqual(25);
  const first = await film(a, [await shotOfCode(a)], { turned: 5 });

  const b = await open(first);
  await readyOffline(b, /medic/i, gag.id);
  await take(b);
  await expect(b.getByText('Kept', { exact: true })).toBeVisible(SEEN);
  await expect(b.getByText(/^Signature holds, made by .+’s device\.$/)).toBeVisible();
  await expect(b.getByText('It is for revision 1, the plan on this phone.')).toBeVisible();
  await press(b.getByRole('link', { name: 'To the gag' }));
  await expect(b.getByText(/not sent yet, counted here/)).toBeVisible();
  await press(b.getByRole('link', { name: 'Signatures' }));
  await expect(b.getByText('Stands').first()).toBeVisible();

  await b.goto('/settings/entries');
  await expect(b.getByText(/^Signature, carried for/)).toBeVisible();
  await press(b.getByRole('link', { name: 'Hand over' }));
  const second = await film(b, [await shotOfCode(b)], { turned: -8, blur: 0.9 });

  const c = await open(second);
  await readyOffline(c, /first assistant director/i, gag.id);
  await take(c);
  await expect(c.getByText('Kept', { exact: true })).toBeVisible(SEEN);
  // Arriving a second time changes nothing.
  await press(c.getByRole('button', { name: 'Take another' }));
  await expect(c.getByText('This phone has it already.')).toBeVisible(SEEN);

  const server = await Api.as(demo.url, 'coordinator');
  expect(await signedBy(server, gag.id)).toHaveLength(0);
  await online(c);
  await expect.poll(() => signedBy(server, gag.id), SEEN).toHaveLength(1);
  await c.goto('/settings/entries');
  await expect(c.getByText('Sent', { exact: true })).toBeVisible();

  await online(b);
  await b.goto('/settings/entries');
  await expect(b.getByText('Sent', { exact: true })).toBeVisible(SEEN);
  await online(a);
  await a.goto('/settings/entries');
  await expect(a.getByText('Sent', { exact: true })).toHaveCount(5, SEEN);
  expect(await signedBy(server, gag.id)).toHaveLength(1);
});

test('a signature that was tampered with is refused and not kept', async ({ demo, open }) => {
  const a = await open();
  const gag = await signedOffline(a);
  const { jws, key } = await waitingSignature(a);
  const [head = '', payload = '', signature = ''] = jws.split('.');
  const said = Buffer.from(payload, 'base64url').toString();
  const changed = said.replace('"decision":"approve"', '"decision":"decline","reason":"x"');
  expect(changed).not.toBe(said);
  const forged = `${head}.${Buffer.from(changed).toString('base64url')}.${signature}`;
  const text = frameText(await pack({ kind: 'sign_off', jws: forged, key }), 0, 1);
  const b = await open(await film(a, [await shotOfText(a, codeOf(text, 'L'))]));
  await readyOffline(b, /medic/i, gag.id);
  await take(b);
  await expect(b.getByText('Refused, not kept')).toBeVisible(SEEN);
  await expect(b.getByText(/^Does not verify: \w/)).toBeVisible();
  await b.goto('/settings/entries');
  await expect(b.getByRole('link', { name: 'Take from a phone' })).toBeVisible();
  await expect(b.getByText('Carried for others')).toHaveCount(0);
  expect(await signedBy(await Api.as(demo.url, 'coordinator'), gag.id)).toHaveLength(0);
});

test('a phone with no camera, or one that is not allowed, says so and takes a file', async ({
  demo,
  open,
}) => {
  const a = await open();
  const gag = await signedOffline(a);
  await press(a.getByRole('link', { name: 'Hand over' }));
  const saved = a.waitForEvent('download');
  await press(a.getByRole('button', { name: 'Send as a file' }));
  const file = await (await saved).path();

  const b = await open();
  await readyOffline(b, /medic/i, gag.id);
  await take(b);
  await press(b.getByRole('button', { name: 'Open the camera' }));
  await expect(b.getByText(/^This device has no camera|^The camera is not allowed/)).toBeVisible();
  await b.getByLabel('Take a file').setInputFiles({
    name: 'other.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('a shopping list'),
  });
  await expect(b.getByText('This is not an entry of Gagwright.')).toBeVisible();
  await b.getByLabel('Take a file').setInputFiles(file);
  await expect(b.getByText('Kept', { exact: true })).toBeVisible();
  await online(b);
  const server = await Api.as(demo.url, 'coordinator');
  await expect.poll(() => signedBy(server, gag.id), SEEN).toHaveLength(1);
});

test('a plan goes as a run of codes, read out of order, in part and askew', async ({ demo, open }) => {
  const a = await open();
  await signIn(a, /coordinator/i);
  const gag = await newGag(a);
  // A signature makes the key of this phone, so that it is known before there is no signal.
  await a.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await a.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(a.getByRole('button', { name: 'Sign: approve' }));
  await expect(a.getByText('Signed', { exact: true })).toBeVisible();
  await ready(a);
  await a.goto(`/gags/${gag.id}/edit`);
  await a.getByLabel('Drop height').fill('14 m');
  await a.getByLabel('Why it changes').fill('Measured on the scout.');
  await a.context().setOffline(true);
  await press(a.getByRole('button', { name: 'Save as a new revision' }));
  await press(a.getByRole('link', { name: 'Hand over' }));
  // A plan this short would fit one large code; a poor camera is given smaller ones.
  await press(a.getByRole('button', { name: /smaller codes/ }));
  await press(a.getByRole('button', { name: 'Pause' }));
  const parts = Number(/of (\d+)/.exec((await a.getByText(/^Frame \d+ of \d+$/).textContent()) ?? '')?.[1]);
  expect(parts).toBeGreaterThan(1);
  const shots: Buffer[] = [];
  for (let frame = 0; frame < parts + 4; frame += 1) {
    shots.push(await shotOfCode(a));
    await press(a.getByRole('button', { name: 'Next', exact: true }));
  }
  // The second is never seen; of the others the last comes first.
  const caught = shots.filter((_, at) => at !== 1).toReversed();
  const b = await open(await film(a, caught, { turned: 12, blur: 1, noise: 14, side: 560 }));
  await readyOffline(b, /medic/i, gag.id);
  await take(b);
  await expect(b.getByText(/^\d+ of \d+ frames read$/)).toBeVisible(SEEN);
  await expect(b.getByText('Kept', { exact: true })).toBeVisible(SEEN);
  await expect(b.getByText(/^Signature holds, made by .+’s device\.$/)).toBeVisible();
  await expect(b.getByText('Changes: Action')).toBeVisible();
  await press(b.getByRole('link', { name: 'To the gag' }));
  await press(b.getByRole('link', { name: 'Plan', exact: true }));
  await expect(b.getByText('14 m').first()).toBeVisible();

  const server = await Api.as(demo.url, 'coordinator');
  const revision = async () => (await server.get(`/gags/${gag.id}`)).plan.revision;
  expect(await revision()).toBe(1);
  await online(b);
  await expect.poll(revision, SEEN).toBe(2);
  await online(a);
  await a.goto('/settings/entries');
  await expect(a.getByRole('listitem').filter({ hasText: 'New revision' })).toContainText('Sent', SEEN);
  expect(await revision()).toBe(2);
});

test('a hold goes to another phone, which is held at once, and is raised once', async ({ demo, open }) => {
  const a = await open();
  const gag = await signedOffline(a);
  await press(a.getByRole('link', { name: 'To the gag' }));
  await press(a.getByRole('button', { name: 'Hold', exact: true }));
  await press(a.getByRole('button', { name: `Hold ${gag.code}` }));
  await press(a.getByRole('dialog').getByRole('link', { name: 'Hand over' }));
  const b = await open(await film(a, [await shotOfCode(a)]));
  await readyOffline(b, /medic/i, gag.id);
  await take(b);
  await expect(b.getByText('Kept', { exact: true })).toBeVisible(SEEN);
  await press(b.getByRole('link', { name: 'To the gag' }));
  await expect(b.locator('.answer .word')).toHaveText('Held');

  const server = await Api.as(demo.url, 'coordinator');
  const holds = async () =>
    (await server.get(`/productions/${server.production}/holds`)).items.filter(
      (one: { hold?: { gag: string }; gag?: string }) => JSON.stringify(one).includes(gag.id),
    );
  await online(b);
  await expect.poll(holds, SEEN).toHaveLength(1);
  await online(a);
  await a.goto('/settings/entries');
  await expect(a.getByRole('listitem').filter({ hasText: 'Hold: ' })).toContainText('Sent', SEEN);
  expect(await holds()).toHaveLength(1);
});
