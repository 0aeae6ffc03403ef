// What must hold of any screen, whatever is on it: nothing axe objects to, nothing wider than the screen, nothing
// too small for a gloved finger, numbers that line up. Each function says what is wrong, in words that find it.

import axe, { type RunOnly } from 'axe-core';
import type { Page } from './demo.ts';

const COLOURS: RunOnly = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
const EVERYTHING: RunOnly = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
};

/** What axe-core objects to, one line a rule; or only about colours, which is all that a theme changes. */
export async function barriers(page: Page, only?: 'colours'): Promise<string[]> {
  // Rows of a long list that are off the screen have no layout until they are near, and so no size to judge.
  await page.evaluate(() => {
    for (const rows of document.querySelectorAll<HTMLElement>('.long > .block'))
      rows.style.contentVisibility = 'visible';
  });
  // Run in the page itself, which has no frames: the builder for several frames opens a second page each time, and
  // describes what is in order as well, which took most of a walk's time.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return await page.evaluate(
    async (runOnly) => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') };
      const found = await axe.run(document, { runOnly, resultTypes: ['violations'] });
      return found.violations.map(
        (one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(' | ')}`,
      );
    },
    only ? COLOURS : EVERYTHING,
  );
}

/** What reaches over the side of the screen, unless it is inside something that scrolls sideways on purpose. Not
 *  measured against innerWidth: a phone zooms out to a page that is too wide, and innerWidth grows with it. */
export async function tooWide(page: Page): Promise<string[]> {
  const width = page.viewportSize()?.width ?? 0;
  return await page.evaluate((width) => {
    // Asked once of each element: most of a page's elements share their ancestors.
    const known = new Map<Element, boolean>();
    const scrolls = (element: Element | null): boolean => {
      if (element === null) return false;
      const before = known.get(element);
      if (before !== undefined) return before;
      const now =
        /auto|scroll|hidden|clip/.test(getComputedStyle(element).overflowX) || scrolls(element.parentElement);
      known.set(element, now);
      return now;
    };
    const said: string[] = [];
    const wide = document.documentElement.scrollWidth;
    if (wide > width) said.push(`the page is ${wide} px wide`);
    for (const element of document.body.querySelectorAll('*')) {
      const box = element.getBoundingClientRect();
      if (box.width === 0 || box.height === 0 || scrolls(element.parentElement)) continue;
      if (box.right > width + 1 || box.left < -1) {
        said.push(`${element.tagName.toLowerCase()}.${element.className}: ${box.left} to ${box.right}`);
      }
    }
    return said.slice(0, 5);
  }, width);
}

/** What a finger is meant to hit and is under 44 px, links inside a sentence aside (as WCAG 2.5.5 has it). */
export async function tooSmall(page: Page): Promise<string[]> {
  return await page.evaluate(() => {
    const said: string[] = [];
    const wanted = 'a[href], button, input, select, textarea, summary, [role="button"], [role="tab"]';
    for (const element of document.querySelectorAll<HTMLElement>(wanted)) {
      if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      if (element.matches(':disabled, .skip') || element.closest('[inert], [aria-hidden="true"]')) continue;
      const style = getComputedStyle(element);
      if (element.matches('a') && style.display === 'inline') continue;
      // A mark one chooses by its label is as large as the label.
      const label = element.matches('[type="radio"], [type="checkbox"]') ? element.closest('label') : null;
      const box = (label ?? element).getBoundingClientRect();
      if (box.width === 0 || box.height === 0) continue;
      if (box.height < 43.5 || box.width < 43.5) {
        const name = element.getAttribute('aria-label') ?? element.textContent?.trim().slice(0, 40);
        said.push(`${element.tagName.toLowerCase()} "${name}": ${box.width} x ${box.height}`);
      }
    }
    return said;
  });
}

/** Text with digits in it that would not line up in a column. */
export async function looseNumbers(page: Page): Promise<string[]> {
  return await page.evaluate(() => {
    const said = new Set<string>();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const parent = node.parentElement;
      if (!parent || !/\d/.test(node.textContent ?? '') || !parent.checkVisibility()) continue;
      // A monospaced face has no other figures.
      const style = getComputedStyle(parent);
      if (style.fontFamily.includes('monospace') || style.fontVariantNumeric.includes('tabular-nums'))
        continue;
      said.add(`${parent.tagName.toLowerCase()}: ${node.textContent?.trim().slice(0, 40)}`);
    }
    return [...said].slice(0, 5);
  });
}
