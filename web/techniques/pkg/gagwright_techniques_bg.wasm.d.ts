/* tslint:disable */
/* eslint-disable */
export const memory: WebAssembly.Memory;
export const assess: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const assess_for_judge: (a: number, b: number, c: number, d: number, e: number, f: number) => [number, number, number, number];
export const calibrate: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const compare: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const outlines: () => [number, number, number, number];
export const sensitivity: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const solve_for: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const spread: (a: number, b: number, c: number, d: number) => [number, number, number, number];
export const techniques: () => [number, number, number, number];
export const __wbindgen_externrefs: WebAssembly.Table;
export const __wbindgen_malloc: (a: number, b: number) => number;
export const __wbindgen_realloc: (a: number, b: number, c: number, d: number) => number;
export const __wbindgen_free: (a: number, b: number, c: number) => void;
export const __externref_table_dealloc: (a: number) => void;
export const __wbindgen_start: () => void;
