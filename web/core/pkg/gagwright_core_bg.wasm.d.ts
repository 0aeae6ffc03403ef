/* tslint:disable */
/* eslint-disable */
export const memory: WebAssembly.Memory;
export const accept_handed: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
export const canonical: (a: number, b: number) => [number, number, number, number];
export const catalogue: () => [number, number, number, number];
export const clearance: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const diff_facets: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const draft_signoff: (a: number, b: number, c: number, d: number, e: number, f: number, g: number, h: number, i: number, j: number, k: number, l: number) => [number, number, number, number];
export const facet_hashes: (a: number, b: number) => [number, number, number, number];
export const format_quantity: (a: number, b: number, c: number, d: number, e: number) => [number, number, number, number];
export const judge_slot: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
export const owed: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
export const parse_quantity: (a: number, b: number, c: number, d: number) => [number, number, number];
export const verify_growth: (a: number, b: number) => [number, number];
export const verify_handed: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const verify_inclusion: (a: number, b: number) => [number, number];
export const verify_signoff: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const version: () => [number, number];
export const __wbindgen_malloc: (a: number, b: number) => number;
export const __wbindgen_realloc: (a: number, b: number, c: number, d: number) => number;
export const __wbindgen_free: (a: number, b: number, c: number) => void;
export const __wbindgen_exn_store: (a: number) => void;
export const __externref_table_alloc: () => number;
export const __wbindgen_externrefs: WebAssembly.Table;
export const __externref_table_dealloc: (a: number) => void;
export const __wbindgen_start: () => void;
