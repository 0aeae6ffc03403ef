// Every screen, rendered in three sizes and in both themes, pictured, and held to what must be true of any screen
// (walk.ts). The pictures are in tests/out/screens, for people to look at.

import { mkdirSync, readFileSync } from 'node:fs';
import { en } from '../src/texts/en/index.ts';
import { expect, type Page, test } from './demo.ts';
import { barriers } from './inspect.ts';
import { signInAs } from './steps.ts';
import { setScene, views } from './views.ts';
import { asPattern, holdToRules, open, pictures, unfold, walks, watch } from './walk.ts';

// The pictures and the lists of faults say what is wrong; a copy of the page at each step costs more than the step.
test.use({ trace: 'off' });

/** As choosing the theme in the settings does. */
async function wear(page: Page, theme: string): Promise<void> {
  await page.evaluate((theme) => {
    document.documentElement.dataset.theme = theme;
  }, theme);
}

for (const [title, who, part] of walks()) {
  test(title, async ({ page, demo, size }) => {
    test.setTimeout(240_000);
    const scene = await setScene(demo.url);
    const heard = watch(page);
    mkdirSync(`${pictures}${size}`, { recursive: true });
    if (who !== 'nobody') await signInAs(page, who);
    for (const view of part) {
      await open(page, view, scene, en);
      await wear(page, 'daylight');
      await page.screenshot({ path: `${pictures}${size}/${view.name}-daylight.png`, fullPage: true });
      // A theme changes colours alone: one size is enough to look at the other.
      if (size === 'phone') {
        await wear(page, 'slate');
        await page.screenshot({ path: `${pictures}${size}/${view.name}-slate.png`, fullPage: true });
        await wear(page, 'daylight');
      }
      // Not before the pictures: a long list with everything unfolded takes a minute to draw.
      await unfold(page);
      // Colours are the same in every size; the other theme's are looked at with everything else, below.
      if (size === 'phone') {
        expect.soft(await barriers(page, 'colours'), `${view.name}, daylight`).toEqual([]);
      }
      await wear(page, 'slate');
      // A tablet shows what the phone or the desk does.
      await holdToRules(page, `${view.name}, slate`, size, size === 'tablet');
    }
    expect(heard).toEqual([]);
  });
}

test('every route has a picture', () => {
  const source = readFileSync(new URL('../src/App.svelte', import.meta.url), 'utf8');
  const routes = [...source.matchAll(/\['(\/[^']*)', \w+\]|router\.path === '([^']+)'/g)].map(
    (found) => found[1] ?? found[2] ?? '',
  );
  expect(routes.length).toBeGreaterThan(10);
  // Any id does here: paths are only matched, and the first route that fits takes the path, as in the app.
  const anyId = new Proxy({}, { get: () => 'id' });
  const fits = routes.map(asPattern);
  const pictured = Object.values(views)
    .flat()
    .map((view) => view.reaches ?? view.path({ gag: anyId, person: anyId }).replace(/[?#].*/, ''))
    .map((path) => routes[fits.findIndex((one) => one.test(path))]);
  expect(routes.filter((route) => !pictured.includes(route))).toEqual([]);
});
