// What is said of entries on their way to the server, of room on the phone, of the clock, of new versions, of the
// alarm at a hold, and of what is kept for the day, in Spanish.

import type { Texts } from '../en/index.ts';
import { plural } from './plural.ts';

export const outbox: Texts['outbox'] = {
  givenUp: (about) =>
    `No se envió: dependía de «${about}», que el servidor rechazó. Mire el plan tal como está ahora y hágalo de nuevo.`,
  waitsForRefused: (what) =>
    `Retenido: depende de «${what}», que fue rechazado. Corríjalo o quítelo de la lista.`,
  waitsForOrder: (what) => `Va después de «${what}».`,
  again: 'Enviar de nuevo',
  takeBack: 'Retirar',
  takeBackAsk:
    'No ha salido de este dispositivo. Si la retira, desaparece para siempre, como si nunca se hubiera escrito.',
  takeBackYes: 'Sí, retirarla',
  takeBackNo: 'Conservarla',
  signInAgain: (n) =>
    `${plural(n, 'anotación queda guardada', 'anotaciones quedan guardadas')} y se enviarán entonces.`,
  othersWait: (name, n) =>
    `${plural(n, 'anotación', 'anotaciones')} de ${name} ${n === 1 ? 'espera' : 'esperan'} en este dispositivo. Solo ${name} puede enviarlas, entrando aquí.`,
  someoneElse: 'otra persona',
  give: 'Enviar como código o archivo',
};

export const storage: Texts['storage'] = {
  title: 'Espacio en este dispositivo',
  used: (used, quota) => `${used} de ${quota} en uso.`,
  unknown: 'Este navegador no dice cuánto espacio hay.',
  persisted: 'El sistema conserva lo guardado aquí hasta que usted lo quite.',
  notPersisted:
    'El sistema puede borrar lo guardado aquí cuando le falte espacio. Envíe lo que espera en cuanto pueda.',
  ask: 'Pedir al sistema que lo conserve',
  askedInVain: 'El sistema no aceptó. Añadir la aplicación a la pantalla de inicio suele ayudar.',
  low: (left) =>
    `Este dispositivo está casi lleno: quedan ${left}. Libere espacio antes de que empiece el día.`,
  notKept: 'Esto NO se ha guardado.',
  notKeptWhy: (what) =>
    `${what}: no queda espacio en el dispositivo; no está guardado aquí ni enviado. No cierre esta página.`,
  free: 'Liberar espacio e intentarlo de nuevo',
  freed: 'Ahora está guardado.',
  stillFull: 'Sigue sin haber espacio. Borre fotos u otras aplicaciones e inténtelo de nuevo.',
  sendNow: 'Enviarlo ahora, sin guardarlo',
  sentNow: 'El servidor lo tiene.',
  notSentNow: 'El servidor no respondió. No está guardado ni enviado.',
};

export const clock: Texts['clock'] = {
  behind: (how) =>
    `El reloj de este dispositivo va ${how} por detrás del servidor. Las firmas llevan la hora del servidor; ponga el reloj en hora.`,
  ahead: (how) =>
    `El reloj de este dispositivo va ${how} por delante del servidor. Las firmas llevan la hora del servidor; ponga el reloj en hora.`,
};

export const update: Texts['update'] = {
  ready: 'Hay una versión nueva.',
  go: 'Cargarla ahora',
  later: 'Más tarde',
};

export const alarm: Texts['alarm'] = {
  gag: (code) => `Alto: ${code}`,
  all: 'Alto: todo',
  by: (name) => `Lo dio ${name}`,
  byCode: 'Dado con el código del día',
  handed: (name) => `Lo dio ${name}, entregado sin red`,
  see: 'Ver el alto',
  incidentOn: (code) => `Casi accidente o accidente: ${code}`,
  incident: 'Casi accidente o accidente',
  incidentBy: (name) => `Lo comunicó ${name}.`,
  incidentHanded: (name) => `Lo comunicó ${name}, entregado sin red.`,
  frozen: 'El plan queda congelado.',
  allFrozen: 'Todos los planes quedan congelados.',
  seeIncident: 'Ver lo ocurrido',
  heard: 'Lo he visto',
  more: (n) => `${plural(n, 'aviso más', 'avisos más')}`,
  sound: 'Sonido con un alto o un accidente',
  soundOn: 'Sí',
  soundOff: 'No',
  soundHelp: 'El aviso en pantalla y la vibración siguen activos.',
};

export const ready: Texts['ready'] = {
  title: 'Sin señal',
  gags: (kept, all, when) =>
    `${kept} de ${plural(all, 'acción está', 'acciones están')} en este dispositivo, leído ${when}.`,
  none: 'Todavía no hay nada guardado para un día sin señal.',
  take: 'Llevarse todo para el día',
  taking: (done, all) => `Leyendo ${done} de ${all} …`,
  done: 'Las acciones, las personas y los altos están en este dispositivo. Los dosieres se guardan uno a uno, en Dosieres.',
  cutShort: 'Se perdió la conexión. Lo leído hasta ahora queda guardado; llévese el resto cuando haya señal.',
};

export const draft: Texts['draft'] = {
  kept: (when) => `Sin guardar aún: lo escribió ${when}. Queda en este dispositivo.`,
  discard: 'Empezar de nuevo',
};
