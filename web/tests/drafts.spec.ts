// What somebody has begun to write of a person is still there when the app is opened again.

import { expect, press, test } from './demo.ts';
import { draftKept, signIn } from './steps.ts';

test('a person half written is there after closing, and can be begun again', async ({ page }) => {
  await signIn(page, /coordinator/i);
  await page.goto('/people/new');
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Ifeoma Brackenridge');
  await draftKept(page, 'Ifeoma Brackenridge');
  await page.reload();
  await expect(page.getByText('Not saved yet: you wrote this')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Ifeoma Brackenridge');
  await press(page.getByRole('button', { name: 'Begin again' }));
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('');
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('');
  await expect(page.getByText('Not saved yet')).toHaveCount(0);
});

test('a certificate half written is there after closing', async ({ page }) => {
  await signIn(page, /coordinator/i);
  await page.goto('/people');
  const person = await page.locator('a[href^="/people/0"]').first().getAttribute('href');
  await page.goto(`${person}/certificate`);
  await page.locator('input[type=date]').first().fill('2026-03-04');
  await draftKept(page, '2026-03-04');
  await page.reload();
  await expect(page.getByText('Not saved yet: you wrote this')).toBeVisible();
  await expect(page.locator('input[type=date]').first()).toHaveValue('2026-03-04');
});
