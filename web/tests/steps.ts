// What several tests do first, said once: sign in as someone of the demo, make a gag of one's own.

import { en, type Texts } from '../src/texts/en/index.ts';
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
  await page.getByLabel('How it is done').selectOption({ label: technique });
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
