// What the core says of water work, in Spanish. What it shares with other techniques is said there.

export const waterWork: Record<string, string> = {
  'Water work': 'Trabajo en agua',
  "Going into water and staying under on one breath. Covers the entry until the body stops, breath, cold, current and a diver's reach; leaves out waves, entrapment, breathing gear and water quality.":
    'Entrar en el agua y quedarse debajo con una sola respiración. Incluye la entrada hasta que el cuerpo se detiene, la respiración, el frío, la corriente y el alcance de un buzo; no incluye olas, atrapamientos, equipos de respiración ni la calidad del agua.',
  'Height above the water': 'Altura sobre el agua',
  'From the lowest point of the body at the start to the water; 0 for going in off a ladder.':
    'Del punto más bajo del cuerpo al empezar hasta el agua; 0 si se entra por una escalera.',
  'Attitude at the water': 'Postura al entrar',
  'How the body meets the water: it decides how hard and how deep.':
    'Cómo llega el cuerpo al agua: decide la dureza y la profundidad.',
  'Feet first, arms in': 'De pie, brazos pegados',
  'Head first, arms ahead': 'De cabeza, brazos por delante',
  'Curled up or seated': 'Encogido o sentado',
  'Flat on the back': 'Plano, de espaldas',
  'Flat on the front': 'Plano, boca abajo',
  'Drag area in air': 'Área de arrastre en el aire',
  'Drag coefficient times frontal area on the way down through the air.':
    'Coeficiente de arrastre por área frontal durante la caída por el aire.',
  "Water drag over the table's": 'Arrastre en agua sobre la tabla',
  "1 is a bare body as the model's table has it; loose costume, skirts and packs brake more. A filmed test entry settles it.":
    '1 es un cuerpo sin vestuario según la tabla del modelo; la ropa suelta, las faldas y las mochilas frenan más. Una entrada de prueba filmada lo determina.',
  'Float of body and costume': 'Flotación de cuerpo y vestuario',
  'Upward pull under water in full costume, read on a hanging scale; negative sinks.':
    'Tirón hacia arriba bajo el agua con todo el vestuario, leído en un dinamómetro; negativo se hunde.',
  Water: 'Agua',
  'Salt water is a little denser.': 'El agua salada es un poco más densa.',
  'Fresh water': 'Agua dulce',
  'Salt water': 'Agua salada',
  'Water depth': 'Profundidad del agua',
  'Least depth within reach of the entry, sounded on the day at the lowest level.':
    'La menor profundidad al alcance de la entrada, sondeada ese día con el nivel más bajo.',
  'Deepest planned': 'Profundidad máxima prevista',
  'Deepest that the performer is meant to go or be held, measured to the head.':
    'Lo más hondo que el especialista debe ir o quedar, medido hasta la cabeza.',
  "Performer's training": 'Formación del especialista',
  "Whether the performer holds a diver's certificate.": 'Si el especialista tiene título de buceo.',
  'Certified diver': 'Buceador titulado',
  'Not a diver': 'No bucea',
  'Planned time under water': 'Tiempo previsto bajo el agua',
  'Longest time on one breath in the action as planned.':
    'El mayor tiempo con una sola respiración en la acción prevista.',
  'Rehearsed breath hold': 'Apnea ensayada',
  'Longest breath hold doing the same action in costume, counted at rehearsal and not at rest.':
    'La apnea más larga con la misma acción y vestuario, contada en el ensayo y no en reposo.',
  'Water at the rehearsal': 'Agua en el ensayo',
  'Temperature of the water in which the breath hold was rehearsed.':
    'Temperatura del agua en que se ensayó la apnea.',
  'Water temperature': 'Temperatura del agua',
  'At the depth of the action, measured on the day.': 'A la profundidad de la acción, medida ese día.',
  'Longest time in the water': 'Mayor tiempo en el agua',
  'Longest stretch in the water without getting out and warm, resets included.':
    'El tramo más largo en el agua sin salir a entrar en calor, repeticiones incluidas.',
  'Suit thickness': 'Grosor del traje',
  'Foam rubber under the costume, at the thinnest part of the trunk; 0 for none.':
    'Neopreno bajo el vestuario, en la parte más fina del tronco; 0 si no lleva.',
  'Heat the body makes': 'Calor que produce el cuerpo',
  'About 200 W standing and swimming a little, shivering included; 100 W held still.':
    'Unos 200 W de pie y nadando un poco, con el temblor; 100 W inmóvil.',
  'Air temperature': 'Temperatura del aire',
  'Where the performer comes out, in the shade.': 'Donde sale el especialista, a la sombra.',
  'Wind where they come out': 'Viento donde salen',
  'Steady wind on wet skin between the water and the shelter.':
    'Viento constante sobre la piel mojada entre el agua y el refugio.',
  'Performers in the water': 'Intérpretes en el agua',
  'All who are in the water at one time, background included.':
    'Todos los que están en el agua a la vez, figuración incluida.',
  'Safety divers': 'Buzos de seguridad',
  'Divers in the water with spare air who watch one performer each and do nothing else.':
    'Buzos en el agua con aire de reserva que vigilan cada uno a un intérprete y no hacen otra cosa.',
  "Diver's distance": 'Distancia del buzo',
  'From the performer to the diver with the spare air, at the worst moment of the shot.':
    'Del intérprete al buzo con el aire de reserva, en el peor momento del plano.',
  "Diver's reaction": 'Reacción del buzo',
  "From the performer's signal to the diver setting off, timed at a drill.":
    'Desde la señal del intérprete hasta que el buzo arranca, cronometrado en un simulacro.',
  "Diver's speed": 'Velocidad del buzo',
  'Under water in full gear over the way there, timed at a drill.':
    'Bajo el agua con todo el equipo hasta allí, cronometrada en un simulacro.',
  Current: 'Corriente',
  'Strongest at the surface where they swim, wave machines and jets included; 0 in still water.':
    'La más fuerte en la superficie donde nadan, con máquinas de olas y chorros; 0 en agua quieta.',
  "Performer's swim speed": 'Velocidad de nado',
  'In costume and shoes, held for a minute at rehearsal.':
    'Con vestuario y calzado, mantenida un minuto en el ensayo.',
  'Entries on the day': 'Entradas en el día',
  'Falls or jumps into the water for this performer on the day, rehearsals included.':
    'Caídas o saltos al agua de este especialista en el día, ensayos incluidos.',
  'Rescuers at the edge': 'Socorristas en la orilla',
  'Trained rescuers dry at the edge or in a boat, with a line or a board in hand.':
    'Socorristas formados, en seco en la orilla o en una barca, con un cabo o una tabla en la mano.',
  'Clear water round the entry': 'Agua despejada en la entrada',
  'From the planned entry to the nearest wall, rock, boat or swimmer.':
    'De la entrada prevista al muro, la roca, la barca o el nadador más próximos.',
  'Speed at the water': 'Velocidad al llegar al agua',
  'Speed when the lowest point meets the water, with air drag.':
    'Velocidad cuando el punto más bajo llega al agua, con resistencia del aire.',
  'Depth reached': 'Profundidad alcanzada',
  'Depth of the lowest point when the body stands still, with nobody braking by swimming; none for a body that sinks on.':
    'Profundidad del punto más bajo cuando el cuerpo queda quieto, sin frenar nadando; ninguna si el cuerpo sigue hundiéndose.',
  'Water left under the body': 'Agua que queda bajo el cuerpo',
  'Water depth less the depth reached; negative is a strike.':
    'Profundidad del agua menos la alcanzada; negativo es un golpe contra el fondo.',
  'Mean slowing in the water': 'Frenada media en el agua',
  'Mean over the depth reached: v² / (2 s), without gravity.':
    'Media en la profundidad alcanzada: v² / (2 s), sin la gravedad.',
  'Peak in the water': 'Pico en el agua',
  "Most that the water's push makes the body feel, the slam at the surface included.":
    'Lo más que el empuje del agua hace sentir al cuerpo, con el golpe en la superficie.',
  "How far the entry shakes the body along the attitude's axis (dynamic response model).":
    'Cuánto sacude la entrada al cuerpo en el eje de la postura (modelo de respuesta dinámica).',
  'Breath hold in this water': 'Apnea en esta agua',
  'The rehearsed breath hold, shortened for colder water than at the rehearsal.':
    'La apnea ensayada, acortada si el agua está más fría que en el ensayo.',
  'Share of the breath hold': 'Parte de la apnea',
  'Planned time under water over the breath hold in this water.':
    'Tiempo previsto bajo el agua sobre la apnea en esta agua.',
  "Time until the diver's air": 'Tiempo hasta el aire del buzo',
  'Reaction and way of the safety diver from a signal to the spare air at the mouth.':
    'Reacción y camino del buzo de seguridad desde la señal hasta el aire de reserva en la boca.',
  'Breath left when air comes': 'Aire que queda al llegar ayuda',
  "Breath hold in this water less the planned time and the time until the diver's air.":
    'Apnea en esta agua menos el tiempo previsto y el tiempo hasta el aire del buzo.',
  'Drift in that time': 'Deriva en ese tiempo',
  'How far the current carries somebody who cannot swim until the diver is there.':
    'Cuánto lleva la corriente a quien no puede nadar hasta que llega el buzo.',
  'Time before exhaustion': 'Tiempo hasta el agotamiento',
  "Least time to exhaustion in water this cold by the rescue table, longer by the suit's resistance.":
    'El menor tiempo hasta el agotamiento en agua así de fría según la tabla de rescate, alargado por el aislamiento del traje.',
  'Share of that time': 'Parte de ese tiempo',
  'Longest time in the water over the time before exhaustion.':
    'Mayor tiempo en el agua sobre el tiempo hasta el agotamiento.',
  'Body after the water': 'Cuerpo tras el agua',
  'Mean temperature of the body after the longest time in the water, from 36.5 °C.':
    'Temperatura media del cuerpo tras el mayor tiempo en el agua, partiendo de 36,5 °C.',
  'Time to lose one degree': 'Tiempo en perder un grado',
  "Time until the body's mean temperature has fallen by 1 °C; a day at most.":
    'Tiempo hasta que la temperatura media del cuerpo baja 1 °C; un día como máximo.',
  'Wind chill after the water': 'Sensación térmica al salir',
  'What wind makes of the air for bare skin; wet skin and cloth lose more.':
    'Lo que el viento hace del aire para la piel desnuda; la piel y la ropa mojadas pierden más.',
  'Current over swim speed': 'Corriente sobre velocidad de nado',
  'At 1 the performer swims on the spot.': 'Con 1 el intérprete nada sin avanzar.',
  'Safety divers a performer': 'Buzos por intérprete',
  'Safety divers over performers in the water.': 'Buzos de seguridad entre intérpretes en el agua.',
  'The entry gives a dynamic response of {response}; a lower height, or feet first and straight, brings it down.':
    'La entrada da una respuesta dinámica de {response}; menos altura, o de pie y recto, la reduce.',
  'Water under the body': 'Agua bajo el cuerpo',
  'The body goes {depth} deep and {left} of water are left under it; {wanted} is wanted, so lower the entry, deepen the water or land flatter.':
    'El cuerpo baja {depth} y quedan {left} de agua debajo; se desean {wanted}: baje la entrada, dé más fondo o entre más plano.',
  'The body meets the water at {speed}; beyond {limit} only high divers enter safely, and a limb out of line is torn.':
    'El cuerpo llega al agua a {speed}; a más de {limit} solo los saltadores de gran altura entran a salvo, y un miembro fuera de línea se desgarra.',
  '{clear} of clear water lie round the entry; {habit} is the habit, and a swimmer checks it before each entry.':
    'Hay {clear} de agua despejada alrededor de la entrada; lo habitual son {habit}, y un nadador lo comprueba antes de cada entrada.',
  '{n} planned for this performer, rehearsals included; {habit} is the habit.':
    '{n} previstas para este especialista, ensayos incluidos; lo habitual son {habit}.',
  'Time under on one breath': 'Tiempo con una sola respiración',
  'The action takes {share} of the {available} that a breath lasts in this water; {limit} is the most, so cut the action or give air on the way.':
    'La acción ocupa {share} de los {available} que dura la respiración en esta agua; {limit} es lo máximo: acorte la acción o dé aire a mitad.',
  'Breath left when spare air comes': 'Aire que queda al llegar la reserva',
  'Spare air takes {air} to arrive and then {left} of breath are left; {wanted} is wanted, so bring the diver nearer or shorten the action.':
    'El aire de reserva tarda {air} en llegar y entonces quedan {left} de apnea; se desean {wanted}: acerque al buzo o acorte la acción.',
  'Depth for one who is no diver': 'Profundidad para quien no bucea',
  '{depth} deep for one who is no diver; {limit} with an instructor is the most, so train or stay shallower.':
    '{depth} de profundidad para quien no bucea; lo máximo son {limit} con un instructor: fórmelo o quédese a menos.',
  'Planned depth in this water': 'Profundidad prevista en esta agua',
  '{depth} is planned at the deepest; below {limit} a chest filled at the surface no longer floats a body up.':
    'Se prevén {depth} como máximo; por debajo de {limit} un pecho llenado en la superficie ya no hace flotar el cuerpo.',
  'Time in the water by the cold': 'Tiempo en el agua según el frío',
  'The longest stretch is {share} of the {useful} before exhaustion in water this cold; {limit} is the most, so get out and warm sooner or wear a thicker suit.':
    'El tramo más largo es {share} de los {useful} hasta el agotamiento en agua así de fría; {limit} es lo máximo: salga antes a entrar en calor o use un traje más grueso.',
  "The body's mean falls to {body} in the longest stretch, one degree in {time}; under {limit} hands fail and judgement goes, so shorten it, add suit or warm the water.":
    'La media del cuerpo baja a {body} en el tramo más largo, un grado en {time}; por debajo de {limit} fallan las manos y el juicio: acórtelo, añada traje o caliente el agua.',
  'Water cold enough to gasp': 'Agua que corta la respiración',
  'The water is at {water}; under {limit} the first minute brings gasping that nobody can hold back, so let the performer settle in it before any breath hold.':
    'El agua está a {water}; por debajo de {limit} el primer minuto trae jadeos que nadie puede contener: deje que el intérprete se habitúe antes de cualquier apnea.',
  'Out of the water it feels like {chill} on dry skin and colder wet; under {limit} have the warm shelter within a few steps.':
    'Fuera del agua se siente como {chill} en la piel seca y más frío mojado; por debajo de {limit} tenga el refugio caliente a pocos pasos.',
  'Safety divers for each performer in the water: {n}; the habit is {habit} each.':
    'Buzos de seguridad por cada intérprete en el agua: {n}; lo habitual es {habit} para cada uno.',
  'Rescuers dry at the edge or in a boat: {n}; the habit is at least {habit}.':
    'Socorristas en seco en la orilla o en una barca: {n}; lo habitual es al menos {habit}.',
  'Current against the swimmer': 'Corriente frente al nadador',
  "The current runs at {share} of the performer's speed in costume; over {limit} they tire before they get back, so add a line, a boat downstream or slacker water.":
    'La corriente va a {share} de la velocidad del intérprete con vestuario; por encima de {limit} se cansa antes de volver: añada un cabo, una barca aguas abajo o busque agua más mansa.',
  'The plunge': 'La zambullida',
  'Time from the water': 'Tiempo desde el agua',
  Depth: 'Profundidad',
  'Cooling in the water': 'Enfriamiento en el agua',
  'Time in the water': 'Tiempo en el agua',
  Body: 'Cuerpo',
  'Entry water': 'Agua de la entrada',
  'Nobody and nothing floats here while somebody is above it or under it.':
    'Aquí no flota nadie ni nada mientras haya alguien encima o debajo.',
  'Downstream catch': 'Recogida aguas abajo',
  'Whoever cannot swim comes through here: a boat or a line waits at its lower end, and no strainers or propellers turn in it.':
    'Por aquí pasa quien no pueda nadar: al final espera una barca o un cabo, y no hay rejillas ni hélices en marcha.',
  'The depth of {depth} and the peak of {peak} are those of a body that holds its shape; one that opens stops sooner and is hit harder, so film a test entry from half the height.':
    'La profundidad de {depth} y el pico de {peak} son los de un cuerpo que mantiene la postura; uno que se abre se detiene antes y recibe más golpe: filme una entrada de prueba desde la mitad de la altura.',
  'Colder water cuts the rehearsed breath hold of {rehearsed} to {available}; rehearse again in this water before relying on either.':
    'El agua más fría reduce la apnea ensayada de {rehearsed} a {available}; ensaye de nuevo en esta agua antes de fiarse de ninguna.',
  'For {time} on one breath nobody breathes hard beforehand: it hides the urge to breathe and people black out without warning.':
    'Para {time} con una sola respiración nadie respira fuerte antes: oculta las ganas de respirar y la gente se desmaya sin aviso.',
  'Costume and body sink with {force}: fit a release that one hand finds blind, and a float for the wait.':
    'Vestuario y cuerpo se hunden con {force}: ponga un desenganche que una mano encuentre a ciegas, y un flotador para la espera.',
  'Read the local guideline for work in and under water beside this, such as the Ontario film guideline 30, underwater.':
    'Lea además la guía local para trabajo en el agua y bajo ella, como la guía de cine 30 de Ontario, bajo el agua.',
};
