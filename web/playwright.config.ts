// Browser tests in three sizes, each test with a demo server of its own (tests/demo.ts). They use the Chromium of
// the system; nothing is fetched.

import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';

// Everything runs on the phone; what is about reach and pointing runs at the desk as well, and every screen is
// looked at in all three sizes.
const atTheDesk = /(screens|sign|hold|edit)\.spec\.ts$/;

// Chromium without a window's machinery, where the system has it: the tests take a fifth less with it. The pace is
// taken in the whole browser.
const WHOLE = '/usr/bin/chromium';
const HEADLESS = '/usr/bin/chromium-headless-shell';
const chromium = process.env.CHROMIUM ?? (existsSync(HEADLESS) ? HEADLESS : WHOLE);
const launchOptions = {
  executablePath: chromium,
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
};

// What reads the clock is no test: tests/bench/browser asks for it, and for nothing beside it.
const pace = {
  name: 'pace',
  testMatch: /pace\.bench\.ts$/,
  retries: 0,
  use: {
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    isMobile: true,
    trace: 'off' as const,
    launchOptions: { ...launchOptions, executablePath: process.env.CHROMIUM ?? WHOLE },
  },
};

export default defineConfig({
  testDir: 'tests',
  outputDir: '../tests/out/browser',
  fullyParallel: true,
  workers: 2,
  // Another try tells a machine that was busy from a fault; what needed one is listed as flaky.
  retries: 2,
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: 'list',
  projects: process.env.GAGWRIGHT_PACE
    ? [pace]
    : [
        {
          name: 'phone',
          use: { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true },
        },
        {
          name: 'tablet',
          testMatch: /screens\.spec\.ts$/,
          use: { viewport: { width: 768, height: 1024 }, hasTouch: true, isMobile: true },
        },
        { name: 'desk', testMatch: atTheDesk, use: { viewport: { width: 1440, height: 900 } } },
      ],
  use: {
    locale: 'en-GB',
    ignoreHTTPSErrors: true,
    // A film of every test would cost more than the tests do, and the page as it was at each step a seventh of them;
    // what failed is tried again, and then that is kept.
    trace: { mode: 'on-first-retry', screenshots: false, snapshots: true, sources: true },
    screenshot: 'only-on-failure',
    launchOptions,
  },
});
