// The core's and the server's answers with their own sentences in the language in use. Only what they say
// themselves is touched: what people wrote, and everything that is hashed or signed, stays as it is.

import type {
  Assessment,
  Calibration,
  Clearance,
  Comparison,
  DayStanding,
  Finding,
  Sensitivity,
  Solution,
  Spread,
  TechniqueDescription,
  Verdict,
} from '../api/types.ts';
import { said } from './said.ts';

const titled = <T extends { title: string }>(thing: T): T => ({ ...thing, title: said(thing.title) });

export function spokenTechnique(one: TechniqueDescription): TechniqueDescription {
  return {
    ...one,
    title: said(one.title),
    summary: said(one.summary),
    parameters: one.parameters.map((parameter) => ({
      ...parameter,
      title: said(parameter.title),
      help: said(parameter.help),
      kind:
        parameter.kind.kind === 'choice'
          ? {
              ...parameter.kind,
              options: parameter.kind.options.map((option) => ({ ...option, title: said(option.title) })),
            }
          : parameter.kind,
    })),
    figures: one.figures.map((figure) => ({ ...figure, title: said(figure.title), help: said(figure.help) })),
  };
}

export function spokenAssessment(one: Assessment): Assessment {
  return {
    ...one,
    figures: one.figures.map(titled),
    checks: one.checks.map((check) => ({ ...titled(check), detail: said(check.detail) })),
    traces: one.traces.map((trace) => ({ ...titled(trace), x: titled(trace.x), y: trace.y.map(titled) })),
    zones: one.zones.map((zone) => ({ ...titled(zone), reason: said(zone.reason) })),
    cautions: one.cautions.map((caution) => ({ ...caution, text: said(caution.text) })),
  };
}

export function spokenSpread(one: Spread): Spread {
  return { ...one, figures: one.figures.map(titled), crossings: one.crossings.map(titled) };
}

export function spokenSensitivity(one: Sensitivity): Sensitivity {
  return { ...titled(one), bars: one.bars.map(titled) };
}

export function spokenSolution(one: Solution): Solution {
  return { ...one, note: said(one.note) };
}

export function spokenCalibration(one: Calibration): Calibration {
  return {
    ...one,
    coefficients: one.coefficients.map(titled),
    prediction: one.prediction.map(titled),
  };
}

export function spokenComparison(one: Comparison): Comparison {
  return {
    ...one,
    inputs: one.inputs.map(titled),
    figures: one.figures.map(titled),
    checks: one.checks.map(titled),
  };
}

function spokenFinding(one: Finding): Finding {
  return { ...one, reason: said(one.reason), cure: one.cure && { ...one.cure, what: said(one.cure.what) } };
}

export function spokenVerdict(one: Verdict): Verdict {
  return { ...one, findings: one.findings.map(spokenFinding) };
}

export function spokenClearance(one: Clearance): Clearance {
  return {
    ...one,
    roles: one.roles.map((role) => ({
      ...role,
      title: said(role.title),
      because: said(role.because),
      reasons: role.reasons?.map((one) => said(one)),
    })),
    slots: one.slots.map((slot) => ({ ...slot, verdict: slot.verdict && spokenVerdict(slot.verdict) })),
    blocks: one.blocks.map((block) => ({ ...block, reason: said(block.reason), remedy: said(block.remedy) })),
    assessment: one.assessment && spokenAssessment(one.assessment),
    risks: one.risks?.map((risk) => ({ ...risk, caution: risk.caution && said(risk.caution) })),
    // A page kept by an earlier version of the app has neither.
    day: one.day && spokenDay(one.day),
    go: one.go && {
      ...one.go,
      why_not: one.go.why_not.map(spokenBlock),
      open: one.go.open && { ...one.go.open, lapsed: one.go.open.lapsed.map((why) => said(why)) },
    },
  };
}

const spokenBlock = <T extends { reason: string; remedy: string }>(one: T): T => ({
  ...one,
  reason: said(one.reason),
  remedy: said(one.remedy),
});

function spokenDay(one: DayStanding): DayStanding {
  return {
    ...one,
    marks: one.marks.map((mark) => ({
      ...mark,
      title: said(mark.title),
      because: said(mark.because),
      reasons: mark.reasons?.map((why) => said(why)),
    })),
    equipment: one.equipment.map((item) => ({ ...item, reason: item.reason && said(item.reason) })),
    people: one.people.map((who) => ({ ...who, stood_down: who.stood_down && said(who.stood_down) })),
    blocks: one.blocks.map(spokenBlock),
  };
}
