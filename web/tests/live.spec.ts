// A hold reaches every connected phone within a second and makes itself noticed.

import { en } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { newGag, signIn } from './steps.ts';

test('a hold is across another phone’s screen within a second, until it has been seen', async ({
  page,
  browser,
  demo,
}, info) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  const { viewport, hasTouch, isMobile, locale } = info.project.use;
  const other = await browser.newContext({ baseURL: demo.url, viewport, hasTouch, isMobile, locale });
  const phone = await other.newPage();
  await phone.addInitScript(() => {
    const told = globalThis as unknown as { alarmAt?: number };
    new MutationObserver(() => {
      if (!told.alarmAt && document.querySelector('[role=alert] .alarm')) told.alarmAt = Date.now();
    }).observe(document, { childList: true, subtree: true });
  });
  const listening = phone.waitForResponse(
    (one) => one.url().includes('/changes') || one.url().includes('/events'),
  );
  await signIn(phone, /medic/i);
  await listening;
  await phone.waitForTimeout(1_500);

  const api = await Api.as(demo.url, 'coordinator');
  const asked = Date.now();
  await api.post(`/productions/${api.production}/holds`, { id: crypto.randomUUID(), gag: gag.id });
  const alert = phone.locator('[role=alert] .alarm').filter({ hasText: `Hold: ${gag.code}` });
  await expect(alert).toBeVisible();
  const at = await phone.evaluate(() => (globalThis as unknown as { alarmAt: number }).alarmAt);
  expect(at - asked).toBeLessThan(1_000);
  await expect(alert).toContainText('Raised by');
  expect(await phone.title()).toMatch(/^\(1\) /);
  await press(alert.getByRole('link', { name: 'See the hold' }));
  await expect(phone).toHaveURL(new RegExp(`/gags/${gag.id}$`));
  await expect(phone.locator('.answer .word')).toHaveText('Held');
  await expect(alert).toBeHidden();
  await other.close();
});

test('an incident is across another phone’s screen, and leads to what happened', async ({ page, demo }) => {
  await signIn(page, /medic/i);
  await page.waitForTimeout(1_500);
  const api = await Api.as(demo.url, 'coordinator');
  const { items } = await api.get(`/productions/${api.production}/gags`);
  const gag = items[0] as { id: string; code: string };
  const id = crypto.randomUUID();
  const at = new Date().toISOString();
  const body = { id, kind: 'near_miss', gag: gag.id, at, what: 'A shackle fell.' };
  await api.post(`/productions/${api.production}/incidents`, body);
  const alert = page.locator('[role=alert] .alarm').filter({ hasText: en.alarm.incidentOn(gag.code) });
  await expect(alert).toContainText('The plan is frozen.');
  await press(alert.getByRole('link', { name: en.alarm.seeIncident }));
  await expect(page).toHaveURL(new RegExp(`/gags/${gag.id}/day$`));
  await expect(page.getByText(en.onDay.frozen).first()).toBeVisible();
  await expect(alert).toBeHidden();
});

test('a phone that had no signal hears of the hold when it is back', async ({ page, context, demo }) => {
  await signIn(page, /medic/i);
  await page.waitForTimeout(1_500);
  const alert = page.locator('[role=alert] .alarm').filter({ hasText: 'Hold: everything' });
  await context.setOffline(true);
  // The stream that was open ends with its server; nothing new gets through to the phone.
  await demo.stop();
  await demo.start();
  const api = await Api.as(demo.url, 'coordinator');
  await api.post(`/productions/${api.production}/holds`, { id: crypto.randomUUID() });
  await page.waitForTimeout(3_000);
  await expect(alert).toHaveCount(0);
  await context.setOffline(false);
  await expect(alert).toBeVisible({ timeout: 60_000 });
});
