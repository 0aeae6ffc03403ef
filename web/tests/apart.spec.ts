// What happened while this phone was away is said as soon as it knows: a plan that moved on under what waits here,
// and a hold raised while the app was closed.

import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { newGag, signIn } from './steps.ts';

test('a waiting revision whose plan moved on is said before the server refuses it, and then shown beside the other', async ({
  page,
  context,
  demo,
}) => {
  test.setTimeout(240_000);
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  // Reading works and writing does not, as at the edge of a mast.
  const sent: string[] = [];
  await context.route(/\/plans$/, (route) => {
    sent.push(route.request().url());
    return route.abort();
  });
  await page.goto(`/gags/${gag.id}/edit`);
  await page.getByLabel('Drop height').fill('14 m');
  await page.getByLabel('Why it changes').fill('Measured on the scout.');
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await expect(page.getByText('Kept on this device.').first()).toBeVisible();
  expect(sent.length).toBeGreaterThan(0);

  const api = await Api.as(demo.url, 'coordinator');
  const before = await api.get(`/gags/${gag.id}`);
  const facets = {
    ...before.plan.facets,
    medical: { ...before.plan.facets.medical, cover: 'Two paramedics' },
  };
  await api.post(
    `/gags/${gag.id}/plans`,
    { technique: before.plan.technique, facets, note: 'More cover.' },
    { 'If-Match': '"1"' },
  );
  await page.goto(`/gags/${gag.id}`);
  await expect(page.getByText('You wrote a revision here on revision 1')).toBeVisible();
  // Something of it may have reached the server, so its word is waited for before anybody chooses.
  await expect(page.getByRole('link', { name: 'See both versions' })).toHaveCount(0);
  await context.unroute(/\/plans$/);
  await page.goto('/settings/entries');
  await press(page.getByRole('link', { name: 'See both versions' }));
  await expect(page.getByText('Two paramedics').first()).toBeVisible();
  await expect(page.getByText('14 m').first()).toBeVisible();
});

test('a hold raised while the app was closed alarms when it is opened, until it was seen', async ({
  page,
  context,
  demo,
}) => {
  await signIn(page, /medic/i);
  // The phone has heard of something, so it has a place to go on from.
  const api = await Api.as(demo.url, 'coordinator');
  const place = () =>
    page.evaluate(
      () =>
        new Promise<number>((done) => {
          const open = indexedDB.open('gagwright');
          open.onsuccess = () => {
            const keys = open.result.transaction('settings').objectStore('settings').getAllKeys();
            keys.onsuccess = () => {
              open.result.close();
              done(keys.result.filter((one) => String(one).startsWith('feed ')).length);
            };
          };
        }),
    );
  await expect.poll(place, { timeout: 60_000 }).toBe(1);
  await page.close();
  await api.post(`/productions/${api.production}/holds`, { id: crypto.randomUUID() });

  for (const time of ['first', 'second']) {
    const opened = await context.newPage();
    await opened.goto('/gags');
    const alert = opened.locator('[role=alert] .alarm').filter({ hasText: 'Hold: everything' });
    await expect(alert, `opened for the ${time} time`).toBeVisible({ timeout: 60_000 });
    if (time === 'second') {
      await press(alert.getByRole('button', { name: 'I have seen it' }));
      await opened.waitForTimeout(1_000);
    }
    await opened.close();
  }
  const last = await context.newPage();
  await last.goto('/gags');
  await expect(last.getByRole('button', { name: 'Hold', exact: true })).toBeVisible();
  await last.waitForTimeout(4_000);
  await expect(last.locator('[role=alert] .alarm')).toHaveCount(0);
});
