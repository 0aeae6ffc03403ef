// Every screen in both themes against axe, at phone size; and nothing wider than the phone.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, press, test } from './demo.ts';
import { approve, newGag, signIn, watchForFaults } from './steps.ts';

async function inspect(page: Page, name: string): Promise<void> {
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const said = found.violations.map(
    (one) => `${name}: ${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(' | ')}`,
  );
  expect(said).toEqual([]);
  // Not against innerWidth: a phone zooms out to a page that is too wide, and innerWidth grows with it.
  const wide = page.viewportSize()?.width ?? 0;
  const wider = (await page.evaluate(() => document.documentElement.scrollWidth)) - wide;
  expect(wider, `${name} is wider than the screen`).toBeLessThanOrEqual(0);
}

for (const theme of ['Dark slate', 'Daylight']) {
  test(`no violations on any screen, ${theme}`, async ({ page }) => {
    test.setTimeout(180_000);
    const faults = watchForFaults(page);
    await page.goto('/');
    await expect(page.getByText('Demo sign-ins')).toBeVisible();
    await inspect(page, 'sign in');
    await signIn(page, /coordinator/i);
    await page.goto('/settings/phone');
    await press(page.getByText(theme, { exact: true }));
    const gag = await newGag(page);
    await page.getByLabel('Drop height').fill('12 m');
    await expect(
      page.getByRole('heading', { name: 'Checks' }).or(page.getByText('Figures as you type')),
    ).toBeVisible();
    await inspect(page, 'edit');
    await page.getByLabel('Why it changes').fill('First figures.');
    await press(page.getByRole('button', { name: 'Save as a new revision' }));
    await page.waitForURL(new RegExp(`/gags/${gag.id}$`));
    await approve(page, gag);
    await page.goto('/people');
    const person = await page
      .locator('a[href^="/people/"]:not([href$="import"])')
      .first()
      .getAttribute('href');

    const screens: [string, string, string | RegExp][] = [
      ['today', '/', 'Next'],
      ['gags', '/gags', gag.code],
      ['answer', `/gags/${gag.id}`, 'Where and when'],
      ['plan', `/gags/${gag.id}/plan`, 'Revisions'],
      ['figures', `/gags/${gag.id}/figures`, 'Checks'],
      ['cast', `/gags/${gag.id}/cast`, 'Who could do it'],
      ['signatures', `/gags/${gag.id}/sign-offs`, 'Every signature ever made'],
      ['day', `/gags/${gag.id}/day`, 'Readings'],
      ['sign', `/gags/${gag.id}/sign?role=coordinator`, 'Your decision'],
      ['new gag', '/gags/new', 'How it is done'],
      ['people', '/people', 'Performers'],
      ['person', person ?? '', 'Skills'],
      ['import', '/people/import', 'Table'],
      ['trail', '/trail', 'Root'],
      ['holds', '/holds', /hold/i],
      ['settings', '/settings', 'Devices that sign'],
      ['this phone', '/settings/phone', 'Daylight'],
      ['entries', '/settings/entries', /entr|sent/i],
      ['account', '/settings/account', 'Sign out'],
      ['devices', '/settings/devices', 'Signing key'],
      ['access', '/settings/people', 'signs in'],
      ['about', '/settings/about', 'Cautions'],
      ['help', '/help', 'Sign a plan'],
      ['help on a task', '/help/hold', /Tap Hold/],
    ];
    for (const [name, path, sign] of screens) {
      await page.goto(path);
      await expect(page.getByText(sign).first()).toBeVisible();
      for (const summary of await page.locator('main summary:visible').all()) await press(summary);
      await page.waitForTimeout(150);
      await inspect(page, name);
    }
    await press(page.getByRole('button', { name: 'Hold', exact: true }));
    await expect(page.getByRole('dialog')).toBeVisible();
    await inspect(page, 'hold');
    expect(faults).toEqual([]);
  });
}
