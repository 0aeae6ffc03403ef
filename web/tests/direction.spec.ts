// Read from the right, and with names as long as names get: no screen of a phone is wider than the phone, and
// a name keeps its own direction.

import type { Page } from '@playwright/test';
import { expect, test } from './demo.ts';
import { signIn } from './steps.ts';

test.use({ viewport: { width: 360, height: 740 } });

const LONG = 'Maria-Theodora Featherstonehaugh-Cholmondeley von und zu Hohenschwangau-Traunstein';
const UNBROKEN = 'Kraftfahrzeughaftpflichtversicherungsgesellschaftsangestellterssohnemann';
const ARABIC = 'عبد الرحمن بن محمد القحطاني الشهري المعروف بأبي الفضل';
const HEBREW = 'אברהם־יצחק בן־דוד הכהן לוי־רוזנצוויג';
const CJK = '長宗我部勘解由左衛門尉元親二郎三郎太郎';
const NAMES = [LONG, UNBROKEN, ARABIC, HEBREW, CJK];

/** Every name the server answers with is one of ours, and the page is read from the right. */
async function strange(page: Page): Promise<void> {
  await page.addInitScript(() => {
    // Whenever the app says which way it is read, the other way is put back.
    const turn = () => {
      if (document.documentElement && document.documentElement.dir !== 'rtl')
        document.documentElement.dir = 'rtl';
    };
    turn();
    new MutationObserver(turn).observe(document, {
      subtree: true,
      attributes: true,
      attributeFilter: ['dir'],
    });
  });
  await page.route('**/api/v1/**', async (route) => {
    if (route.request().method() !== 'GET' || route.request().url().includes('/events'))
      return route.continue();
    const response = await route.fetch().catch(() => undefined);
    // A page that was left before its answer came wants none.
    if (!response) return route.abort().catch(() => undefined);
    if (!(response.headers()['content-type'] ?? '').includes('json')) return route.fulfill({ response });
    let at = 0;
    const text = (await response.text()).replaceAll(
      /"(name|title|location|actor_name)":"[^"]*"/g,
      (whole, key) => {
        // What a role, a technique or a check is called belongs to the rules, and is as long as it is.
        if (key === 'title' && !/^"title":"[A-Z][a-z]+ .* (?:the|a|over|off|out|down|up|at|by) /.test(whole))
          return whole;
        at += 1;
        return `"${key}":"${NAMES[at % NAMES.length]} ${at}"`;
      },
    );
    await route.fulfill({ response, body: text });
  });
}

/** What reaches out of the page sideways, by name; nothing on a page that fits. */
async function sticksOut(page: Page): Promise<string[]> {
  return await page.evaluate(() => {
    const page = document.documentElement;
    if (page.scrollWidth <= page.clientWidth) return [];
    const found = [`${page.scrollWidth} px wide`];
    for (const one of document.querySelectorAll('body *')) {
      const box = one.getBoundingClientRect();
      if (box.width > 0 && (box.right > page.clientWidth + 1 || box.left < -1))
        found.push(
          `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''}: ${one.textContent?.trim().slice(0, 40)}`,
        );
    }
    return found.slice(0, 6);
  });
}

test('every screen fits a phone when it is read from the right, with long names', async ({ page }) => {
  test.setTimeout(180_000);
  await signIn(page, /coordinator/);
  await page.goto('/gags');
  const gag = await page.locator('main a[href^="/gags/0"]').first().getAttribute('href');
  await page.goto('/people');
  const person = await page.locator('main a[href^="/people/0"]').first().getAttribute('href');
  await strange(page);

  const wide: Record<string, string[]> = {};
  for (const path of [
    '/',
    '/gags',
    '/gags/new',
    gag,
    `${gag}/plan`,
    `${gag}/figures`,
    `${gag}/cast`,
    `${gag}/signatures`,
    `${gag}/day`,
    `${gag}/edit`,
    `${gag}/sign?role=coordinator`,
    '/people',
    '/people/new',
    '/people/import',
    person,
    '/holds',
    '/trail',
    '/search',
    '/settings',
    '/settings/entries',
    '/settings/account',
    '/settings/devices',
    '/help',
    '/hold',
    '/no-such-page',
  ]) {
    await page.goto(path ?? '/');
    await expect(page.locator('html')).toHaveAttribute('dir', 'rtl');
    await expect(page.getByRole('heading').first()).toBeVisible();
    await page.waitForTimeout(400);
    const out = await sticksOut(page);
    if (out.length > 0) wide[path ?? '/'] = out;
  }
  await page.goto('/');
  await page.locator('nav button').click();
  await expect(page.getByRole('dialog')).toBeVisible();
  const out = await sticksOut(page);
  if (out.length > 0) wide.hold = out;
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  expect(wide).toEqual({});
});

test('what sticks out is seen by the check itself', async ({ page }) => {
  await page.goto('/hold');
  await expect(page.getByRole('heading').first()).toBeVisible();
  await page.evaluate(() => {
    const wide = document.createElement('div');
    wide.style.inlineSize = '900px';
    wide.textContent = 'wider than a phone';
    document.body.append(wide);
  });
  expect((await sticksOut(page)).join()).toContain('wider than a phone');
});
