// What is recorded of a person, in words: one line for each thing.

import type { Certificate, Measurement, Person } from '../../api/types.ts';
import { day, moment, quantity } from '../../format.ts';
import { catalogue, certificateTitle, skillTitle } from '../../parts/catalogue.ts';
import { t } from '../../texts/index.ts';
import type { PersonField } from './conflict.ts';

export function measured(name: Measurement, value: number): string {
  if (name === 'shoe') return String(value);
  return quantity(name === 'mass' ? 'mass' : 'length', value);
}

/** Until when it counts, as recorded. With no date on it only the kind can say that it does not run out. */
export function certificateEnds(one: Certificate): string {
  if (one.withdrawn) return t.people.withdrawn(day(one.withdrawn));
  if (one.expires) return t.people.expires(day(one.expires));
  const known = catalogue().certificates.find((each) => each.kind === one.kind);
  return known?.validity === 'no_expiry' ? t.people.noExpiry : t.people.noEndRecorded;
}

export function fieldInWords(person: Person, field: PersonField): string[] {
  const lines = written(person, field).filter(Boolean);
  return lines.length > 0 ? lines : [t.app.none];
}

function written(person: Person, field: PersonField): string[] {
  switch (field) {
    case 'performs':
      return [person.performs ? t.app.yes : t.app.no];
    case 'born':
    case 'medically_clear_until':
      return [person[field] ? day(person[field]) : ''];
    case 'last_wrap':
      return [person.last_wrap ? moment(person.last_wrap) : ''];
    case 'measurements':
      return Object.entries(person.measurements ?? {}).map(
        ([name, one]) =>
          `${t.words.measurement[name as Measurement]} ${measured(name as Measurement, one.value)}, ${day(one.on)}`,
      );
    case 'certificates':
      return (person.certificates ?? []).map((one) =>
        [certificateTitle(one.kind), one.category, certificateEnds(one)].filter(Boolean).join(', '),
      );
    case 'skills':
      return (person.skills ?? []).map((one) => `${skillTitle(one.name)}, ${t.people.level(one.level)}`);
    case 'availability':
      return (person.availability ?? []).map(
        (one) =>
          `${day(one.from)} – ${day(one.to)}, ${one.available ? t.people.available : t.people.notAvailable}`,
      );
    case 'exposures':
      return (person.exposures ?? []).map((one) => `${skillTitle(one.kind)} × ${one.count}, ${day(one.on)}`);
    case 'consents':
      return [String(person.consents?.length ?? 0)];
    default:
      return [person[field] ?? ''];
  }
}
