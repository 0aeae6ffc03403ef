// Every screen in Spanish, on a phone from there: words are longest where the screen is narrowest. Held to the rules of
// room as in English (walk.ts); axe-core has seen the same screens there.

import { mkdirSync } from 'node:fs';
import { es } from '../src/texts/es/index.ts';
import { expect, test } from './demo.ts';
import { signInAs } from './steps.ts';
import { setScene } from './views.ts';
import { holdToRules, open, pictures, unfold, walks, watch } from './walk.ts';

test.use({ locale: 'es-ES', trace: 'off' });

for (const [title, who, part] of walks()) {
  test(title, async ({ page, demo, size }) => {
    test.setTimeout(240_000);
    const scene = await setScene(demo.url);
    const heard = watch(page);
    mkdirSync(`${pictures}spanish`, { recursive: true });
    if (who !== 'nobody') await signInAs(page, who, es);
    for (const view of part) {
      await open(page, view, scene, es);
      await page.screenshot({ path: `${pictures}spanish/${view.name}.png`, fullPage: true });
      await unfold(page);
      await holdToRules(page, `${view.name}, in Spanish`, size, true);
    }
    expect(heard).toEqual([]);
  });
}
