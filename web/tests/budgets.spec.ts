// What a phone has to carry and how long it may take: bytes to fetch, the start with no signal on a slow phone,
// and lists of a large production under the thumb. Run alone, on one worker, because clocks are read here.

import http from 'node:http';
import { es } from '../src/texts/es/index.ts';
import { mechanics } from '../src/texts/es/said/mechanics.ts';
import { Api } from './api.ts';
import { bigRoster, gagNumber } from './crowd.ts';
import { expect, type Page, test } from './demo.ts';
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

const median = (all: number[]): number =>
  all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN;

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

/** Sorting, writing and looking up a hundred thousand numbers, five times: how long each took. */
function fixedWork(): number[] {
  return [1, 2, 3, 4, 5].map((round) => {
    const begun = performance.now();
    const numbers = Array.from({ length: 100_000 }, (_, i) => Math.imul(i + round, 2_654_435_761) >>> 0);
    const text = JSON.stringify(numbers.toSorted((a, b) => a - b));
    const places = new Map((JSON.parse(text) as number[]).map((one, at) => [one, at]));
    if (numbers.some((one) => !places.has(one))) throw new Error('a number was lost');
    return performance.now() - begun;
  });
}

/** How long a cold start may take, in rounds of that work; where it was measured it took 3.2 to 3.3. */
const TIMES_THE_YARDSTICK = 5;

test('with no network and a processor four times slower, the app is soon usable', async ({
  page,
  context,
  browser,
}) => {
  test.setTimeout(240_000);
  await signInAs(page, 'coordinator');
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  await context.setOffline(true);
  await page.close();

  const start = async (): Promise<{ today: number; core: number }> => {
    // The worker is asleep, as it is when a phone comes out of a pocket.
    const all = await browser.newBrowserCDPSession();
    const { targetInfos } = await all.send('Target.getTargets');
    for (const one of targetInfos.filter((target) => target.type === 'service_worker')) {
      await all.send('Target.closeTarget', { targetId: one.targetId });
    }
    await all.detach();
    const cold = await context.newPage();
    await cold.addInitScript(() => {
      // The frame after the list has come is the one in which a person sees it.
      const seen = new MutationObserver(() => {
        if (!document.querySelector('main section a[href^="/gags/"]')) return;
        seen.disconnect();
        requestAnimationFrame(() => setTimeout(() => performance.mark('today shown')));
      });
      seen.observe(document, { childList: true, subtree: true });
    });
    const slow = await context.newCDPSession(cold);
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await cold.goto('/');
    const marks = await cold.waitForFunction(() => {
      const at = (name: string) => performance.getEntriesByName(name)[0]?.startTime;
      const found = { today: at('today shown'), core: at('core ready') };
      return found.today && found.core ? found : false;
    });
    const found = (await marks.jsonValue()) as { today: number; core: number };
    await cold.close();
    return found;
  };
  await start();
  const runs: { today: number; core: number }[] = [];
  for (let run = 0; run < 7; run++) runs.push(await start());
  const usable = runs.map((one) => Math.max(one.today, one.core));
  // Machines differ by half, so the app is held against work of a fixed size on the same machine, as slowed down.
  // Whatever else the machine does can only add to either, so the best runs are the two's own.
  const yard = await context.newPage();
  const slow = await context.newCDPSession(yard);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const yardstick = Math.min(...(await yard.evaluate(fixedWork)));
  report('cold start', { median: median(usable), best: Math.min(...usable), yardstick, runs });
  expect(Math.min(...usable) / yardstick).toBeLessThan(TIMES_THE_YARDSTICK);
});

/** The longest that the page could not answer a finger while it was scrolled from end to end and back. */
async function scrolled(page: Page): Promise<number> {
  await page.evaluate(() => {
    const kept = window as unknown as { longest: number };
    kept.longest = 0;
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) kept.longest = Math.max(kept.longest, one.duration);
    }).observe({ type: 'longtask' });
  });
  await page.mouse.move(180, 400);
  const end = () =>
    page.evaluate(() => window.scrollY + window.innerHeight >= document.documentElement.scrollHeight - 2);
  let steps = 0;
  while (!(await end()) && steps < 2000) {
    await page.mouse.wheel(0, 1200);
    steps += 1;
  }
  expect(steps, 'there was something to scroll').toBeGreaterThan(20);
  while ((await page.evaluate(() => window.scrollY)) > 0) await page.mouse.wheel(0, -4000);
  return await page.evaluate(() => (window as unknown as { longest: number }).longest);
}

test('500 gags and 2,000 people scroll without a pause over 100 ms', async ({ page, demo }) => {
  test.setTimeout(300_000);
  const api = await Api.as(demo.url, 'coordinator');
  const at = `/productions/${api.production}`;
  await api.post(`${at}/roster/people`, bigRoster(2000));
  for (let n = 0; n < 500; n += 10) {
    const ten = Array.from({ length: 10 }, (_, i) => gagNumber(n + i));
    await Promise.all(ten.map((gag) => api.post(`${at}/gags`, gag)));
  }
  await signInAs(page, 'coordinator');
  for (const [path, last] of [
    ['/gags', 'B500'],
    ['/people', 'X2000'],
  ] as const) {
    await page.goto(path);
    await expect(page.locator('main ul.ruled > li, main [role="listitem"]').first()).toBeVisible();
    await page.waitForTimeout(1000);
    const longest = [await scrolled(page), await scrolled(page), await scrolled(page)];
    report(`longest pause on ${path}`, longest);
    expect(median(longest)).toBeLessThan(100);
    // The last one is there to be found.
    await page.getByRole('searchbox').first().fill(last);
    await expect(page.getByText(last, { exact: true }).first()).toBeVisible();
  }
});
