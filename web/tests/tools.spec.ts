// What can be asked of a figure, from the plan the phone has: what moves it, what would make it another, how sure
// it is; what moved between two revisions; and the handbook. None of it asks the server.

import { en } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, type Page, press, test } from './demo.ts';
import { newGag, ready, signIn } from './steps.ts';

async function gagOf(url: string, code: string): Promise<string> {
  const api = await Api.as(url, 'coordinator');
  const { items } = await api.get(`/productions/${api.production}/gags`);
  return items.find((one: { code: string }) => one.code === code).id;
}

async function openFigure(page: Page, title: string): Promise<ReturnType<Page['getByRole']>> {
  await press(page.getByRole('button', { name: new RegExp(`^${title}`) }).first());
  const sheet = page.getByRole('dialog', { name: title, exact: true });
  await expect(sheet).toBeVisible();
  return sheet;
}

const part = (sheet: ReturnType<Page['getByRole']>, name: string) =>
  sheet.getByRole('radio', { name, exact: true });

test('what moves a figure stands in order, with no signal', async ({ page, context, demo }) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  const gag = await gagOf(demo.url, 'G05');
  await page.goto(`/gags/${gag}/figures`);
  await expect(page.getByRole('heading', { name: 'Checks' })).toBeVisible();
  await context.setOffline(true);
  const sheet = await openFigure(page, 'Impact speed');
  const rows = sheet.getByRole('region', { name: en.tools.moves }).getByRole('listitem');
  await expect(rows.first()).toContainText('% of the swing');
  const shares = (await rows.allTextContents()).map((text) =>
    Number(/(\d+) % of the swing/.exec(text)?.[1] ?? 0),
  );
  expect(shares.length).toBeGreaterThan(1);
  expect(shares).toEqual(shares.toSorted((a, b) => b - a));
  // A free fall's speed follows from its height, and from drag: nothing of the catcher comes into it.
  await expect(rows.filter({ hasText: 'Drop height' })).toHaveCount(1);
  await expect(rows.filter({ hasText: 'Catcher depth' })).toHaveCount(0);
});

test('a wanted figure gives the input, which goes into the editor and nowhere else', async ({
  page,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await gagOf(demo.url, 'G05');
  await page.goto(`/gags/${gag}/figures`);
  const sheet = await openFigure(page, 'Impact speed');
  await part(sheet, en.tools.make).check();
  await sheet.getByLabel(en.tools.wanted).fill('14 m/s');
  await sheet.getByLabel(en.tools.by).selectOption({ label: 'Drop height' });
  await press(sheet.getByRole('button', { name: en.tools.find }));
  const take = sheet.getByRole('link', { name: /^Put .* in the plan$/ });
  await expect(take).toHaveCount(1);
  // Free fall, v²/2g: 9.99 m; the air takes its share, so it is a little more.
  const metres = Number(/Put ([\d.]+) m /.exec((await take.textContent()) ?? '')?.[1]);
  expect(metres).toBeGreaterThan(9.99);
  expect(metres).toBeLessThan(10.6);
  await press(take);
  await page.waitForURL(new RegExp(`/gags/${gag}/edit$`));
  await expect(
    page.getByText(`Drop height is ${metres} m in your draft now.`, { exact: false }),
  ).toBeVisible();
  await expect(page.getByLabel('Drop height')).toHaveValue(`${metres} m`);
  // Nothing is saved by it.
  await page.goto(`/gags/${gag}/plan`);
  await expect(page.getByText('Revision 1 by')).toBeVisible();
  await expect(page.getByText('Revision 2 by')).toHaveCount(0);
});

test('in the editor a root sets its field; out of reach, it says how far the figure goes', async ({
  page,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await gagOf(demo.url, 'G05');
  await page.goto(`/gags/${gag}/edit`);
  await expect(page.getByRole('region', { name: en.edit.figures })).toContainText('m/s');
  const sheet = await openFigure(page, 'Impact speed');
  await part(sheet, en.tools.make).check();
  await sheet.getByLabel(en.tools.by).selectOption({ label: 'Drop height' });
  await sheet.getByLabel(en.tools.wanted).fill('900 m/s');
  await press(sheet.getByRole('button', { name: en.tools.find }));
  await expect(sheet.getByText(/^Impact speed does not become 900 m\/s/)).toBeVisible();
  await sheet.getByLabel(en.tools.wanted).fill('12 m/s');
  await press(sheet.getByRole('button', { name: en.tools.find }));
  const take = sheet.getByRole('button', { name: /^Put .* in the plan$/ });
  const height = /Put ([\d.]+ m) /.exec((await take.textContent()) ?? '')?.[1] ?? '';
  await press(take);
  await expect(
    sheet.getByText(`Drop height is ${height} in your draft now.`, { exact: false }),
  ).toBeVisible();
  await press(sheet.getByRole('button', { name: en.app.close }));
  await expect(page.getByLabel('Drop height')).toHaveValue(height);
  await expect(page.getByRole('region', { name: en.edit.figures })).toContainText('12 m/s');
});

test('how sure a figure is: three numbers, and each limit as draws of draws', async ({ page, demo }) => {
  await signIn(page, /coordinator/i);
  const gag = await gagOf(demo.url, 'G05');
  await page.goto(`/gags/${gag}/figures`);
  await press(page.getByRole('button', { name: /^Mean while stopping: / }));
  const sheet = page.getByRole('dialog', { name: 'Mean while stopping' });
  await part(sheet, en.tools.sure).check();
  const sure = sheet.getByRole('region', { name: en.tools.sure });
  await expect(sure).toContainText('1000 draws, seed 1');
  await expect(sure.getByRole('listitem').first()).toContainText(
    /Outside in (none|\d+|every one) of \d+ draws\./,
  );
  const metric = await sure.locator('dd').allTextContents();
  await sheet.getByRole('radio', { name: en.edit.imperial }).check();
  await expect(sheet.getByText(metric[1] ?? '').first()).toBeVisible();
});

test('the units of figures and bars change where they are read', async ({ page, demo }) => {
  await signIn(page, /coordinator/i);
  await page.goto(`/gags/${await gagOf(demo.url, 'G05')}/figures`);
  const bar = page.getByRole('img', { name: /^Drop against the catcher's ceiling: / });
  await expect(bar).toHaveAccessibleName(/m, between .* m and .* m; limit at most 12\.2 m\. /);
  await page.getByRole('radio', { name: en.edit.imperial }).check();
  // Ontario film guideline 25: 40 ft for boxes.
  await expect(bar).toHaveAccessibleName(/ft, between .* ft and .* ft; limit at most 40 ft\. /);
});

test('a revision says which figures moved, and so does the page that is signed', async ({ page }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  const save = async (why: string) => {
    await page.getByLabel(en.edit.note).fill(why);
    await press(page.getByRole('button', { name: en.edit.save }));
    await page.waitForURL(new RegExp(`/gags/${gag.id}$`));
  };
  await page.getByLabel('Drop height').fill('10 m');
  await page.getByLabel("Performer's mass").fill('70 kg');
  await save('As scouted.');
  await page.goto(`/gags/${gag.id}/edit`);
  await page.getByLabel('Drop height').fill('14 m');
  const changes = page.getByRole('region', { name: en.edit.changes });
  const moves = changes.getByRole('listitem').filter({ hasText: 'Impact speed' });
  await expect(moves).toContainText('→');
  await save('The director asks for more.');
  await page.goto(`/gags/${gag.id}/plan`);
  await press(page.getByText(en.moved.title, { exact: true }).first());
  const row = page
    .getByRole('listitem')
    .filter({ hasText: 'Revision 3 by' })
    .getByRole('listitem')
    .filter({ hasText: 'Impact speed' });
  await expect(row).toContainText(/1[34](\.\d)? m\/s\s*→.*1[56](\.\d)? m\/s/);
});

test('the handbook has a page for each technique, with no signal', async ({ page, context }) => {
  await signIn(page, /coordinator/i);
  await ready(page);
  await page.goto('/help');
  await context.setOffline(true);
  await press(page.getByRole('link', { name: en.handbook.title }));
  await expect(page.getByRole('heading', { name: en.groups.falls })).toBeVisible();
  await press(page.getByRole('link', { name: 'Ratchet pull' }));
  await expect(page.getByRole('heading', { name: 'Ratchet pull', level: 1 })).toBeVisible();
  await expect(page.getByRole('region', { name: en.handbook.settles })).toContainText('Seal friction');
  await expect(page.getByRole('region', { name: en.handbook.asks })).toContainText(en.handbook.noDefault);
  await page.goto('/help/techniques/no-such');
  await expect(page.getByText(en.app.notFound)).toBeVisible();
});
