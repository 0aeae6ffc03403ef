// A plan's inputs for the core's tools, and one of them set anew. Which facet an input belongs to comes from the
// technique's own description.

import type { Facets, Inputs, InputValue, TechniqueDescription } from '../api/types.ts';
import { FACETS } from '../api/types.ts';

/** Every input of a plan, from all facets. */
export function inputsOf(facets: Facets): Inputs {
  const parts = FACETS.map((facet) => (facets[facet] as { parameters?: Inputs }).parameters ?? {});
  return Object.assign({}, ...parts) as Inputs;
}

/** The plan with one number set, its tolerance as it was. The same plan when the technique has no such number. */
export function withNumber(
  facets: Facets,
  technique: TechniqueDescription | undefined,
  name: string,
  si: number,
): Facets {
  const parameter = technique?.parameters.find((one) => one.name === name);
  if (parameter?.kind.kind !== 'number' || !Number.isFinite(si)) return facets;
  const part = facets[parameter.facet] as { parameters?: Inputs };
  const before = part.parameters?.[name];
  const tolerance = typeof before === 'object' ? before.tolerance : undefined;
  const value: InputValue = tolerance === undefined ? { value: si } : { value: si, tolerance };
  return { ...facets, [parameter.facet]: { ...part, parameters: { ...part.parameters, [name]: value } } };
}

/** A number to set, as it stands in an address: `drop_height:12.2`. */
export interface Wanted {
  name: string;
  si: number;
}

export function wantedText({ name, si }: Wanted): string {
  return `${name}:${si}`;
}

export function readWanted(text: string | null): Wanted | undefined {
  const [, name, value] = /^([a-z][a-z0-9_]*):(-?[0-9.]+(?:e[+-]?[0-9]+)?)$/i.exec(text ?? '') ?? [];
  const si = Number(value);
  return name && Number.isFinite(si) ? { name, si } : undefined;
}
