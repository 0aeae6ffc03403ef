// Lighthouse on the screens that matter most on a phone: today, a gag, signing. Signed in, on a mobile phone as
// Lighthouse imagines one, against a demo server of its own. Accessibility and best practices must be 100. The
// performance score moves with how busy the machine is, so it is reported (the median of as many runs as the first
// argument says) and not judged.

import { writeFile } from 'node:fs/promises';
import lighthouse from 'lighthouse';
import puppeteer from 'puppeteer-core';
import { DemoServer } from '../browser/demo-server.mjs';

const RUNS = Number(process.argv[2] ?? 1);
/** A look that Lighthouse lost (its own word for it is a runtime error) says nothing of the app and is taken again. */
const LOOKS = 5;
const WHOLE = ['accessibility', 'best-practices'];

const demo = await DemoServer.fresh();
const browser = await puppeteer.launch({
  executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync'],
});
const failed = [];
try {
  const page = await browser.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(demo.url);
  await page.locator('input[type="email"]').fill('coordinator@salt-meridian.example');
  await page.locator('input[type="password"]').fill('salt-meridian');
  await page.locator('button[type="submit"]').click();
  await page.locator('a[href*="/sign?role=coordinator"]').wait();
  const hrefs = await page.$$eval('a[href^="/gags/"]', (links) => links.map((link) => link.getAttribute('href')));
  const sign = hrefs.find((href) => href.includes('/sign?'));
  const screens = { today: '/', gag: sign.replace(/\/sign\?.*/, ''), sign };

  const port = Number(new URL(browser.wsEndpoint()).port);
  const look = async (path, onlyCategories) => {
    // The sign-in stays; everything else is fetched as on a first visit.
    const session = await page.createCDPSession();
    await session.send('Storage.clearDataForOrigin', { origin: demo.url, storageTypes: 'service_workers,cache_storage' });
    await session.send('Network.clearBrowserCache');
    await session.detach();
    return await lighthouse(
      demo.url + path,
      { port, disableStorageReset: true, onlyCategories, logLevel: 'error', locale: 'en-GB' },
      undefined,
      page,
    );
  };
  const scores = {};
  for (const [name, path] of Object.entries(screens)) {
    const performance = [];
    for (let run = 0; run < RUNS; run++) {
      const onlyCategories = run === 0 ? ['performance', ...WHOLE] : ['performance'];
      let result = await look(path, onlyCategories);
      for (let again = 1; result.lhr.runtimeError && again < LOOKS; again++) {
        console.error(`${name}, looked at again: ${result.lhr.runtimeError.code}`);
        result = await look(path, onlyCategories);
      }
      const { categories, audits, finalDisplayedUrl, runtimeError } = result.lhr;
      if (runtimeError) throw new Error(`${name}: ${runtimeError.message}`);
      if (finalDisplayedUrl !== demo.url + path) throw new Error(`${name} was asked for and ${finalDisplayedUrl} was scored`);
      const signedOut = await page.$('input[type="password"]');
      if (signedOut) throw new Error(`${name} was scored signed out`);
      performance.push(Math.round(categories.performance.score * 100));
      if (run > 0) continue;
      scores[name] = {};
      for (const kind of WHOLE) {
        const score = Math.round(categories[kind].score * 100);
        scores[name][kind] = score;
        if (score === 100) continue;
        const lost = categories[kind].auditRefs
          .map(({ id, weight }) => ({ ...audits[id], weight }))
          .filter((one) => one.weight > 0 && one.score !== null && one.score < 1);
        for (const one of lost) {
          const where = (one.details?.items ?? []).slice(0, 3);
          failed.push(`${name}, ${kind} ${score}: ${one.id}: ${one.title} ${JSON.stringify(where).slice(0, 600)}`);
        }
      }
      scores[name].measures = Object.fromEntries(
        ['first-contentful-paint', 'largest-contentful-paint', 'total-blocking-time', 'cumulative-layout-shift', 'speed-index'].map(
          (id) => [id, audits[id].displayValue],
        ),
      );
    }
    performance.sort((a, b) => a - b);
    scores[name].performance = performance[Math.floor(RUNS / 2)];
    scores[name]['performance of each run'] = performance;
  }
  console.log(JSON.stringify(scores, null, 2));
  await writeFile(new URL('../out/scores.json', import.meta.url), `${JSON.stringify(scores, null, 2)}\n`);
} finally {
  await browser.close();
  await demo.remove();
}
for (const one of failed) console.error(one);
process.exitCode = failed.length > 0 ? 1 : 0;
