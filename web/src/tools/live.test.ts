// The tools as the app asks them, answered by the compiled core that it ships.

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Inputs } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { startCore } from '../testing/case.ts';
import { said as spanish } from '../texts/es/said/index.ts';
import { learn, said } from '../texts/said.ts';
import { groupOf } from '../texts/technique-groups.ts';
import type { Tool, Tools } from './ask.ts';
import { MOST_SHOTS, reasonOf } from './shots.ts';

/** What the app is answered, before it is put into the language in use. */
function answered<T extends Tool>(tool: T, technique: string, request: Tools[T][0]): Tools[T][1] {
  return JSON.parse(core.raw(tool, technique, JSON.stringify(request))) as Tools[T][1];
}

beforeAll(startCore);
afterAll(() => learn({ rules: [], trail: [] }, 'en'));

const fall: Inputs = {
  drop_height: { value: 12, tolerance: 0.2 },
  performer_mass: { value: 70 },
  catcher: 'air_bag',
  catcher_depth: { value: 2.4 },
};
const pull: Inputs = {
  performer_mass: { value: 81 },
  pull_direction: 'backward',
  reservoir_pressure: { value: 540_000 },
  reservoir_volume: { value: 0.05 },
  bore: { value: 0.1 },
  stroke: { value: 0.6 },
  purchase: { value: 4 },
  // 40 dm³/(s bar).
  valve_conductance: { value: 40e-8 },
  line_modulus: { value: 900_000 },
  line_length: { value: 12 },
};

describe('the tools of the compiled core', () => {
  it('find the height from which a body arrives at 14 m/s', () => {
    const { roots, note } = answered('solve_for', 'high-fall', {
      inputs: fall,
      parameter: 'drop_height',
      figure: 'impact_speed',
      wanted: 14,
    });
    // Free fall, v²/2g with g 9.80665 m/s², gives 9.993 m; drag asks for a little more.
    expect(roots).toHaveLength(1);
    expect(roots[0]).toBeGreaterThan(9.993);
    expect(roots[0]).toBeLessThan(10.6);
    expect(note).toBe('');
  });

  it('rank what moves the figure, and count how often a limit is crossed', () => {
    const { bars } = answered('sensitivity', 'high-fall', { inputs: fall, figure: 'impact_speed' });
    const swings = bars.map((one) => one.swing);
    expect(swings).toEqual(swings.toSorted((a, b) => b - a));
    expect(bars.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 6);
    const asked = { inputs: fall, draws: 500, seed: 7 };
    const spread = answered('spread', 'high-fall', asked);
    expect(spread).toEqual(answered('spread', 'high-fall', asked));
    const speed = spread.figures.find((one) => one.name === 'impact_speed');
    expect(speed && speed.low <= speed.median && speed.median <= speed.high).toBe(true);
    for (const { share } of spread.crossings) if (share !== null) expect(share >= 0 && share <= 1).toBe(true);
  });

  it('say what moved between two plans', () => {
    const higher = { ...fall, drop_height: { value: 14, tolerance: 0.2 } };
    const moved = answered('compare', 'high-fall', { before: fall, after: higher });
    const speed = moved.figures.find((one) => one.name === 'impact_speed');
    expect(speed?.moved).toBe(true);
    expect(speed?.after?.value).toBeGreaterThan(speed?.before?.value ?? Number.NaN);
    const none = answered('compare', 'high-fall', { before: fall, after: fall });
    expect([...none.figures, ...none.checks].filter((one) => one.moved)).toEqual([]);
  });

  it('get back the friction that test shots were made with', () => {
    const shots = [300_000, 400_000, 500_000].map((value) => {
      const inputs = { ...pull, reservoir_pressure: { value } };
      const made = core.assess('ratchet-pull', { ...inputs, seal_friction: { value: 330 } });
      const distance = made.figures.find((one) => one.name === 'total_distance')?.value ?? Number.NaN;
      return { inputs, measured: { total_distance: distance } };
    });
    const found = answered('calibrate', 'ratchet-pull', {
      inputs: pull,
      shots,
      coefficients: ['seal_friction'],
    });
    expect(found.coefficients[0]?.value).toBeCloseTo(330, 0);
    expect(found.shots.map((one) => one.shot)).toEqual([1, 2, 3]);
    for (const one of found.shots) expect(one.fitted).toBeCloseTo(one.measured, 3);
  });

  it('take no more test shots in one fit than the app sends', () => {
    const shot = { inputs: pull, measured: { total_distance: 5 } };
    const shots = Array.from({ length: MOST_SHOTS + 1 }, () => shot);
    expect(() => answered('calibrate', 'ratchet-pull', { inputs: pull, shots })).toThrow(
      `give at most ${MOST_SHOTS} shots`,
    );
  });

  it('say in Spanish why they have no answer', () => {
    const unreachable = answered('solve_for', 'high-fall', {
      inputs: fall,
      parameter: 'drop_height',
      figure: 'impact_speed',
      wanted: 900,
    });
    expect(unreachable.roots).toEqual([]);
    const refusal = (() => {
      try {
        const shots = [{ inputs: pull, measured: { total_distance: 5 } }];
        answered('calibrate', 'ratchet-pull', { inputs: pull, shots, coefficients: ['seal_friction'] });
      } catch (error) {
        return reasonOf((error as Error).message);
      }
    })();
    expect(refusal).toMatch(/^1 measured shots cannot settle 1 coefficients/);
    learn(spanish, 'es-ES');
    expect(said(unreachable.note)).toMatch(/^Velocidad de \S+: no llega a 900 m\/s con .* de 0[.,]5 m a /);
    expect(said(refusal ?? '')).toMatch(
      /^1 pruebas medidas no bastan .* Lo que más diría es una prueba con /,
    );
  });
});

describe('the techniques of the compiled core', () => {
  it('are each chosen from a group that is named for them', () => {
    const names = core.techniques().map((one) => one.name);
    expect(names.length).toBeGreaterThan(10);
    expect(names.filter((name) => groupOf(name) === 'other')).toEqual([]);
  });
});
