// How dates, ages and quantities are written for people. Units come from the core.

import type { Quantity } from './api/types.ts';
import { core } from './core/core.svelte.ts';
import { session } from './session.svelte.ts';
import { settings } from './settings.svelte.ts';
import { inUse, said, t } from './texts/index.ts';

function zone(): string | undefined {
  return session.production?.time_zone || undefined;
}

/** Making a formatter is dear, and a list asks for the same one in every row. */
const formatters = new Map<string, Intl.DateTimeFormat>();

function formatter(options: Intl.DateTimeFormatOptions, timeZone = zone()): Intl.DateTimeFormat {
  const key = JSON.stringify([inUse.tag, timeZone, options]);
  let found = formatters.get(key);
  if (!found) {
    try {
      found = new Intl.DateTimeFormat(inUse.tag, { ...options, timeZone });
    } catch {
      // A zone this browser does not know: its own zone, rather than no time at all.
      found = new Intl.DateTimeFormat(inUse.tag, options);
    }
    formatters.set(key, found);
  }
  return found;
}

/** A calendar day, `YYYY-MM-DD`, which has no zone. */
export function day(date: string): string {
  const at = new Date(`${date}T12:00:00Z`);
  if (Number.isNaN(at.getTime())) return date;
  return formatter({ weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' }, 'UTC').format(at);
}

/** A moment, in the production's zone. */
export function moment(at: string): string {
  const date = new Date(at);
  if (Number.isNaN(date.getTime())) return at;
  // A record read a year later must say which year it means.
  const year = date.getFullYear() === new Date().getFullYear() ? undefined : 'numeric';
  return formatter({ day: 'numeric', month: 'short', year, hour: '2-digit', minute: '2-digit' }).format(date);
}

export function clock(at: Date): string {
  return formatter({ hour: '2-digit', minute: '2-digit' }).format(at);
}

export function ago(at: number | string, now: Date): string {
  const then = typeof at === 'number' ? at : Date.parse(at);
  const relative = new Intl.RelativeTimeFormat(inUse.tag, { numeric: 'auto' });
  const minutes = Math.round((then - now.getTime()) / 60_000);
  if (Math.abs(minutes) < 1) return t.kept.justNow;
  if (Math.abs(minutes) < 60) return relative.format(minutes, 'minute');
  if (Math.abs(minutes) < 48 * 60) return relative.format(Math.round(minutes / 60), 'hour');
  return relative.format(Math.round(minutes / 1440), 'day');
}

function decimalMark(): string {
  return new Intl.NumberFormat(inUse.tag).format(0.5).charAt(1);
}

/** A number the core wrote, with the decimal mark of the language. The core writes no thousands. */
function marked(text: string): string {
  const mark = decimalMark();
  return mark === '.' ? text : text.replaceAll(/(?<=\d)\.(?=\d)/g, mark);
}

/** A length of time, to its largest whole unit: `26 hours`. */
export function span(milliseconds: number): string {
  const minutes = Math.round(milliseconds / 60_000);
  const unit = minutes < 60 ? 'minute' : minutes < 48 * 60 ? 'hour' : 'day';
  const n = Math.round(minutes / { minute: 1, hour: 60, day: 1440 }[unit]);
  return new Intl.NumberFormat(inUse.tag, { style: 'unit', unit, unitDisplay: 'long' }).format(n);
}

/** An amount of storage: megabytes, or gigabytes from the first thousand on; tenths of the first few. */
export function bytes(n: number): string {
  const large = n >= 1_000_000_000;
  const amount = n / (large ? 1_000_000_000 : 1_000_000);
  return new Intl.NumberFormat(inUse.tag, {
    style: 'unit',
    unit: large ? 'gigabyte' : 'megabyte',
    maximumFractionDigits: amount < 10 ? 1 : 0,
  }).format(amount);
}

/** An SI number as people read it, in the units this phone shows. */
export function quantity(kind: Quantity, si: number): string {
  if (!core.ready) return '…';
  const text = core.format(kind, si, settings.units);
  // A small chance is words: "1 in 20 million".
  return kind === 'ratio' && text.startsWith('1 in ') ? said(text) : marked(text);
}

/** As it stands in a field, where it must read back in any language: a small chance keeps its noughts. */
export function quantityToType(kind: Quantity, si: number): string {
  if (kind !== 'ratio' || Math.abs(si) >= 1e-5 || si === 0) return quantity(kind, si);
  return marked(si.toFixed(14).replace(/0+$/, ''));
}

/** A plain number as people read it. */
export function number(value: number): string {
  return new Intl.NumberFormat(inUse.tag, { maximumSignificantDigits: 15, useGrouping: false }).format(value);
}

/**
 * What a person wrote, as SI; throws with a sentence that says what would be right. Where the comma is the
 * decimal mark, comma and point change places for the core: what could be read two ways is refused there as here.
 */
export function readQuantity(kind: Quantity, text: string): number {
  const swapped =
    decimalMark() === ',' ? text.replaceAll(/[.,]/g, (mark) => (mark === ',' ? '.' : ',')) : text;
  try {
    return core.parse(kind, swapped);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(said(why).replaceAll(swapped, text), { cause: error });
  }
}

/** "a, b and c". */
export function listed(items: readonly string[]): string {
  return new Intl.ListFormat(inUse.tag, { type: 'conjunction' }).format(items);
}

/** For sorting what people read, by the rules of the language in use: G9 before G10, á with a. */
export function inOrder(): (a: string, b: string) => number {
  return new Intl.Collator(inUse.tag, { numeric: true, sensitivity: 'base' }).compare;
}

/** `high_fall` as people read it. */
export function plainName(name: string): string {
  const spaced = name.replaceAll(/[_-]/g, ' ');
  return said(spaced.charAt(0).toUpperCase() + spaced.slice(1));
}

/** A run of letters that are read from the right, with the spaces and points inside it. */
const RIGHT = '\\p{Script=Arabic}\\p{Script=Hebrew}\\p{Script=Syriac}\\p{Script=Thaana}\\p{Script=Nko}';
const FROM_THE_RIGHT = new RegExp(`[${RIGHT}](?:[${RIGHT}\\p{M} .'’-]*[${RIGHT}\\p{M}])?`, 'gu');

/** A sentence from the server, with the names in it that are read from the right kept to themselves. */
export function withNamesIsolated(sentence: string): string {
  return sentence.replaceAll(FROM_THE_RIGHT, (run) => isolated(run));
}

/** A name inside a sentence: its own direction must not turn the rest of the line round. */
export function isolated(name: string): string {
  return name && `\u2068${name}\u2069`;
}
