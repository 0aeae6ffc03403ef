// A sign-in that ends while there is no signal: what was written is kept, said plainly, never sent by anybody else,
// and sent once its writer is back.

import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { forgetToken, holdEverything, holdsRaised, ready, signIn } from './steps.ts';

test('entries outlive the sign-in, and go out only as the person who made them', async ({
  page,
  context,
  demo,
}) => {
  test.setTimeout(240_000);
  await signIn(page, /coordinator/i);
  await ready(page);
  await context.setOffline(true);
  await holdEverything(page);
  await expect(page.getByText('Held on this device.').first()).toBeVisible();

  // Later the token has run out, and the cookie is no longer good.
  await context.clearCookies();
  await forgetToken(page);
  await page.reload();
  await expect(page.getByRole('link', { name: '1 entry to send' })).toBeVisible();
  await context.setOffline(false);
  await expect(page.getByText('Your sign-in has ended.')).toBeVisible();
  await expect(page.getByText('1 entry is kept and will be sent then.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('1 entry is kept and will be sent then.')).toBeVisible();

  const api = await Api.as(demo.url, 'medic');
  const holds = () => holdsRaised(api);
  await press(page.getByRole('button').filter({ hasText: /medic/i }).first());
  await expect(page.getByRole('button', { name: 'Hold', exact: true })).toBeVisible();
  await page.goto('/settings/entries');
  await expect(page.getByText(/1 entry of .* waits on this device\./)).toBeVisible();
  await expect(page.getByText('Nothing waits to be sent.')).toBeVisible();
  expect(await holds()).toHaveLength(0);

  await page.goto('/settings/account');
  await press(page.getByRole('button', { name: 'Sign out' }));
  await press(
    page
      .getByRole('button')
      .filter({ hasText: /coordinator/i })
      .first(),
  );
  await expect.poll(async () => (await holds()).length, { timeout: 60_000 }).toBe(1);
  const coordinator = await Api.as(demo.url, 'coordinator');
  expect((await holds())[0]?.actor).toBe(coordinator.person);
});
