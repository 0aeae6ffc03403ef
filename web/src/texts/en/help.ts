// Help, task by task, in English. Short: what to do, in the order it is done.

export const help = {
  title: 'Help',
  about: 'Short, task by task; works with no signal',
  lead: 'Choose what you want to do.',
  tasks: {
    start: {
      name: 'Start a production',
      steps: [
        'Bring the people in: People, Import a roster. Or add them one at a time.',
        'Give hats and invite: Settings, Who has access. Each person signs only what their hat answers for.',
        'Plan the first gag: Gags, New gag. Choose how it is done; the app asks for the figures that it needs.',
        'Whoever must sign finds it under Today. The gag says who is still missing.',
      ],
    },
    sign: {
      name: 'Sign a plan',
      steps: [
        'Today lists what is yours to sign. Tap it.',
        'Read what you answer for. Where you signed before, what changed since is shown first.',
        'Approve, approve with conditions, or decline and say why.',
        'Your signature covers those parts as they are now. A change to one of them lapses it; a change elsewhere does not.',
        'A signature is never taken back. Decline later, or raise a hold, if you think otherwise.',
      ],
    },
    hold: {
      name: 'Stop: raise a hold',
      steps: [
        'Tap Hold. Then tap the gag, or everything. That is all. Say it aloud as well.',
        'Nobody needs a reason, an account or a signal. The code on the brief works for anyone.',
        'While a hold is open nothing it covers is cleared.',
        'It is released when the coordinator and the owner of the hazard both agree and write the cause.',
      ],
    },
    offline: {
      name: 'Work with no signal',
      steps: [
        'What you have opened, and what is next, stays on this phone.',
        'Write as always. Each entry waits on this phone and goes by itself when there is a signal.',
        'Settings, Entries of this phone, shows each: waiting, sent, or refused with the reason.',
        'What has never left this phone can be taken back there: no sending was begun and no code of it shown. Once sent, it is on the trail.',
      ],
    },
    person: {
      name: 'Add a person or a certificate',
      steps: [
        'People, New person: a code, a name, what they do. The rest can wait.',
        'On a person, Add a certificate: the kind and the dates printed on it.',
        'Write who looked at the evidence and how. Without that it counts as not checked.',
        'Measurements are written with their unit: 178 cm, 5 ft 10 in.',
      ],
    },
    cast: {
      name: 'Cast a slot',
      steps: [
        'Open the gag, then Edit the plan, then Cast.',
        'Each slot says what it needs: a skill, a certificate, a measurement, an age, rest.',
        'The people who could do it are judged as you change what it needs, each with every reason.',
        'Casting changes the cast part of the plan: those who answer for it sign again.',
      ],
    },
    plan: {
      name: 'Change a plan',
      steps: [
        'A plan is never changed in place. Saving makes the next revision.',
        'While you edit, the app shows which signatures the change would lapse.',
        'If someone saved first, you choose part by part. Nothing of yours is lost.',
      ],
    },
    day: {
      name: 'Run the day',
      steps: [
        'Open the gag, then Day. Log readings as they are read; each counts for as long as the plan says.',
        'Log each rehearsal run on its rung of the ladder.',
        'Print the packet, or keep it on this phone: Packets.',
      ],
    },
    trail: {
      name: 'Prove what happened',
      steps: [
        'Trail shows every entry. None is ever changed or removed.',
        'Check the proof of any entry on this phone, without trusting the server.',
        'Export the trail and keep it elsewhere: it can be checked with no server at all.',
        'Let somebody outside be its witness: what they cosign proves that nothing up to there was changed or dropped, not even by whoever runs the server.',
      ],
    },
  },
};

export const guide = {
  start: 'Four steps to the first signature',
  people: 'Bring the people in',
  hats: 'Give hats and invite',
  gag: 'Plan the first gag',
  signed: 'Have it signed',
  done: 'done',
  signing: 'What your signature means',
  signingLead:
    'You answer for the parts named on the page, as they are at that moment. The key is made on this phone. If such a part changes, your signature lapses and you are asked again. It is never taken back.',
  holdNext: 'It stays until the coordinator and the owner of the hazard both agree and write the cause.',
  more: 'Read more',
  close: 'Understood',
};
