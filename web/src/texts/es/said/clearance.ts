// The judge's reasons and remedies in Spanish, keyed by its own English sentences.

export const clearance: Record<string, string> = {
  // Why a role signs.
  'cast as {slot}': 'hace de {slot}',
  'every gag': 'todas las acciones',
  'the technique': 'la técnica',
  'it declined': 'no dio su conformidad',
  'a check is {status}: {title}': 'una comprobación está {status}: {title}',
  'a risk stays {level} after its controls: {event}':
    'un riesgo sigue siendo {level} con sus medidas: {event}',
  '"{event}" is still a high risk after its controls. A score is a prompt, never a permit.':
    '«{event}» sigue siendo un riesgo alto con sus medidas. Una puntuación invita a pensar; nunca es un permiso.',
  high: 'alto',
  serious: 'serio',
  medium: 'medio',
  low: 'bajo',
  exceeded: 'superada',
  unknown: 'sin dato',
  marginal: 'al límite',
  // Hazards and facets in running text.
  height: 'altura',
  'a loaded line': 'un cable en carga',
  'gas under pressure': 'gas a presión',
  fire: 'fuego',
  'a charge': 'una carga pirotécnica',
  'breaking glass': 'rotura de cristal',
  'a moving vehicle': 'un vehículo en marcha',
  'a weapon': 'un arma',
  water: 'agua',
  'an animal': 'un animal',
  'a minor': 'un menor',
  'a lock-off composite': 'una composición con cámara fija',
  setting: 'lugar y momento',
  action: 'ejecución',
  rigging: 'rigging',
  effects: 'efectos',
  vehicles: 'vehículos',
  cast: 'reparto',
  medical: 'asistencia sanitaria',
  camera: 'cámara',
  conditions: 'condiciones',
  rehearsals: 'ensayos',
  // Holds.
  "A hold on {what} was raised by the code on the day's brief on {when}, no reason given.":
    'Alto en {what}, dado con el código de la hoja del día el {when}, sin motivo indicado.',
  "A hold on {what} was raised by the code on the day's brief on {when}, about {hazard}: {why}.":
    'Alto en {what}, dado con el código de la hoja del día el {when}, por {hazard}: {why}.',
  "A hold on {what} was raised by the code on the day's brief on {when}, about {hazard}.":
    'Alto en {what}, dado con el código de la hoja del día el {when}, por {hazard}.',
  "A hold on {what} was raised by the code on the day's brief on {when} UTC: {why}.":
    'Alto en {what}, dado con el código de la hoja del día el {when} UTC: {why}.',
  'A hold on {what} was raised by {who} on {when}, no reason given.':
    'Alto en {what}, dado por {who} el {when}, sin motivo indicado.',
  'A hold on {what} was raised by {who} on {when}, about {hazard}: {why}.':
    'Alto en {what}, dado por {who} el {when}, por {hazard}: {why}.',
  'A hold on {what} was raised by {who} on {when}, about {hazard}.':
    'Alto en {what}, dado por {who} el {when}, por {hazard}.',
  'A hold on {what} was raised by {who} on {when} UTC: {why}.':
    'Alto en {what}, dado por {who} el {when} UTC: {why}.',
  'this gag': 'esta acción',
  'the whole production': 'toda la producción',
  '{@role} (nobody holds this role yet)': '{role} (nadie tiene aún este cargo)',
  '{@role} ({people})': '{role} ({people})',
  '{roles}, two different people, must state the cause and agree to the release.':
    '{roles}, dos personas distintas, deben decir la causa y acordar que se levante.',
  '{roles} must state the cause and agree to the release.':
    '{roles}: debe decir la causa y estar de acuerdo en que se levante.',
  // Sign-offs.
  'Nobody has signed as {role}.': 'Nadie ha firmado como {role}.',
  '{who} has not consented.': '{who} no ha dado su consentimiento.',
  'A sign-off was received whose signature does not verify; it counts for nothing.':
    'Se recibió una firma que no se verifica; no cuenta para nada.',
  'A later sign-off was received whose signature does not verify, so what it says is unknown.':
    'Se recibió después una firma que no se verifica, así que no se sabe qué dice.',
  'the text was erased; its commitment stands ({which})':
    'el texto se borró; el compromiso que lo sustituye sigue en pie ({which})',
  '{who} declined revision {n}: no reason was given':
    '{who} no dio su conformidad a la revisión {n}: sin motivo indicado',
  '{who} declined revision {n}: {why}': '{who} no dio su conformidad a la revisión {n}: {why}',
  '{facets} has changed since {who} signed revision {n}.':
    '{facets}: ha cambiado desde que {who} firmó la revisión {n}.',
  '{facets} have changed since {who} signed revision {n}.':
    '{facets}: han cambiado desde que {who} firmó la revisión {n}.',
  'The technique has changed since {who} signed revision {n}.':
    'La técnica ha cambiado desde que {who} firmó la revisión {n}.',
  // What changed since, and what a role accepts in advance.
  '{what} rose {by}, from {old} to {new}; {role} answers for it.':
    '{what}: sube {by}, de {old} a {new}; responde {role}.',
  '{what} fell {by}, from {old} to {new}; {role} answers for it.':
    '{what}: baja {by}, de {old} a {new}; responde {role}.',
  '{what} is new: {value}; {role} answers for it.': '{what}, nuevo: {value}; responde {role}.',
  '{what}, {value} before, was taken out; {role} answers for it.':
    '{what}, antes {value}, se quitó; responde {role}.',
  '{what} is {new} and was {old}; {role} answers for it.':
    '{what}: ahora {new}, antes {old}; responde {role}.',
  'The tolerance of {what} changed; {role} answers for it.':
    'Cambió la tolerancia de {what}; responde {role}.',
  'The kit of {slot}': 'Equipo de {slot}',
  'Somebody else is cast as {slot}; {role} answers for it.': 'Otra persona hace de {slot}; responde {role}.',
  'Changed in the {facet}: {parts}.': 'Cambiado en {facet}: {parts}.',
  '{#n} more changes are on the page.': '{n} cambios más están en la página.',
  '{what} moved {by} %, inside the {most} % that {role} accepts.':
    '{what}: cambia un {by} %, dentro del {most} % que acepta {role}.',
  '{what} moved {by}, inside the {most} that {role} accepts.':
    '{what}: cambia {by}, dentro de los {most} que acepta {role}.',
  'The policy now has {role} answer for {facets} too, which {who} did not sign.':
    'La norma pide ahora que {role} responda también de {facets}, que {who} no firmó.',
  // Delegates and dissent.
  'The policy lets nobody sign for {role}.': 'La norma no deja que nadie firme por {role}.',
  '{from}, for whom {to} signed, no longer holds the role {role}.':
    '{from}, por quien firmó {to}, ya no tiene el cargo de {role}.',
  '{from} did not let {to} sign for this gag.': '{from} no dejó que {to} firmara en esta acción.',
  '{from} ended on {when} that {to} may sign as {role}.':
    '{from} terminó el {when} la delegación por la que {to} firmaba como {role}.',
  '{to} may sign for {from} only from {when}.': '{to} solo puede firmar por {from} desde el {when}.',
  '{to} could sign for {from} until {when}.': '{to} podía firmar por {from} hasta el {when}.',
  '{to} performs in this gag, and so signs for nobody on it.':
    '{to} actúa en esta acción, así que no firma por nadie en ella.',
  'Nobody let {who} sign as {role}.': 'Nadie dejó que {who} firmara como {role}.',
  '{who} declined revision {n}: {why} {by} resolved it in writing on {when}: {text}':
    '{who} no dio su conformidad a la revisión {n}: {why} {by} lo resolvió por escrito el {when}: {text}',
  'It would no longer be asked.': 'Ya no se pediría.',
  // Parts of a plan by name.
  steps: 'pasos',
  summary: 'resumen',
  hazards: 'peligros',
  abort: 'abortar',
  method: 'método',
  equipment: 'material',
  rescue: 'rescate',
  charges: 'cargas',
  suppression: 'extinción',
  slots: 'puestos',
  cover: 'cobertura',
  ambulance: 'ambulancia',
  hospital: 'hospital',
  positions: 'posiciones',
  notes: 'notas',
  bands: 'márgenes',
  'stop on': 'motivos de parada',
  rungs: 'escalones',
  scene: 'escena',
  location: 'lugar',
  unit: 'unidad',
  day: 'día',
  call: 'citación',
  parameters: 'parámetros',
  '{who} signed the words "{old}"; the policy now asks for "{new}".':
    '{who} firmó el texto «{old}»; la norma pide ahora «{new}».',
  "{who}'s sign-off was good until {when}.": 'La firma de {who} valía hasta el {when}.',
  'The device "{device}" was revoked on {when}, before this sign-off arrived.':
    'El dispositivo «{device}» se revocó el {when}, antes de que llegara esta firma.',
  '{who} no longer holds the role {role}.': '{who} ya no tiene el cargo de {role}.',
  '{who} needs a certificate to sign as {role}: {reason}.':
    '{who} necesita un certificado para firmar como {role}: {reason}.',
  '{role}: {who} approved on conditions that are not met yet: {conditions}.':
    '{role}: {who} dio su conformidad con condiciones que aún no se cumplen: {conditions}.',
  'Meet them; someone who holds the role {role} then says so.':
    'Cúmplalas; después lo dirá alguien con el cargo de {role}.',
  'Ask {who} to read and sign revision {n}.': 'Pida a {who} que lea y firme la revisión {n}.',
  'Give someone the role {role}, then have them sign revision {n}.':
    'Dé a alguien el cargo de {role} y que firme la revisión {n}.',
  'the performer': 'el especialista',
  'the signer': 'quien firmó',
  'The signer': 'Quien firmó',
  'Only {who} can say otherwise; or cast someone else.':
    'Solo {who} puede decir otra cosa; o asigne a otra persona.',
  'Nobody can overrule {role}: change the plan and ask {who} again.':
    'Nadie puede desautorizar a {role}: cambie el plan y pregunte de nuevo a {who}.',
  'Resolve it in writing and ask {role} to sign again.':
    'Resuélvalo por escrito y pida a {role} que firme de nuevo.',
  '{who} signed as {roles}; these must be two people.': '{who} firmó como {roles}; deben ser dos personas.',
  'Have someone else sign as {one} or as {other}.': 'Que firme otra persona como {one} o como {other}.',
  // What was handed over.
  'the device "{device}" belongs to someone else': 'el dispositivo «{device}» es de otra persona',
  'the device "{device}" was revoked on {when}; its owner must send this themselves':
    'el dispositivo «{device}» se revocó el {when}; debe enviarlo su propio dueño',
  'made_at is {when}, more than a day ahead; set the clock of "{device}" and hand it over again':
    'está fechado el {when}, más de un día por delante; ponga en hora «{device}» y vuelva a entregarlo',
  'made_at is {when}, more than a day before "{device}" was registered; set its clock and hand it over again':
    'está fechado el {when}, más de un día antes de que se registrara «{device}»; póngalo en hora y vuelva a entregarlo',
  'the signature does not verify with the key registered for this device':
    'la firma no se verifica con la clave registrada para este dispositivo',
  'what was handed over is not a compact JWS with alg ES256: {why}':
    'lo entregado no es un JWS compacto con alg ES256: {why}',
  'the signed request is not valid: {why}': 'la petición firmada no es válida: {why}',
  // The day.
  '{reading} was read as {value} at {place} by {who} on {when}; the plan allows {allowed}.':
    '{reading}: {who} midió {value} en {place} el {when}; el plan admite {allowed}.',
  '{reading} was read as {value} by {who} on {when}; the plan allows {allowed}.':
    '{reading}: {who} midió {value} el {when}; el plan admite {allowed}.',
  'at least {#value}': 'mínimo {value}',
  'at most {#value}': 'máximo {value}',
  'a number': 'un número',
  'a little more than {value}': 'algo más de {value}',
  'a little less than {value}': 'algo menos de {value}',
  'mean wind': 'viento medio',
  gust: 'racha',
  'air temperature': 'temperatura del aire',
  'water temperature': 'temperatura del agua',
  light: 'luz',
  'Wait for a reading inside the band; changing the band is a new revision.':
    'Espere a una medición dentro del margen; cambiar el margen es una revisión nueva.',
  'The inspection of {what} ({serial}) counts until {until}; it is needed on {day}.':
    'La inspección de {what} ({serial}) vale hasta el {until}; hace falta el {day}.',
  '{what} ({serial}) has no inspection date.': '{what} ({serial}) no tiene fecha de inspección.',
  'Have it inspected again and enter the date, or use another piece, which is a new revision.':
    'Que lo inspeccionen de nuevo y anote la fecha, o use otra pieza, lo que es una revisión nueva.',
  'Enter the last day its inspection counts.': 'Anote el último día en que vale la inspección.',
  'The rescue was drilled in {drilled} s; the limit is {limit} s.':
    'El simulacro de rescate tardó {drilled} s; el límite es {limit} s.',
  'Change the rescue until a drill is inside the limit.':
    'Cambie el rescate hasta que un simulacro esté dentro del límite.',
  'The rescue must take at most {limit} s and has not been drilled.':
    'El rescate debe tardar como máximo {limit} s y no se ha ensayado.',
  'Drill the rescue and enter its time in the rigging.': 'Ensaye el rescate y anote su tiempo en el rigging.',
  '{good} good of {need} needed on the rung "{rung}", and one rung after it; runs made before the plan changed no longer count.':
    '{good} ensayos buenos de {need} en el escalón «{rung}», y queda otro escalón; los ensayos anteriores al cambio del plan ya no cuentan.',
  '{good} good of {need} needed on the rung "{rung}", and {n} rungs after it; runs made before the plan changed no longer count.':
    '{good} ensayos buenos de {need} en el escalón «{rung}», y quedan {n} escalones más; los ensayos anteriores al cambio del plan ya no cuentan.',
  '{good} good of {need} needed on the rung "{rung}"; runs made before the plan changed no longer count.':
    '{good} ensayos buenos de {need} en el escalón «{rung}»; los ensayos anteriores al cambio del plan ya no cuentan.',
  '{good} good of {need} needed on the rung "{rung}", and one rung after it.':
    '{good} ensayos buenos de {need} en el escalón «{rung}», y queda otro escalón.',
  '{good} good of {need} needed on the rung "{rung}", and {n} rungs after it.':
    '{good} ensayos buenos de {need} en el escalón «{rung}», y quedan {n} escalones más.',
  '{good} good of {need} needed on the rung "{rung}".':
    '{good} ensayos buenos de {need} en el escalón «{rung}».',
  'Rehearse the rungs in order and log each run.': 'Ensaye los escalones en orden y anote cada ensayo.',
  'The last two runs in a row did not go as planned.':
    'Los dos últimos ensayos seguidos no salieron como estaba previsto.',
  'Find the cause, then log a good run.': 'Busque la causa y después anote un ensayo bueno.',
  // Slots.
  'No shooting day is set, so nobody can be judged for it.':
    'No hay día de rodaje fijado, así que no se puede evaluar a nadie.',
  'Set the shooting day in the setting.': 'Fije el día de rodaje en lugar y momento.',
  'The plan has no slot for a performer.': 'El plan no tiene ningún puesto para un especialista.',
  'Add a slot for each performer and cast it.': 'Añada un puesto por especialista y asígnelo.',
  'Nobody is cast as {slot}.': 'Nadie hace de {slot}.',
  'Cast someone who qualifies; the matches list who does.':
    'Asigne a alguien apto; en la lista de candidatos está quién lo es.',
  '{who}, cast as {slot}, is not on the roster.': '{who}, que hace de {slot}, no está en la lista.',
  'Add them to the roster with their proofs, or cast someone else.':
    'Añada a esa persona a la lista con sus justificantes, o asigne a otra.',
  '{who} is not qualified as {slot}: {reasons}.': '{who} no es apto como {slot}: {reasons}.',
  'In time still: {cures}.': 'Aún a tiempo: {cures}.',
  '{what} by {#date}': '{what} antes del {date}',
  'Cast someone who qualifies, or change what the slot needs.':
    'Asigne a alguien apto, o cambie lo que pide el puesto.',
  'No birthday is on record for {who}, cast as {slot}: they may be a minor.':
    'No consta la fecha de nacimiento de {who}, que hace de {slot}: puede ser menor de edad.',
  'Enter their birthday on the roster, or cast someone else.':
    'Anote su fecha de nacimiento en la lista, o asigne a otra persona.',
  '{who} is cast both as {one} and as {other}.': '{who} hace a la vez de {one} y de {other}.',
  'Cast each performer in one slot.': 'Asigne a cada especialista un solo puesto.',
  // Inputs.
  'Correct it in a new revision.': 'Corríjalo en una revisión nueva.',
  "The production's policy cannot be judged by: {problem}.":
    'No se puede evaluar con la norma de la producción: {problem}.',
  'Correct the policy.': 'Corrija la norma.',
  'The policy says nothing of the technique "{name}", so who must sign is unknown.':
    'La norma no dice nada de la técnica «{name}», así que no se sabe quién debe firmar.',
  'Add the technique with its hazards to the policy.': 'Añada a la norma la técnica con sus peligros.',
  'There is no technique "{name}".': 'No existe la técnica «{name}».',
  'The parameter "{name}" is in the {facet}; it belongs in the {right}.':
    'El parámetro «{name}» está en {facet}; su sitio es {right}.',
  'The parameter "{name}" is in the {facet}; {technique} has no such parameter.':
    'El parámetro «{name}» está en {facet}; {technique} no tiene ese parámetro.',
  'Change the plan until the check is inside its limit.':
    'Cambie el plan hasta que la comprobación esté dentro de su límite.',
  'Enter what the check needs.': 'Indique lo que necesita la comprobación.',
};
