// What is said of signing, in Spanish.

import type { Texts } from '../en/index.ts';

export const sign: Texts['sign'] = {
  title: (role) => `Firmar como ${role}`,
  covers: 'Abarca',
  changesFirst: 'Primera vez: lea cada una de las partes.',
  changesSince: (revision) => `Cambios desde que firmó la revisión ${revision}`,
  noChanges: 'No ha cambiado nada de lo que usted responde.',
  unseen: (facets) =>
    `Ha cambiado desde entonces: ${facets}. Lo que decía antes no está en este dispositivo; lea esas partes más abajo.`,
  planChanged: 'El plan cambió mientras lo leía: léalo de nuevo.',
  planDiffers:
    'Lo que se va a firmar es de otra revisión que el plan de este dispositivo. Conéctese y léalo de nuevo.',
  readAgain: 'Leer el plan como está ahora',
  readPlan: 'Leer aquello de lo que responde',
  before: 'Antes',
  lastTime: (revision, when) => `Usted firmó la revisión ${revision} el ${when}.`,
  lapsed: 'Ya no vale:',
  mark: 'Dibuje su firma, si quiere',
  markHelp:
    'Se muestra junto a su nombre y se imprime en el dosier. No hace falta: lo que vale es la clave de este dispositivo.',
  marked: 'Firma dibujada',
  pad: 'Lugar para dibujar la firma con el dedo, un lápiz o el ratón. Puede quedar vacío.',
  padUndo: 'Deshacer el último trazo',
  padClear: 'Borrar',
  padFailed: 'No se pudo cargar el lugar para dibujar. Puede firmar sin dibujar.',
  putsTo: (name) => `${name} pone su nombre bajo esto:`,
  after: 'Ahora',
  decision: 'Su decisión',
  conditions: 'Condiciones, una por línea',
  conditionsHelp: 'Hasta que se cumplan todas, la acción no queda autorizada.',
  reason: 'Por qué se niega',
  reasonHelp: 'Vale hasta que este cargo firme otra cosa.',
  go: {
    approve: 'Firmar: conforme',
    approve_with_conditions: 'Firmar: conforme con condiciones',
    decline: 'Firmar: no conforme',
  },
  choose: 'Primero elija una decisión',
  signing: 'Firmando …',
  done: 'Firmado',
  doneWaiting: 'Firmado en este dispositivo. Se envía al servidor cuando haya conexión.',
  nowState: 'Ahora la acción está:',
  key: 'Firmado con la clave de este dispositivo. La clave se crea aquí y nunca sale de él.',
  needConditions: 'Escriba al menos una condición o elija otra decisión.',
  needReason: 'Diga por qué, para que se pueda corregir.',
  toGag: 'A la acción',
  goodUntil: (when) => `Vale hasta el ${when}`,
};
