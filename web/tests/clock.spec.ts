// A phone whose clock is a day wrong: it says so, and signs with the server's time.

import { Api } from './api.ts';
import { expect, test } from './demo.ts';
import { approve, newGag, signIn } from './steps.ts';

for (const [name, hours] of [
  ['ahead', 26],
  ['behind', -26],
] as const) {
  test(`a clock a day ${name} is noted, and what it signs is taken with the right time`, async ({
    page,
    demo,
  }) => {
    await page.clock.install({ time: Date.now() + hours * 3_600_000 });
    await signIn(page, /coordinator/i);
    await expect(page.getByText(`The clock of this device is 26 hours ${name}`)).toBeVisible();
    const gag = await newGag(page);
    await approve(page, gag);
    const api = await Api.as(demo.url, 'coordinator');
    const { signoffs } = (await api.get(`/gags/${gag.id}`)).case;
    expect(signoffs).toHaveLength(1);
    const payload = JSON.parse(Buffer.from(signoffs[0].jws.split('.')[1], 'base64url').toString());
    expect(Math.abs(Date.parse(payload.signed_at) - Date.now())).toBeLessThan(120_000);
  });
}
