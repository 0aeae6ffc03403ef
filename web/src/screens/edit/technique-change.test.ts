import { beforeAll, describe, expect, it } from 'vitest';
import type { Facets, TechniqueDescription } from '../../api/types.ts';
import { core } from '../../core/core.svelte.ts';
import { emptyCase, startCore } from '../../testing/case.ts';
import { changeTechnique } from './technique-change.ts';

function technique(name: string): TechniqueDescription {
  const found = core.techniques().find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
}

function plan(): Facets {
  const { facets } = emptyCase().plan;
  return {
    ...facets,
    action: { ...facets.action, summary: 'She steps off', parameters: { drop_height: { value: 20 } } },
    rigging: { ...facets.rigging, parameters: { catcher: 'air_bag', catcher_depth: { value: 3 } } },
    cast: { ...facets.cast, parameters: { performer_mass: { value: 70, tolerance: 1 } } },
  };
}

describe('doing a gag another way', () => {
  beforeAll(startCore);

  it('keeps what both techniques ask for by one name, and names the rest before it goes', () => {
    const to = technique('descender-drop');
    const asksFor = (name: string) => to.parameters.some((one) => one.name === name);
    const change = changeTechnique(plan(), technique('high-fall'), to);
    expect(change.kept.map((one) => one.name)).toContain('performer_mass');
    expect(change.facets.cast.parameters).toEqual({ performer_mass: { value: 70, tolerance: 1 } });
    expect(change.lost.map((one) => one.name)).toContain('catcher');
    for (const one of change.kept) expect(asksFor(one.name)).toBe(true);
    // Nothing vanishes unsaid.
    expect(change.kept.length + change.lost.length).toBe(4);
    expect(change.asked.map((one) => one.name)).not.toContain('performer_mass');
    expect(change.asked.length).toBeGreaterThan(0);
  });

  it('leaves the words, people and ladder of the plan as they are', () => {
    const before = plan();
    const { facets } = changeTechnique(before, technique('high-fall'), technique('fight'));
    expect(facets.action.summary).toBe('She steps off');
    expect(facets.rehearsals).toBe(before.rehearsals);
    expect(facets.cast.slots).toBe(before.cast.slots);
  });

  it('does not carry a value that the other technique cannot take', () => {
    const to = technique('high-fall');
    const heavy = plan();
    heavy.cast = { ...heavy.cast, parameters: { performer_mass: { value: 5000 } } };
    const change = changeTechnique(heavy, technique('descender-drop'), to);
    expect(change.facets.cast.parameters).toEqual({});
    expect(change.lost.map((one) => one.name)).toContain('performer_mass');
  });

  it('makes a plan that the technique can be asked about', () => {
    for (const to of core.techniques()) {
      const { facets } = changeTechnique(plan(), technique('high-fall'), to);
      const inputs = Object.assign(
        {},
        ...Object.values(facets).map((one) => (one as { parameters?: object }).parameters ?? {}),
      );
      expect(() => core.assess(to.name, inputs)).not.toThrow();
    }
  });

  it('puts a shared value where the other technique keeps it', () => {
    const strange = plan();
    strange.setting = { ...strange.setting, parameters: { performer_mass: { value: 70 } } };
    strange.cast = { ...strange.cast, parameters: {} };
    const { facets } = changeTechnique(strange, undefined, technique('high-fall'));
    expect(facets.cast.parameters).toEqual({ performer_mass: { value: 70 } });
    expect(facets.setting.parameters).toEqual({});
  });
});
