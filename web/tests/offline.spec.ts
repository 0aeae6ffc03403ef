import { expect, test } from '@playwright/test';
import { newGag, signIn } from './steps.ts';

test('with no signal a reload still shows today and a gag that was read', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.goto(`/gags/${gag.id}/figures`);
  await expect(page.getByRole('heading', { name: 'Checks' })).toBeVisible();
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Next' })).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await expect(page.getByRole('heading', { name: 'Next' })).toBeVisible();

  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Next' })).toBeVisible();
  await expect(page.getByText('No connection.')).toBeVisible();
  await page.goto(`/gags/${gag.id}/figures`);
  await expect(page.getByRole('heading', { name: 'Checks' })).toBeVisible();
  await expect(page.getByText('No connection.')).toBeVisible();

  await page.getByRole('button', { name: 'Hold', exact: true }).tap();
  await page.getByRole('button', { name: `Hold ${gag.code}` }).tap();
  await expect(page.getByText('Held on this device.')).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).tap();
  await expect(page.getByText('Held', { exact: true }).first()).toBeVisible();
  await expect(page.getByText('Judged on this device')).toBeVisible();
  await context.setOffline(false);
});
