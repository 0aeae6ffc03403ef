import { expect, press, test } from './demo.ts';
import { approve, newGag, signIn } from './steps.ts';

test('a coordinator signs a gag on a phone, with a key that cannot be read out', async ({ page }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);

  await page.goto(`/gags/${gag.id}`);
  await expect(page.getByText(/^Signatures standing: 0 of \d+$/)).toBeVisible();
  await press(page.getByRole('link', { name: /^Sign as/ }));
  await expect(page.locator('blockquote')).not.toBeEmpty();

  const sign = page.getByRole('button', { name: /^(Choose|Sign:)/ });
  await expect(sign).toBeDisabled();
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('Signed', { exact: true })).toBeVisible();
  await expect(page.getByText('The gag is now:')).toBeVisible();

  await press(page.getByRole('link', { name: 'To the gag' }));
  await press(page.getByRole('link', { name: 'Signatures' }));
  await expect(page.getByText('Stands').first()).toBeVisible();
  await press(page.getByText('Every signature ever made'));
  await expect(page.getByText('Signature verified on this device')).toBeVisible();

  const extractable = await page.evaluate(async () => {
    const open = indexedDB.open('gagwright');
    const db = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = db.transaction('keys').objectStore('keys').getAll();
    const keys = await new Promise<{ pair: CryptoKeyPair }[]>((done) => {
      all.onsuccess = () => done(all.result);
    });
    return keys.map((one) => one.pair.privateKey.extractable);
  });
  expect(extractable).toEqual([false]);
});

test('a decline needs a reason, and stands with it', async ({ page }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await page.getByRole('radio', { name: 'Decline' }).check();
  await press(page.getByRole('button', { name: 'Sign: decline' }));
  await expect(page.getByText('Say why, so that it can be put right.')).toBeVisible();
  await page.getByLabel('Why you decline').fill('The ledge has not been surveyed.');
  await press(page.getByRole('button', { name: 'Sign: decline' }));
  await expect(page.getByText('Signed', { exact: true })).toBeVisible();
  await page.goto(`/gags/${gag.id}/sign-offs`);
  await expect(page.getByText('Declined').first()).toBeVisible();
});

test('a signature made with no signal waits on the phone, counts there at once, and is sent later', async ({
  page,
  context,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  // The first signature makes and registers the key; the second is made on a hill.
  await approve(page, gag);
  const second = await newGag(page);
  await page.goto(`/gags/${second.id}/sign?role=coordinator`);
  await expect(page.locator('blockquote')).toBeVisible();
  await expect(page.getByText('Setting').first()).toBeVisible();
  await context.setOffline(true);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('It goes to the server when there is a connection.')).toBeVisible();
  await press(page.getByRole('link', { name: 'To the gag' }));
  await expect(page.getByText('not sent yet, counted here')).toBeVisible();
  await expect(page.getByRole('link', { name: '1 entry to send' })).toBeVisible();
  await context.setOffline(false);
  await expect(page.getByRole('link', { name: '1 entry to send' })).toBeHidden({ timeout: 60_000 });
  await page.goto(`/gags/${second.id}/sign-offs`);
  await expect(page.getByText('Stands').first()).toBeVisible();
});

test('a plan that changes while it is read cannot be signed before it is read again', async ({
  page,
  browser,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await expect(page.getByRole('button', { name: 'Sign: approve' })).toBeEnabled();

  const other = await browser.newContext();
  const second = await other.newPage();
  await signIn(second, /coordinator/i);
  await second.goto(`/gags/${gag.id}/edit`);
  await second.getByLabel('Drop height').fill('14 m');
  await second.getByLabel('Why it changes').fill('Measured on the scout.');
  await press(second.getByRole('button', { name: 'Save as a new revision' }));
  await second.waitForURL(new RegExp(`/gags/${gag.id}$`));
  await other.close();

  await expect(page.getByText('The plan changed while you were reading: read it again.')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Approve', exact: true })).not.toBeChecked();
  // What is on the page is still what was there to read, and it cannot be signed.
  await press(page.locator('summary', { hasText: 'Action' }));
  await expect(page.getByText('14 m')).toHaveCount(0);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await expect(page.getByRole('button', { name: 'Sign: approve' })).toBeDisabled();

  await press(page.getByRole('button', { name: 'Read the plan as it is now' }));
  await expect(page.getByText('14 m').first()).toBeVisible();
  await expect(page.getByText('The plan changed while you were reading')).toHaveCount(0);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('Signed', { exact: true })).toBeVisible();
  await page.goto(`/gags/${gag.id}/sign-offs`);
  await expect(page.getByText(/on revision 2/).first()).toBeVisible();
});
