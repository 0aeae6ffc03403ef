/* tslint:disable */
/* eslint-disable */

/**
 * As [`verify_handed`] with the device itself, which must be the author's, live, and its clock possible.
 */
export function accept_handed(jws: string, device: string, now: string): string;

/**
 * The RFC 8785 form of any JSON value: what is hashed and signed.
 */
export function canonical(value: string): string;

/**
 * The kinds of certificate and the skills that casting knows, with their titles, for lists and forms.
 */
export function catalogue(): string;

/**
 * The one judge: cleared, or what is missing, lapsed, held or blocking.
 */
export function clearance(_case: string, now: string): string;

/**
 * What differs between two contents of a plan, by facet.
 */
export function diff_facets(before: string, after: string): string;

/**
 * A statement about the day made ready for a person to sign under a hat (a performer's for their slot),
 * with the words signed and the place.
 */
export function draft_day(_case: string, role: string, slot: string | null | undefined, person: string, signoff: string, now: string): string;

/**
 * A statement made ready for a person to sign under a hat (a performer's for their slot), with the words
 * signed, the facets covered and the sign-off made last.
 */
export function draft_signoff(_case: string, role: string, slot: string | null | undefined, person: string, signoff: string, now: string): string;

/**
 * Each facet's hash.
 */
export function facet_hashes(facets: string): string;

/**
 * An SI value as a person reads it, in `metric` or `imperial` units.
 */
export function format_quantity(quantity: string, si: number, system: string): string;

/**
 * The hats under which a person may sign on a gag now: their own, and those of whom they deputise for.
 */
export function hats(_case: string, person: string, now: string): string;

/**
 * The verdict on one person for one slot.
 */
export function judge_slot(slot: string, person: string, context: string): string;

/**
 * The marks that a person may make now, under these hats, from a clearance.
 */
export function owed(clearance: string, person: string, hats: string): string;

/**
 * What a person wrote, in SI.
 */
export function parse_quantity(quantity: string, text: string): number;

/**
 * What the matrix says of a severity and a probability.
 */
export function risk_level(severity: string, probability: string): string;

/**
 * What a debrief begins with: the last take that has ended, and who performed that day with the skills their slots ask
 * for; `null` while no take has ended.
 */
export function to_debrief(_case: string): string;

/**
 * Throws, saying why, unless the later trail holds all of the earlier one, unchanged.
 */
export function verify_growth(proof: string): void;

/**
 * The request that was handed over, once its signature holds under the given key (a JWK).
 */
export function verify_handed(jws: string, key: string): string;

/**
 * Throws, saying why, unless the path leads from the leaf to the root.
 */
export function verify_inclusion(proof: string): void;

/**
 * The statement a sign-off makes, once its signature holds under the given key (a JWK).
 */
export function verify_signoff(signoff: string, key: string): string;

/**
 * The version of the rules, so that the app can say which it runs.
 */
export function version(): string;

export type InitInput = RequestInfo | URL | Response | BufferSource | WebAssembly.Module;

export interface InitOutput {
    readonly memory: WebAssembly.Memory;
    readonly accept_handed: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
    readonly canonical: (a: number, b: number) => [number, number, number, number];
    readonly catalogue: () => [number, number, number, number];
    readonly clearance: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly diff_facets: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly draft_day: (a: number, b: number, c: number, d: number, e: number, f: number, g: number, h: number, i: number, j: number, k: number, l: number) => [number, number, number, number];
    readonly draft_signoff: (a: number, b: number, c: number, d: number, e: number, f: number, g: number, h: number, i: number, j: number, k: number, l: number) => [number, number, number, number];
    readonly facet_hashes: (a: number, b: number) => [number, number, number, number];
    readonly format_quantity: (a: number, b: number, c: number, d: number, e: number) => [number, number, number, number];
    readonly hats: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
    readonly judge_slot: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
    readonly owed: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
    readonly parse_quantity: (a: number, b: number, c: number, d: number) => [number, number, number];
    readonly risk_level: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly to_debrief: (a: number, b: number) => [number, number, number, number];
    readonly verify_growth: (a: number, b: number) => [number, number];
    readonly verify_handed: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly verify_inclusion: (a: number, b: number) => [number, number];
    readonly verify_signoff: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly version: () => [number, number];
    readonly __wbindgen_malloc: (a: number, b: number) => number;
    readonly __wbindgen_realloc: (a: number, b: number, c: number, d: number) => number;
    readonly __wbindgen_free: (a: number, b: number, c: number) => void;
    readonly __wbindgen_exn_store: (a: number) => void;
    readonly __externref_table_alloc: () => number;
    readonly __wbindgen_externrefs: WebAssembly.Table;
    readonly __externref_table_dealloc: (a: number) => void;
    readonly __wbindgen_start: () => void;
}

export type SyncInitInput = BufferSource | WebAssembly.Module;

/**
 * Instantiates the given `module`, which can either be bytes or
 * a precompiled `WebAssembly.Module`.
 *
 * @param {{ module: SyncInitInput }} module - Passing `SyncInitInput` directly is deprecated.
 *
 * @returns {InitOutput}
 */
export function initSync(module: { module: SyncInitInput } | SyncInitInput): InitOutput;

/**
 * If `module_or_path` is {RequestInfo} or {URL}, makes a request and
 * for everything else, calls `WebAssembly.instantiate` directly.
 *
 * @param {{ module_or_path: InitInput | Promise<InitInput> }} module_or_path - Passing `InitInput` directly is deprecated.
 *
 * @returns {Promise<InitOutput>}
 */
export default function __wbg_init (module_or_path?: { module_or_path: InitInput | Promise<InitInput> } | InitInput | Promise<InitInput>): Promise<InitOutput>;
