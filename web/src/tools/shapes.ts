// What is asked of the core's tools and what they answer: how sure a figure is, what moves it, which input gives a
// wanted one, what test shots settle, and what moved between two plans. All numbers SI.

import type { Inputs, InputValue, Quantity, Status } from '../api/types.ts';

export interface SpreadRequest {
  inputs: Inputs;
  draws?: number;
  seed?: number;
}

export interface Spread {
  technique: string;
  draws: number;
  seed: number;
  figures: SpreadFigure[];
  crossings: Crossing[];
}

export interface SpreadFigure {
  name: string;
  title: string;
  quantity: Quantity;
  value: number;
  mean: number;
  deviation: number;
  /** The 5th percentile; `high` is the 95th. */
  low: number;
  median: number;
  high: number;
  /** The share of draws that gave the figure. */
  share: number;
}

export interface Crossing {
  check: string;
  title: string;
  blocking: boolean;
  /** The share outside the limit, of the draws that gave a value; null when none did. */
  share: number | null;
  /** The share of draws that gave no value. */
  unknown: number;
}

export interface SensitivityRequest {
  inputs: Inputs;
  figure: string;
}

export interface Sensitivity {
  technique: string;
  figure: string;
  title: string;
  quantity: Quantity;
  value: number | null;
  /** The largest swing first. */
  bars: SensitivityBar[];
}

export interface SensitivityBar {
  parameter: string;
  title: string;
  at_low: number | null;
  at_high: number | null;
  swing: number;
  share: number;
}

export interface SolveRequest {
  inputs: Inputs;
  parameter: string;
  figure: string;
  wanted: number;
  from?: number;
  to?: number;
}

export interface Solution {
  technique: string;
  parameter: string;
  figure: string;
  wanted: number;
  from: number;
  to: number;
  roots: number[];
  lowest: number | null;
  highest: number | null;
  /** Why there is no root; empty when there is one. */
  note: string;
}

export interface CalibrateRequest {
  /** The next shot: the plan as it stands. */
  inputs: Inputs;
  shots: { inputs: Inputs; measured: Record<string, number> }[];
  coefficients?: string[];
  confidence?: number;
}

export interface Calibration {
  technique: string;
  confidence: number;
  coefficients: Coefficient[];
  shots: ShotRow[];
  deviation: { figure: string; value: number }[];
  prediction: Prediction[];
}

export interface Coefficient {
  name: string;
  title: string;
  quantity: Quantity;
  stated: number;
  value: number;
  error: number;
  low: number;
  high: number;
}

/** One measurement, in the order they were given. */
export interface ShotRow {
  /** Which shot, from 1. */
  shot: number;
  figure: string;
  measured: number;
  fitted: number;
}

export interface Prediction {
  figure: string;
  title: string;
  quantity: Quantity;
  /** What the model says with its own coefficients. */
  stated: number | null;
  value: number;
  low: number;
  high: number;
}

export interface CompareRequest {
  before: Inputs;
  after: Inputs;
}

export interface Comparison {
  technique: string;
  inputs: { name: string; title: string; before: InputValue | null; after: InputValue | null }[];
  figures: MovedFigure[];
  checks: MovedCheck[];
}

export interface Span {
  value: number;
  low: number;
  high: number;
}

export interface MovedFigure {
  name: string;
  title: string;
  quantity: Quantity;
  before: Span | null;
  after: Span | null;
  moved: boolean;
}

export interface MovedCheck {
  name: string;
  title: string;
  before: Status | null;
  after: Status | null;
  moved: boolean;
}
