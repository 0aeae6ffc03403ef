// Brings the place that the address names into sight. Screens draw what they read a moment after the browser has
// looked for it, so it is looked for again once they have drawn.

import { tick } from 'svelte';
import { router } from '../router.svelte.ts';

/** An attachment for the element that holds the places. */
export function toHash(node: Element): void {
  const name = decodeURIComponent(router.hash.slice(1));
  if (!name) return;
  void tick().then(() => {
    const place = [node, ...node.querySelectorAll('[id]')].find((one) => one.id === name);
    const folded = place?.querySelector('details') ?? place?.closest('details');
    if (folded instanceof HTMLDetailsElement) folded.open = true;
    place?.scrollIntoView({ block: 'start' });
  });
}
