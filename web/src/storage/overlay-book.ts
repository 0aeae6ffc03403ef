// What was entered in the register, set aside or taken back with no signal, laid over the register as the server last
// told it. How a piece stands is the server's word: one it has not heard of has no inspection that anybody checked.

import type { DayBook } from '../api/types.ts';
import type { QueuedWrite } from './database.ts';
import { befellAfter, SHOCKED, setAside } from './overlay-day.ts';

type Item = DayBook['equipment'][number];

export function layBook(
  book: DayBook,
  waiting: QueuedWrite[],
  me: { id: string; name: string } | undefined,
): DayBook {
  if (!me) return book;
  const items = new Map(book.equipment.map((one) => [one.id, one]));
  const states = { ...book.equipment_states };
  for (const one of waiting) {
    const body = (one.body ?? {}) as Record<string, unknown>;
    if (one.label.kind === 'equipment') {
      const id = String(body.id);
      const known = items.get(id);
      items.set(id, {
        quarantined: known?.quarantined ?? null,
        shock_loads: known?.shock_loads ?? [],
        ...body,
      } as unknown as Item);
      delete states[id];
      continue;
    }
    const parts = one.path.split('/');
    const item = items.get(parts[parts.indexOf('equipment') + 1] ?? '');
    if (!item) continue;
    const put = (quarantined: Item['quarantined']) => items.set(item.id, { ...item, quarantined });
    const since = String(body.at);
    const aside = (reason: string) =>
      put(setAside(item.quarantined, since, reason, me.id) ?? item.quarantined);
    if (one.label.kind === 'quarantine') aside(String(body.reason));
    if (one.label.kind === 'shock_load') {
      aside(SHOCKED);
      const known = items.get(item.id) ?? item;
      const shock = { ...body, by: me.id } as NonNullable<Item['shock_loads']>[number];
      items.set(item.id, { ...known, shock_loads: [...(known.shock_loads ?? []), shock] });
    }
    if (one.label.kind === 'back_in_use' && !befellAfter(item, String(body.at))) {
      items.set(item.id, { ...item, quarantined: null, inspected_until: String(body.inspected_until) });
      delete states[item.id];
    }
  }
  const equipment = [...items.values()].sort((a, b) => (a.serial < b.serial ? -1 : 1));
  return { ...book, equipment, equipment_states: states, names: { ...book.names, [me.id]: me.name } };
}
