// The keys of the desk, in one table: what they do here and what the sheet of keys says of them.

import { router } from '../router.svelte.ts';
import { t } from '../texts/index.ts';

export interface Deeds {
  find: () => void;
  hold: () => void;
  keys: () => void;
}

/** After `g`: where to. */
const PLACES: Record<string, string> = {
  t: '/',
  g: '/gags',
  p: '/people',
  r: '/trail',
  h: '/holds',
  s: '/settings',
  k: '/packets',
};

/** What is shown of them, in this order. */
export const SHOWN = (): [string, string][] => [
  ['/', t.keys.find],
  ['Ctrl K', t.keys.find],
  ['j  k  ↓  ↑', t.keys.move],
  ['Enter', t.keys.open],
  ['Esc', t.keys.close],
  ['!', t.keys.hold],
  ['g t', t.nav.today],
  ['g g', t.nav.gags],
  ['g p', t.nav.people],
  ['g k', t.packets.title],
  ['g r', t.nav.trail],
  ['g h', t.hold.list],
  ['g s', t.settings.title],
  ['?', t.keys.title],
];

const WAIT_FOR_SECOND = 1200;

function typing(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName))
  );
}

/** A row of a list, short or long. */
const ROW = ".ruled > li, [role='listitem']";

/** Moves the focus through the rows of the list on the screen. */
function move(step: number): boolean {
  const rows = [
    ...document.querySelectorAll<HTMLElement>(`main :is(${ROW}) > a, main :is(${ROW}) > details > summary`),
  ].filter((one) => one.offsetParent !== null);
  if (rows.length === 0) return false;
  const here = rows.indexOf(document.activeElement as HTMLElement);
  const next =
    rows[here < 0 ? (step > 0 ? 0 : rows.length - 1) : Math.min(rows.length - 1, Math.max(0, here + step))];
  next?.focus();
  next?.scrollIntoView({ block: 'nearest' });
  return true;
}

/** Listens to the keys until the answer is called. */
export function listenToKeys(deeds: Deeds): () => void {
  let afterG = 0;
  function pressed(event: KeyboardEvent) {
    if (event.defaultPrevented || event.altKey) return;
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k') {
      event.preventDefault();
      return deeds.find();
    }
    if (event.ctrlKey || event.metaKey || typing(event.target) || document.querySelector('dialog[open]'))
      return;
    const place = PLACES[event.key];
    if (place && event.timeStamp - afterG < WAIT_FOR_SECOND) {
      afterG = 0;
      event.preventDefault();
      return router.go(place);
    }
    afterG = event.key === 'g' ? event.timeStamp : 0;
    if (event.key === '/') deeds.find();
    else if (event.key === '!') deeds.hold();
    else if (event.key === '?') deeds.keys();
    else if (event.key === 'j' || event.key === 'ArrowDown') {
      const onRow = document.activeElement?.closest(ROW);
      if (event.key === 'ArrowDown' && !onRow) return;
      if (!move(1)) return;
    } else if (event.key === 'k' || event.key === 'ArrowUp') {
      const onRow = document.activeElement?.closest(ROW);
      if (event.key === 'ArrowUp' && !onRow) return;
      if (!move(-1)) return;
    } else return;
    event.preventDefault();
  }
  window.addEventListener('keydown', pressed);
  return () => window.removeEventListener('keydown', pressed);
}
