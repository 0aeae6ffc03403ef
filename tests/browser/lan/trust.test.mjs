// A phone that does not trust the set's server yet is warned, is walked through trusting it by the plain
// page, and then has the app whole: secure context, worker, keys, signing in, and a start with no signal.
// `run` beside this file starts the server and says where it is.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import http2 from 'node:http2';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { after, test } from 'node:test';

const require = createRequire(new URL('../../../web/package.json', import.meta.url));
const { chromium, expect: expect_soon } = require('@playwright/test');
const { AxeBuilder } = require('@axe-core/playwright');
const jsqr = require('jsqr');

const { LAN_FOLDER: folder, LAN_PAGE: page_address, LAN_APP: app_address, LAN_OUT: out } = process.env;
const log = readFileSync(join(folder, 'server.log'), 'utf8');
// What is waited for comes, however busy the machine is; these only end a wait for what never does.
const patience = 60_000;
const expect = expect_soon.configure({ timeout: patience });
const open = [];
after(async () => {
  for (const browser of open) await browser.close();
});

/** A phone with a home, and so a certificate store, of its own. */
async function phone(name, size = { width: 360, height: 740 }) {
  const home = join(folder, name);
  mkdirSync(join(home, '.pki/nssdb'), { recursive: true });
  const store = ['-d', `sql:${join(home, '.pki/nssdb')}`];
  execFileSync('certutil', [...store, '-N', '--empty-password']);
  const trust = (file) =>
    execFileSync('certutil', [...store, '-A', '-n', 'set network', '-t', 'C,,', '-i', file]);
  const start = async () => {
    const context = await chromium.launchPersistentContext(join(home, 'profile'), {
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      env: { ...process.env, HOME: home },
      viewport: size,
      hasTouch: true,
      acceptDownloads: true,
      args: [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--host-resolver-rules=MAP *.local 127.0.0.1',
      ],
    });
    context.setDefaultTimeout(patience);
    open.push(context);
    return context;
  };
  return { trust, start };
}

/** The QR code in a text of half blocks, read by a decoder that knows nothing of who drew it. */
function read_code(text) {
  const lines = text.split('\n').filter((line) => /^ {2}[█▀▄ ]{20,}$/.test(line));
  const scale = 4;
  const width = Math.max(...lines.map((line) => line.length)) * scale;
  const height = lines.length * 2 * scale;
  const pixels = new Uint8ClampedArray(width * height * 4).fill(0);
  const light = (row, column) => {
    const half = lines[Math.floor(row / 2)]?.[column] ?? ' ';
    return half === '█' || half === (row % 2 === 0 ? '▀' : '▄');
  };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const tone = light(Math.floor(y / scale), Math.floor(x / scale)) ? 255 : 0;
      pixels.set([tone, tone, tone, 255], (y * width + x) * 4);
    }
  }
  const read = jsqr.default ?? jsqr;
  return read(pixels, width, height)?.data;
}

const new_phone = await phone('new');
const trusting = await phone('trusting');
const downloaded = join(folder, 'downloaded.crt');

test('the terminal shows the code that opens the page, and the fingerprint', () => {
  assert.equal(read_code(log), page_address.replace(/\/$/, ''));
  assert.match(log.replace(/\s+/g, ''), /SHA-256([0-9A-F]{2}:){31}[0-9A-F]{2}/);
});

test('a phone that does not trust the authority is warned, and the plain page helps it', async () => {
  const context = await new_phone.start();
  const warned = await context.newPage();
  await assert.rejects(warned.goto(app_address), /ERR_CERT_AUTHORITY_INVALID/);

  // A page of its own: the browser's warning is still being drawn in the other.
  const page = await context.newPage();
  await page.goto(`${page_address}api/v1/status`);
  assert.equal(page.url(), page_address, 'the plain port leads everything to the page');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  const told = log.replace(/\s+/g, '').match(/SHA-256((?:[0-9A-F]{2}:){31}[0-9A-F]{2})/)?.[1];
  const shown = await page.locator('.print').innerText();
  assert.equal(shown.trim().split(/\s+/).join(':'), told);
  await expect(page.getByRole('link', { name: 'Open Gagwright' }).last()).toHaveAttribute('href', app_address);

  for (const scheme of ['dark', 'light']) {
    await page.emulateMedia({ colorScheme: scheme });
    await page.locator('details').evaluateAll((all) => {
      for (const one of all) one.open = true;
    });
    const { violations } = await new AxeBuilder({ page }).analyze();
    assert.deepEqual(
      violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' ')}`),
      [],
    );
    for (const width of [360, 1440]) {
      await page.setViewportSize({ width, height: 740 });
      const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      assert.ok(wider <= 0, `the page is ${wider} px wider than a screen of ${width}`);
      await page.screenshot({ path: join(out, `trust-${scheme}-${width}.png`), fullPage: true });
    }
  }
  // Every link is big enough for a glove.
  for (const link of await page.locator('a.button, summary').all()) {
    const box = await link.boundingBox();
    assert.ok(box && box.height >= 48, `${await link.innerText()} is ${box?.height} px high`);
  }

  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Download for Android' }).click();
  const file = await download;
  assert.equal(file.suggestedFilename(), 'gagwright.crt');
  await file.saveAs(downloaded);
  const print = execFileSync(
    'openssl',
    ['x509', '-inform', 'DER', '-in', downloaded, '-noout', '-fingerprint', '-sha256'],
    { encoding: 'utf8' },
  );
  assert.equal(print.trim().split('=').at(-1), told);
  await context.close();
});

test('a phone that trusts it has the app whole, also with no signal', async () => {
  trusting.trust(downloaded);
  const context = await trusting.start();
  const page = await context.newPage();
  await page.goto(app_address);
  await page.getByRole('button').filter({ hasText: /coordinator/i }).first().tap();
  await expect(page.getByRole('button', { name: 'Hold' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  const has = await page.evaluate(async () => ({
    secure: window.isSecureContext,
    keys: typeof crypto.subtle?.generateKey,
    worker: (await navigator.serviceWorker.ready).scope,
  }));
  assert.deepEqual(has, { secure: true, keys: 'function', worker: app_address });

  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), { timeout: patience })
    .toBe(true);
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  await expect(page.getByText('No connection.')).toBeVisible();
  await context.setOffline(false);

  // Trusting the authority is no leave to be anyone: a name that the certificate lacks is refused.
  const other = await context.newPage();
  await assert.rejects(
    other.goto(app_address.replace('slate.local', 'other.local')),
    /ERR_CERT_COMMON_NAME_INVALID/,
  );
  await context.close();
});

test('a hold is heard at once over the protocol that phones speak', async (t) => {
  // Browsers speak HTTP/2 where there is HTTPS, and hold the event stream open in it.
  const ca = readFileSync(join(folder, 'gagwright-data/gagwright-lan/authority.crt'));
  const phone = http2.connect(app_address.replace('slate.local', '127.0.0.1'), { ca });
  t.after(() => phone.destroy());
  const ask = (headers, body) => {
    const stream = phone.request(headers, { endStream: body === undefined });
    stream.setEncoding('utf8');
    if (body !== undefined) stream.end(JSON.stringify(body));
    const status = new Promise((done, failed) => {
      stream.on('error', failed);
      stream.on('response', (answer) => done(answer[':status']));
    });
    return { stream, status };
  };
  const json = async ({ stream, status }, expected) => {
    let text = '';
    for await (const part of stream) text += part;
    assert.equal(await status, expected, text);
    return JSON.parse(text);
  };
  const send = { ':method': 'POST', 'content-type': 'application/json' };
  const session = await json(
    ask(
      { ...send, ':path': '/api/v1/sessions' },
      { email: 'coordinator@salt-meridian.example', password: 'salt-meridian' },
    ),
    200,
  );
  const authorization = `Bearer ${session.access_token}`;
  const production = `/api/v1/productions/${session.memberships[0].production.id}`;
  const events = ask({ ':path': `${production}/events`, authorization });
  assert.equal(await events.status, 200);
  let heard = '';
  const hear = (what) =>
    new Promise((done) => {
      const look = () => heard.includes(what) && done();
      events.stream.on('data', (part) => {
        heard += part;
        look();
      });
      look();
    });
  await hear('connected');
  const told = hear('"hold.raised"');
  await json(
    ask(
      { ...send, ':path': `${production}/holds`, authorization, 'idempotency-key': uuid_v7() },
      { id: uuid_v7(), reason: 'wind' },
    ),
    201,
  );
  await told;
});

/** An identifier as phones make them: the time, then chance. */
function uuid_v7() {
  const time = Date.now().toString(16).padStart(12, '0');
  const chance = crypto.randomUUID();
  return `${time.slice(0, 8)}-${time.slice(8)}-7${chance.slice(15)}`;
}
