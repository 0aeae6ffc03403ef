// Two phones write on one revision, one of them with no signal: nothing of either is lost, and what was built on
// the losing one does not go out as if nothing had happened.

import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { draftKept, newGag, ready, signIn } from './steps.ts';

test('a plan changed with no signal meets one saved in the meantime: both sides by facet, one new revision', async ({
  page,
  context,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await ready(page);
  await page.goto(`/gags/${gag.id}/edit`);
  await expect(page.getByLabel('Drop height')).toBeVisible();
  await context.setOffline(true);
  await page.getByLabel('Drop height').fill('16 m');
  await page.getByLabel('Why it changes').fill('The director asks for more.');
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await expect(page.getByText('It goes to the server by itself')).toBeVisible();

  const other = await Api.as(demo.url, 'coordinator');
  const { plan } = await other.get(`/gags/${gag.id}`);
  const facets = { ...plan.facets, medical: { ...plan.facets.medical, cover: 'Two paramedics' } };
  const body = { technique: plan.technique, facets, note: 'Cover agreed.' };
  await other.post(`/gags/${gag.id}/plans`, body, { 'If-Match': '"1"' });

  await context.setOffline(false);
  await page.goto('/settings/entries');
  await press(page.getByRole('link', { name: 'See both versions' }));
  await expect(page.getByRole('heading', { name: 'Someone saved another revision first' })).toBeVisible();
  await expect(page.getByText('Two paramedics').first()).toBeVisible();
  await press(page.getByRole('button', { name: 'Go on editing with these' }));
  await expect(page.getByText('Based on revision 2.')).toBeVisible();
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await page.waitForURL(new RegExp(`/gags/${gag.id}$`));
  const merged = (await other.get(`/gags/${gag.id}`)).plan;
  expect(merged.revision).toBe(3);
  expect(merged.facets.medical.cover).toBe('Two paramedics');
  expect(merged.facets.action.parameters.drop_height.value).toBeCloseTo(16);
});

test('a half-made change survives closing the app, and meets a plan that moved on underneath', async ({
  page,
  context,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await page.getByLabel('Drop height').fill('16 m');
  await page.getByLabel('Drop height').blur();
  await page.getByLabel('Why it changes').fill('Half a reason');
  await draftKept(page, 'Half a reason');
  await page.close();

  const again = await context.newPage();
  await again.goto(`/gags/${gag.id}/edit`);
  await expect(again.getByText('Not saved yet')).toBeVisible();
  await expect(again.getByLabel('Drop height')).toHaveValue(/16/);
  await expect(again.getByLabel('Why it changes')).toHaveValue('Half a reason');

  const other = await Api.as(demo.url, 'coordinator');
  const { plan } = await other.get(`/gags/${gag.id}`);
  const facets = { ...plan.facets, medical: { ...plan.facets.medical, cover: 'Two paramedics' } };
  const body = { technique: plan.technique, facets, note: 'Cover agreed.' };
  await other.post(`/gags/${gag.id}/plans`, body, { 'If-Match': '"1"' });
  await again.reload();
  await expect(again.getByRole('heading', { name: 'Someone saved another revision first' })).toBeVisible();
  await press(again.getByRole('button', { name: 'Go on editing with these' }));
  await expect(again.getByText('Based on revision 2.')).toBeVisible();
  await press(again.getByRole('button', { name: 'Begin again' }));
  await expect(again.getByLabel('Drop height')).not.toHaveValue(/16/);
});
