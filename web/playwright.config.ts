// Browser tests against a running demo server. They use the Chromium of the system; nothing is fetched.

import { defineConfig } from '@playwright/test';

const address = process.env.GAGWRIGHT_URL;
if (!address)
  throw new Error(
    'Set GAGWRIGHT_URL to the address of a running demo server, for example http://127.0.0.1:8080',
  );

export default defineConfig({
  testDir: 'tests',
  outputDir: '../tests/out/browser',
  fullyParallel: false,
  workers: 1,
  retries: 0,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: 'list',
  use: {
    baseURL: address,
    viewport: { width: 360, height: 740 },
    locale: 'en-GB',
    hasTouch: true,
    ignoreHTTPSErrors: true,
    trace: 'retain-on-failure',
    launchOptions: {
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
