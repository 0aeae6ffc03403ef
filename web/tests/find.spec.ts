// Finding: from anywhere, by key or button, on what the phone holds, with and without a signal.

import { expect, press, test } from './demo.ts';
import { newGag, ready, signIn } from './steps.ts';

test('a gag is found by the beginning of a word, with no signal, and Enter opens it', async ({
  page,
  context,
}) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  const gag = await newGag(page);
  await page.goto('/gags');
  await expect(page.getByText(gag.code).first()).toBeVisible();
  await context.setOffline(true);
  await press(page.getByRole('button', { name: 'Find' }));
  const field = page.getByRole('combobox', { name: 'Find' });
  await expect(field).toBeFocused();
  await field.fill(gag.code.toLowerCase());
  await expect(page.getByRole('dialog').getByRole('option').first()).toContainText(gag.code);
  await page.keyboard.press('Enter');
  await page.waitForURL(new RegExp(`/gags/${gag.id}$`));
});

test('the keys of the desk find, move, open and close, and the focus comes back', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await signIn(page, /coordinator/i);
  await page.goto('/gags');
  await expect(page.locator('main [role=listitem] > a').first()).toBeVisible();
  await page.keyboard.press('j');
  await expect(page.locator('main [role=listitem] > a').first()).toBeFocused();
  await page.keyboard.press('j');
  const second = page.locator('main [role=listitem] > a').nth(1);
  await expect(second).toBeFocused();
  await page.keyboard.press('/');
  await expect(page.getByRole('combobox', { name: 'Find' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(second).toBeFocused();
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Find' }).fill('stop raise');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/help\/hold$/);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog').getByText('Through the rows')).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('g');
  await page.keyboard.press('p');
  await page.waitForURL(/\/people$/);
});

test('a packet kept on the phone opens with no signal', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  await page.goto('/packets');
  const row = page.locator('.packet').first();
  await press(row.getByRole('button', { name: /^Keep on this phone/ }));
  await expect(row).toContainText('Kept here:');
  await context.setOffline(true);
  await page.reload();
  const file = page.waitForEvent('download');
  await press(page.locator('.packet').first().getByRole('button', { name: /^Open/ }));
  expect((await file).suggestedFilename()).toMatch(/-r\d+\.pdf$/);
});
