// What the core and the server say in sentences of their own has its Spanish. The real core is asked, for every
// technique it has and for cases that go wrong in many ways; a sentence with no Spanish fails by name.

import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Assessment, Case, Clearance, Inputs, TechniqueDescription } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { COORDINATOR, emptyCase, MEDIC, PERFORMER, signed, startCore } from '../testing/case.ts';
import { said as spanish } from './es/said/index.ts';
import { learn, said } from './said.ts';

const NONE = { rules: [], trail: [] };

/** Names that are the same in both languages. */
const SAME = new Set(['Rigging']);

let techniques: TechniqueDescription[];
let vectors: { technique: string; inputs: Inputs }[];

beforeAll(async () => {
  await startCore();
  learn(NONE, 'en');
  techniques = structuredClone(core.techniques());
  vectors = JSON.parse(readFileSync('../server/mechanics/tests/vectors.json', 'utf8'));
});

afterAll(() => learn(NONE, 'en'));

/** Those of some English sentences that Spanish does not know. */
function unknown(sentences: Iterable<string>): string[] {
  learn(spanish, 'es-ES');
  const missing = [...new Set(sentences)].filter((one) => one && !SAME.has(one) && said(one) === one);
  learn(NONE, 'en');
  return missing;
}

function* ofAssessment(one: Assessment): Generator<string> {
  for (const thing of [...one.figures, ...one.checks, ...one.zones]) yield thing.title;
  for (const check of one.checks) yield check.detail;
  for (const trace of one.traces) yield* [trace.title, trace.x.title, ...trace.y.map((each) => each.title)];
  for (const zone of one.zones) yield zone.reason;
  for (const caution of one.cautions) yield caution.text;
}

function* ofClearance(one: Clearance): Generator<string> {
  for (const role of one.roles) yield* [role.title, role.because, ...(role.reasons ?? [])];
  for (const block of one.blocks) yield* [block.reason, block.remedy];
  for (const block of [...one.day.blocks, ...one.go.why_not]) yield* [block.reason, block.remedy];
  for (const mark of one.day.marks) yield* mark.reasons ?? [];
  for (const who of one.day.people) yield who.stood_down ?? '';
  yield* one.go.open?.lapsed ?? [];
  for (const slot of one.slots)
    for (const finding of slot.verdict?.findings ?? []) yield* [finding.reason, finding.cure?.what ?? ''];
}

describe('in Spanish', () => {
  it('every technique has its titles, its help and its choices', () => {
    const all = techniques.flatMap((one) => [
      one.title,
      one.summary,
      ...one.parameters.flatMap((parameter) => [
        parameter.title,
        parameter.help,
        ...(parameter.kind.kind === 'choice' ? parameter.kind.options.map((option) => option.title) : []),
      ]),
      ...one.figures.flatMap((figure) => [figure.title, figure.help]),
    ]);
    expect(all.length).toBeGreaterThan(100);
    expect(unknown(all)).toEqual([]);
  });

  it('every check, plot, zone and caution of the kept answers is said', () => {
    const some = vectors.filter((_, place) => place % 8 === 0);
    const empty = techniques.map((one) => ({ technique: one.name, inputs: {} }));
    const all = [...some, ...empty].flatMap((one) => [
      ...ofAssessment(core.assess(one.technique, one.inputs)),
    ]);
    expect(new Set(all).size).toBeGreaterThan(100);
    expect(unknown(all)).toEqual([]);
  }, 60_000);

  it('every kind of certificate and skill is named', () => {
    const read = (name: string) => JSON.parse(readFileSync(`../seed-data/catalogue/${name}.json`, 'utf8'));
    const all = [...read('certificates').kinds, ...read('skills').skills, ...read('policy').roles].map(
      (one: { title: string }) => one.title,
    );
    expect(unknown(all)).toEqual(['rigging']);
  });

  it('every reason and remedy of a gag that goes wrong is said', async () => {
    const now = new Date('2026-11-22T10:00:00Z');
    const bad = (change: (one: Case) => void, from: Case = emptyCase()): Clearance => {
      const one = structuredClone(from);
      change(one);
      return core.clearance(one, now);
    };
    const medic = await signed(emptyCase(), 'medic', MEDIC);
    const both = await signed(medic, 'coordinator', COORDINATOR);
    const hold = { id: emptyCase().production, raised_at: '2026-11-22T09:00:00Z' };
    const cases = [
      bad(() => {}),
      bad((one) => {
        one.plan.facets.action.summary = 'Otherwise';
      }, both),
      bad((one) => {
        one.plan.facets.medical.cover = 'Another';
      }, both),
      bad((one) => {
        one.plan.facets.setting.day = null;
      }),
      bad((one) => {
        one.plan.facets.cast.slots = [];
      }),
      bad((one) => {
        for (const slot of one.plan.facets.cast.slots ?? []) slot.person = null;
      }),
      bad((one) => {
        one.people = [];
      }),
      bad((one) => {
        for (const person of one.people) {
          person.certificates = [];
          person.skills = [];
          person.born = null;
          person.availability = [];
          person.medically_clear_until = null;
        }
      }),
      bad((one) => {
        one.plan.technique = 'no-such';
      }),
      bad((one) => {
        one.holds = [{ ...hold, raised_by: MEDIC, reason: 'The bag is soft' }];
      }),
      bad((one) => {
        one.holds = [{ ...hold, raised_by: MEDIC }];
      }),
      bad((one) => {
        one.holds = [{ ...hold, gag: one.plan.gag, hazard: 'height' }];
      }),
      bad((one) => {
        one.holds = [{ ...hold, hazard: 'fire', reason: 'Smoke' }];
      }),
      bad((one) => {
        for (const member of one.members) member.roles = [];
      }, both),
      bad((one) => {
        for (const device of one.devices) device.revoked_at = '2026-11-01T00:00:00Z';
      }, both),
      bad((one) => {
        one.plan.facets.conditions.bands = [{ reading: 'wind', max: 6, max_age_minutes: 20 }];
        one.readings = [
          { id: hold.id, kind: 'wind', value: 9, at: hold.raised_at, by: PERFORMER, place: 'lip' },
        ];
      }),
      bad((one) => {
        one.plan.facets.rigging.equipment = [
          { name: 'Bag', serial: 'B1', inspected_until: '2026-01-01' },
          { name: 'Winch', serial: 'W1' },
        ];
        one.plan.facets.rigging.rescue = { method: 'Lower', limit_seconds: 60, drilled_seconds: 90 };
        one.plan.facets.rehearsals.rungs = [
          { name: 'low', what: 'From 3 m', good_runs: 2 },
          { name: 'high', what: 'From 9 m', good_runs: 1 },
        ];
      }),
      bad((one) => {
        const id = hold.id;
        const at = '2026-11-22T09:30:00Z';
        const person = one.plan.facets.cast.slots?.[0]?.person ?? PERFORMER;
        one.plan.facets.rigging.equipment = [{ name: 'harness', serial: 'H-12' }];
        one.plan.facets.conditions.bands = [{ reading: 'wind', max: 6, max_age_minutes: 5 }];
        one.readings = [{ id, kind: 'wind', value: 3, at, by: PERFORMER, place: 'lip' }];
        const item = {
          id,
          serial: 'H-12',
          name: 'harness',
          shock_loads: [{ id, at, what: 'snatched', by: MEDIC }],
        };
        one.day = {
          equipment: [{ ...item, quarantined: { since: at, reason: 'it took a shock load', by: MEDIC } }],
          briefings: [
            {
              id,
              day: '2026-11-22',
              place: 'Yard',
              revision: 1,
              facets: core.facetHashes(one.plan.facets),
              at,
              by: MEDIC,
              attended: [],
            },
          ],
          signoffs: [],
          debriefs: [],
          takes: [
            {
              id,
              number: 1,
              called_at: at,
              called_by: COORDINATOR,
              revision: 7,
              plan_digest: 'x',
              day: '2026-11-21',
              place: 'Quay',
              cast: {},
            },
          ],
          looks: [
            {
              id,
              gag: one.plan.gag,
              person,
              day: '2026-11-22',
              fitness: 'unfit',
              head_impact: true,
              at,
              by: MEDIC,
            },
          ],
          stand_downs: [],
          incidents: [
            { id, kind: 'near_miss', at, by: MEDIC, what: 'fell' },
            { id: one.plan.gag, kind: 'incident', gag: one.plan.gag, at, by: MEDIC, what: 'fell' },
          ],
          taken: [],
          elsewhere: [
            {
              gag: PERFORMER,
              code: 'G08',
              take: id,
              number: 2,
              day: '2026-11-22',
              called_at: at,
              people: [person],
              serials: ['H-12'],
              look: false,
            },
          ],
          practised: [],
        };
      }),
    ];
    const all = cases.flatMap((one) => [...ofClearance(one)]);
    expect(new Set(all).size).toBeGreaterThan(40);
    expect(unknown(all)).toEqual([]);
  });

  it('keeps what people wrote, and writes numbers as Spanish does', () => {
    learn(spanish, 'es-ES');
    expect(
      said('The fall may go in wind up to 6.5 m/s; the habit is to stop at 5 to 7 m/s at the lip.'),
    ).toBe(
      'La caída puede hacerse con viento de hasta 6,5 m/s; lo habitual es parar entre 5 y 7 m/s en el borde.',
    );
    expect(said('Medic: Nobody has signed as Medic.')).toBe('Sanitario: Nadie ha firmado como Sanitario.');
    expect(said('Ask Ada to read and sign revision 3.')).toBe('Pida a Ada que lea y firme la revisión 3.');
    expect(said('Not known until entered: Outer cloth, mass per area, Under-layer.')).toBe(
      'Sin dato hasta indicar: Tela exterior, masa por área, Capa interior.',
    );
    expect(said('Ada held G07', 'trail')).toBe('Ada dio el alto a G07');
    expect(said('Ada logged a wind reading for G07; carried here by Grace', 'trail')).toBe(
      'Ada anotó una medición de viento para G07; lo trajo Grace',
    );
    expect(said('Ada held G07')).toBe('Ada held G07');
    expect(said('Stay on the road to the quarry.')).toBe('Stay on the road to the quarry.');
    learn(NONE, 'en');
    expect(said('Medic')).toBe('Medic');
  });
});
