import { expect, test } from '@playwright/test';
import { signIn } from './steps.ts';

test('a roster with a bad row is refused whole, row by row, and the trail proves itself', async ({
  page,
}) => {
  await signIn(page, /coordinator/i);
  await page.goto('/people/import');
  await page.getByLabel('File').setInputFiles({
    name: 'people.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('code,name,occupation,performs\nX91,Māra Vītola,rigger,perhaps\n', 'utf8'),
  });
  await page.getByRole('button', { name: 'Import', exact: true }).tap();
  await expect(page.getByText(/Nothing was stored: 1 error/)).toBeVisible();
  await expect(page.getByRole('row').filter({ hasText: 'performs' })).toBeVisible();

  await page.goto('/trail');
  await page.getByText('What the entry says').first().tap();
  await page.getByRole('button', { name: 'Check the proof' }).first().tap();
  await expect(page.getByText('The proof holds')).toBeVisible();
});

test('a performer sees no other person’s personal or medical data', async ({ page }) => {
  await signIn(page, /^(?!.*coordinator).*performer/i);
  await page.goto('/people');
  const others = page.locator('main li a[href^="/people/"]');
  await expect(others.first()).toBeVisible();
  await others.last().tap();
  await expect(page.getByText('not visible to your role').first()).toBeVisible();
});
