// Browser tests in three sizes, each test with a demo server of its own (tests/demo.ts). They use the Chromium of
// the system; nothing is fetched.

import { defineConfig } from '@playwright/test';

// Everything runs on the phone; what is about size and reach runs on the other two as well.
const everySize = /(screens|sign|hold|edit)\.spec\.ts$/;

export default defineConfig({
  testDir: 'tests',
  outputDir: '../tests/out/browser',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: 'list',
  projects: [
    { name: 'phone', use: { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } },
    {
      name: 'tablet',
      testMatch: everySize,
      use: { viewport: { width: 768, height: 1024 }, hasTouch: true, isMobile: true },
    },
    { name: 'desk', testMatch: everySize, use: { viewport: { width: 1440, height: 900 } } },
  ],
  use: {
    locale: 'en-GB',
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
