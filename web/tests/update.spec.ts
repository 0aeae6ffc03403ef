// A new version of the app: it waits for a tap, never over a signature, and takes nothing away that waits.

import { once } from 'node:events';
import http from 'node:http';
import type { AddressInfo } from 'node:net';
import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { draftKept, holdEverything, holdsRaised, newGag, signIn } from './steps.ts';

/** The demo with one file changed and another version in its worker, once `next` is set: a second build. While
 *  `deaf` is set no hold gets through, from the page or from the worker. */
async function twoBuilds(behind: string) {
  const builds = { url: '', next: false, deaf: false, close: () => {} };
  const server = http.createServer((request, response) => {
    if (builds.deaf && request.url?.endsWith('/holds')) return request.destroy();
    const { 'if-none-match': _match, 'if-modified-since': _since, ...asked } = request.headers;
    // What stands behind does not know of the second build, and would call the first one unchanged.
    const headers = { ...(builds.next ? asked : request.headers), 'accept-encoding': 'identity' };
    const onward = http.request(`${behind}${request.url}`, { method: request.method, headers }, (answer) => {
      const changes = builds.next && ['/', '/index.html', '/service-worker.js'].includes(request.url ?? '');
      if (!changes) {
        response.writeHead(answer.statusCode ?? 502, answer.headers);
        answer.pipe(response);
        return;
      }
      const pieces: Buffer[] = [];
      answer.on('data', (piece) => pieces.push(piece));
      answer.on('end', () => {
        const text = Buffer.concat(pieces)
          .toString()
          .replace('</head>', '<meta name="build" content="2"></head>')
          .replace(/"[0-9a-f]{16}"|`[0-9a-f]{16}`/, '"00000000000000b2"');
        const { 'content-length': _length, etag: _etag, ...kept } = answer.headers;
        response.writeHead(answer.statusCode ?? 502, kept).end(text);
      });
    });
    onward.on('error', () => response.destroy());
    request.pipe(onward);
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  builds.url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  builds.close = () => {
    server.closeAllConnections();
    server.close();
  };
  return builds;
}

test('a new version waits for a tap, not over a signature, and a full outbox and a draft survive it', async ({
  browser,
  demo,
}, info) => {
  test.setTimeout(300_000);
  const builds = await twoBuilds(demo.url);
  const { viewport, hasTouch, isMobile, locale } = info.project.use;
  const context = await browser.newContext({ baseURL: builds.url, viewport, hasTouch, isMobile, locale });
  const page = await context.newPage();
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.getByLabel('Why it changes').fill('Half a reason');
  await draftKept(page, 'Half a reason');
  await page.goto('/');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await page.goto(`/gags/${gag.id}`);
  await expect(page.getByText(gag.code).first()).toBeVisible();
  builds.deaf = true;
  for (let n = 0; n < 3; n += 1) {
    await holdEverything(page);
    await expect(page.getByText('Held on this device.').first()).toBeVisible();
    await press(page.getByRole('button', { name: 'Close' }));
  }

  builds.next = true;
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.locator('blockquote')).toBeVisible();
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
  });
  const waiting = () =>
    page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting));
  await expect.poll(waiting, { timeout: 60_000 }).toBe(true);
  const notice = page.getByText('A new version is ready.');
  await expect(notice).toHaveCount(0);
  await page.reload();
  expect(await page.locator('meta[name=build]').count()).toBe(0);

  // Nor over what somebody writes, whether it is kept as a draft or not.
  await page.goto(`/gags/${gag.id}/edit`);
  await expect(page.getByLabel('Why it changes')).toHaveValue('Half a reason');
  await expect(notice).toHaveCount(0);
  await page.goto('/gags');
  await expect(notice).toBeVisible();
  await page.getByRole('searchbox').first().fill(gag.code);
  await expect(notice).toHaveCount(0);

  await page.goto(`/gags/${gag.id}`);
  await expect(notice).toBeVisible();
  await press(page.getByRole('button', { name: 'Load it now' }));
  await expect(page.locator('meta[name=build]')).toHaveCount(1);
  await expect(page.getByRole('link', { name: '3 entries to send' })).toBeVisible();
  // The one page there is runs on the new version: the old one is let go.
  await expect
    .poll(() => page.evaluate(async () => (await caches.keys()).filter((one) => one.startsWith('app-'))))
    .toEqual(['app-00000000000000b2']);
  await page.goto(`/gags/${gag.id}/edit`);
  await expect(page.getByLabel('Why it changes')).toHaveValue('Half a reason');

  // It is all there: it opens with no signal.
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByLabel('Why it changes')).toHaveValue('Half a reason');
  expect(await page.locator('meta[name=build]').count()).toBe(1);
  await context.setOffline(false);

  builds.deaf = false;
  await page.reload();
  await expect(page.getByRole('link', { name: '3 entries to send' })).toBeHidden({ timeout: 60_000 });
  const api = await Api.as(demo.url, 'medic');
  await expect.poll(async () => (await holdsRaised(api)).length, { timeout: 60_000 }).toBe(3);
  await context.close();
  builds.close();
});
