// What is said of signing in, setting up, accepting an invitation, in Spanish.

import type { Texts } from '../en/index.ts';

export const signIn: Texts['signIn'] = {
  title: 'Entrar',
  lead: 'Planificar la acción. Que se firme. Guardar el registro.',
  email: 'Correo electrónico',
  password: 'Contraseña',
  go: 'Entrar',
  demoTitle: 'Accesos de demostración',
  demoLead: 'Este servidor contiene una producción inventada. Toque a una persona para entrar como ella.',
  ended: 'Su sesión ha terminado. Entre de nuevo; lo que no se ha enviado está guardado.',
  needsSetup:
    'Este servidor no tiene ninguna producción. Abra el enlace de un solo uso que mostró al arrancar.',
};

export const setUp: Texts['setUp'] = {
  title: 'Preparar este servidor',
  lead: 'Este enlace sirve una sola vez. Usted pasa a ser coordinador de especialistas de la primera producción.',
  name: 'Su nombre',
  production: 'Nombre de la producción',
  timeZone: 'Zona horaria',
  passwordHelp: 'Al menos 12 caracteres.',
  go: 'Preparar',
  noToken: 'El enlace está incompleto: falta la parte que sigue a #. Copie el enlace entero.',
};

export const invitation: Texts['invitation'] = {
  title: 'Aceptar la invitación',
  lead: 'Elija el nombre que verán los demás y una contraseña.',
  go: 'Aceptar',
  noToken:
    'El enlace de la invitación está incompleto: falta la parte que sigue a #. Copie el enlace entero.',
};
