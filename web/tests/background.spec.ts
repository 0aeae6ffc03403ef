// What waits is sent by the worker, with no page open, when the browser finds signal; and once.

import { Api } from './api.ts';
import { expect, test } from './demo.ts';
import { holdEverything, holdsRaised, ready, signIn } from './steps.ts';

test('the worker sends what waits with no page open, and once', async ({ page, context, demo }) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  await context.setOffline(true);
  await holdEverything(page);
  await expect(page.getByText('Held on this device.').first()).toBeVisible();
  await page.close();

  const blank = await context.newPage();
  const devtools = await context.newCDPSession(blank);
  const registration = new Promise<string>((found) => {
    devtools.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
      const ours = registrations.find((one) => one.scopeURL.startsWith(demo.url));
      if (ours) found(ours.registrationId);
    });
  });
  await devtools.send('ServiceWorker.enable');
  const registrationId = await registration;
  await context.setOffline(false);
  const sync = { origin: demo.url, registrationId, tag: 'outbox', lastChance: false };
  await devtools.send('ServiceWorker.dispatchSyncEvent', sync);

  const api = await Api.as(demo.url, 'medic');
  const raised = async () => (await holdsRaised(api)).length;
  await expect.poll(raised, { timeout: 60_000 }).toBe(1);
  // The app, opened again, finds it sent and sends nothing more.
  const again = await context.newPage();
  await again.goto('/settings/entries');
  const entry = again.getByRole('main').getByRole('listitem').filter({ hasText: 'Hold' });
  await expect(entry).toHaveCount(1);
  await expect(entry).toContainText('Sent');
  expect(await raised()).toBe(1);
});
