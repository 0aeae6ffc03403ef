// What the core says of a full burn, in Spanish, keyed by its own English words.

export const fullBurn: Record<string, string> = {
  'Body burn': 'Fuego sobre el cuerpo',
  'A performer alight over gel-wet layers. Covers heat to the skin, time to a second-degree burn, stored heat, breath and safeties; leaves out smoke, steam within the layers, gaps in the gel and the fuel itself.':
    'Un especialista en llamas sobre capas con gel. Incluye el calor que llega a la piel, el tiempo hasta una quemadura de segundo grado, el calor acumulado, la respiración y los auxiliares; no incluye el humo, el vapor entre capas, los huecos en el gel ni el combustible.',
  Coverage: 'Cobertura',
  'How much of the body burns. Full engulfment has its own longest time.':
    'Cuánto cuerpo arde. El fuego completo tiene su propio tiempo máximo.',
  'Full engulfment': 'Fuego completo',
  Partial: 'Fuego parcial',
  'Planned burn': 'Fuego previsto',
  'From ignition to the call to put the performer out.':
    'Del encendido al aviso para apagar al especialista.',
  'Called out at the latest': 'Aviso, como muy tarde',
  'The count at which the caller ends the burn whatever happens.':
    'La cuenta en la que quien avisa acaba el fuego pase lo que pase.',
  'Time to put out': 'Tiempo de apagado',
  'From the call to the last flame, from rehearsal with this crew.':
    'Del aviso a la última llama, según los ensayos con este equipo.',
  'Stripped and soaked within': 'Desvestido y empapado en',
  'From the last flame until the layers are off and water is on the skin, from rehearsal. Until then the heat stored in them goes on working inward.':
    'De la última llama hasta que se quitan las capas y hay agua en la piel, según los ensayos. Hasta entonces el calor acumulado sigue hacia dentro.',
  'Flame heat flux': 'Flujo de calor de la llama',
  'Heat a cold surface takes up in the flame. 84 kW/m² is what engulfment tests of clothing use.':
    'Calor que absorbe una superficie fría en la llama. 84 kW/m² es lo que usan los ensayos de ropa.',
  'Flame temperature': 'Temperatura de la llama',
  'The outer cloth takes up less as it nears this; a hotter flame keeps heating it.':
    'La tela exterior absorbe menos al acercarse a ella; una llama más caliente la sigue calentando.',
  'Outer cloth': 'Tela exterior',
  'Fibre of the costume that carries the fuel. No synthetic that melts.':
    'Fibra del vestuario que lleva el combustible. Ninguna sintética que funda.',
  Wool: 'Lana',
  Cotton: 'Algodón',
  Aramid: 'Aramida',
  'Outer cloth, mass per area': 'Tela exterior, masa por área',
  'Dry, of all outer layers together.': 'En seco, todas las capas exteriores juntas.',
  'Outer cloth thickness': 'Grosor de la tela exterior',
  'Worn, of all outer layers together, at the thinnest place that burns.':
    'Puesta, todas las capas exteriores juntas, en el punto más fino que arde.',
  'Gel and water, mass per area': 'Gel y agua, masa por área',
  'Gel held in the wet layer where it is thinnest: weigh a soaked patch before and after.':
    'Gel que retiene la capa mojada donde es más fina: pese una muestra antes y después de empaparla.',
  'Water in the gel': 'Agua en el gel',
  "Share of the gel's mass that is water. Gel dries: measure at the age it will have on the take.":
    'Parte de la masa del gel que es agua. El gel se seca: mídalo con el tiempo que tendrá en la toma.',
  'Under-layer': 'Capa interior',
  'Fibre of the layer between the wet layer and the skin.': 'Fibra de la capa entre la mojada y la piel.',
  'Under-layer, mass per area': 'Capa interior, masa por área',
  'Dry.': 'En seco.',
  'Under-layer thickness': 'Grosor de la capa interior',
  'Worn, where it is pressed thinnest.': 'Puesta, donde más se comprime.',
  'Water in the under-layer': 'Agua en la capa interior',
  'Water or gel held in the under-layer itself; 0 when it is put on dry.':
    'Agua o gel que retiene la capa interior; 0 si se pone seca.',
  'Temperature of the layers': 'Temperatura de las capas',
  'When the flames start. Cold gel gains time and costs the performer warmth.':
    'Al empezar las llamas. El gel frío gana tiempo y le quita calor al especialista.',
  'Rehearsed breath hold': 'Apnea ensayada',
  'Longest the performer has held breath doing this action in mask and wardrobe.':
    'Lo máximo que el especialista ha aguantado sin respirar haciendo esta acción con máscara y vestuario.',
  'Persons alight': 'Personas en llamas',
  'Performers who burn at the same time.': 'Especialistas que arden a la vez.',
  Safeties: 'Auxiliares de fuego',
  'People with extinguishers and wet cloth for this burn alone, the count caller included.':
    'Personas con extintores y telas mojadas solo para este fuego, incluida quien lleva la cuenta.',
  'Burns on the day': 'Fuegos ese día',
  'Burns of this performer on the day, rehearsals and partial burns included.':
    'Fuegos de este especialista ese día, con ensayos y fuegos parciales.',
  'Wind limit': 'Límite de viento',
  'The highest wind, gusts included, in which the burn will be lit.':
    'El viento máximo, rachas incluidas, con el que se encenderá el fuego.',
  'Clear radius': 'Radio libre',
  'Ground around the action that only safeties enter.':
    'Terreno alrededor de la acción en el que solo entran los auxiliares.',
  'Travel while burning': 'Recorrido en llamas',
  'How far the performer moves while alight.': 'Cuánto se mueve el especialista en llamas.',
  'Time to second degree': 'Tiempo hasta segundo grado',
  'From ignition, with flames kept up, to a second-degree burn under the layers as entered. 60 s means 60 s or more.':
    'Del encendido, con llamas continuas, a una quemadura de segundo grado bajo las capas indicadas. 60 s significa 60 s o más.',
  'Longest planned burn': 'Fuego previsto máximo',
  'Half of the time to second degree.': 'La mitad del tiempo hasta segundo grado.',
  'Margin in time': 'Margen de tiempo',
  'Time to second degree over the planned burn.': 'Tiempo hasta segundo grado entre el fuego previsto.',
  'Skin damage, second degree': 'Daño en la piel, segundo grado',
  'Damage integral at the base of the epidermis when called out at the latest, put out, and stripped; 1 is a second-degree burn. 1000 means 1000 or more.':
    'Integral de daño en la base de la epidermis con el aviso más tardío, apagado y desvestido; 1 es una quemadura de segundo grado. 1000 significa 1000 o más.',
  'Skin damage, third degree': 'Daño en la piel, tercer grado',
  'The same at the base of the dermis; 1 is a third-degree burn. 1000 means 1000 or more.':
    'Lo mismo en la base de la dermis; 1 es una quemadura de tercer grado. 1000 significa 1000 o más.',
  'Time to pain': 'Tiempo hasta el dolor',
  'From ignition to 44 °C at the base of the epidermis. 60 s means 60 s or more.':
    'Del encendido a 44 °C en la base de la epidermis. 60 s significa 60 s o más.',
  'Peak under the epidermis': 'Máximo bajo la epidermis',
  'Highest at the base of the epidermis, after-heat included.':
    'Máximo en la base de la epidermis, con el calor posterior.',
  'Damage after the flames': 'Daño tras las llamas',
  'Part of the second-degree damage that comes after the last flame, from heat stored in the layers.':
    'Parte del daño de segundo grado que llega tras la última llama, por el calor acumulado en las capas.',
  'Time in flames': 'Tiempo en llamas',
  'Called out at the latest, and put out.': 'Con el aviso más tardío, y apagado.',
  'Water left': 'Agua restante',
  'In all layers when the last flame is out.': 'En todas las capas cuando se apaga la última llama.',
  'Time until dry': 'Tiempo hasta secarse',
  'From ignition, with flames kept up, until only a tenth of the water is left. 60 s means 60 s or more, or a burn first.':
    'Del encendido, con llamas continuas, hasta que solo queda un décimo del agua. 60 s significa 60 s o más, o antes una quemadura.',
  'Peak flux into the skin': 'Flujo máximo hacia la piel',
  'Highest flux from the layers into the skin when called out at the latest.':
    'Mayor flujo de las capas a la piel con el aviso más tardío.',
  'Bare skin, second degree': 'Piel desnuda, segundo grado',
  'Where gel and cloth are missing: time to a second-degree burn of skin that takes up the whole flux.':
    'Donde faltan gel y tela: tiempo hasta una quemadura de segundo grado con todo el flujo en la piel.',
  'Share of breath used': 'Parte de la apnea usada',
  'Time in flames over the rehearsed breath hold.': 'Tiempo en llamas entre la apnea ensayada.',
  'Safeties per person': 'Auxiliares por persona',
  'Safeties for each performer alight.': 'Auxiliares por cada especialista en llamas.',
  'the horizon or more': 'el horizonte o más',
  '{#time} or more': '{time} o más',
  'Time to second degree over plan': 'Tiempo hasta segundo grado frente al previsto',
  'A second-degree burn comes at {time} ({earliest} at the earliest within the tolerances), {times} times the planned burn; more gel or a shorter burn raises it.':
    'Una quemadura de segundo grado llega a los {time} ({earliest} como muy pronto con las tolerancias), {times} veces el fuego previsto; más gel o un fuego más corto lo suben.',
  'Called out at the latest, {flames} in flames and stripped as entered, the damage comes to {damage}, of which {after} after the last flame.':
    'Con el aviso más tardío, {flames} en llamas y desvestido como se indica, el daño llega a {damage}, de ello {after} tras la última llama.',
  'Second-degree burn': 'Quemadura de segundo grado',
  'second degree at 1': 'segundo grado en 1',
  'First-degree burn': 'Quemadura de primer grado',
  'first degree at 0.53': 'primer grado en 0,53',
  'Longest full engulfment': 'Fuego completo máximo',
  'Called out at {time} at the latest; full engulfment is never planned past {limit}.':
    'Aviso a los {time} como muy tarde; el fuego completo nunca se planifica por encima de {limit}.',
  'Call-out after the plan': 'Aviso después de lo previsto',
  'Planned for {planned} and called out at {latest} at the latest.':
    'Previsto para {planned} y con aviso a los {latest} como muy tarde.',
  Breath: 'Respiración',
  'The time in flames takes {share} % of the rehearsed breath hold; one breath in flames burns the airway.':
    'El tiempo en llamas usa el {share} % de la apnea ensayada; respirar una vez en llamas quema las vías aéreas.',
  'Safeties per person alight': 'Auxiliares por persona en llamas',
  '{n} for each performer alight; the limit is {limit}, the count caller included.':
    '{n} por cada especialista en llamas; el límite es {limit}, con quien lleva la cuenta.',
  Wind: 'Viento',
  'The burn may be lit in wind up to {wind}; the limit is {limit}, since wind drives flame under a mask.':
    'El fuego puede encenderse con viento de hasta {wind}; el límite es {limit}, porque el viento mete la llama bajo la máscara.',
  '{n} planned for this performer, rehearsals included; the limit is {limit} a day.':
    '{n} previstos para este especialista, ensayos incluidos; el límite es {limit} al día.',
  'not within it': 'no dentro de él',
  'Skin temperature': 'Temperatura de la piel',
  'Time from ignition': 'Tiempo desde el encendido',
  'Skin surface': 'Superficie de la piel',
  'Base of the epidermis': 'Base de la epidermis',
  'Outer face of the cloth': 'Cara exterior de la tela',
  'Outer face': 'Cara exterior',
  'Damage and water left': 'Daño y agua restante',
  'Second-degree damage': 'Daño de segundo grado',
  'Burn ground': 'Zona de fuego',
  'Only the performer and the safeties; nothing that burns or hides the performer.':
    'Solo el especialista y los auxiliares; nada que arda ni que oculte al especialista.',
  'Heat to the skin is not computed before these are entered: {list}.':
    'El calor en la piel no se calcula hasta indicar: {list}.',
  'Where gel or cloth is missing, a second-degree burn comes after {time}: the figures hold only where every layer is as thick as entered.':
    'Donde falta gel o tela, la quemadura de segundo grado llega a los {time}: las cifras solo valen donde cada capa tiene el grosor indicado.',
  'The outer cloth is counted as whole to the end. If it burns away at once, a second-degree burn comes at {bare} instead of {time}.':
    'La tela exterior se cuenta entera hasta el final. Si se consume de golpe, la quemadura de segundo grado llega a los {bare} en vez de a los {time}.',
  'No water is entered in any layer: all the time there is comes from cloth.':
    'No se indica agua en ninguna capa: todo el tiempo que hay viene de la tela.',
  'After {time} in flames only {left} of {all} water is left; once it is gone the skin heats fast.':
    'Tras {time} en llamas solo queda {left} de {all} de agua; cuando se acaba, la piel se calienta deprisa.',
  '{steam} of steam is taken to leave outward; where a tight layer keeps it in, it condenses on the skin and burns sooner than computed.':
    'Se toma que {steam} de vapor sale hacia fuera; donde una capa ceñida lo retiene, se condensa en la piel y quema antes de lo calculado.',
  '{share} % of the damage comes after the last flame, from heat in layers that stay on for {time}: strip and soak sooner.':
    'El {share} % del daño llega tras la última llama, por el calor de las capas que siguen puestas {time}: desvista y empape antes.',
};
