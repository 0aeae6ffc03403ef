import { Api } from './api.ts';
import { expect, type Page, press, test } from './demo.ts';
import { film, type Phone, phone, readyOffline, shotOfCode } from './phones.ts';
import { newGag, signIn } from './steps.ts';

/** Opens the taking screen; the camera is allowed, so it opens by itself. */
async function take(page: Page): Promise<void> {
  await page.goto('/hand/take');
}

async function online(page: Page): Promise<void> {
  await page.context().setOffline(false);
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
}

async function signedBy(api: Api, gag: string): Promise<string[]> {
  const page = await api.get(`/gags/${gag}`);
  return page.case.signoffs.map((one: { jws: string }) => one.jws);
}

test('a signature goes from phone to phone to phone with no signal, and reaches the server once', async ({
  demo,
}) => {
  test.setTimeout(180_000);
  const phones: Phone[] = [];
  const open = async (camera?: string) => {
    const one = await phone(demo.url, camera);
    phones.push(one);
    return one.page;
  };
  try {
    const a = await open();
    await signIn(a, /coordinator/i);
    const gag = await newGag(a);
    // The key is made and known to the server before anybody goes up the hill.
    const other = await newGag(a);
    await a.goto(`/gags/${other.id}/sign?role=coordinator`);
    await a.getByRole('radio', { name: 'Approve', exact: true }).check();
    await press(a.getByRole('button', { name: 'Sign: approve' }));
    await expect(a.getByText('Signed', { exact: true })).toBeVisible();

    await a.goto(`/gags/${gag.id}/sign?role=coordinator`);
    await expect(a.locator('blockquote')).toBeVisible();
    await a.context().setOffline(true);
    await a.getByRole('radio', { name: 'Approve', exact: true }).check();
    await press(a.getByRole('button', { name: 'Sign: approve' }));
    await expect(a.getByText('It goes to the server when there is a connection.')).toBeVisible();
    await press(a.getByRole('link', { name: 'Hand over' }));
    const version = Number(await a.locator('svg.code').getAttribute('data-version'));
    expect(version).toBeLessThanOrEqual(25);
    const first = await film(a, [await shotOfCode(a)], { turned: 5 });

    const b = await open(first);
    await readyOffline(b, /medic/i, gag.id);
    await take(b);
    await expect(b.getByText('Kept on this phone')).toBeVisible({ timeout: 30_000 });
    await expect(b.getByText(/^Signature holds, made by .+’s device\.$/)).toBeVisible();
    await expect(b.getByText('It is for revision 1, the plan on this phone.')).toBeVisible();
    await press(b.getByRole('link', { name: 'To the gag' }));
    await expect(b.getByText(/not sent yet, counted here/)).toBeVisible();
    await press(b.getByRole('link', { name: 'Signatures' }));
    await expect(b.getByText('Stands').first()).toBeVisible();

    await b.goto('/settings/entries');
    await expect(b.getByText(/^Signature, carried for/)).toBeVisible();
    await press(b.getByRole('link', { name: 'Hand over' }));
    const second = await film(b, [await shotOfCode(b)], { turned: -8, blur: 0.9 });

    const c = await open(second);
    await readyOffline(c, /first assistant director/i, gag.id);
    await take(c);
    await expect(c.getByText('Kept on this phone')).toBeVisible({ timeout: 30_000 });
    // Arriving a second time changes nothing.
    await press(c.getByRole('button', { name: 'Take another' }));
    await expect(c.getByText('This phone has it already.')).toBeVisible({ timeout: 30_000 });

    const server = await Api.as(demo.url, 'coordinator');
    expect(await signedBy(server, gag.id)).toHaveLength(0);
    await online(c);
    await expect.poll(() => signedBy(server, gag.id), { timeout: 30_000 }).toHaveLength(1);
    await c.goto('/settings/entries');
    await expect(c.getByText('Sent', { exact: true })).toBeVisible();

    await online(b);
    await b.goto('/settings/entries');
    await expect(b.getByText('Sent', { exact: true })).toBeVisible({ timeout: 30_000 });
    await online(a);
    await a.goto('/settings/entries');
    await expect(a.getByText('Sent', { exact: true })).toHaveCount(5, { timeout: 30_000 });
    expect(await signedBy(server, gag.id)).toHaveLength(1);
  } finally {
    for (const one of phones) await one.close();
  }
});
