// What entries of the trail say happened, in Spanish, keyed by the server's own English sentences.

export const trail: Record<string, string> = {
  'Somebody with no account': 'Alguien sin cuenta',
  'Somebody no longer on the roster': 'Alguien que ya no está en la lista',
  // What a rebuilt gag cannot tell any more.
  'The words beside leaf {n} were erased or are not in this file: why the hold was raised cannot be read any more; that it was said, when and by whom is known.':
    'Las palabras junto a la hoja {n} se borraron o no están en este archivo: ya no se puede leer por qué se dio el alto; que se dijo, cuándo y quién lo dijo se sabe.',
  'The words beside leaf {n} were erased or are not in this file: what the signer wrote cannot be read any more; that it was said, when and by whom is known.':
    'Las palabras junto a la hoja {n} se borraron o no están en este archivo: ya no se puede leer lo que escribió quien firmó; que se dijo, cuándo y quién lo dijo se sabe.',
  'What the roster said of {who}, leaf {n}, was erased or is not in this file: whether they could do what they were cast for cannot be known any more.':
    'Lo que la lista decía de {who}, hoja {n}, se borró o no está en este archivo: ya no se puede saber si podía hacer aquello para lo que estaba en el reparto.',
  'What the roster said of {who}, leaf {n}, was erased or is not in this file: which certificates they held when they signed cannot be known any more.':
    'Lo que la lista decía de {who}, hoja {n}, se borró o no está en este archivo: ya no se puede saber qué certificados tenía cuando firmó.',
  'The production was started, with {who} as {roles}': 'Empezó la producción, con {who} como {roles}',
  '{who} added {person} on the roster': '{who} añadió a {person} a la lista',
  '{who} changed {person} on the roster': '{who} cambió a {person} en la lista',
  '{who} erased what was kept about a person': '{who} borró lo que se guardaba de una persona',
  '{who} imported the roster table {table}: {new} new, {changed} changed, {same} as before':
    '{who} importó la tabla {table} de la lista: {new} nuevas, {changed} cambiadas, {same} iguales',
  '{who} wrote revision {n} of {code}': '{who} escribió la revisión {n} de {code}',
  '{who} declined as {role} on revision {n} of {code}':
    '{who} no dio su conformidad como {role} a la revisión {n} de {code}',
  '{who} signed as {role} on revision {n} of {code}, with conditions':
    '{who} firmó como {role} la revisión {n} de {code}, con condiciones',
  '{who} signed as {role} on revision {n} of {code}': '{who} firmó como {role} la revisión {n} de {code}',
  '{who} said that a condition of {role} on {code} is met':
    '{who} dijo que se cumple una condición de {role} en {code}',
  '{who} put version {version} of the policy in force':
    '{who} puso en vigor la versión {version} de la norma',
  '{who} let {person} sign as {role}': '{who} dejó que {person} firme como {role}',
  '{who} ended a delegation of {role}': '{who} terminó una delegación de {role}',
  '{who} added {name} as a witness of the trail': '{who} añadió {name} como testigo del registro',
  '{who} removed {name} as a witness of the trail': '{who} retiró a {name} como testigo del registro',
  '{who} resolved a decline on {code} in writing': '{who} resolvió por escrito una firma denegada en {code}',
  '{who} handed in the photograph of a sign-off on paper':
    '{who} entregó la fotografía de una firma en papel',
  '{who} signed as {role} on revision {n} of {code}, in ink':
    '{who} firmó como {role} la revisión {n} de {code}, en papel',
  '{who} held the whole production': '{who} dio el alto a toda la producción',
  '{who} held {code}': '{who} dio el alto a {code}',
  '{who} agreed as {role}, and the hold on {code} was released':
    '{who} estuvo de acuerdo como {role} y se levantó el alto de {code}',
  '{who} agreed as {role} to release the hold on {code}':
    '{who} está de acuerdo como {role} en levantar el alto de {code}',
  'the production': 'la producción',
  '{who} logged a {kind} reading for {code}': '{who} anotó una medición de {kind} para {code}',
  '{who} logged a good run of rung {rung} on {code}':
    '{who} anotó un ensayo bueno del escalón {rung} en {code}',
  '{who} logged a bad run of rung {rung} on {code}':
    '{who} anotó un ensayo malo del escalón {rung} en {code}',
  '{who} logged a test shot with a weight bag on {code}':
    '{who} anotó una prueba medida con saco de peso en {code}',
  '{who} logged a test shot with a person on {code}':
    '{who} anotó una prueba medida con una persona en {code}',
  '{who} registered a device to sign with': '{who} registró un dispositivo para firmar',
  '{who} revoked a device of {person}': '{who} revocó un dispositivo de {person}',
  '{who} gave {person} the roles: {roles}': '{who} dio a {person} los cargos: {roles}',
  '{who} invited {person}': '{who} invitó a {person}',
  '{who} withdrew the invitation of {person}': '{who} retiró la invitación de {person}',
  '{who} entered {serial} on the register of equipment':
    '{who} dio de alta {serial} en el registro de equipo',
  '{who} changed {serial} on the register of equipment': '{who} cambió {serial} en el registro de equipo',
  '{who} set {serial} aside': '{who} apartó {serial}',
  '{who} took {serial} back into use': '{who} devolvió {serial} al uso',
  '{who} recorded a shock load on {serial}': '{who} anotó una carga de choque en {serial}',
  '{who} debriefed {code} for {day}': '{who} hizo el repaso de {code} del {day}',
  '{who} briefed {code} for {day}': '{who} hizo la reunión previa de {code} para el {day}',
  '{who} signed {#day} as {role} on {code}': '{who} firmó el día {day} como {role} en {code}',
  '{who} signed {#day} as {role} on {code}, in ink':
    '{who} firmó en papel el día {day} como {role} en {code}',
  '{who} declined {#day} as {role} on {code}, in ink':
    '{who} no dio en papel su conformidad al día {day} como {role} en {code}',
  '{who} declined {#day} as {role} on {code}':
    '{who} no dio su conformidad al día {day} como {role} en {code}',
  '{who} called the go for take {n} of {code}': '{who} dio el adelante a la toma {n} de {code}',
  '{who} called a go for take {n} of {code} that did not stand':
    '{who} dio un adelante a la toma {n} de {code} que no valía',
  '{who} recorded take {n} of {code} as good': '{who} anotó como buena la toma {n} de {code}',
  '{who} recorded take {n} of {code} as not good': '{who} anotó como no buena la toma {n} de {code}',
  '{who} recorded take {n} of {code} as stopped': '{who} anotó como detenida la toma {n} de {code}',
  '{who} looked at {person} on {code}': '{who} reconoció a {person} en {code}',
  '{who} stood {person} down': '{who} apartó a {person}',
  '{who} brought {person} back': '{who} hizo volver a {person}',
  '{who} reported a near miss, which freezes the whole production':
    '{who} comunicó un casi accidente, que congela toda la producción',
  '{who} reported an incident, which freezes the whole production':
    '{who} comunicó un accidente, que congela toda la producción',
  '{who} reported a near miss on {code}': '{who} comunicó un casi accidente en {code}',
  '{who} reported an incident on {code}': '{who} comunicó un accidente en {code}',
  '{who} told {role} of the incident on {code}': '{who} avisó a {role} del accidente de {code}',
  '{who} told somebody of the incident on {code}': '{who} avisó a alguien del accidente de {code}',
  '{who} said as {role} what was done about the incident on {code}':
    '{who} dijo como {role} qué se hizo por el accidente de {code}',
  '{who} accepted their invitation': '{who} aceptó su invitación',
  '{+told}; carried here by {who}': '{told}; lo trajo {who}',
  '{who} added {code}': '{who} añadió {code}',
  wind: 'viento',
  none: 'ninguno',
  people: 'personas',
  certificates: 'certificados',
  skills: 'habilidades',
  availability: 'disponibilidad',
  coordinator: 'coordinador de especialistas',
  marine: 'supervisor marítimo y de buceo',
  animals: 'adiestrador de animales',
  guardian: 'tutor o profesor de rodaje',
  production: 'jefe de producción',
  observer: 'observador',
};
