// What is said of one gag: its answer, figures and cast, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

const oneOf = new Intl.ListFormat('es', { type: 'disjunction' });

export const gag: Texts['gag'] = {
  sections: 'Secciones de esta acción',
  answer: 'Respuesta',
  plan: 'Plan',
  figures: 'Cifras',
  cast: 'Reparto',
  signOffs: 'Firmas',
  day: 'Día',
  edit: 'Editar el plan',
  packet: 'Dosier (PDF)',
  packetNeedsSignal: 'Sin conexión. El dosier lo imprime el servidor: conéctese para obtenerlo.',
  preparing: 'Imprimiendo …',
  standing: (have, need) => `Firmas vigentes: ${have} de ${need}`,
  clearedLead: 'Todas las firmas están vigentes, ninguna comprobación la frena y no hay ningún alto.',
  reasons: 'Qué lo impide',
  apart: (from, now) =>
    `Usted escribió aquí una revisión sobre la revisión ${from} y aún no se ha enviado. El plan ya va por la revisión ${now}: el servidor la rechazará tal como está. Entonces podrá elegir entre las dos versiones.`,
  judgedHere: (at) => `Evaluado en este dispositivo a las ${at}, con lo que tiene guardado.`,
  unjudged: (at) =>
    `Esto es lo que dijo el servidor a las ${at}. Este dispositivo no ha podido evaluarlo de nuevo: no dé el adelante con ello.`,
  pending: (n) =>
    `Incluye ${plural(n, 'anotación de este dispositivo aún sin enviar', 'anotaciones de este dispositivo aún sin enviar')}.`,
  hazards: 'Peligros',
  facts: 'Dónde y cuándo',
  revisionBy: (n, who, when) => `Revisión ${n}, de ${who}, ${when}`,
  history: 'Revisiones',
  changed: 'Cambios:',
  digest: 'Huella del plan',
  empty: 'No hay nada escrito.',
  noAssessment: 'No se pudieron calcular las cifras con este plan.',
  moreReasons: (n) => plural(n, 'motivo más', 'motivos más'),
};

export const figures: Texts['figures'] = {
  lead: (n) =>
    n === 0
      ? 'Todas las comprobaciones están dentro de su límite.'
      : plural(n, 'comprobación requiere atención.', 'comprobaciones requieren atención.'),
  checks: 'Comprobaciones',
  figures: 'Cifras',
  cautions: 'Advertencias',
  zones: 'Terreno que debe quedar libre',
  plot: 'Gráfica',
  atMost: 'máximo',
  atLeast: 'mínimo',
  interval: (low, high) => `de ${low} a ${high}`,
  between: (value, low, high) => `${value}, entre ${low} y ${high}`,
  limit: (bound, value) => `límite ${bound} ${value}`,
  source: 'Fuente:',
  jurisdiction: 'Dónde rige:',
  setBy: 'Carácter:',
  aboutInput: (title) => `Sobre un dato: ${title}`,
  blocking: 'Si se supera, frena la acción',
  cautionOnly: 'Una advertencia para quienes firman',
  barAlt: (title, value, limit, status) => `${title}: ${value}; ${limit}. Estado: ${status}.`,
  span: (title, low, high) => `${title}, de ${low} a ${high}`,
  against: (title, limit, status) => `${title} (${limit}): ${status}.`,
  intervalOf: (what) => `Con las tolerancias: ${what}`,
  touch: 'Toque la gráfica, o use en ella las flechas del teclado, para leer los valores.',
  asTable: 'La gráfica en números',
  ellipse: (along, across) => `Elipse, ${along} de largo, ${across} de ancho`,
  rectangle: (along, across) => `Rectángulo, ${along} de largo, ${across} de ancho`,
};

export const cast: Texts['cast'] = {
  uncast: 'Sin asignar',
  candidates: 'Quién podría hacerlo',
  cure: (what, by) => `${what}, antes del ${by}`,
  noCandidates: 'No hay especialistas en la lista.',
  noSlots: 'El plan todavía no tiene ningún puesto para un especialista.',
  hidden: 'Su cargo no puede ver este dictamen.',
  kit: 'Equipo que lleva',
  lead: (filled, all) => `Aptos: ${filled} de ${all}`,
  castIn: 'Asignar en el editor del plan',
};

export const requirement: Texts['requirement'] = {
  skill: (name, level, days) =>
    days === undefined
      ? `${name}, nivel ${level}`
      : `${name}, nivel ${level}, practicado en los últimos ${days} días`,
  certificate: (kinds, category) => `${oneOf.format(kinds)}${category ? `, ${category}` : ''}`,
  measurement: (name, target, tolerance) => `${name} ${target} ± ${tolerance}`,
  kittedMass: (min, max) => `Masa con equipo de ${min} a ${max}`,
  age: (min, max) =>
    min === undefined
      ? `Edad máxima ${max ?? ''}`
      : max === undefined
        ? `Edad mínima ${min}`
        : `Edad de ${min} a ${max}`,
  medicalClearance: 'Apto médico',
  availability: 'Disponible ese día',
  rest: (hours) => `${hours} horas de descanso antes de la citación`,
  dailyExposure: (name, max) => `${name}: máximo ${max} al día`,
  consent: 'Consentimiento propio a esta revisión',
};

export const signOffs: Texts['signOffs'] = {
  lead: (have, need) => `Vigentes: ${have} de ${need}`,
  because: (why) => `Hace falta por: ${why}`,
  by: (who, when, revision) => `${who}, ${when}, sobre la revisión ${revision}`,
  changedSince: 'Ha cambiado desde entonces:',
  conditions: 'Condiciones sin cumplir',
  met: 'Marcar como cumplida',
  sign: 'Leer y firmar',
  signAgain: 'Leer y firmar de nuevo',
  drawn: (who) => `Firma dibujada por ${who}`,
  all: 'Todas las firmas hechas',
  verified: 'Firma verificada en este dispositivo',
  notVerified: (why) => `La firma no se verifica: ${why}`,
  erased: 'El texto se borró; el compromiso que lo sustituye sigue en pie.',
  unknownDevice: 'El dispositivo que firmó no está entre los que conoce este teléfono.',
  signedFor: (who) => `En lugar de ${who}`,
  whatChanged: (revision) => `Qué ha cambiado desde la revisión ${revision}`,
  resolve: 'Resolver por escrito la firma denegada',
  resolved: 'Resuelto por escrito:',
  resolveText: 'Qué se acordó',
  resolveHelp: 'La firma denegada queda registrada. Después, el cargo firma de nuevo.',
  ink: 'Anotar una firma hecha en papel',
};
