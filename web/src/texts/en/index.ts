// Every sentence the app says, in English. Another language is another folder of this shape.

import { day, dayHelp, hold } from './day.ts';
import { edit } from './edit.ts';
import { invitation, setUp, signIn } from './entry.ts';
import { find, keys } from './find.ts';
import { app, device, kept, nav, problem, write } from './frame.ts';
import { cast, figures, gag, requirement, signOffs } from './gag.ts';
import { hand } from './hand.ts';
import { guide, help } from './help.ts';
import { needs } from './needs.ts';
import { onDay } from './on-the-day.ts';
import { alarm, clock, draft, outbox, ready, storage, update } from './outbox.ts';
import { packets } from './packets.ts';
import { past } from './past.ts';
import { people, roster } from './people.ts';
import { person } from './person.ts';
import { delegates, ink, policy } from './policy.ts';
import { risk } from './risk.ts';
import { about, settings } from './settings.ts';
import { sign } from './sign.ts';
import { gags, newGag, today } from './today.ts';
import { groups, handbook, moved, shots, tools } from './tools.ts';
import { trail, witnesses } from './trail.ts';
import { words } from './words.ts';

export const en = {
  words,
  app,
  kept,
  problem,
  write,
  nav,
  device,
  signIn,
  setUp,
  invitation,
  today,
  gags,
  newGag,
  gag,
  figures,
  risk,
  cast,
  requirement,
  signOffs,
  sign,
  hold,
  dayHelp,
  onDay,
  day,
  edit,
  hand,
  people,
  policy,
  delegates,
  ink,
  roster,
  past,
  trail,
  witnesses,
  settings,
  about,
  help,
  guide,
  alarm,
  clock,
  draft,
  outbox,
  ready,
  storage,
  update,
  find,
  keys,
  packets,
  needs,
  person,
  tools,
  moved,
  shots,
  handbook,
  groups,
};

export type Texts = typeof en;
