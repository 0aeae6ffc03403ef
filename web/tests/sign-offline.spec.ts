// Signing from nothing but the gag's page: the draft is made on the phone by the same rules, and what is written
// before it is signed survives closing the app.

import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { draftKept, newGag, openPhone, readKept, ready, signIn } from './steps.ts';

test('a phone that kept only the gag’s page signs with no signal, and the server has it exactly once', async ({
  demo,
}, info) => {
  test.setTimeout(240_000);
  let phone = await openPhone(info, demo);
  let page = phone.pages()[0] ?? (await phone.newPage());
  // The server drafts nothing for this phone.
  const drafts: string[] = [];
  await phone.route('**/signoff-draft*', (route) => {
    drafts.push(route.request().url());
    return route.abort();
  });
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await ready(page);
  await page.goto(`/gags/${gag.id}`);
  await expect(page.locator('.answer .word')).toBeVisible();
  await readKept(page, `/gags/${gag.id}`);
  await phone.setOffline(true);
  // Only the page is without signal by that: the browser may still send in the background.
  await demo.stop();
  await press(page.getByRole('link', { name: /^Sign as/ }).first());
  await expect(page.locator('blockquote')).not.toBeEmpty();
  await expect(page.getByText('First time: read each part below.')).toBeVisible();
  await page.getByRole('radio', { name: 'Approve with conditions' }).check();
  await page.getByLabel('Conditions, one on each line').fill('Ledge swept before each take');
  await draftKept(page, 'Ledge swept before each take');
  await phone.close();

  phone = await openPhone(info, demo);
  await phone.route('**/signoff-draft*', (route) => route.abort());
  await phone.setOffline(true);
  page = phone.pages()[0] ?? (await phone.newPage());
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.getByText('Not saved yet: you wrote this')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Approve with conditions' })).toBeChecked();
  await expect(page.getByLabel('Conditions, one on each line')).toHaveValue('Ledge swept before each take');
  await press(page.getByRole('button', { name: 'Sign: approve with conditions' }));
  await expect(page.getByText('It goes to the server when there is a connection.')).toBeVisible();
  await press(page.getByRole('link', { name: 'To the gag' }));
  await expect(page.getByText('not sent yet, counted here')).toBeVisible();

  await demo.start();
  await phone.setOffline(false);
  await page.goto('/settings/entries');
  const entry = page.getByRole('listitem').filter({ hasText: 'Signature' }).filter({ hasText: gag.code });
  await expect(entry).toContainText('Sent', { timeout: 60_000 });
  await page.reload();
  await expect(entry).toContainText('Sent');
  const api = await Api.as(demo.url, 'coordinator');
  const { signoffs } = (await api.get(`/gags/${gag.id}`)).case;
  expect(signoffs).toHaveLength(1);
  // The draft of what was signed is gone with it.
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.locator('blockquote')).not.toBeEmpty();
  await expect(page.getByText('Not saved yet')).toHaveCount(0);
  await phone.close();
  expect(drafts.length).toBeGreaterThan(0);
});

test('a plan changed and signed again with no signal says what changed, and both arrive in order', async ({
  page,
  context,
  demo,
}) => {
  test.setTimeout(240_000);
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await ready(page);
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('The gag is now:')).toBeVisible();
  await press(page.getByRole('link', { name: 'To the gag' }));
  await expect(page.locator('.answer .word')).toBeVisible();
  await expect(page.getByText('Signatures standing: 1 of')).toBeVisible();

  await context.setOffline(true);
  await page.goto(`/gags/${gag.id}/edit`);
  await page.getByLabel('Drop height').fill('14 m');
  await page.getByLabel('Why it changes').fill('Measured on the scout.');
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await expect(page.getByText('Kept on this device.').first()).toBeVisible();
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.getByText('Changed since you signed revision 1')).toBeVisible();
  await expect(page.getByText('14 m').first()).toBeVisible();
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('It goes to the server when there is a connection.')).toBeVisible();

  await context.setOffline(false);
  await page.goto('/settings/entries');
  const entry = page
    .getByRole('listitem')
    .filter({ hasText: /^New revision/ })
    .filter({ hasText: gag.code });
  await expect(entry).toContainText('Sent', { timeout: 60_000 });
  await expect(page.getByRole('link', { name: /to send$/ })).toBeHidden({ timeout: 60_000 });
  const api = await Api.as(demo.url, 'coordinator');
  const now = await api.get(`/gags/${gag.id}`);
  expect(now.plan.revision).toBe(2);
  const standing = now.clearance.roles.find((one: { role: string }) => one.role === 'coordinator');
  expect(standing).toMatchObject({ state: 'standing', revision: 2 });
  expect(now.case.signoffs).toHaveLength(2);
});
