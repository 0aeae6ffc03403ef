// The pure crates, compiled to WebAssembly in two packages (the rules, and the techniques that they ask): the only place the app gets rules, figures, units, canonical
// bytes and proofs from. This file carries values to and fro and decides nothing.

import { provide, type Techniques } from '../../core/lookup.js';
import type {
  Assessment,
  Case,
  Catalogue,
  Clearance,
  ConsistencyProof,
  DayPrepared,
  Device,
  FacetChange,
  FacetHashes,
  Facets,
  InclusionProof,
  Inputs,
  Owed,
  Person,
  Prepared,
  Probability,
  PublicKey,
  Quantity,
  RiskLevel,
  Role,
  Severity,
  Slot,
  Statement,
  Take,
  TechniqueDescription,
  Used,
  Verdict,
} from '../api/types.ts';
import type { HandedRequest } from '../hand/request.ts';
import type { Units } from '../settings.svelte.ts';
import { spokenAssessment, spokenClearance, spokenTechnique, spokenVerdict } from '../texts/spoken.ts';

/** What the built packages export between them. Documents are JSON text; errors are thrown with a sentence. */
interface Package {
  version(): string;
  catalogue(): string;
  techniques(): string;
  assess(technique: string, inputs: string): string;
  spread(technique: string, request: string): string;
  sensitivity(technique: string, request: string): string;
  solve_for(technique: string, request: string): string;
  calibrate(technique: string, request: string): string;
  compare(technique: string, request: string): string;
  judge_slot(slot: string, person: string, context: string): string;
  clearance(one: string, now: string): string;
  owed(clearance: string, person: string, hats: string): string;
  hats(one: string, person: string, now: string): string;
  to_debrief(one: string): string;
  draft_signoff(
    one: string,
    role: string,
    slot: string | undefined,
    person: string,
    signoff: string,
    now: string,
  ): string;
  risk_level(severity: string, probability: string): string;
  draft_day(
    one: string,
    role: string,
    slot: string | undefined,
    person: string,
    signoff: string,
    now: string,
  ): string;
  diff_facets(a: string, b: string): string;
  facet_hashes(facets: string): string;
  canonical(value: string): string;
  verify_signoff(jws: string, key: string): string;
  verify_handed(jws: string, key: string): string;
  accept_handed(jws: string, device: string, now: string): string;
  verify_inclusion(proof: string): void;
  verify_growth(proof: string): void;
  parse_quantity(quantity: string, text: string): number;
  format_quantity(quantity: string, si: number, units: string): string;
}

/** A package as it is loaded, before it is started. */
type Loaded = Package & { default(): Promise<unknown> };

// Globs, so that the app still builds (and says what is missing) before the packages have been made.
const packages = Object.values({
  ...import.meta.glob<Loaded>('../../core/pkg/gagwright_core.js'),
  ...import.meta.glob<Loaded>('../../techniques/pkg/gagwright_techniques.js'),
});

class Core {
  ready = $state(false);
  failed = $state('');
  #package: Package | undefined;
  #starting: Promise<void> | undefined;
  /** They never change while the core is the same. */
  #techniques: TechniqueDescription[] | undefined;
  #catalogue: Catalogue | undefined;

  start(): Promise<void> {
    this.#starting ??= this.#load();
    return this.#starting;
  }

  async #load(): Promise<void> {
    try {
      if (packages.length < 2) throw new Error('the compiled core is not part of this build');
      const loaded = await Promise.all(
        packages.map(async (load) => {
          const one = await load();
          await one.default();
          return one;
        }),
      );
      const all = Object.assign({}, ...loaded) as Package & Techniques;
      provide(all);
      this.#package = all;
      this.ready = true;
      performance.mark('core ready');
    } catch (error) {
      this.failed = error instanceof Error ? error.message : String(error);
      // Without signal the first time, it may well load later.
      this.#starting = undefined;
    }
  }

  get #use(): Package {
    // Reading `ready` makes whatever shows a figure draw itself again once the core has come.
    if (!this.ready || !this.#package) throw new Error(this.failed || 'the core is still loading');
    return this.#package;
  }

  /** Which rules this phone runs; nothing while they are not loaded. */
  version(): string | undefined {
    return this.ready ? this.#package?.version() : undefined;
  }

  /** The kinds of certificate and the skills that casting knows. */
  catalogue(): Catalogue {
    this.#catalogue ??= JSON.parse(this.#use.catalogue()) as Catalogue;
    return this.#catalogue;
  }

  techniques(): TechniqueDescription[] {
    const use = this.#use;
    this.#techniques ??= (JSON.parse(use.techniques()) as TechniqueDescription[]).map(spokenTechnique);
    return this.#techniques;
  }

  assess(technique: string, inputs: Inputs): Assessment {
    return spokenAssessment(JSON.parse(this.#use.assess(technique, JSON.stringify(inputs))));
  }

  /** A tool's answer as it came. `ask` asks it beside the page, and here where the browser has no other place. */
  raw(
    tool: 'spread' | 'sensitivity' | 'solve_for' | 'calibrate' | 'compare',
    technique: string,
    request: string,
  ): string {
    return this.#use[tool](technique, request);
  }

  judgeSlot(
    slot: Slot,
    person: Person,
    context: { gag: string; revision: number; day: string; call?: string | null; today?: string },
  ): Verdict {
    return spokenVerdict(
      JSON.parse(this.#use.judge_slot(JSON.stringify(slot), JSON.stringify(person), JSON.stringify(context))),
    );
  }

  clearance(one: Case, now: Date): Clearance {
    return spokenClearance(JSON.parse(this.#use.clearance(JSON.stringify(one), now.toISOString())));
  }

  /** The marks that this person may make now under these hats; those the gag waits for are `asked`. */
  owed(clearance: Clearance, person: string, hats: Role[]): Owed[] {
    return JSON.parse(this.#use.owed(JSON.stringify(clearance), person, JSON.stringify(hats)));
  }

  /** The hats under which this person may sign on a gag now: their own, and those of whom they deputise for. */
  hats(one: Case, person: string, own: Role[], now: Date): Role[] {
    if (!one.delegations?.some((each) => each.to === person)) return own;
    return JSON.parse(this.#use.hats(JSON.stringify(one), person, now.toISOString()));
  }

  /** What a debrief begins with: the last take that has ended, and who performed that day with the skills that were
   *  asked of them. Null while no take has ended. */
  toDebrief(one: Case): { last: Take; used: Used[] } | null {
    return JSON.parse(this.#use.to_debrief(JSON.stringify(one)));
  }

  /** What would be signed, made here from the case alone. Throws with the reason when it may not be. */
  draftSignoff(
    one: Case,
    role: Role,
    slot: string | undefined,
    person: string,
    signoff: string,
    now: Date,
  ): Prepared {
    return JSON.parse(
      this.#use.draft_signoff(JSON.stringify(one), role, slot, person, signoff, now.toISOString()),
    );
  }

  riskLevel(severity: Severity, probability: Probability): RiskLevel {
    return JSON.parse(this.#use.risk_level(severity, probability));
  }

  /** What would be signed for the day, made here from the case alone. Throws with the reason when it may not be. */
  draftDay(
    one: Case,
    role: Role,
    slot: string | undefined,
    person: string,
    signoff: string,
    now: Date,
  ): DayPrepared {
    return JSON.parse(
      this.#use.draft_day(JSON.stringify(one), role, slot, person, signoff, now.toISOString()),
    );
  }

  diffFacets(a: Facets, b: Facets): FacetChange[] {
    return JSON.parse(this.#use.diff_facets(JSON.stringify(a), JSON.stringify(b)));
  }

  facetHashes(facets: Facets): FacetHashes {
    return JSON.parse(this.#use.facet_hashes(JSON.stringify(facets)));
  }

  canonical(value: unknown): string {
    return this.#use.canonical(JSON.stringify(value));
  }

  verifySignoff(jws: string, key: PublicKey): Statement {
    return JSON.parse(this.#use.verify_signoff(jws, JSON.stringify(key)));
  }

  /** What was handed over, once its signature holds under this key. */
  verifyHanded(jws: string, key: PublicKey): HandedRequest {
    return JSON.parse(this.#use.verify_handed(jws, JSON.stringify(key)));
  }

  /** As above, and the device must be its author's, live, and its clock possible. */
  acceptHanded(jws: string, device: Device, now: Date): HandedRequest {
    return JSON.parse(this.#use.accept_handed(jws, JSON.stringify(device), now.toISOString()));
  }

  /** Throws unless the later trail holds all of the earlier one, unchanged. */
  verifyGrowth(proof: ConsistencyProof & { old_root: string; new_root: string }): void {
    this.#use.verify_growth(JSON.stringify(proof));
  }

  /** Throws with the reason when the proof does not hold. */
  verifyInclusion(proof: InclusionProof & { hash: string }): void {
    this.#use.verify_inclusion(JSON.stringify(proof));
  }

  /** What a person wrote, as SI. Throws with a sentence that says what would be right. */
  parse(quantity: Quantity, text: string): number {
    return this.#use.parse_quantity(quantity, text);
  }

  format(quantity: Quantity, si: number, units: Units): string {
    return this.#use.format_quantity(quantity, si, units);
  }
}

export const core = new Core();
