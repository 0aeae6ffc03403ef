// What a walk through the screens does at each of them: opens it, unfolds it, and holds it to what must be true of any
// screen (inspect.ts). Which screens, in which sizes, themes and languages, is the specs' business.

import type { Texts } from '../src/texts/en/index.ts';
import { expect, type Page, type Size } from './demo.ts';
import { barriers, looseNumbers, tooSmall, tooWide } from './inspect.ts';
import { type Scene, type View, views, type Who } from './views.ts';

/** Where the pictures go, for people to look at. */
export const pictures = new URL('../../tests/out/screens/', import.meta.url).pathname;

/** What the page complained of, and what it asked for and did not get. */
export function watch(page: Page): string[] {
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

export const asPattern = (route: string): RegExp => new RegExp(`^${route.replace(/:\w+/g, '[^/]+')}$`);

export async function open(page: Page, view: View, scene: Scene, t: Texts): Promise<void> {
  await page.goto(view.path(scene));
  await view.first?.(page, t);
  if (view.reaches) await page.waitForURL((url) => asPattern(view.reaches ?? '').test(url.pathname));
  await expect(page.getByText(view.shows(t)).first()).toBeVisible();
  await expect(page.getByRole('status').filter({ hasText: t.app.loading })).toHaveCount(0);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** Everything folded away is opened, so that nothing is passed over. */
export async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true;
  });
}

/** `known` says that what axe-core would look at has been looked at elsewhere, in another size or language: only
 *  what is about room is then asked. */
export async function holdToRules(page: Page, name: string, size: Size, known = false): Promise<void> {
  const found = {
    barriers: known ? [] : await barriers(page),
    tooWide: await tooWide(page),
    tooSmall: size === 'desk' ? [] : await tooSmall(page),
    looseNumbers: await looseNumbers(page),
  };
  expect.soft(found, name).toEqual({ barriers: [], tooWide: [], tooSmall: [], looseNumbers: [] });
}

/** Long walks are cut up, so that two hands can share them. */
export function walks(): [string, Who, View[]][] {
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
