// Test shots: logged with no signal, sent when there is one, and what they settle beside the model's own figures.

import { en } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, press, test } from './demo.ts';
import { ready, signIn } from './steps.ts';

/** What else test shots of this technique could settle, besides the friction. */
const OTHERS = ['Valve conductance', 'Line modulus', 'Dead volume'];

test('a test shot logged with no signal waits, counts at once, and is sent later', async ({
  page,
  context,
  demo,
}) => {
  await signIn(page, /coordinator/i);
  const api = await Api.as(demo.url, 'coordinator');
  const { items } = await api.get(`/productions/${api.production}/gags`);
  const gag = items.find((one: { code: string }) => one.code === 'G08').id;
  expect((await api.get(`/gags/${gag}/test-shots`)).items).toEqual([]);
  await ready(page);
  await page.goto(`/gags/${gag}/day`);
  await expect(page.getByText(en.shots.none)).toBeVisible();

  await context.setOffline(true);
  await press(page.getByText(en.shots.log));
  const shots = page.getByRole('region', { name: en.shots.title });
  await shots.getByRole('button', { name: en.shots.go }).click();
  await expect(shots.getByText(en.shots.needMeasured)).toBeVisible();
  await shots.getByLabel("Performer's mass").fill('176 lb');
  await shots.getByLabel('Reservoir pressure').fill('3 bar');
  await shots.getByLabel(en.shots.value).fill('4.2 m');
  await shots.getByLabel(en.shots.note).fill('Bag fell straight.');
  await press(shots.getByRole('button', { name: en.shots.go }));
  const logged = shots.getByRole('listitem').filter({ hasText: 'Bag fell straight.' });
  await expect(logged).toContainText(en.shots.waiting);
  await expect(logged).toContainText('Distance 4.2 m');
  await expect(logged).toContainText('Reservoir pressure 3 bar');
  // One measurement settles nothing, and the reason says which shot would.
  for (const other of OTHERS) await shots.getByRole('checkbox', { name: other }).uncheck();
  await expect(shots.getByText(/cannot settle .* A shot with .*, would tell most\./)).toBeVisible();
  expect((await api.get(`/gags/${gag}/test-shots`)).items).toEqual([]);

  await context.setOffline(false);
  await expect(logged).not.toContainText(en.shots.waiting, { timeout: 60_000 });
  const [sent, ...more] = (await api.get(`/gags/${gag}/test-shots`)).items;
  expect(more).toEqual([]);
  expect(sent).toMatchObject({ load: 'bag', technique: 'ratchet-pull', measured: { total_distance: 4.2 } });
  // An exact pound is 0.45359237 kg.
  expect(sent.inputs.performer_mass.value).toBeCloseTo(176 * 0.45359237, 6);
  expect(sent.inputs.reservoir_pressure.value).toBeCloseTo(300_000, 3);
});

test('a ladder of bags, then a person, settles the friction and predicts the plan', async ({
  page,
  demo,
}) => {
  // Seven shots are fitted beside the page, each some hundred times; a busy machine takes its time.
  test.setTimeout(240_000);
  await signIn(page, /coordinator/i);
  const api = await Api.as(demo.url, 'coordinator');
  const { items } = await api.get(`/productions/${api.production}/gags`);
  const gag = items.find((one: { code: string }) => one.code === 'G03').id;
  await page.goto(`/gags/${gag}/day`);
  const calibrated = page.getByRole('region', { name: en.shots.calibrated });
  for (const other of OTHERS) await calibrated.getByRole('checkbox', { name: other }).uncheck();
  await expect(calibrated.getByRole('heading', { name: en.shots.prediction })).toBeVisible({
    timeout: 60_000,
  });
  await expect(calibrated.getByRole('listitem').filter({ hasText: 'Distance' }).first()).toContainText(
    `${en.shots.model} `,
  );
  const friction = calibrated
    .getByRole('listitem')
    .filter({ hasText: 'Seal friction' })
    .filter({ hasText: en.shots.fitted });
  await expect(calibrated.getByRole('listitem').filter({ hasText: 'Line modulus' })).toHaveCount(0);
  await expect(friction).toHaveCount(1);
  // The demo's rig is one whose seals drag more than the model assumes: it throws less far than the model says.
  const numbers = async (row: typeof friction, pattern: RegExp) =>
    (pattern.exec((await row.textContent()) ?? '') ?? []).slice(1).map(Number);
  const [stated, found] = await numbers(friction, /assumed\s*(\d+) N.*from the shots\s*(\d+) N/s);
  expect(found).toBeGreaterThan(stated ?? Number.NaN);
  const distance = calibrated
    .getByRole('listitem')
    .filter({ hasText: /^Distance/ })
    .first();
  const [predicted, model] = await numbers(distance, /Distance\s*([\d.]+) m.*model alone ([\d.]+) m/s);
  expect(predicted).toBeLessThan(model ?? Number.NaN);

  await page.goto(`/gags/${gag}/figures`);
  await expect(page.getByRole('region', { name: en.shots.calibrated })).toContainText(en.shots.model, {
    timeout: 90_000,
  });
});
