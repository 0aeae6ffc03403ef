// What the judge says of the day and of a go, in Spanish, keyed by its own English sentences.

export const theDay: Record<string, string> = {
  // Marks for the day.
  'Nobody has signed the day as {@role}.': 'Nadie ha firmado el día como {role}.',
  '{who} has not signed the day.': '{who} no ha firmado el día.',
  '{who} declined the day.': '{who} no dio su conformidad al día.',
  '{facets} has changed since {who} signed the day on revision {n}.':
    'Desde que {who} firmó el día en la revisión {n} ha cambiado: {facets}.',
  '{facets} have changed since {who} signed the day on revision {n}.':
    'Desde que {who} firmó el día en la revisión {n} han cambiado: {facets}.',
  "{who}'s mark for the day was good until {when}.": 'La firma del día de {who} valía hasta el {when}.',
  'The equipment is not what {who} signed the day for: it is now without {gone} and with {come}.':
    'El equipo no es el que firmó {who} para el día: ahora es sin {gone} y con {come}.',
  'The equipment is not what {who} signed the day for: it is now without {gone}.':
    'El equipo no es el que firmó {who} para el día: ahora es sin {gone}.',
  'The equipment is not what {who} signed the day for: it is now with {come}.':
    'El equipo no es el que firmó {who} para el día: ahora es con {come}.',
  '{who} signed the day for other performers than those cast now.':
    '{who} firmó el día para otros especialistas que los de ahora.',
  '{who} signed for {#one}; this is {#other}.': '{who} firmó para el {one}; hoy es {other}.',
  '{who} signed for another place than "{place}".': '{who} firmó para un lugar distinto de «{place}».',
  '{what} ({serial}) took a shock load on {when}.': '{what} ({serial}) sufrió una carga de choque el {when}.',
  '{reading} was read outside the band, {#value}, on {when}.':
    '{reading}: se midió fuera del margen, {value}, el {when}.',
  "{who} was stood down on {when}, after the medic's look.":
    '{who} dejó de actuar el {when}, tras el reconocimiento del sanitario.',
  '{who} performs on this gag; the policy keeps {@role} and performers apart.':
    '{who} actúa en esta acción; las reglas separan {role} y especialistas.',
  'Put right what they name; only they can say otherwise.':
    'Corrija lo que señalan; solo quien lo dijo puede decir otra cosa.',
  'Ask {who} to read and sign for the day.': 'Pida a {who} que lea y firme el día.',
  'Give someone the role {@role}, then have them sign for the day.':
    'Dé a alguien el cargo {role} y que firme el día.',
  // The day itself.
  'The plan is for {day}, which is not today.': 'El plan es para el {day}, que no es hoy.',
  'Wait for that day; or brief those involved for today.':
    'Espere a ese día, o reúna para hoy a quienes participan.',
  '{who} cannot perform as {slot} on {#day}: {reasons}.':
    '{who} no puede hacer de {slot} el {day}: {reasons}.',
  "Cure what is named, or shoot on the plan's own day.":
    'Resuelva lo señalado, o ruede el día que dice el plan.',
  '{people} missed the briefing.': 'Faltaron a la reunión previa: {people}.',
  'Brief them on the spot and record it.': 'Infórmeles en el lugar y anótelo.',
  'The plan has changed since the briefing.': 'El plan ha cambiado desde la reunión previa.',
  'Brief everyone again on what changed.': 'Reúna de nuevo a todos para contar lo que cambió.',
  'Nobody has been briefed for this day and place.':
    'No se ha hecho ninguna reunión previa para este día y lugar.',
  'Brief everyone involved on the spot and record who was there.':
    'Reúna en el lugar a quienes participan y anote quién estuvo.',
  '{reading} has not been read.': '{reading}: sin medir.',
  '{reading} has not been read at "{place}".': '{reading}: sin medir en «{place}».',
  'Read it and log it.': 'Mídalo y anótelo.',
  '{reading} was last read on {when}; a reading counts for {minutes} min.':
    '{reading}: la última medición es del {when}; cada una vale {minutes} min.',
  'Read it again and log it.': 'Mídalo de nuevo y anótelo.',
  '{reading} is outside what the plan allows.': '{reading}: fuera de lo que admite el plan.',
  '{what} ({serial}) has been in quarantine since {when}: {why}.':
    '{what} ({serial}) está en cuarentena desde el {when}: {why}.',
  'it took a shock load': 'sufrió una carga de choque',
  'The inspection of {what} ({serial}) counts until {#until}.':
    'La inspección de {what} ({serial}) vale hasta el {until}.',
  'Have it inspected, or use another piece.': 'Que la inspeccionen, o use otra pieza.',
  'Have it inspected and released, or use another piece, which is a new revision.':
    'Que la inspeccionen y la devuelvan al uso, o use otra pieza, lo que es una revisión nueva.',
  "{who} is stood down until {#when}, after the medic's look.":
    '{who} no actúa hasta el {when}, tras el reconocimiento del sanitario.',
  '{who} is stood down until the medic has looked again.':
    '{who} no actúa hasta que el sanitario vuelva a reconocerle.',
  '{who} is stood down until {#when}.': '{who} no actúa hasta el {when}.',
  '{who} is stood down.': '{who} no actúa por ahora.',
  'Cast someone else, or wait until they are back.': 'Asigne a otra persona, o espere a que vuelva.',
  'The medic has not looked at {who} since the last take.':
    'El sanitario no ha reconocido a {who} desde la última toma.',
  'Ask the medic to look and to record it.': 'Pida al sanitario que le reconozca y lo anote.',
  // Go.
  'Take {#n} is open.': 'La toma {n} está abierta.',
  'Record how it ended.': 'Anote cómo acabó.',
  'Take {#n} of {gag} is open, with {busy}.': 'La toma {n} de {gag} está abierta, con {busy}.',
  'Record how it ended, on {gag}.': 'Anote cómo acabó, en {gag}.',
  'The go was for revision {one}; revision {other} is current.':
    'El adelante era para la revisión {one}; la vigente es la {other}.',
  'The go was for {#one} at "{place}"; the day was {#other} at "{where}".':
    'El adelante era para el {one} en «{place}»; el día era el {other} en «{where}».',
  'Whoever called the go performs in it.': 'Quien dio el adelante actúa en la acción.',
  'The go was for {#one}; this is {#other}.': 'El adelante era para el {one}; hoy es {other}.',
  'The go was for "{one}"; this is "{other}".': 'El adelante era para «{one}»; esto es «{other}».',
  'A hold was raised after the go, on {when}.': 'Se dio un alto después del adelante, el {when}.',
  // Near misses and incidents.
  'A near miss freezes {what} since {when}, reported by {who}.':
    'Un casi accidente congela {what} desde el {when}; lo comunicó {who}.',
  'An incident freezes {what} since {when}, reported by {who}.':
    'Un accidente congela {what} desde el {when}; lo comunicó {who}.',
  'Tell {who} and record it. {roles} must say what was done so that it does not happen again.':
    'Avise a: {who}, y anótelo. {roles}: debe decir qué se hizo para que no se repita.',
  'Tell {who} and record it.': 'Avise a: {who}, y anótelo.',
  '{roles} must say what was done so that it does not happen again.':
    '{roles}: debe decir qué se hizo para que no se repita.',
  // The door.
  'the role {role} does not sign the day on this production':
    'el cargo {role} no firma el día en esta producción',
  'you may not do this: a go is called by one of these roles: {roles}':
    'no puede hacer esto: el adelante lo da uno de estos cargos: {roles}',
};
