// What becomes of a plan's parameters when it is done another way: those that both techniques ask for under the
// same name are kept where the new one takes their value; the rest is named before it goes.

import type {
  Facet,
  Facets,
  InputValue,
  Parameter,
  Parameters,
  TechniqueDescription,
} from '../../api/types.ts';
import { FACETS } from '../../api/types.ts';

export interface TechniqueChange {
  facets: Facets;
  /** Kept, by what the new technique calls them. */
  kept: Parameter[];
  /** Lost: the machine name, and the value as it was. */
  lost: { name: string; value: InputValue }[];
  /** What the new technique needs and nobody has said yet. */
  asked: Parameter[];
}

function takes(parameter: Parameter, value: InputValue): boolean {
  const { kind } = parameter;
  if (kind.kind === 'choice') return kind.options.some((one) => one.name === value);
  return typeof value === 'object' && value.value >= kind.min && value.value <= kind.max;
}

/** Whether both mean the same kind of thing by the name: a length here is not a time there. */
function alike(one: Parameter, other: Parameter): boolean {
  if (one.kind.kind === 'number' && other.kind.kind === 'number')
    return one.kind.quantity === other.kind.quantity;
  return one.kind.kind === other.kind.kind;
}

export function changeTechnique(
  facets: Facets,
  from: TechniqueDescription | undefined,
  to: TechniqueDescription,
): TechniqueChange {
  const kept: Parameter[] = [];
  const lost: TechniqueChange['lost'] = [];
  const placed = new Map<Facet, Parameters>();
  for (const facet of FACETS) {
    const given = (facets[facet] as { parameters?: Parameters }).parameters ?? {};
    for (const [name, value] of Object.entries(given)) {
      const before = from?.parameters.find((one) => one.name === name);
      const now = to.parameters.find((one) => one.name === name);
      if (now && (!before || alike(before, now)) && takes(now, value)) {
        kept.push(now);
        placed.set(now.facet, { ...placed.get(now.facet), [name]: value });
      } else lost.push({ name, value });
    }
  }
  const next = { ...facets };
  for (const facet of FACETS) {
    // The ladder has no parameters; every other facet may.
    if (facet === 'rehearsals') continue;
    Object.assign(next, { [facet]: { ...facets[facet], parameters: placed.get(facet) ?? {} } });
  }
  const have = new Set(kept.map((one) => one.name));
  const asked = to.parameters.filter((one) => !have.has(one.name) && wanted(one));
  return { facets: next, kept, lost, asked };
}

/** Nothing is taken for it when it is left empty. */
function wanted(parameter: Parameter): boolean {
  return parameter.kind.default === null;
}
