// Every screen of the app: as whom it is looked at, where it is, and a sentence of it that shows that what it is
// about has come. A new screen gets a line here, or screens.spec.ts fails.

import { en, type Texts } from '../src/texts/en/index.ts';
import { Api } from './api.ts';
import { expect, type Page, press } from './demo.ts';

export interface Scene {
  gag: Record<string, string>;
  person: Record<string, string>;
}

export interface View {
  name: string;
  path: (scene: Scene) => string;
  shows: (t: Texts) => string | RegExp;
  /** What is done on the screen before it is looked at. */
  first?: (page: Page, t: Texts) => Promise<unknown>;
  /** The route that this leads to, when it is another than the path's. */
  reaches?: string;
}

/** What screens are looked at as: the part before the @ of the sign-in, or nobody. */
export type Who = 'nobody' | 'coordinator' | 'medic' | 'ha.van' | 'observer' | 'production';

/** A word as long as German makes them, in a title and a name: neither may push a screen wide. */
export const LONG = 'Salzpfannenrandbefestigungsabsturzsicherungsprobe';

/** The demo, with a gag and a person whose names are longer than any phone is wide. */
export async function setScene(url: string): Promise<Scene> {
  const api = await Api.as(url, 'coordinator');
  const at = `/productions/${api.production}`;
  await api.post(`${at}/gags`, {
    id: crypto.randomUUID(),
    code: 'LANG-WORD-01',
    title: `${LONG} ${LONG}`,
    technique: 'high-fall',
  });
  await api.post(`${at}/roster/people`, `code,name,occupation,performs\nLONG1,${LONG} ${LONG},${LONG},yes\n`);
  await ruleItself(api);
  // biome-ignore lint/suspicious/noExplicitAny: what a list answers
  const byCode = (list: any): Record<string, string> =>
    Object.fromEntries(list.items.map((one: { code: string; id: string }) => [one.code, one.id]));
  const scene = { gag: byCode(await api.get(`${at}/gags`)), person: byCode(await api.get(`${at}/people`)) };
  await openTake(api, scene.gag.G12 ?? '');
  return scene;
}

/** A policy with everything in it that a production may set for itself, and a delegate. */
async function ruleItself(api: Api): Promise<void> {
  const at = `/productions/${api.production}`;
  const { policy } = await api.get(`${at}/policy`);
  const inForce = policy.version;
  policy.version = 'Salt Meridian 2';
  policy.bands = [{ role: 'rigging', parameter: 'reservoir_pressure', relative: 0.02 }];
  policy.limits = {
    'high-fall': { falls_today: { value: 2, because: 'Two falls a day are enough on this production.' } },
  };
  const body = { policy, note: 'What the coordinator and production agreed.' };
  const put = await api.ask('PUT', `${at}/policy`, body, { 'If-Match': `"${inForce}"` });
  if (!put.ok) throw new Error(`the policy: ${put.status} ${await put.text()}`);
  const others = (await api.get(`${at}/people`)).items as { code: string; id: string }[];
  await api.post(`${at}/delegations`, {
    id: crypto.randomUUID(),
    to: others.find((one) => one.code === 'C06')?.id,
    role: 'coordinator',
    starts: new Date().toISOString(),
    until: new Date(Date.now() + 24 * 3_600_000).toISOString(),
    limits: 'The night unit only',
  });
}

/** A take that is open though nothing stands: a go is recorded whenever it arrives. */
async function openTake(api: Api, gag: string): Promise<void> {
  const { clearance } = await api.get(`/gags/${gag}`);
  await api.post(`/gags/${gag}/takes`, {
    id: crypto.randomUUID(),
    number: 1,
    at: new Date().toISOString(),
    revision: clearance.revision,
    plan_digest: clearance.plan_digest,
    day: clearance.day.day,
    place: clearance.day.place,
  });
}

const gag = (name: string, code: string, section: string, shows: View['shows']): View => ({
  name,
  path: ({ gag }) => `/gags/${gag[code]}${section && `/${section}`}`,
  shows,
});
const plain = (name: string, path: string, shows: View['shows'], first?: View['first']): View => ({
  name,
  path: () => path,
  shows,
  first,
});

/** What a field for a moment takes. */
function localMinute(at: Date): string {
  const local = new Date(at.getTime() - at.getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16);
}

const settings = Object.keys(en.settings.parts) as (keyof Texts['settings']['parts'])[];
const tasks = Object.keys(en.help.tasks) as (keyof Texts['help']['tasks'])[];

export const views: Record<Who, View[]> = {
  nobody: [
    plain('sign-in', '/', (t) => t.signIn.demoTitle),
    plain('set-up', '/setup#a-token', (t) => t.setUp.timeZone),
    plain('set-up-broken-link', '/setup', (t) => t.setUp.noToken),
    plain('invitation', '/invitation#a-token', (t) => t.invitation.lead),
    plain('invitation-broken-link', '/invitation', (t) => t.invitation.noToken),
    plain('hold-by-code', '/hold#ABCDEFGH', (t) => t.hold.code),
  ],
  coordinator: [
    plain('today', '/', (t) => t.today.toSign),
    plain('gags', '/gags', () => 'G12'),
    plain(
      'gags-none',
      '/gags',
      (t) => t.gags.none,
      (page, t) => page.getByLabel(t.gags.search).fill('zzz'),
    ),
    plain('gag-new', '/gags/new', (t) => t.newGag.code),
    plain(
      'gag-new-technique',
      '/gags/new',
      (t) => t.groups.falls,
      (page, t) => press(page.getByRole('combobox', { name: t.newGag.technique })),
    ),
    gag('gag-cleared', 'G01', '', (t) => t.gag.facts),
    gag('gag-waiting', 'G02', '', (t) => t.gag.reasons),
    gag('gag-lapsed', 'G03', '', (t) => t.gag.reasons),
    gag('gag-held', 'G04', '', (t) => t.gag.reasons),
    gag('gag-long', 'LANG-WORD-01', '', (t) => t.gag.reasons),
    gag('gag-plan', 'G01', 'plan', (t) => t.gag.history),
    gag('gag-figures-burn', 'G01', 'figures', (t) => t.figures.checks),
    gag('gag-figures-fall', 'G05', 'figures', (t) => t.figures.checks),
    gag('gag-figures-ratchet', 'G03', 'figures', (t) => t.figures.checks),
    gag('gag-figures-wire', 'G04', 'figures', (t) => t.figures.checks),
    {
      ...gag('figure-moves', 'G05', 'figures', (t) => t.tools.movesLead),
      first: (page) => press(page.locator('button.figure').first()),
    },
    {
      ...gag('figure-make', 'G05', 'figures', (t) => t.tools.reach('', '').slice(0, 24)),
      first: async (page, t) => {
        await press(page.locator('button.figure').first());
        await page.getByRole('radio', { name: t.tools.make }).check();
        await page.getByLabel(t.tools.wanted).fill('14 m/s');
        await press(page.getByRole('button', { name: t.tools.find }));
      },
    },
    {
      ...gag('figure-sure', 'G05', 'figures', (t) => t.tools.drawn(1000, 1)),
      first: async (page, t) => {
        await press(page.locator('button.figure').first());
        await page.getByRole('radio', { name: t.tools.sure }).check();
      },
    },
    {
      ...gag('gag-moved', 'G03', 'plan', (t) => t.moved.figures),
      first: (page, t) => press(page.getByText(t.moved.title, { exact: true }).first()),
    },
    gag('gag-cast', 'G04', 'cast', (t) => t.cast.candidates),
    gag('gag-sign-offs', 'G03', 'sign-offs', (t) => t.signOffs.all),
    gag('gag-day', 'G01', 'day', (t) => t.shots.none),
    {
      ...gag('gag-shots', 'G03', 'day', (t) => t.shots.prediction),
      // A fit is some hundred runs of a model; a busy machine takes its time.
      first: (page, t) =>
        expect(page.getByRole('heading', { name: t.shots.prediction })).toBeVisible({ timeout: 120_000 }),
    },
    gag('gag-day-briefed', 'G13', 'day', (t) => t.onDay.noGo),
    gag('gag-day-frozen', 'G14', 'day', (t) => t.onDay.frozen),
    gag('gag-day-open', 'G12', 'day', (t) => t.onDay.open(1)),
    gag('gag-ink', 'G10', 'ink', (t) => t.ink.photograph),
    gag('gag-edit', 'G02', 'edit', (t) => t.edit.note),
    {
      ...gag('sign-again', 'G03', 'sign', (t) => t.sign.decision),
      path: ({ gag }) => `/gags/${gag.G03}/sign?role=coordinator`,
    },
    {
      ...gag('sign-first', 'G07', 'sign', (t) => t.sign.decision),
      path: ({ gag }) => `/gags/${gag.G07}/sign?role=coordinator`,
    },
    {
      ...gag('signed', 'G08', 'sign', (t) => t.sign.done),
      path: ({ gag }) => `/gags/${gag.G08}/sign?role=coordinator`,
      first: async (page, t) => {
        await page.getByRole('radio', { name: t.words.decision.approve, exact: true }).check();
        await press(page.getByRole('button', { name: t.sign.go.approve }));
      },
    },
    plain('people', '/people', () => 'P01'),
    {
      name: 'person',
      path: ({ person }) => `/people/${person.P01}`,
      shows: (t) => t.people.certificateTitle,
    },
    { name: 'person-long', path: ({ person }) => `/people/${person.LONG1}`, shows: () => LONG },
    plain('person-new', '/people/new', (t) => t.person.new),
    {
      name: 'person-edit',
      path: ({ person }) => `/people/${person.P01}/edit`,
      shows: (t) => t.people.measurements,
    },
    {
      name: 'person-certificate',
      path: ({ person }) => `/people/${person.P01}/certificate`,
      shows: (t) => t.person.addCertificate,
    },
    plain('people-import', '/people/import', (t) => t.roster.table),
    plain('holds', '/holds', (t) => t.hold.agreeTitle),
    plain(
      'hold',
      '/gags',
      (t) => t.hold.everything,
      (page, t) => press(page.getByRole('button', { name: t.nav.hold, exact: true })),
    ),
    plain('equipment', '/equipment', () => 'SMW-33'),
    plain('packets', '/packets', (t) => t.packets.lead),
    plain(
      'find',
      '/',
      (t) => t.find.groups.help,
      async (page, t) => {
        await press(page.getByRole('button', { name: t.find.title, exact: true }));
        await page.getByRole('combobox').fill(t.help.tasks.hold.name.slice(0, 4));
      },
    ),
    plain(
      'trail',
      '/trail',
      (t) => t.witnesses.cosigned,
      async (page, t) => {
        await expect(page.getByText(t.trail.root)).toBeVisible();
        await press(page.getByText(t.witnesses.title, { exact: true }));
      },
    ),
    plain(
      'trail-past',
      '/trail',
      (t) => t.past.signed,
      async (page, t) => {
        await expect(page.getByText(t.trail.root)).toBeVisible();
        await press(page.getByText(t.past.title, { exact: true }));
        await page.getByLabel(t.past.gag).selectOption({ label: 'G01, Sael walks out of the fuel shed' });
        await page.getByLabel(t.past.moment).fill(localMinute(new Date()));
        await press(page.getByRole('button', { name: t.past.look, exact: true }));
        // The day is shown as it stood, and nothing can be done to it.
        const then = page.getByRole('region', { name: t.past.answer });
        for (const part of [
          t.onDay.briefing,
          t.onDay.readings,
          t.onDay.equipment,
          t.onDay.marks,
          t.onDay.takes,
        ]) {
          await expect(then.getByRole('heading', { name: part, exact: true })).toBeVisible();
        }
        await expect(then.getByRole('button')).toHaveCount(0);
      },
    ),
    plain('nowhere', '/no/such/place', (t) => t.app.notFound),
    plain('settings', '/settings', (t) => t.settings.parts.about.about),
    ...settings.map((part) =>
      plain(`settings-${part}`, `/settings/${part}`, (t) => t.settings.parts[part].name),
    ),
    plain('hand-take', '/hand/take', (t) => t.hand.openCamera),
    {
      ...gag('hand-give', 'G01', 'sign-offs', (t) => t.hand.giveLead),
      reaches: '/hand/give/:id',
      first: async (page, t) => {
        await press(page.getByText(t.signOffs.all));
        await press(page.getByRole('link', { name: t.hand.give }).first());
      },
    },
    plain('help', '/help', (t) => t.help.tasks.hold.name),
    plain('handbook', '/help/techniques', (t) => t.groups.falls),
    plain('handbook-technique', '/help/techniques/ratchet-pull', (t) => t.handbook.settles),
    ...tasks.map((task) => plain(`help-${task}`, `/help/${task}`, (t) => t.help.tasks[task].name)),
  ],
  medic: [
    plain('medic-today', '/', (t) => t.today.toSign),
    {
      ...gag('medic-sign', 'G05', 'sign', (t) => t.sign.decision),
      path: ({ gag }) => `/gags/${gag.G05}/sign?role=medic`,
    },
    gag('medic-day', 'G14', 'day', (t) => t.onDay.people),
    {
      name: 'medic-person',
      path: ({ person }) => `/people/${person.P05}`,
      shows: (t) => t.people.certificateTitle,
    },
  ],
  'ha.van': [
    plain('performer-today', '/', (t) => t.today.toSign),
    gag('performer-cast', 'G02', 'cast', (t) => t.gag.cast),
    {
      name: 'performer-person',
      path: ({ person }) => `/people/${person.P05}`,
      shows: (t) => t.people.hiddenMedical,
    },
  ],
  observer: [
    plain('observer-today', '/', (t) => t.today.held),
    gag('observer-sign-offs', 'G03', 'sign-offs', (t) => t.signOffs.all),
  ],
  production: [
    plain('production-today', '/', (t) => t.today.toSign),
    plain('production-access', '/settings/people', (t) => t.settings.signsIn),
  ],
};
