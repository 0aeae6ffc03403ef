// The smoke path in a second engine, Debian's Firefox: sign in, read, compute, sign; then the server is gone, and
// the app opens all the same, signs and holds; then the server is back, and has each of them exactly once.

import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { DemoServer } from './demo-server.mjs';

const puppeteer = createRequire(new URL('../../web/package.json', import.meta.url))('puppeteer-core');

/** The demo's API as the coordinator. */
async function ask(demo, path) {
  const signIn = await fetch(`${demo.url}/api/v1/sessions`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ email: 'coordinator@salt-meridian.example', password: 'salt-meridian' }),
  });
  const session = await signIn.json();
  const found = await fetch(`${demo.url}/api/v1${path.replace(':production', session.memberships[0].production.id)}`, {
    headers: { Authorization: `Bearer ${session.access_token}` },
  });
  assert.equal(found.status, 200, path);
  return await found.json();
}

/** Looking for things by role takes this browser's driver seconds, and a busy machine many times that. */
const SEEN = 90_000;

const gagIn = (gags, code) => gags.items.find((one) => one.code === code);

test('Firefox: read, compute and sign; with no server open, sign and hold; each arrives once', async (context) => {
  const demo = await DemoServer.fresh();
  context.after(() => demo.remove());
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: process.env.FIREFOX ?? '/usr/bin/firefox-esr',
    headless: true,
    extraPrefsFirefox: { 'intl.accept_languages': 'en-GB' },
  });
  context.after(() => browser.close());
  const thrown = [];
  const newPage = async () => {
    const made = await browser.newPage();
    made.setDefaultTimeout(SEEN);
    await made.setViewport({ width: 360, height: 740 });
    made.on('pageerror', (error) => thrown.push(error.message));
    return made;
  };
  let page = await newPage();

  const text = (words) => page.locator(`::-p-text(${words})`).setTimeout(SEEN).wait();
  const press = (role, name) => page.locator(`::-p-aria([role="${role}"][name="${name}"])`).click();
  const open = (path) => page.goto(demo.url + path, { waitUntil: 'load' });
  const approve = async (gag) => {
    await open(`/gags/${gag.id}/sign?role=coordinator`);
    await press('radio', 'Approve');
    await press('button', 'Sign: approve');
  };

  await open('/');
  await page.locator('input[type="email"]').fill('coordinator@salt-meridian.example');
  await page.locator('input[type="password"]').fill('salt-meridian');
  await press('button', 'Sign in');
  await text('Yours to sign');

  const gags = await ask(demo, '/productions/:production/gags');
  const [first, second, held] = ['G07', 'G08', 'G01'].map((code) => gagIn(gags, code));
  await open(`/gags/${held.id}/figures`);
  await text('Time to second degree');
  await approve(first);
  await text('The gag is now:');
  // What is to be signed with no signal has been read before.
  await open(`/gags/${second.id}/sign?role=coordinator`);
  await text('Your decision');
  await open(`/gags/${held.id}`);
  await text(held.title);
  await open('/');
  await text('Yours to sign');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await text('Yours to sign');
  assert.ok(await page.evaluate(() => navigator.serviceWorker.controller !== null), 'the worker has the page');

  await demo.stop();
  await page.reload();
  await text('Yours to sign');
  await text('No connection.');
  // Figures with no server are the core's own.
  await open(`/gags/${held.id}/edit`);
  await text('Figures as you type');
  await approve(second);
  await text('Signed on this device.');
  await open(`/gags/${held.id}`);
  await press('button', 'Hold');
  await press('button', `Hold ${held.code}`);
  await text('Held on this device.');
  // The app is closed, and opened again before there is a server.
  const closed = page;
  page = await newPage();
  await closed.close();
  await open('/settings/entries');
  await text('Waiting');

  await demo.start();
  await page.reload();
  await page.waitForFunction(() => !document.body.textContent.includes('to send'), { timeout: SEEN });
  const holds = await ask(demo, '/productions/:production/holds');
  assert.equal(holds.items.filter((one) => one.gag === held.id).length, 1);
  const signed = await ask(demo, `/gags/${second.id}`);
  const statements = signed.case.signoffs.map((one) => JSON.parse(Buffer.from(one.jws.split('.')[1], 'base64url')));
  assert.deepEqual(
    statements.map((one) => [one.role, one.decision]),
    [['coordinator', 'approve']],
  );
  assert.deepEqual(thrown, []);
});
