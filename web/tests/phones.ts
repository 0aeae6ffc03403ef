// Phones that see: browsers of their own whose camera is a film, and the films, made from what another phone's
// screen showed. A film is plain YUV4MPEG2, written here frame by frame.

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { type Code, QUIET } from '../src/hand/code.ts';
import { expect, press, test } from './demo.ts';
import { readKept } from './steps.ts';

const WIDTH = 960;
const HEIGHT = 720;

/** How badly a camera sees: each is what a cheap phone in a hand does to a picture. */
export interface Eye {
  /** Degrees. */
  turned?: number;
  /** Pixels. */
  blur?: number;
  /** Of 255, either way. */
  noise?: number;
  /** Side of the code in the picture of 720 lines. */
  side?: number;
}

/** Draws one picture as a camera would see it, and gives its light and colour planes as base64. */
async function seen(page: Page, shot: Buffer, eye: Required<Eye>): Promise<Buffer> {
  const planes = await page.evaluate(
    async ([png, width, height, { turned, blur, noise, side }]) => {
      const image = new Image();
      image.src = `data:image/png;base64,${png}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [width, height];
      const context = canvas.getContext('2d');
      if (!context) throw new Error('no canvas');
      context.fillStyle = '#6d7073';
      context.fillRect(0, 0, width, height);
      context.filter = `blur(${blur}px) contrast(0.85)`;
      context.translate(width / 2, height / 2);
      context.rotate((turned * Math.PI) / 180);
      context.drawImage(image, -side / 2, -side / 2, side, side);
      const { data } = context.getImageData(0, 0, width, height);
      // The same grain on every run: this is about the eye, not about luck.
      let state = 12345;
      const luma = new Uint8Array(width * height).map((_, at) => {
        state = (Math.imul(state, 1103515245) + 12345) >>> 0;
        const grain = ((state >>> 16) / 32768 - 1) * noise;
        const [r = 0, g = 0, b = 0] = [data[at * 4], data[at * 4 + 1], data[at * 4 + 2]];
        return Math.max(0, Math.min(255, 0.299 * r + 0.587 * g + 0.114 * b + grain));
      });
      let text = '';
      for (let at = 0; at < luma.length; at += 8192)
        text += String.fromCharCode(...luma.subarray(at, at + 8192));
      return btoa(text);
    },
    [shot.toString('base64'), WIDTH, HEIGHT, eye] as const,
  );
  return Buffer.concat([Buffer.from(planes, 'base64'), Buffer.alloc((WIDTH * HEIGHT) / 2, 128)]);
}

/** A film of these pictures, five a second, over and over. */
export async function film(page: Page, shots: Buffer[], eye: Eye = {}): Promise<string> {
  const studio = await page.context().newPage();
  const pictures: Buffer[] = [];
  for (const shot of shots) {
    const look = { turned: 0, blur: 0.6, noise: 8, side: 620, ...eye };
    pictures.push(Buffer.from('FRAME\n'), await seen(studio, shot, look));
  }
  await studio.close();
  const path = join(await mkdtemp(join(tmpdir(), 'film-')), 'camera.y4m');
  const head = Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F5:1 Ip A1:1 C420jpeg\n`);
  await writeFile(path, Buffer.concat([head, ...pictures]));
  return path;
}

/** What the screen shows of the code now. */
export async function shotOfCode(page: Page): Promise<Buffer> {
  const code = page.locator('svg.code');
  await expect(code).toBeVisible();
  return await code.screenshot({ animations: 'disabled' });
}

/** A code that no app drew. */
export async function shotOfText(page: Page, { size, path }: Code): Promise<Buffer> {
  const studio = await page.context().newPage();
  const side = size + 2 * QUIET;
  await studio.setContent(
    `<svg class="code" width="700" height="700" viewBox="${-QUIET} ${-QUIET} ${side} ${side}">
       <rect x="${-QUIET}" y="${-QUIET}" width="${side}" height="${side}" fill="#fff" /><path d="${path}" />
     </svg>`,
  );
  const shot = await shotOfCode(studio);
  await studio.close();
  return shot;
}

export interface Phone {
  page: Page;
  close: () => Promise<void>;
}

/** A phone of its own. With a film, its camera sees that; without, it has none. */
export async function phone(url: string, camera?: string): Promise<Phone> {
  const { launchOptions } = test.info().project.use;
  const args = camera
    ? [
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${camera}`,
      ]
    : [];
  const browser: Browser = await chromium.launch({
    ...launchOptions,
    args: [...(launchOptions?.args ?? []), ...args],
  });
  const context = await browser.newContext({
    baseURL: url,
    locale: 'en-GB',
    viewport: { width: 360, height: 740 },
    deviceScaleFactor: 3,
    hasTouch: true,
    isMobile: true,
    permissions: camera ? ['camera'] : [],
  });
  const page = await context.newPage();
  return {
    page,
    close: async () => {
      await browser.close();
      if (camera) await rm(join(camera, '..'), { recursive: true, force: true });
    },
  };
}

/** Signs in by mail address, reads the gag, and waits until the phone opens with no signal; then takes it away. */
export async function readyOffline(page: Page, who: RegExp, gag: string): Promise<void> {
  await page.goto('/');
  await press(page.getByRole('button').filter({ hasText: who }).first());
  await expect(page.getByRole('button', { name: 'Hold', exact: true })).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await page.goto(`/gags/${gag}`);
  await expect(page.locator('.answer .word')).toBeVisible();
  await readKept(page, `/gags/${gag}`);
  await page.context().setOffline(true);
}
