import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Bar, Inputs, TechniqueDescription, TestShot } from '../api/types.ts';
import { emptyCase } from '../testing/case.ts';
import { grouped, groupOf } from '../texts/technique-groups.ts';
import { inputsOf, readWanted, wantedText, withNumber } from './inputs.ts';
import { differing, MOST_SHOTS, reasonOf, rowsByShot, setOver, shotsFor, shotsToFit } from './shots.ts';
import { swings } from './swing.ts';
import { outOf, outOfGiven } from './words.ts';

const technique = {
  name: 'high-fall',
  title: 'High fall',
  summary: '',
  figures: [],
  parameters: [
    {
      name: 'catcher_depth',
      title: 'Catcher depth',
      facet: 'rigging',
      help: '',
      kind: { kind: 'number', quantity: 'length', default: null, min: 0.5, max: 10, tolerance: 0.1 },
    },
    {
      name: 'drop_height',
      title: 'Drop height',
      facet: 'action',
      help: '',
      kind: { kind: 'number', quantity: 'length', default: null, min: 1, max: 100, tolerance: 0.1 },
    },
  ],
} as unknown as TechniqueDescription;

describe('a share of draws', () => {
  it('is said with as few noughts as tell it', () => {
    expect(outOf(0.03, 10_000)).toEqual({ n: 3, of: 100 });
    expect(outOf(0.5, 2000)).toEqual({ n: 50, of: 100 });
    expect(outOf(0.004, 10_000)).toEqual({ n: 4, of: 1000 });
    expect(outOf(0.034, 10_000)).toEqual({ n: 34, of: 1000 });
    expect(outOf(0.0003, 10_000)).toEqual({ n: 3, of: 10_000 });
  });

  it('is never rounded to none or to all', () => {
    expect(outOf(0.004, 2000)).toEqual({ n: 4, of: 1000 });
    expect(outOf(0.0005, 2000)).toEqual({ n: 1, of: 2000 });
    expect(outOf(0.9995, 2000)).toEqual({ n: 1999, of: 2000 });
    expect(outOf(0.999, 10_000)).toEqual({ n: 999, of: 1000 });
  });

  it('is none of all that were drawn, or all of them', () => {
    expect(outOf(0, 2000)).toEqual({ n: 0, of: 2000 });
    expect(outOf(1, 2000)).toEqual({ n: 2000, of: 2000 });
  });

  it('is said of those that gave a value, where some gave none', () => {
    // 1000 draws of which 940 gave none: one of the 60 left is outside, and nothing is said of 100 or of 1000.
    expect(outOfGiven(1 / 60, 0.94, 1000)).toEqual({ n: 1, of: 60 });
    expect(outOfGiven(0, 0.94, 1000)).toEqual({ n: 0, of: 60 });
    expect(outOfGiven(1, 0.94, 1000)).toEqual({ n: 60, of: 60 });
    expect(outOfGiven(0.03, 0, 10_000)).toEqual(outOf(0.03, 10_000));
  });
});

describe('the inputs of a plan', () => {
  it('come from every facet', () => {
    const { facets } = emptyCase().plan;
    const more = { ...facets, rigging: { ...facets.rigging, parameters: { catcher: 'air-bag' } } };
    expect(inputsOf(more)).toEqual({ drop_height: { value: 10 }, catcher: 'air-bag' });
  });

  it('take a number into the facet it belongs to, and keep its tolerance', () => {
    const { facets } = emptyCase().plan;
    const deeper = withNumber(facets, technique, 'catcher_depth', 2.4);
    expect(deeper.rigging.parameters).toEqual({ catcher_depth: { value: 2.4 } });
    expect(facets.rigging.parameters).toEqual({});
    const stated = {
      ...facets,
      action: { ...facets.action, parameters: { drop_height: { value: 10, tolerance: 0.3 } } },
    };
    expect(inputsOf(withNumber(stated, technique, 'drop_height', 12))).toEqual({
      drop_height: { value: 12, tolerance: 0.3 },
    });
  });

  it('stay as they are when the technique has no such number', () => {
    const { facets } = emptyCase().plan;
    expect(withNumber(facets, technique, 'no_such', 1)).toBe(facets);
    expect(withNumber(facets, undefined, 'drop_height', 1)).toBe(facets);
    expect(withNumber(facets, technique, 'drop_height', Number.NaN)).toBe(facets);
  });

  it('travel in an address, and nothing else does', () => {
    for (const si of [12.2, -3, 1e-7, 600_000]) {
      expect(readWanted(wantedText({ name: 'drop_height', si }))).toEqual({ name: 'drop_height', si });
    }
    for (const bad of [null, '', 'drop_height', 'drop_height:', 'drop_height:ten', ':1', 'a:1.2.3', 'a b:1'])
      expect(readWanted(bad)).toBeUndefined();
  });
});

describe('test shots', () => {
  const shot = (id: string, technique: string, shot_at: string, inputs: Inputs = {}): TestShot =>
    ({ id, technique, shot_at, inputs, measured: {}, load: 'bag' }) as unknown as TestShot;

  it('count for their own technique, the earliest first', () => {
    const all = [
      shot('b', 'ratchet-pull', '2026-11-02T10:00:00Z'),
      shot('x', 'high-fall', '2026-11-01T10:00:00Z'),
      shot('a', 'ratchet-pull', '2026-11-01T10:00:00Z'),
    ];
    expect(shotsFor('ratchet-pull', all).map((one) => one.id)).toEqual(['a', 'b']);
    expect(all.map((one) => one.id)).toEqual(['b', 'x', 'a']);
  });

  it('say what was set otherwise than the plan, and nothing of tolerances', () => {
    const plan: Inputs = { mass: { value: 60, tolerance: 2 }, bore: { value: 0.08 }, mode: 'slow' };
    expect(
      differing({ mass: { value: 80 }, bore: { value: 0.08, tolerance: 0.001 }, mode: 'slow' }, plan),
    ).toEqual(['mass']);
    expect(differing({ mass: { value: 60 }, mode: 'fast', extra: { value: 1 } }, plan)).toEqual([
      'mode',
      'extra',
      'bore',
    ]);
  });

  it('are set as the plan says now, but for what the person set or took out', () => {
    const own = { mass: { value: 80 }, guide: undefined };
    const first: Inputs = { mass: { value: 60 }, bore: { value: 0.08 }, guide: 'rail' };
    expect(setOver(first, {})).toEqual(first);
    expect(setOver(first, own)).toEqual({ mass: { value: 80 }, bore: { value: 0.08 } });
    // A revision comes: what nobody set follows it, what was set stays.
    expect(setOver({ mass: { value: 61 }, bore: { value: 0.1 }, purchase: { value: 4 } }, own)).toEqual({
      mass: { value: 80 },
      bore: { value: 0.1 },
      purchase: { value: 4 },
    });
  });

  it('go into the fit but for those left out, the newest, by their place on the ladder', () => {
    const few = ['a', 'b', 'c'].map((id) => shot(id, 'ratchet-pull', '2026-11-01T10:00:00Z'));
    expect(shotsToFit(few, new Set(['b'])).map((one) => [one.shot.id, one.place])).toEqual([
      ['a', 1],
      ['c', 3],
    ]);
    const many = Array.from({ length: MOST_SHOTS + 3 }, (_, at) =>
      shot(String(at), 'ratchet-pull', '2026-11-01T10:00:00Z'),
    );
    const sent = shotsToFit(many, new Set(['100']));
    expect(sent).toHaveLength(MOST_SHOTS);
    expect([sent[0]?.place, sent.at(-1)?.place]).toEqual([3, MOST_SHOTS + 3]);
  });

  it('have their measurements beside the fit, those with none as well', () => {
    const row = (shot: number, figure: string) => ({ shot, figure, measured: 1, fitted: 1.1 });
    expect(rowsByShot(3, [row(1, 'distance'), row(1, 'speed'), row(3, 'distance')])).toEqual([
      [row(1, 'distance'), row(1, 'speed')],
      [],
      [row(3, 'distance')],
    ]);
  });

  it('are refused in a sentence, without the name of a field', () => {
    expect(reasonOf('seal_friction: these shots cannot settle seal friction: log more.')).toBe(
      'these shots cannot settle seal friction: log more.',
    );
    expect(reasonOf('A sentence: as it is.')).toBe('A sentence: as it is.');
  });
});

describe('a ranking of what moves a figure', () => {
  const bar = (parameter: string, at_low: number | null, at_high: number | null, swing: number) => ({
    parameter,
    title: parameter,
    at_low,
    at_high,
    swing,
    share: 0,
  });
  const of = (value: number | null, bars: Bar[]) =>
    swings({ technique: '', figure: '', title: '', quantity: 'speed', value, bars });

  it('has all bars on one scale, and leaves out what does not move it', () => {
    const found = of(10, [bar('height', 8, 12, 4), bar('mass', 10.5, 9.5, 1), bar('colour', 10, 10, 0)]);
    expect(found.middle).toBe(0.5);
    expect(found.rows.map((one) => [one.bar.parameter, one.from, one.to])).toEqual([
      ['height', 0, 1],
      ['mass', 0.375, 0.625],
    ]);
  });

  it('stands with an end at which the figure is not given', () => {
    expect(of(10, [bar('height', null, 12, 2)]).rows[0]).toMatchObject({ from: 0, to: 1 });
    expect(of(null, [bar('height', 8, 12, 4)])).toMatchObject({ middle: undefined });
    expect(of(10, []).rows).toEqual([]);
  });
});

describe('the groups of techniques', () => {
  it('name each technique once, and keep what they do not name', () => {
    const all = ['no-such', 'high-fall', 'full-burn', 'ratchet-pull'].map((name) => ({ name }));
    expect(grouped(all).map((one) => [one.group, one.items.map((each) => each.name)])).toEqual([
      ['falls', ['high-fall']],
      ['pulls', ['ratchet-pull']],
      ['fire', ['full-burn']],
      ['other', ['no-such']],
    ]);
  });

  it('have a place for each technique that the policy speaks of', () => {
    const read = readFileSync('../seed-data/catalogue/policy.json', 'utf8');
    const names = Object.keys((JSON.parse(read) as { techniques: Record<string, unknown> }).techniques);
    expect(names.length).toBeGreaterThan(3);
    expect(names.filter((name) => groupOf(name) === 'other')).toEqual([]);
  });
});
