// After a take, with no signal: what was said shows at once, reaches the server, and says what was used.

import { en } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { ready, signIn } from './steps.ts';

test('a debrief made with no signal shows at once, and is sent with what was not used left out', async ({
  page,
  context,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  const api = await Api.as(demo.url, 'coordinator');
  const { items } = await api.get(`/productions/${api.production}/gags`);
  const gag = items.find((one: { code: string }) => one.code === 'G14');
  await page.goto(`/gags/${gag.id}/day`);
  await ready(page);
  await expect(page.getByText(en.onDay.debriefRecord)).toBeVisible();

  await context.setOffline(true);
  await press(page.getByText(en.onDay.debriefRecord));
  await expect(page.getByLabel(en.onDay.ledBy)).toHaveValue(api.person);
  await page.getByLabel(en.onDay.said.next_time).fill('A second bag at the lip');
  const used = page.getByRole('group', { name: /^What .* used$/ }).first();
  await used.getByRole('checkbox').first().uncheck();
  await press(page.getByRole('button', { name: en.onDay.debriefGo }));
  await expect(page.getByText('A second bag at the lip')).toBeVisible();
  await expect(page.getByRole('button', { name: en.onDay.debriefLog(1) })).toBeVisible();

  await context.setOffline(false);
  const kept = async () => (await api.get(`/gags/${gag.id}`)).case.day.debriefs;
  await expect.poll(async () => (await kept()).length, { timeout: 60_000 }).toBe(2);
  const debrief = (await kept())[1];
  expect(debrief).toMatchObject({ led_by: api.person, next_time: 'A second bag at the lip' });
  const skills = (await api.get(`/gags/${gag.id}`)).plan.facets.cast.slots
    .find((one: { person: string }) => one.person === debrief.used[0].person)
    .requirements.filter((one: { kind: string }) => one.kind === 'skill');
  expect(debrief.used[0].skills).toHaveLength(skills.length - 1);
});
