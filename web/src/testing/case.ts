// A small production of invented people, whole enough for the core to judge: one high fall, three who sign.

import { readFileSync } from 'node:fs';
import { vi } from 'vitest';
import type { Case, Certificate, GagPage, Policy, Role, Statement } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { publicKey } from '../sign/device-key.ts';
import { signCompact } from '../sign/jws.ts';
import { uuidv7 } from '../storage/uuid.ts';

const root = new URL('../../', `file://${process.cwd()}/src/testing/`).pathname;

/** Starts the real compiled core in the test environment. */
export async function startCore(): Promise<void> {
  vi.stubGlobal('fetch', async (url: URL | string) => {
    const name = String(url).split('/').at(-1)?.replace('_bg.wasm', '').replace('gagwright_', '');
    const bytes = readFileSync(`${root}${name}/pkg/gagwright_${name}_bg.wasm`);
    return new Response(bytes, { headers: { 'content-type': 'application/wasm' } });
  });
  // Node's own streaming start wants Node's own Response, which the test environment has replaced.
  Object.defineProperty(WebAssembly, 'instantiateStreaming', { value: undefined, configurable: true });
  await core.start();
  vi.unstubAllGlobals();
  if (!core.ready) throw new Error(core.failed);
}

export const COORDINATOR = uuidv7();
export const MEDIC = uuidv7();
export const PERFORMER = uuidv7();
const SLOT = uuidv7();

export function policy(): Policy {
  return JSON.parse(readFileSync(`${root}../seed-data/catalogue/policy.json`, 'utf8')) as Policy;
}

/** One certificate in date from each group that the policy asks of a role. */
function certificatesFor(role: Role): Certificate[] {
  const groups = policy().roles.find((one) => one.role === role)?.certificates ?? [];
  return groups.map(([kind = '']) => ({
    id: uuidv7(),
    kind,
    issued: '2026-01-05',
    expires: '2028-01-05',
    checked: { by: 'Ada', on: '2026-11-01', method: 'sight of original' },
  }));
}

export function emptyCase(): Case {
  const written_at = '2026-11-20T10:00:00Z';
  return {
    production: uuidv7(),
    plan: {
      gag: uuidv7(),
      revision: 1,
      technique: 'high-fall',
      policy: policy().version,
      author: COORDINATOR,
      written_at,
      note: '',
      facets: {
        setting: {
          scene: '42',
          location: 'Silo',
          unit: '',
          day: '2026-12-04',
          call: null,
          light: '',
          parameters: {},
        },
        action: {
          summary: 'A fall',
          steps: [],
          hazards: [],
          abort: 'SALT',
          parameters: { drop_height: { value: 10 } },
        },
        rigging: {
          method: 'Air bag',
          equipment: [],
          rescue: { method: '', limit_seconds: null, drilled_seconds: null },
          parameters: {},
        },
        effects: { method: '', charges: [], suppression: '', parameters: {} },
        vehicles: { method: '', parameters: {} },
        cast: {
          slots: [{ id: SLOT, name: 'Double', requirements: [], person: PERFORMER, kit_mass: 2 }],
          parameters: {},
        },
        medical: { cover: 'Paramedic', ambulance: '', hospital: '', parameters: {} },
        camera: { positions: [], notes: '', parameters: {} },
        conditions: { bands: [], stop_on: [], parameters: {} },
        rehearsals: { rungs: [] },
      },
    },
    signoffs: [],
    holds: [],
    readings: [],
    runs: [],
    people: [],
    members: [
      { person: COORDINATOR, name: 'Ada', roles: ['coordinator'], certificates: [] },
      { person: MEDIC, name: 'Bo', roles: ['medic'], certificates: certificatesFor('medic') },
      { person: PERFORMER, name: 'Cy', roles: ['performer'], certificates: [] },
    ],
    devices: [],
    policy: policy(),
  };
}

export async function makeStatement(
  one: Case,
  role: Role,
  signer: string,
  device: string,
): Promise<Statement> {
  const answer = core.clearance(one, new Date('2026-11-21T10:00:00Z'));
  const rule = one.policy.roles.find((each) => each.role === role);
  if (!rule) throw new Error(`the policy has no ${role}`);
  return {
    kind: 'gagwright/plan-signoff/1',
    id: uuidv7(),
    production: one.production,
    gag: one.plan.gag,
    revision: one.plan.revision,
    plan_digest: answer.plan_digest,
    technique: one.plan.technique,
    facets: Object.fromEntries(rule.covers.map((facet) => [facet, answer.facets[facet]])),
    role,
    decision: 'approve',
    attestation: rule.attestation.id,
    signer,
    device,
    signed_at: '2026-11-21T10:00:00.000Z',
  };
}

/** The case with one more signature, made with a key of its own. */
export async function signed(one: Case, role: Role, signer: string): Promise<Case> {
  const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, [
    'sign',
    'verify',
  ]);
  const device = uuidv7();
  const statement = await makeStatement(one, role, signer, device);
  const jws = await signCompact(core.canonical(statement), device, pair.privateKey);
  return {
    ...one,
    devices: [
      ...one.devices,
      {
        id: device,
        person: signer,
        name: 'Phone',
        key: await publicKey(pair),
        registered_at: '2026-11-20T09:00:00Z',
        revoked_at: null,
      },
    ],
    signoffs: [
      ...one.signoffs,
      { jws, received_at: '2026-11-21T10:00:01Z', leaf: one.signoffs.length + 5, met: [] },
    ],
  };
}

export function pageOf(one: Case): GagPage {
  return {
    gag: { id: one.plan.gag, code: 'G07', title: 'High fall', production: one.production },
    plan: one.plan,
    case: one,
    clearance: core.clearance(one, new Date()),
    history: [],
    names: {},
    marks: {},
    test_shots: [],
    packet_url: '',
    trail: { size: 9, leaf: 3 },
  };
}
