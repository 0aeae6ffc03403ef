// Parts of a policy as people read them.

import type { Policy } from '../../../api/types.ts';
import { number, quantity } from '../../../format.ts';

export type Band = NonNullable<Policy['bands']>[number];

/** How far a number may move: a share in per cent, or an amount. */
export function amount(band: Band): string {
  if (band.relative) return `${number(band.relative * 100)} %`;
  const most = band.absolute ?? 0;
  return band.quantity && band.quantity !== 'temperature' ? quantity(band.quantity, most) : number(most);
}

/** The id for words that differ from those signed under this one: `medic/1`, `medic/2` ... */
export function nextId(id: string): string {
  const found = /^(.*\/)(\d+)$/.exec(id);
  return found ? `${found[1]}${Number(found[2]) + 1}` : `${id}/2`;
}
