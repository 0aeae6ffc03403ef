// What several tests do first, said once: sign in as someone of the demo, make a gag of one's own.

import { type BrowserContext, chromium, type TestInfo } from '@playwright/test';
import type { DemoServer } from '../../tests/browser/demo-server.mjs';
import { en, type Texts } from '../src/texts/en/index.ts';
import type { Api } from './api.ts';
import { expect, type Page, press } from './demo.ts';

export interface Gag {
  id: string;
  code: string;
}

/** Signs in by tapping a demo sign-in whose occupation passes. */
export async function signIn(page: Page, occupation: RegExp): Promise<void> {
  await page.goto('/');
  await press(page.getByRole('button').filter({ hasText: occupation }).first());
  await expect(page.getByRole('button', { name: 'Hold' })).toBeVisible();
  await expect(page.getByText('Demo', { exact: true })).toBeVisible();
}

/** Signs in by mail address and password; the part before the @ is enough. */
export async function signInAs(page: Page, name: string, t: Texts = en): Promise<void> {
  await page.goto('/');
  await page.getByLabel(t.signIn.email).fill(`${name}@salt-meridian.example`);
  await page.getByLabel(t.signIn.password).fill('salt-meridian');
  await press(page.getByRole('button', { name: t.signIn.go, exact: true }));
  await expect(page.getByRole('button', { name: t.nav.hold, exact: true })).toBeVisible();
}

/** A gag nobody else touches, so that tests can run in any order and again. */
export async function newGag(page: Page, technique = 'High fall'): Promise<Gag> {
  const code = `T${Date.now().toString(36).slice(-5).toUpperCase()}`;
  await page.goto('/gags/new');
  await page.getByLabel('Code').fill(code);
  await page.getByLabel('Title').fill(`Test fall ${code}`);
  await page.getByRole('combobox', { name: 'How it is done' }).fill(technique);
  await press(page.getByRole('option', { name: technique, exact: true }));
  await press(page.getByRole('button', { name: 'Create the gag' }));
  await page.waitForURL(/\/gags\/[0-9a-f-]{36}\/edit$/);
  const id = /gags\/([0-9a-f-]{36})/.exec(page.url())?.[1] ?? '';
  return { id, code };
}

export async function approve(page: Page, gag: Gag, role = 'coordinator'): Promise<void> {
  await page.goto(`/gags/${gag.id}/sign?role=${role}`);
  await page.getByRole('radio', { name: 'Approve', exact: true }).check();
  await press(page.getByRole('button', { name: 'Sign: approve' }));
  await expect(page.getByText('Signed', { exact: true })).toBeVisible();
}

/** Waits until the app opens with no signal: its worker is there and the page is under it. */
export async function ready(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await expect(page.getByRole('button', { name: 'Hold', exact: true })).toBeVisible();
}

/** Holds everything, from wherever the page is. */
export async function holdEverything(page: Page): Promise<void> {
  await press(page.getByRole('button', { name: 'Hold', exact: true }));
  await press(page.getByRole('button', { name: 'Hold everything' }));
}

/** Another phone, kept over closing it: a browser with a folder of its own. */
export async function openPhone(info: TestInfo, demo: DemoServer): Promise<BrowserContext> {
  const { launchOptions, viewport, hasTouch, isMobile, locale } = info.project.use;
  return await chromium.launchPersistentContext(info.outputPath('phone'), {
    ...launchOptions,
    viewport,
    hasTouch,
    isMobile,
    locale,
    baseURL: demo.url,
  });
}

/** The holds raised since the demo was made, which has one of its own. */
export async function holdsRaised(api: Api): Promise<{ actor: string }[]> {
  const { items } = await api.get(`/productions/${api.production}/changes?after=0`);
  return items.filter((one: { kind: string }) => one.kind === 'hold.raised').slice(1);
}

/** As after a quarter of an hour: the phone has no token that still counts, and must ask with its cookie. */
export async function forgetToken(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const open = indexedDB.open('gagwright');
        open.onerror = () => failed(open.error);
        open.onsuccess = () => {
          const tx = open.result.transaction('settings', 'readwrite');
          tx.objectStore('settings').delete('token');
          tx.onerror = () => failed(tx.error);
          tx.oncomplete = () => {
            open.result.close();
            done();
          };
        };
      }),
  );
}

/** Everything in one store of the phone's database, as text. */
async function stored(page: Page, store: 'drafts' | 'reads'): Promise<string> {
  return await page.evaluate(
    (name) =>
      new Promise<string>((done, failed) => {
        const open = indexedDB.open('gagwright');
        open.onerror = () => failed(open.error);
        open.onsuccess = () => {
          const objects = open.result.transaction(name).objectStore(name);
          const all = name === 'reads' ? objects.getAllKeys() : objects.getAll();
          all.onerror = () => failed(all.error);
          all.onsuccess = () => {
            open.result.close();
            done(JSON.stringify(all.result));
          };
        };
      }),
    store,
  );
}

/** Waits until what was typed is kept on the phone: the app lets a breath go by before it writes. */
export async function draftKept(page: Page, text: string): Promise<void> {
  await expect.poll(() => stored(page, 'drafts')).toContain(text);
}

/** Waits until what was read is kept on the phone, which is a moment after it is shown. */
export async function readKept(page: Page, path: string): Promise<void> {
  await expect.poll(() => stored(page, 'reads')).toContain(`${path}"`);
}
