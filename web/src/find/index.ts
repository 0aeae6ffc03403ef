// What can be found: built from what this phone holds, so that finding needs no signal.

import type { GagPage, GagSummary, Hold, Items, Person, PersonPage, PersonSummary } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { ago, day } from '../format.ts';
import { live } from '../live.svelte.ts';
import { certificateTitle, skillTitle } from '../parts/catalogue.ts';
import { roleTitle } from '../parts/role-title.ts';
import { certificateEnds } from '../screens/people/person-text.ts';
import { session } from '../session.svelte.ts';
import { everyKept } from '../storage/reads.svelte.ts';
import { t } from '../texts/index.ts';
import { asked, type Findable, findable, score } from './words.ts';

export type Group = keyof typeof t.find.groups;

export interface Found {
  group: Group;
  title: string;
  about: string;
  href: string;
  words: Findable;
}

function found(group: Group, title: string, about: string, href: string, more = ''): Found {
  return { group, title, about, href, words: findable(title, `${about} ${more}`) };
}

/** Of each group no more than this is shown at once; another letter narrows it. */
const MOST = 6;

export async function everything(): Promise<Found[]> {
  const kept = await everyKept();
  const production = `/productions/${session.production?.id}`;
  const at = <T>(path: string) => kept.find((one) => one.path === path)?.value as T | undefined;
  const gags = at<Items<GagSummary>>(`${production}/gags`)?.items ?? [];
  const holds = at<Items<Hold>>(`${production}/holds`)?.items ?? [];
  return [
    ...gags.map(aGag),
    ...people(kept, at<Items<PersonSummary>>(`${production}/people`)?.items ?? [], production),
    ...holds.map((one) => aHold(one, gags)),
    ...(core.ready ? core.techniques() : []).map((one) =>
      found('technique', one.title, one.summary, `/help/techniques/${one.name}`),
    ),
    ...places(),
    ...Object.entries(t.help.tasks).map(([name, one]) =>
      found('help', one.name, one.steps[0] ?? '', `/help/${name}`, one.steps.join(' ')),
    ),
  ];
}

function aGag(one: GagSummary): Found {
  const about = [t.words.state[one.state], one.day ? day(one.day) : '', one.technique_title, one.location];
  return found(
    'gag',
    `${one.code} ${one.title}`,
    about.filter(Boolean).join(' · '),
    `/gags/${one.id}`,
    `${one.unit} ${one.scene}`,
  );
}

function aHold(one: Hold, gags: GagSummary[]): Found {
  const gag = gags.find((each) => each.id === one.gag);
  const state = one.released_at ? t.hold.released : t.today.held;
  return found(
    'hold',
    `${gag ? `${gag.code} ${gag.title}` : t.today.everything}`,
    [state, one.reason, ago(one.raised_at, live.now)].filter(Boolean).join(' · '),
    `/holds#hold-${one.id}`,
    t.hold.title,
  );
}

/** The roster, and the certificates and skills of everyone whose page or gag this phone has read. */
function people(
  kept: { path: string; value: unknown }[],
  roster: PersonSummary[],
  production: string,
): Found[] {
  const whole = new Map<string, Person>();
  for (const { path, value } of kept) {
    if (/^\/gags\/[0-9a-f-]+$/.test(path) && (value as GagPage).gag.production === session.production?.id) {
      for (const one of (value as GagPage).case.people) whole.set(one.id, one);
    }
  }
  // A person's own page is the fuller one.
  for (const { path, value } of kept) {
    if (path.startsWith(`${production}/people/`))
      whole.set((value as PersonPage).person.id, (value as PersonPage).person);
  }
  return [
    ...roster.map((one) =>
      found(
        'person',
        one.name,
        [one.code, one.occupation, ...one.roles.map(roleTitle)].join(' · '),
        `/people/${one.id}`,
      ),
    ),
    ...[...whole.values()].flatMap((one) => [
      ...(one.certificates ?? []).map((each) =>
        found(
          'certificate',
          certificateTitle(each.kind),
          [one.name, certificateEnds(each)].join(' · '),
          `/people/${one.id}#certificates`,
          [each.number, each.issuer, each.category].filter(Boolean).join(' '),
        ),
      ),
      ...(one.skills ?? []).map((each) =>
        found(
          'certificate',
          skillTitle(each.name),
          [one.name, t.people.level(each.level)].join(' · '),
          `/people/${one.id}#skills`,
        ),
      ),
    ]),
  ];
}

function places(): Found[] {
  const parts = Object.entries(t.settings.parts).map(([name, one]) =>
    found('place', one.name, one.about, `/settings/${name}`, t.settings.title),
  );
  return [
    found('place', t.nav.today, '', '/'),
    found('place', t.nav.gags, '', '/gags'),
    found('place', t.nav.people, '', '/people'),
    found('place', t.nav.trail, '', '/trail'),
    found('place', t.hold.list, '', '/holds'),
    found('place', t.packets.title, t.packets.lead, '/packets'),
    ...parts,
  ];
}

/** What fits, in groups: the group with the best first, and in each the best first. */
export function look(text: string, all: readonly Found[]): { group: Group; items: Found[]; more: number }[] {
  const wanted = asked(text);
  if (wanted.length === 0) return [];
  const graded = all
    .map((one) => ({ one, points: score(wanted, one.words) }))
    .filter((each) => each.points > 0)
    .sort((a, b) => b.points - a.points);
  const groups = [...new Set(graded.map((each) => each.one.group))];
  return groups.map((group) => {
    const items = graded.filter((each) => each.one.group === group).map((each) => each.one);
    return { group, items: items.slice(0, MOST), more: Math.max(0, items.length - MOST) };
  });
}
