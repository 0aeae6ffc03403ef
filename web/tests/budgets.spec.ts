// What a phone has to carry: bytes to fetch, and every line of a large production's lists. How long it takes is
// measured by tests/bench/browser.

import http from 'node:http';
import { es } from '../src/texts/es/index.ts';
import { mechanics } from '../src/texts/es/said/mechanics.ts';
import { Api } from './api.ts';
import { grow } from './crowd.ts';
import { expect, test } from './demo.ts';
import { signInAs } from './steps.ts';

const KB = 1000;

/** How many bytes come over the wire for an address, compressed as for a browser. */
function onTheWire(url: string): Promise<number> {
  return new Promise((done, fail) => {
    http
      .get(url, { headers: { 'Accept-Encoding': 'br' } }, (answer) => {
        let bytes = 0;
        answer.on('data', (piece: Buffer) => {
          bytes += piece.length;
        });
        answer.on('end', () =>
          answer.statusCode === 200 ? done(bytes) : fail(new Error(`${answer.statusCode} ${url}`)),
        );
      })
      .on('error', fail);
  });
}

function report(title: string, found: unknown): void {
  console.log(`${title}: ${JSON.stringify(found)}`);
  test.info().annotations.push({ type: title, description: JSON.stringify(found) });
}

test('what a first visit asks for stays under 200 KB, all script and style under 240, each package under 400, compressed', async ({
  page,
  demo,
}) => {
  await signInAs(page, 'coordinator');
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  const first = await page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .map((one) => new URL(one.name).pathname)
      .filter((path) => /\.(js|css)$/.test(path)),
  );
  // Everything the worker keeps: also what later screens, other languages and the camera ask for.
  const worker = await (await fetch(`${demo.url}/service-worker.js`)).text();
  const kept = [...new Set(worker.match(/\/assets\/[\w.-]+\.(?:js|css|wasm)/g))];
  expect(kept.length).toBeGreaterThan(2);
  expect(first.length).toBeGreaterThan(1);

  const sum = async (paths: string[]): Promise<number> => {
    const sizes = await Promise.all(paths.map((path) => onTheWire(demo.url + path)));
    return sizes.reduce((a, b) => a + b, 0);
  };
  const text = async (path: string): Promise<string> => (await fetch(demo.url + path)).text();
  const scripts = kept.filter((path) => !path.endsWith('.wasm'));
  // The texts of another language, and what it makes of the core's own sentences, are chunks which only who reads it
  // asks for at once.
  const of = (read: string) =>
    [es.app.loading, mechanics['common practice']].some((one) => one && read.includes(one));
  const spanish = await Promise.all(scripts.map(async (path) => of(await text(path))));
  expect(spanish.filter(Boolean)).toHaveLength(2);
  const packages = kept.filter((path) => path.endsWith('.wasm'));
  const bytes = {
    first: await sum(first),
    all: await sum(scripts.filter((_, at) => !spanish[at])),
    spanish: await sum(scripts.filter((_, at) => spanish[at])),
    core: await Promise.all(packages.map(async (path) => [path, await sum([path])] as const)),
  };
  report('bytes', bytes);
  expect(bytes.first).toBeLessThan(200 * KB);
  expect(bytes.all).toBeLessThan(240 * KB);
  expect(bytes.core).toHaveLength(2);
  for (const [, size] of bytes.core) {
    expect(size).toBeGreaterThan(100 * KB);
    expect(size).toBeLessThan(400 * KB);
  }
});

test('500 gags and 2,000 people are all there, and each is found', async ({ page, demo }) => {
  test.setTimeout(300_000);
  await grow(await Api.as(demo.url, 'coordinator'), 500, 2000);
  await signInAs(page, 'coordinator');
  for (const [path, count, first, last] of [
    ['/gags', 500, 'B1', 'B500'],
    ['/people', 2000, 'X1', 'X2000'],
  ] as const) {
    await page.goto(path);
    const rows = page.locator('main .long [role=listitem]');
    // The demo's own are there beside them.
    await expect.poll(() => rows.count()).toBeGreaterThan(count);
    for (const one of [first, last]) {
      await page.getByRole('searchbox').first().fill(one);
      await expect(page.getByText(one, { exact: true }).first()).toBeVisible();
    }
  }
});
