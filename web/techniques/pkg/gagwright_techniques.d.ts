/* tslint:disable */
/* eslint-disable */

/**
 * Figures, checks, traces, zones and cautions for a technique's inputs.
 */
export function assess(technique: string, inputs: string): string;

/**
 * As [`assess`] with the limits that a production set, for the judge in the other package: the answer or
 * the refusal, as one document.
 */
export function assess_for_judge(technique: string, inputs: string, own: string): string;

/**
 * What logged test shots teach, and what the next may do.
 */
export function calibrate(technique: string, request: string): string;

/**
 * What a change of plan changes.
 */
export function compare(technique: string, request: string): string;

/**
 * The outlines of all techniques.
 */
export function outlines(): string;

/**
 * What moves a figure, ranked.
 */
export function sensitivity(technique: string, request: string): string;

/**
 * Which values of an input give a wanted figure.
 */
export function solve_for(technique: string, request: string): string;

/**
 * How figures spread over the declared tolerances.
 */
export function spread(technique: string, request: string): string;

/**
 * Every technique with its parameters and figures.
 */
export function techniques(): string;

export type InitInput = RequestInfo | URL | Response | BufferSource | WebAssembly.Module;

export interface InitOutput {
    readonly memory: WebAssembly.Memory;
    readonly assess: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly assess_for_judge: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
    readonly calibrate: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly compare: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly outlines: () => [number, number, number, number];
    readonly sensitivity: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly solve_for: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly spread: (a: number, b: number, c: number, d: number) => [number, number, number, number];
    readonly techniques: () => [number, number, number, number];
    readonly __wbindgen_externrefs: WebAssembly.Table;
    readonly __wbindgen_malloc: (a: number, b: number) => number;
    readonly __wbindgen_realloc: (a: number, b: number, c: number, d: number) => number;
    readonly __wbindgen_free: (a: number, b: number, c: number) => void;
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
