import { expect, test } from './demo.ts';
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
  const measured = /\d (cm|kg)\b/;
  const clear = /Medically clear/;
  await signIn(page, /^(?!.*coordinator).*performer/i);
  // Their own page shows both, so that their absence on another's means something.
  await page.goto('/people');
  const people = page.locator('main a[href^="/people/"]');
  await people.filter({ hasText: 'P01' }).tap();
  const main = page.locator('main');
  await expect(main).toContainText(measured);
  await expect(main).toContainText(clear);

  await page.goto('/people');
  await people.filter({ hasText: 'P05' }).tap();
  await expect(page.getByText('not visible to your role')).toHaveCount(2);
  await expect(page.getByRole('heading', { name: 'Certificates' })).toBeVisible();
  await expect(main).not.toContainText(measured);
  await expect(main).not.toContainText(clear);
});
