// What was written with no signal reaches the server exactly once, over closing the browser; and one sign-in
// serves every tab.

import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { forgetToken, newGag, openPhone, ready, signIn } from './steps.ts';

test('sign with no signal, close, reopen with none, connect: the server has it exactly once', async ({
  demo,
}, info) => {
  test.setTimeout(240_000);
  let phone = await openPhone(info, demo);
  let page = phone.pages()[0] ?? (await phone.newPage());
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await ready(page);
  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.locator('blockquote')).toBeVisible();
  await phone.setOffline(true);
  // Only the page is without signal by that: the browser may still send in the background.
  await demo.stop();
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('It goes to the server when there is a connection.')).toBeVisible();
  await phone.close();

  phone = await openPhone(info, demo);
  await phone.setOffline(true);
  page = phone.pages()[0] ?? (await phone.newPage());
  await page.goto('/settings/entries');
  const entry = page.getByRole('listitem').filter({ hasText: 'Signature' }).filter({ hasText: gag.code });
  await expect(entry).toContainText('Waiting');
  await page.goto(`/gags/${gag.id}`);
  await expect(page.getByText('not sent yet, counted here')).toBeVisible();

  await demo.start();
  await phone.setOffline(false);
  await page.goto('/settings/entries');
  await expect(entry).toContainText('Sent', { timeout: 60_000 });
  await page.reload();
  await expect(entry).toContainText('Sent');
  const api = await Api.as(demo.url, 'coordinator');
  expect((await api.get(`/gags/${gag.id}`)).case.signoffs).toHaveLength(1);
  await phone.close();
});

test('two tabs that renew their sign-in in the same instant both stay signed in', async ({
  page,
  context,
}) => {
  await signIn(page, /coordinator/i);
  const second = await context.newPage();
  await second.goto('/gags');
  await expect(second.getByRole('button', { name: 'Hold', exact: true })).toBeVisible();
  for (let round = 0; round < 3; round += 1) {
    await forgetToken(page);
    await Promise.all([page.reload(), second.reload()]);
    for (const tab of [page, second]) {
      await expect(tab.getByRole('button', { name: 'Hold', exact: true })).toBeVisible();
      await expect(tab.getByText('No connection.')).toHaveCount(0);
    }
  }
  await expect(page.getByText('Demo sign-ins')).toHaveCount(0);
});
