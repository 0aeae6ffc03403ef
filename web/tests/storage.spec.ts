// A phone with no room left: reads are let go first, and what could not be kept is said so, loudly.

import { Api } from './api.ts';
import { expect, type Page, press, test } from './demo.ts';
import { holdEverything, holdsRaised, ready, signIn } from './steps.ts';

/** Whether the browser lets this origin write anything at all. */
function hasRoom(page: Page): Promise<boolean> {
  return page.evaluate(
    () =>
      new Promise<boolean>((done, failed) => {
        const open = indexedDB.open('probe', 1);
        open.onupgradeneeded = () => open.result.createObjectStore('any');
        open.onerror = () => failed(open.error);
        open.onsuccess = () => {
          const tx = open.result.transaction('any', 'readwrite');
          tx.objectStore('any').put('any', 'any');
          const said = (room: boolean) => () => {
            open.result.close();
            done(room);
          };
          tx.oncomplete = said(true);
          tx.onabort = said(false);
        };
      }),
  );
}

test('what a full phone cannot keep is said not to be kept, and kept once there is room', async ({
  page,
  context,
  demo,
}) => {
  test.setTimeout(180_000);
  await signIn(page, /coordinator/i);
  await ready(page);
  const devtools = await context.newCDPSession(page);
  await context.setOffline(true);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: demo.url, quotaSize: 1 });
  // The browser remembers for half a minute how much room it last found.
  await expect.poll(() => hasRoom(page), { timeout: 60_000, intervals: [2_000] }).toBe(false);
  await holdEverything(page);
  await expect(page.getByRole('alert').filter({ hasText: 'This is NOT kept.' }).first()).toBeVisible();
  await press(page.getByRole('button', { name: 'Close' }));
  const notice = page.locator('section[role=alert]').filter({ hasText: 'This is NOT kept.' });
  await expect(notice).toContainText('Hold');
  await expect(notice.getByRole('link', { name: 'Send as a code or a file' })).toBeVisible();
  await press(notice.getByRole('button', { name: 'Make room and try again' }));
  await expect(notice).toContainText('There is still no room.');

  await devtools.send('Storage.overrideQuotaForOrigin', { origin: demo.url });
  await press(notice.getByRole('button', { name: 'Make room and try again' }));
  await expect(page.getByText('It is kept now.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('link', { name: '1 entry to send' })).toBeVisible();
  await context.setOffline(false);
  await expect(page.getByRole('link', { name: '1 entry to send' })).toBeHidden({ timeout: 60_000 });
  const api = await Api.as(demo.url, 'medic');
  expect(await holdsRaised(api)).toHaveLength(1);
});
