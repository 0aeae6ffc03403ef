import { expect, press, test } from './demo.ts';
import { newGag, signIn } from './steps.ts';

test('two taps hold a gag from its page; agreeing with the cause releases it', async ({ page }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.goto(`/gags/${gag.id}`);
  await expect(page.getByText(gag.code).first()).toBeVisible();

  await press(page.getByRole('button', { name: 'Hold', exact: true }));
  await press(page.getByRole('button', { name: `Hold ${gag.code}` }));
  await expect(page.getByText('Held.', { exact: true })).toBeVisible();
  await press(page.getByRole('button', { name: 'Close' }));
  await expect(page.locator('.answer .word')).toHaveText('Held');

  await page.goto('/holds');
  const hold = page.getByRole('listitem').filter({ hasText: gag.code });
  await expect(hold).toContainText('No reason given.');
  await press(hold.getByText('Agree to release', { exact: true }).first());
  const agree = hold.getByRole('button', { name: 'Agree to release' });
  await hold
    .getByLabel('The cause, and what was done')
    .fill('Radio check failed; batteries changed, check repeated.');
  await press(agree);
  await expect(hold.getByText('Agreed to release')).toBeVisible();
  await page.goto(`/gags/${gag.id}`);
  await expect(page.locator('.answer .word')).toBeVisible();
  await expect(page.locator('.answer .word')).not.toHaveText('Held');
});
