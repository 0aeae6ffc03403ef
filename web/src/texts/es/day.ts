// What is said of holds and the day, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const hold: Texts['hold'] = {
  title: 'Alto',
  lead: 'Puede darlo cualquiera. No hace falta motivo.',
  gag: (code) => `Alto en ${code}`,
  everything: 'Alto en todo el rodaje',
  another: 'Otra acción',
  reason: 'Motivo, si quiere decirlo',
  hazard: 'Peligro, si quiere indicarlo',
  noHazard: 'Sin indicar',
  raised: 'Alto dado.',
  raisedWaiting:
    'Alto dado en este dispositivo. Dígalo en voz alta: los demás lo sabrán cuando haya conexión.',
  list: 'Altos',
  needs: (roles) => `Detenida hasta que estén de acuerdo: ${roles}`,
  code: 'Código de la hoja del día',
  codeHelp: 'Viene impreso en la hoja de hoy. No hace falta cuenta.',
  gagCode: 'Acción',
  gagCodeHelp: 'Su código, por ejemplo G07. Si se deja vacío, se detiene todo.',
  byCodeDone: 'Alto dado. Dígalo también en voz alta: ALTO.',
  byCodeAll: (code) => `Aquí ninguna acción se llama ${code}, así que se ha detenido todo.`,
  withCode: 'Alto con el código de la hoja del día',
  released: 'Levantado',
  noneOpen: 'No hay ningún alto abierto.',
  by: (who) => `Lo dio ${who}`,
  byCode: 'Dado con el código de la hoja del día',
  noReason: 'Sin motivo indicado.',
  agreements: 'De acuerdo en levantarlo',
  agreeTitle: 'Acordar que se levante',
  agreeLead:
    'Diga la causa en voz alta y después escríbala. El coordinador y el responsable del peligro deben estar de acuerdo.',
  role: 'De acuerdo como',
  cause: 'La causa y lo que se ha hecho',
  agree: 'De acuerdo en levantarlo',
};

export const dayHelp: Texts['dayHelp'] = {
  wind: 'Con su unidad, por ejemplo 6 m/s o 14 mph.',
  gust: 'Con su unidad, por ejemplo 8 m/s o 18 mph.',
  air_temperature: 'Con su unidad, por ejemplo 21 °C o 70 °F.',
  water_temperature: 'Con su unidad, por ejemplo 18 °C o 64 °F.',
  light: 'En lux, por ejemplo 420.',
};

export const day: Texts['day'] = {
  readings: 'Mediciones',
  readingTitle: 'Anotar una medición',
  kind: 'Qué se ha medido',
  value: 'Valor',
  place: 'Dónde',
  go: 'Anotar la medición',
  lux: 'lux',
  none: 'Todavía no hay ninguna medición.',
  band: (min, max) => (min && max ? `de ${min} a ${max}` : min ? `mínimo ${min}` : `máximo ${max ?? ''}`),
  goodFor: (minutes) => `una medición vale ${plural(minutes, 'minuto', 'minutos')}`,
  bands: 'Límites de hoy',
  runs: 'Progresión de ensayos',
  runTitle: 'Anotar un ensayo',
  rung: 'Escalón',
  good: 'Salió como estaba previsto',
  bad: 'No salió así',
  note: 'Qué se vio',
  runGo: 'Anotar el ensayo',
  needed: (n) => plural(n, 'ensayo bueno necesario', 'ensayos buenos necesarios'),
  noRungs: 'El plan todavía no tiene progresión de ensayos.',
  number: 'Escriba un número, por ejemplo 420.',
};
