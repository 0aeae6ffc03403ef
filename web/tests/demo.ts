// The test function of every browser test: `import { expect, test } from './demo.ts'`. Each test gets a demo
// server of its own, fresh, in a folder of its own, so that no test can disturb another whatever it does:
//
//   demo.url                 its address, which is also the page's base address
//   demo.stop(), .start()    the server loses power, and comes back on the same port with the same data
//   demo.log                 what it printed
//   Api.as(demo.url, 'medic')  its API as one of its people, for setting a scene (api.ts)
//   size                     'phone', 'tablet' or 'desk': which of the three sizes the test runs in
//
// A test fails at its end when a page of its own context threw, or was refused something by the content policy.
// `press` taps on the sizes that have touch and clicks at the desk.
//
// With GAGWRIGHT_URL set, tests run against that server instead, all of them against the one. With GAGWRIGHT_WEB
// set to a built app's folder (web/dist), each test's server serves that app (tests/browser/demo-server.mjs).

import { rm } from 'node:fs/promises';
import { expect, type Locator, test as plain } from '@playwright/test';
import { DemoServer, seedTemplate } from '../../tests/browser/demo-server.mjs';

export type Size = 'phone' | 'tablet' | 'desk';

interface Fixtures {
  demo: DemoServer;
  size: Size;
  complaints: string[];
}

/** Taps where there is touch, clicks where there is a mouse. */
export async function press(what: Locator): Promise<void> {
  const touch = await what.page().evaluate(() => navigator.maxTouchPoints > 0);
  if (touch) await what.tap();
  else await what.click();
}

export const test = plain.extend<Fixtures, { template: string }>({
  template: [
    // biome-ignore lint/correctness/noEmptyPattern: the test runner reads the names from this pattern
    async ({}, use) => {
      if (process.env.GAGWRIGHT_URL) return use('');
      const folder = await seedTemplate();
      await use(folder);
      await rm(folder, { recursive: true, force: true });
    },
    { scope: 'worker', timeout: 60_000 },
  ],

  demo: async ({ template }, use, info) => {
    if (process.env.GAGWRIGHT_URL) {
      const given = new DemoServer();
      given.url = process.env.GAGWRIGHT_URL;
      given.stop = given.start = () => {
        throw new Error('This test stops its server, so it cannot run with GAGWRIGHT_URL.');
      };
      return use(given);
    }
    const demo = await DemoServer.fresh(template);
    await use(demo);
    await demo.remove();
    if (info.status !== info.expectedStatus) console.log(demo.log);
  },

  baseURL: async ({ demo }, use) => use(demo.url),

  complaints: [
    async ({ context }, use) => {
      const found: string[] = [];
      context.on('weberror', (error) => found.push(error.error().message));
      context.on('console', (message) => {
        const said = message.text();
        if (/Content Security Policy|TrustedHTML|TrustedScript/.test(said)) found.push(said);
      });
      await use(found);
      expect(found, 'complaints of the page').toEqual([]);
    },
    { auto: true },
  ],

  // biome-ignore lint/correctness/noEmptyPattern: the test runner reads the names from this pattern
  size: async ({}, use, info) => use(info.project.name as Size),
});

export type { Locator, Page } from '@playwright/test';
export { expect };
