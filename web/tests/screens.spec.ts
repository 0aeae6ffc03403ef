// Every screen, rendered and pictured in three sizes, in both themes and in every language, and held to what must
// be true of any screen (inspect.ts). The pictures are in tests/out/browser/screens, for people to look at.

import { mkdirSync, readFileSync } from 'node:fs';
import { en, type Texts } from '../src/texts/en/index.ts';
import { es } from '../src/texts/es/index.ts';
import { expect, type Page, type Size, test } from './demo.ts';
import { barriers, looseNumbers, tooSmall, tooWide } from './inspect.ts';
import { signInAs } from './steps.ts';
import { setScene, type View, views, type Who } from './views.ts';

const pictures = new URL('../../tests/out/screens/', import.meta.url).pathname;

/** What the page complained of, and what it asked for and did not get. */
function watch(page: Page): string[] {
  const heard: string[] = [];
  page.on('console', (message) => {
    if (!['error', 'warning'].includes(message.type())) return;
    // Without a cookie there is no sign-in to renew: the app asks, and is told so.
    if (message.location().url.endsWith('/sessions/refresh') && message.text().includes('401')) return;
    heard.push(`${message.text()} (${message.location().url})`);
  });
  page.on('requestfailed', (request) => {
    // A page that is left lets go of what it was still asking for.
    const why = request.failure()?.errorText;
    if (why !== 'net::ERR_ABORTED') heard.push(`${why} ${request.url()}`);
  });
  return heard;
}

const asPattern = (route: string): RegExp => new RegExp(`^${route.replace(/:\w+/g, '[^/]+')}$`);

async function open(page: Page, view: View, scene: Parameters<View['path']>[0], t: Texts): Promise<void> {
  await page.goto(view.path(scene));
  await view.first?.(page, t);
  if (view.reaches) await page.waitForURL((url) => asPattern(view.reaches ?? '').test(url.pathname));
  await expect(page.getByText(view.shows(t)).first()).toBeVisible();
  await expect(page.getByRole('status').filter({ hasText: t.app.loading })).toHaveCount(0);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** Everything folded away is opened, so that nothing is passed over. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true;
  });
}

async function holdToRules(page: Page, name: string, size: Size): Promise<void> {
  const found = {
    barriers: await barriers(page),
    tooWide: await tooWide(page),
    tooSmall: size === 'desk' ? [] : await tooSmall(page),
    looseNumbers: await looseNumbers(page),
  };
  expect.soft(found, name).toEqual({ barriers: [], tooWide: [], tooSmall: [], looseNumbers: [] });
}

/** As choosing the theme in the settings does. */
async function wear(page: Page, theme: string): Promise<void> {
  await page.evaluate((theme) => {
    document.documentElement.dataset.theme = theme;
  }, theme);
}

/** Long walks are cut up, so that two hands can share them. */
function walks(): [string, Who, View[]][] {
  return (Object.keys(views) as Who[]).flatMap((who) => {
    const all = views[who];
    const cut: [string, Who, View[]][] = [];
    for (let at = 0; at < all.length; at += 10) {
      const part = all.slice(at, at + 10);
      cut.push([`${who}: ${part[0]?.name} to ${part.at(-1)?.name}`, who, part]);
    }
    return cut;
  });
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
      await unfold(page);
      expect.soft(await barriers(page, 'colours'), `${view.name}, daylight`).toEqual([]);
      await wear(page, 'slate');
      await page.screenshot({ path: `${pictures}${size}/${view.name}-slate.png`, fullPage: true });
      await holdToRules(page, `${view.name}, slate`, size);
    }
    expect(heard).toEqual([]);
  });
}

test.describe('in Spanish, on a phone from there', () => {
  test.use({ locale: 'es-ES' });
  for (const [title, who, part] of walks()) {
    test(title, async ({ page, demo, size }) => {
      test.skip(size !== 'phone', 'words are longest where the screen is narrowest');
      test.setTimeout(240_000);
      const scene = await setScene(demo.url);
      const heard = watch(page);
      mkdirSync(`${pictures}spanish`, { recursive: true });
      if (who !== 'nobody') await signInAs(page, who, es);
      for (const view of part) {
        await open(page, view, scene, es);
        await page.screenshot({ path: `${pictures}spanish/${view.name}.png`, fullPage: true });
        await unfold(page);
        await holdToRules(page, `${view.name}, in Spanish`, size);
      }
      expect(heard).toEqual([]);
    });
  }
});

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
