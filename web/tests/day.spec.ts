// Before the day: the phone has every gag without anybody opening one, and says so.

import { en } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { ready, signIn } from './steps.ts';

test('after signing in, a gag that nobody opened opens with no signal', async ({ page, context, demo }) => {
  await signIn(page, /medic/i);
  const api = await Api.as(demo.url, 'coordinator');
  const { items } = await api.get(`/productions/${api.production}/gags`);
  const all = `${items.length} of ${items.length} gags are on this device, read `;
  await ready(page);
  await page.goto('/settings/phone');
  await expect(page.getByText(all)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByRole('heading', { name: 'Room on this device' })).toBeVisible();

  await context.setOffline(true);
  for (const gag of items) {
    await page.goto(`/gags/${gag.id}`);
    await expect(page.locator('.answer .word')).toBeVisible();
    await expect(page.getByText(gag.title, { exact: true }).first()).toBeVisible();
  }
  await page.goto('/people');
  await expect(page.getByText('No connection.')).toBeVisible();
  await expect(page.locator('a[href^="/people/"]').first()).toBeVisible();
});

test('taking everything for the day counts as it goes, and says when the connection went away', async ({
  page,
  context,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  await page.goto('/settings/phone');
  const take = page.getByRole('button', { name: 'Take everything for the day' });
  await press(take);
  await expect(page.getByText(en.ready.done)).toBeVisible({ timeout: 60_000 });
  await context.setOffline(true);
  await demo.stop();
  await press(take);
  await expect(page.getByText(en.ready.cutShort)).toBeVisible();
  await expect(page.getByText('gags are on this device, read ')).toBeVisible();
});

test('the sound of a hold can be turned off, and stays off', async ({ page }) => {
  await signIn(page, /coordinator/i);
  await page.goto('/settings/phone');
  const sound = page.getByRole('group', { name: en.alarm.sound });
  await expect(sound.getByRole('radio', { name: 'On' })).toBeChecked();
  await sound.getByRole('radio', { name: 'Off' }).check();
  await page.reload();
  await expect(sound.getByRole('radio', { name: 'Off' })).toBeChecked();
});
