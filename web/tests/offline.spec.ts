import { en } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { holdEverything, holdsRaised, newGag, readKept, ready, signIn, signInAs } from './steps.ts';

test('with no signal a reload still shows today and a gag that was read', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.goto(`/gags/${gag.id}/figures`);
  await expect(page.getByRole('heading', { name: 'Checks' })).toBeVisible();
  await readKept(page, `/gags/${gag.id}`);
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  await ready(page);
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();

  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
  await expect(page.getByText('No connection.')).toBeVisible();
  await page.goto(`/gags/${gag.id}/figures`);
  await expect(page.getByRole('heading', { name: 'Checks' })).toBeVisible();
  await expect(page.getByText('No connection.')).toBeVisible();

  await page.getByRole('button', { name: 'Hold', exact: true }).tap();
  await page.getByRole('button', { name: `Hold ${gag.code}` }).tap();
  await expect(page.getByText('Held on this device.').first()).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).tap();
  await expect(page.getByText('Held', { exact: true }).first()).toBeVisible();
  await expect(page.getByText('Judged on this device')).toBeVisible();
  await context.setOffline(false);
});

test('a sign-out with no signal stays one when the signal is back', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  await page.goto('/settings/account');
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Sign out' }).tap();
  await expect(page.getByRole('button', { name: 'Sign in', exact: true })).toBeVisible();

  // The app tells the server the moment the signal is back. Opening it anew meanwhile would drop the answer.
  const told = page.waitForResponse((one) => one.request().method() === 'DELETE' && one.ok());
  await context.setOffline(false);
  await told;
  await expect(page.getByText('Demo sign-ins')).toBeVisible();
  await page.reload();
  await expect(page.getByText('Demo sign-ins')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Hold' })).toHaveCount(0);
});

test('a tab of one person does not go on with the sign-in of another', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  const mine = await page.getByRole('link', { name: /^Settings and sign out/ }).getAttribute('aria-label');
  // The other person signs in in a second tab, as after a sign-out this tab has not heard of.
  const second = await context.newPage();
  await second.goto('/settings/account');
  await second.getByRole('button', { name: 'Sign out' }).tap();
  await second.getByRole('button').filter({ hasText: 'medic' }).first().tap();
  await expect(second.getByRole('button', { name: 'Hold' })).toBeVisible();
  const theirs = await second
    .getByRole('link', { name: /^Settings and sign out/ })
    .getAttribute('aria-label');
  expect(theirs).not.toBe(mine);

  // The first tab's token is about to run out: what it sends next renews it with the cookie.
  const asked: string[] = [];
  page.on('request', (one) => {
    if (one.method() === 'POST' && one.url().includes('/holds')) asked.push(one.url());
  });
  await page.getByRole('button', { name: 'Hold', exact: true }).tap();
  await expect(page.getByRole('button', { name: 'Hold everything' })).toBeVisible();
  await page.clock.install({ time: Date.now() + 3_600_000 });
  // The tab's event stream may ask for a token first and hand the tab over before the finger lands.
  // Then there is no button left to tap; what must hold afterwards is the same.
  await page
    .getByRole('button', { name: 'Hold everything' })
    .tap({ timeout: 5_000 })
    .catch(() => undefined);
  await expect(page.getByRole('link', { name: theirs ?? '' })).toBeVisible();
  expect(asked).toEqual([]);
});

test('what never left the phone can be taken back, and the server never hears of it', async ({
  page,
  demo,
}) => {
  await signInAs(page, 'medic');
  await ready(page);
  await page.context().setOffline(true);
  await holdEverything(page);
  await expect(page.getByText(en.hold.raisedWaiting).first()).toBeVisible();
  await page.goto('/settings/entries');
  await press(page.getByRole('button', { name: en.outbox.takeBack, exact: true }));
  await press(page.getByRole('button', { name: en.outbox.takeBackYes }));
  await expect(page.getByText(en.settings.outboxEmpty)).toBeVisible();
  await page.context().setOffline(false);
  await page.goto('/holds');
  // The hold of the demo itself, as the server tells it.
  await expect(page.getByText('A strand looks broken near the left pick').first()).toBeVisible();
  expect(await holdsRaised(await Api.as(demo.url, 'coordinator'))).toEqual([]);
});
