// Help, task by task, in Spanish.

import type { Texts } from '../en/index.ts';

export const help: Texts['help'] = {
  title: 'Ayuda',
  about: 'Breve, tarea por tarea; funciona sin señal',
  lead: 'Elija lo que quiere hacer.',
  tasks: {
    start: {
      name: 'Empezar una producción',
      steps: [
        'Traiga a las personas: Personas, Importar una lista. O añádalas una a una.',
        'Dé cargos e invite: Ajustes, Quién tiene acceso. Cada persona firma solo aquello de lo que responde su cargo.',
        'Planifique la primera acción: Acciones, Acción nueva. Elija cómo se hace; la aplicación pide las cifras que necesita.',
        'Quien debe firmar lo encuentra en Hoy. La acción dice quién falta.',
      ],
    },
    sign: {
      name: 'Firmar un plan',
      steps: [
        'Hoy muestra lo que le toca firmar. Tóquelo.',
        'Lea aquello de lo que responde. Si ya firmó antes, primero se ve lo que ha cambiado.',
        'Conforme, conforme con condiciones, o no conforme con el motivo.',
        'Su firma cubre esas partes tal como están. Si una cambia, la firma caduca; si cambia otra, no.',
        'Una firma nunca se retira. Si piensa otra cosa, firme no conforme o dé un alto.',
      ],
    },
    hold: {
      name: 'Parar: dar un alto',
      steps: [
        'Toque Alto. Después toque la acción, o todo. Nada más. Dígalo también en voz alta.',
        'No hace falta motivo, ni cuenta, ni señal. El código de la hoja del día sirve a cualquiera.',
        'Mientras haya un alto abierto, nada de lo que cubre queda autorizado.',
        'Se levanta cuando el coordinador y el responsable del peligro están de acuerdo y escriben la causa.',
      ],
    },
    offline: {
      name: 'Trabajar sin señal',
      steps: [
        'Lo que ha abierto, y lo que viene después, queda en este teléfono.',
        'Escriba como siempre. Cada anotación espera en este teléfono y se envía sola cuando hay señal.',
        'Ajustes, Anotaciones de este teléfono, muestra cada una: en espera, enviada, o rechazada con el motivo.',
        'Lo que nunca ha salido de este teléfono puede retirarse ahí: ni se empezó a enviar ni se mostró su código. Una vez enviado, está en el registro.',
      ],
    },
    person: {
      name: 'Añadir una persona o un certificado',
      steps: [
        'Personas, Persona nueva: un código, un nombre, su oficio. Lo demás puede esperar.',
        'En una persona, Añadir un certificado: la clase y las fechas que lleva impresas.',
        'Escriba quién vio el justificante y cómo. Sin eso cuenta como no comprobado.',
        'Las medidas se escriben con su unidad: 178 cm, 5 ft 10 in.',
      ],
    },
    cast: {
      name: 'Cubrir un puesto',
      steps: [
        'Abra la acción, después Editar el plan, después Reparto.',
        'Cada puesto dice lo que pide: una habilidad, un certificado, una medida, una edad, descanso.',
        'Quienes podrían hacerlo se juzgan mientras usted cambia lo que pide, cada cual con todos los motivos.',
        'Cubrir un puesto cambia el reparto del plan: quienes responden de él firman de nuevo.',
      ],
    },
    plan: {
      name: 'Cambiar un plan',
      steps: [
        'Un plan nunca se cambia en su sitio. Al guardar se hace la revisión siguiente.',
        'Mientras edita, la aplicación muestra qué firmas caducarían con el cambio.',
        'Si alguien guardó antes, usted elige parte por parte. No se pierde nada suyo.',
      ],
    },
    day: {
      name: 'Llevar el día',
      steps: [
        'Abra la acción, después Día. Anote las mediciones según se leen; cada una vale el tiempo que dice el plan.',
        'Anote cada ensayo en su escalón.',
        'Imprima el dosier, o guárdelo en este teléfono: Dosieres.',
      ],
    },
    trail: {
      name: 'Demostrar lo que ocurrió',
      steps: [
        'El registro muestra cada asiento. Ninguno se cambia ni se quita.',
        'Compruebe la prueba de cualquier asiento en este teléfono, sin fiarse del servidor.',
        'Exporte el registro y guárdelo en otro lugar: se puede comprobar sin ningún servidor.',
        'Pida a alguien de fuera que sea su testigo: lo que contrafirma prueba que hasta ahí no se cambió ni se quitó nada, ni siquiera por quien lleva el servidor.',
      ],
    },
  },
};

export const guide: Texts['guide'] = {
  start: 'Cuatro pasos hasta la primera firma',
  people: 'Traer a las personas',
  hats: 'Dar cargos e invitar',
  gag: 'Planificar la primera acción',
  signed: 'Que la firmen',
  done: 'hecho',
  signing: 'Qué significa su firma',
  signingLead:
    'Usted responde de las partes que nombra la página, tal como están en ese momento. La clave se crea en este teléfono. Si cambia una de esas partes, su firma caduca y se le pide de nuevo. Nunca se retira.',
  holdNext:
    'Sigue hasta que el coordinador y el responsable del peligro están de acuerdo y escriben la causa.',
  more: 'Leer más',
  close: 'Entendido',
};
