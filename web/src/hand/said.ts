// What was taken, in words: each line a name and what is said under it. The plan it is about is compared with
// the one on this phone; what that means for clearance is for the core.

import type {
  DayStatement,
  Facet,
  Facets,
  GagPage,
  Hazard,
  ReadingKind,
  Role,
  Statement,
  TakeResult,
} from '../api/types.ts';
import { FACETS } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { isolated, moment, quantity } from '../format.ts';
import { measuredText, readingQuantity, techniqueOf } from '../parts/plan-text.ts';
import { roleTitle } from '../parts/role-title.ts';
import { payloadOf } from '../sign/jws.ts';
import { t } from '../texts/index.ts';
import type { HandedRequest } from './request.ts';
import type { Taken } from './taking.ts';

export interface Line {
  name: string;
  said: string;
}

const list = (facets: readonly Facet[]) => facets.map((one) => t.words.facet[one]).join(', ');

function gagLine(taken: Taken): Line {
  const { page, item } = taken;
  if (page) return { name: t.hand.gag, said: `${page.gag.code}, ${page.gag.title}` };
  return { name: t.hand.gag, said: item.gag ? t.hand.unknownGag : t.hand.everything };
}

function signOffWhat(said: Statement, texts: string[]): string {
  const decision = t.words.decision[said.decision] ?? said.decision;
  return [`${roleTitle(said.role)}: ${decision}`, ...texts].join('. ');
}

function requestWhat({ item, page }: Taken, { body, if_match, path }: HandedRequest): Line[] {
  const what = (said: string): Line => ({ name: t.hand.what, said });
  const text = (value: unknown) => (typeof value === 'string' ? value : '');
  switch (item.kind) {
    case 'hold': {
      const hazard = t.words.hazard[text(body.hazard) as Hazard];
      const reason = text(body.reason) || t.hand.noReason;
      return [
        what(t.settings.kinds.hold),
        { name: t.hand.reason, said: hazard ? `${hazard}. ${reason}` : reason },
      ];
    }
    case 'release':
      return [
        what(t.hand.agrees(roleTitle(text(body.role) as Role))),
        { name: t.hand.reason, said: text(body.cause) || t.hand.noReason },
      ];
    case 'reading': {
      const kind = text(body.kind) as ReadingKind;
      const unit = readingQuantity[kind];
      const value = typeof body.value === 'number' ? body.value : Number.NaN;
      const shown = unit ? quantity(unit, value) : String(body.value);
      return [
        what([`${t.words.reading[kind] ?? kind} ${shown}`, text(body.place)].filter(Boolean).join(', ')),
      ];
    }
    case 'run': {
      const rung = page?.plan.facets.rehearsals.rungs?.find((one) => one.name === body.rung)?.what;
      const name = rung ?? text(body.rung);
      return [what(body.good === true ? t.hand.runGood(name) : t.hand.runBad(name))];
    }
    case 'test_shot': {
      const load = body.load === 'person' ? t.shots.person : t.shots.bag;
      const technique = techniqueOf(text(body.technique));
      const measured = Object.entries((body.measured ?? {}) as Record<string, unknown>).map(([name, value]) =>
        measuredText(technique, name, Number(value)),
      );
      return [what(`${t.settings.kinds.test_shot}: ${[load, ...measured].join(', ')}`)];
    }
    case 'incident': {
      const kind = body.kind === 'near_miss' ? t.onDay.nearMiss : t.onDay.incident;
      return [what(kind), note(body.what)];
    }
    case 'stand_down': {
      const name = page?.names[text(body.person)];
      return [what(`${t.settings.kinds.stand_down}${name ? `: ${isolated(name)}` : ''}`)];
    }
    case 'quarantine':
    case 'shock_load': {
      const id = /\/equipment\/([^/]+)\//.exec(path)?.[1];
      const piece = page?.case.day?.equipment?.find((one) => one.id === id);
      const kind = t.settings.kinds[item.kind];
      return [what(piece ? `${kind}: ${piece.serial}` : kind), note(body.reason ?? body.what)];
    }
    case 'briefing':
      return [
        what(`${t.onDay.briefing}: ${t.onDay.at(text(body.day), text(body.place))}`),
        note(body.points),
      ];
    case 'day_mark': {
      const mark = payloadOf<DayStatement>(text(body.jws));
      const decision = t.words.decision[mark.decision] ?? mark.decision;
      return [what(`${t.settings.kinds.day_mark}, ${mark.day}. ${roleTitle(mark.role)}: ${decision}`)];
    }
    case 'go':
      return [what(`${t.settings.kinds.go}: ${t.onDay.take(Number(body.number))}`)];
    case 'take_end': {
      const result = t.onDay.result[text(body.result) as TakeResult] ?? text(body.result);
      return [what(`${t.settings.kinds.take_end}: ${result}`), note(body.note)];
    }
    default:
      return [
        what(revisionWhat(page, body.facets as Facets)),
        ...revisionBase(page, if_match),
        note(body.note),
      ];
  }
}

function note(value: unknown): Line {
  return { name: t.hand.reason, said: typeof value === 'string' && value ? value : t.hand.noReason };
}

function revisionWhat(page: GagPage | undefined, facets: Facets): string {
  if (!page) return t.settings.kinds.revision;
  const changes = core.diffFacets(page.plan.facets, facets);
  return changes.length === 0 ? t.hand.nothingChanged : t.hand.changes(list(changes.map((one) => one.facet)));
}

function revisionBase(page: GagPage | undefined, ifMatch: string | null | undefined): Line[] {
  if (!page) return [];
  const base = Number(ifMatch?.replaceAll('"', ''));
  return [{ name: t.gag.plan, said: t.hand.basedOn(base, page.plan.revision) }];
}

/** Whether what was signed is what this phone has as the plan. */
function signOffPlan(page: GagPage | undefined, said: Statement): Line[] {
  if (!page) return [];
  const here = core.facetHashes(page.plan.facets);
  const differ = FACETS.filter((one) => said.facets[one] !== undefined && said.facets[one] !== here[one]);
  const revision = page.plan.revision;
  let sentence = t.hand.sameRevision(revision);
  if (differ.length > 0) sentence = t.hand.otherRevision(said.revision, revision, list(differ));
  else if (said.revision !== revision) sentence = t.hand.otherSame(said.revision, revision);
  return [{ name: t.gag.plan, said: sentence }];
}

export function linesOf(taken: Taken): Line[] {
  const { content, page } = taken;
  const what =
    content.kind === 'sign_off'
      ? [
          { name: t.hand.what, said: signOffWhat(content.statement, content.texts) },
          ...signOffPlan(page, content.statement),
        ]
      : requestWhat(taken, content.request);
  return [
    gagLine(taken),
    ...what,
    { name: t.hand.by, said: taken.by },
    { name: t.hand.madeAt, said: moment(taken.madeAt) },
  ];
}
