// Plan fields as people read them: labels, and values with their units. Follows the shape of the data; the
// names of parameters come from the technique's own description.

import type {
  Band,
  ControlKind,
  Hazard,
  InputValue,
  Parameter,
  Probability,
  Quantity,
  ReadingKind,
  Requirement,
  Role,
  Severity,
  TechniqueDescription,
} from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { day, moment, number, plainName, quantity, withNamesIsolated } from '../format.ts';
import { t } from '../texts/index.ts';
import { certificateTitle, skillTitle } from './catalogue.ts';
import { roleTitle } from './role-title.ts';

/** Numbers in facets that are quantities, by the last two parts of where they stand. */
const QUANTITIES: Record<string, Quantity> = {
  working_load: 'force',
  stand_off: 'length',
  kit_mass: 'mass',
};

/** Which kind of quantity a reading is; light has none and is read in lux. */
export const readingQuantity: Record<ReadingKind, Quantity | undefined> = {
  wind: 'speed',
  gust: 'speed',
  air_temperature: 'temperature',
  water_temperature: 'temperature',
  light: undefined,
};

export function techniqueOf(name: string): TechniqueDescription | undefined {
  return core.ready ? core.techniques().find((one) => one.name === name) : undefined;
}

export function parameterOf(
  technique: TechniqueDescription | undefined,
  name: string,
): Parameter | undefined {
  return technique?.parameters.find((one) => one.name === name);
}

export function inputText(value: InputValue, parameter: Parameter | undefined): string {
  if (typeof value === 'string') {
    const kind = parameter?.kind;
    const option = kind?.kind === 'choice' ? kind.options.find((one) => one.name === value) : undefined;
    return option?.title ?? plainName(value);
  }
  if (parameter?.kind.kind !== 'number') return String(value.value);
  const kind = parameter.kind.quantity;
  const main = quantity(kind, value.value);
  // A tolerance of a temperature is a difference, and would gain the scale's offset if written like one.
  if (value.tolerance === undefined || value.tolerance === 0 || kind === 'temperature') return main;
  return `${main} ± ${quantity(kind, value.tolerance)}`;
}

export function bandText(band: Band): string {
  const text = (value: number | null | undefined) =>
    value === null || value === undefined ? undefined : readingText(band.reading, value);
  return t.day.band(text(band.min), text(band.max));
}

export function readingText(kind: Band['reading'], value: number): string {
  const unit = readingQuantity[kind];
  return unit ? quantity(unit, value) : `${number(value)} ${t.day.lux}`;
}

/** Everything that a test shot measured, in one line. */
export function allMeasured(
  technique: TechniqueDescription | undefined,
  measured: Record<string, number>,
): string {
  return Object.entries(measured)
    .map(([name, value]) => measuredText(technique, name, value))
    .join('; ');
}

/** A figure as it was measured: its title and the value. */
export function measuredText(
  technique: TechniqueDescription | undefined,
  name: string,
  value: number,
): string {
  const figure = technique?.figures.find((one) => one.name === name);
  return figure
    ? `${figure.title} ${quantity(figure.quantity, value)}`
    : `${plainName(name)} ${number(value)}`;
}

export function fieldLabel(name: string): string {
  return t.words.field[name] ?? plainName(name);
}

/** A plain field's value. Lists and records are drawn by whoever asks. */
export function fieldText(name: string, value: unknown): string {
  if (value === null || value === undefined || value === '') return '';
  const kind = QUANTITIES[name];
  if (typeof value === 'number') return kind ? quantity(kind, value) : String(value);
  if (typeof value === 'boolean') return value ? t.app.yes : t.app.no;
  if (typeof value !== 'string') return JSON.stringify(value);
  if (name === 'severity') return t.risk.severity[value as Severity] ?? value;
  if (name === 'probability') return t.risk.probability[value as Probability] ?? value;
  if (name === 'kind') return t.risk.control[value as ControlKind] ?? value;
  if (name === 'hazard') return t.words.hazard[value as Hazard] ?? value;
  if (name === 'owner') return roleTitle(value as Role);
  if (name === 'day' || name === 'inspected_until') return day(value);
  if (name === 'call') return moment(value);
  return withNamesIsolated(value);
}

export function requirementText(one: Requirement): string {
  switch (one.kind) {
    case 'skill':
      return t.requirement.skill(skillTitle(one.name), one.level, one.within_days ?? undefined);
    case 'certificate':
      return t.requirement.certificate(one.any_of.map(certificateTitle), one.category ?? undefined);
    case 'measurement': {
      const kind: Quantity | undefined =
        one.of === 'shoe' ? undefined : one.of === 'mass' ? 'mass' : 'length';
      const write = (value: number) => (kind ? quantity(kind, value) : String(value));
      return t.requirement.measurement(t.words.measurement[one.of], write(one.target), write(one.tolerance));
    }
    case 'kitted_mass':
      return t.requirement.kittedMass(quantity('mass', one.min), quantity('mass', one.max));
    case 'age':
      return t.requirement.age(one.min ?? undefined, one.max ?? undefined);
    case 'medical_clearance':
      return t.requirement.medicalClearance;
    case 'availability':
      return t.requirement.availability;
    case 'rest':
      return t.requirement.rest(one.hours);
    case 'daily_exposure':
      return t.requirement.dailyExposure(skillTitle(one.exposure), one.max);
    case 'consent':
      return t.requirement.consent;
  }
}

/** Where a change is, from a JSON pointer inside a facet: "Figures, Drop height". */
export function pointerLabel(pointer: string, technique: TechniqueDescription | undefined): string {
  const parts = pointer.split('/').filter(Boolean);
  if (parts[0] === 'parameters' && parts[1]) {
    const title = parameterOf(technique, parts[1])?.title ?? plainName(parts[1]);
    return parts[2] === 'tolerance' ? `${title}, ${fieldLabel('tolerance').toLowerCase()}` : title;
  }
  return parts.map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : fieldLabel(part))).join(', ');
}

/** One side of a change, in words. */
export function pointerText(
  pointer: string,
  value: unknown,
  technique: TechniqueDescription | undefined,
  nameOf: (person: string) => string,
): string {
  if (value === null || value === undefined || value === '') return t.app.none;
  const parts = pointer.split('/').filter(Boolean);
  const last = parts.at(-1) ?? '';
  if (parts[0] === 'parameters' && parts[1]) {
    const parameter = parameterOf(technique, parts[1]);
    if (parts[2] && typeof value === 'number' && parameter?.kind.kind === 'number') {
      if (parts[2] === 'tolerance' && parameter.kind.quantity === 'temperature') return String(value);
      return quantity(parameter.kind.quantity, value);
    }
    return inputText(value as InputValue, parameter);
  }
  if (last === 'person' && typeof value === 'string') return nameOf(value);
  if (Array.isArray(value)) return value.map((one) => recordText(one, nameOf)).join('; ');
  if (typeof value === 'object') return recordText(value, nameOf);
  return fieldText(last, value);
}

function recordText(value: unknown, nameOf: (person: string) => string): string {
  if (typeof value !== 'object' || value === null) return fieldText('', value);
  return Object.entries(value)
    .filter(([name, one]) => name !== 'id' && typeof one !== 'object' && one !== '')
    .map(([name, one]) =>
      name === 'name'
        ? String(one)
        : `${fieldLabel(name)} ${name === 'person' ? nameOf(String(one)) : fieldText(name, one)}`,
    )
    .join(', ');
}
