// Writing people: a certificate in a handful of taps, an edit with no signal, and somebody else writing first.

import type { Page } from '@playwright/test';
import { expect, press, test } from './demo.ts';
import { ready, signIn } from './steps.ts';

async function firstPerformer(page: Page): Promise<string> {
  await page.goto('/people');
  await press(page.getByText('Performers', { exact: true }));
  await page.getByRole('searchbox').fill('performer');
  await press(page.locator('main [role=listitem] > a').first());
  await page.waitForURL(/\/people\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}

test('a certificate is added from the person with its kind, its dates and the evidence', async ({ page }) => {
  await signIn(page, /coordinator/i);
  const person = await firstPerformer(page);
  await press(page.getByRole('link', { name: 'Add a certificate' }));
  await page.getByRole('combobox', { name: 'Which certificate' }).fill('wilder');
  await page.keyboard.press('Enter');
  await press(page.getByRole('button', { name: 'Save the certificate' }));
  await expect(page.getByText('Write the day it was issued.')).toBeVisible();
  await page.getByLabel('Issued', { exact: true }).fill('2026-02-01');
  await page.getByLabel('Good until').fill('2026-01-01');
  await expect(page.getByText('It ends before it was issued.')).toBeVisible();
  await page.getByLabel('Good until').fill('2028-01-31');
  await press(page.getByText('Saw the original'));
  await press(page.getByRole('button', { name: 'Save the certificate' }));
  await page.waitForURL(new RegExp(`${person}#certificates$`));
  const row = page.getByRole('listitem').filter({ hasText: 'Wilderness first responder' }).last();
  await expect(row).toContainText('Saw the original');
  await expect(row).toContainText('2028');
});

test('two edits with no signal build on one another, and both arrive', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  const person = await firstPerformer(page);
  await expect(page.getByRole('link', { name: 'Edit this person' })).toBeVisible();
  await context.setOffline(true);
  for (const what of ['performer, first change', 'performer, second change']) {
    await press(page.getByRole('link', { name: 'Edit this person' }));
    await page.getByLabel('What they do').fill(what);
    await press(page.getByRole('button', { name: 'Save the person' }));
    await page.waitForURL(new RegExp(`${person}$`));
    await expect(page.getByText(what)).toBeVisible();
    await expect(page.getByText('Written on this phone and not sent yet')).toBeVisible();
  }
  await context.setOffline(false);
  await page.reload();
  await expect(page.getByText('Written on this phone and not sent yet')).toHaveCount(0);
  await expect(page.getByText('performer, second change')).toBeVisible();
});

test('when somebody else wrote first, both sides are shown and nothing is lost', async ({
  page,
  context,
}) => {
  await signIn(page, /coordinator/i);
  const person = await firstPerformer(page);
  await press(page.getByRole('link', { name: 'Edit this person' }));
  await page.getByLabel('What they do').fill('performer, mine');

  const other = await context.newPage();
  await other.goto(`${person}/edit`);
  await other.getByLabel('What they do').fill('performer, theirs');
  await press(other.getByRole('button', { name: 'Save the person' }));
  await other.waitForURL(new RegExp(`${person}$`));

  await press(page.getByRole('button', { name: 'Save the person' }));
  await expect(page.getByText('Someone else wrote first')).toBeVisible();
  await expect(page.getByText('performer, theirs')).toBeVisible();
  await expect(page.getByText('performer, mine')).toBeVisible();
  await press(page.getByText('Take yours'));
  await press(page.getByRole('button', { name: 'Go on editing with these' }));
  await press(page.getByRole('button', { name: 'Save the person' }));
  await page.waitForURL(new RegExp(`${person}$`));
  await expect(page.getByText('performer, mine')).toBeVisible();
});
