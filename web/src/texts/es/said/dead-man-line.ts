// What the core says of a dead-man line, in Spanish, keyed by its own English words.

export const deadManLine: Record<string, string> = {
  'Dead-man line': 'Tirón a cable fijo',
  'A runner comes to the end of a slack line. Covers the run up, the stop by line and absorber, what the body feels and the swing to the ground; leaves out neck whiplash and how the body turns.':
    'Alguien que corre llega al final de un cable flojo. Incluye la carrera, la parada con cable y absorbedor, lo que siente el cuerpo y la caída al suelo; no incluye el latigazo del cuello ni cómo gira el cuerpo.',
  'Running speed': 'Velocidad de carrera',
  'Even speed that the performer would reach in this costume and on this ground, timed.':
    'Velocidad constante que alcanzaría el especialista con este vestuario y en este suelo, cronometrada.',
  'Time to gather speed': 'Tiempo para coger velocidad',
  'From standing to 63 % of that speed, about 1 s; 0 when the run starts further back than the slack.':
    'De parado al 63 % de esa velocidad, cerca de 1 s; 0 si la carrera empieza más atrás que la holgura.',
  'Slack run': 'Carrera con cable flojo',
  'How far the performer runs from standing until the line is taut.':
    'Cuánto corre el especialista desde parado hasta que el cable se tensa.',
  'From the anchor to the harness point when taut, measured and witnessed.':
    'Del anclaje al punto del arnés, tenso, medido ante testigo.',
  'Share of critical damping while the line stretches, from a logged stop of a weight bag.':
    'Parte de la amortiguación crítica mientras el cable se alarga, según una parada registrada con saco.',
  'Give of the harness at 1 kN': 'Cesión del arnés con 1 kN',
  'How far harness, pads and body give under 1 kN; 0 counts on nothing but the line.':
    'Cuánto ceden arnés, protecciones y cuerpo con 1 kN; con 0 solo cuenta el cable.',
  Absorber: 'Absorbedor',
  'None: line only': 'Ninguno: solo cable',
  'Tearing absorber': 'Absorbedor de desgarro',
  'Whether the line ends in something that tears at a steady force.':
    'Si el cable acaba en algo que se desgarra con una fuerza constante.',
  "Absorber's force": 'Fuerza del absorbedor',
  'Force at which it tears, from its maker or a test; not used without one.':
    'Fuerza con la que se desgarra, según su fabricante o una prueba; no se usa si no hay.',
  "Absorber's length": 'Largo del absorbedor',
  'How much longer it gets until it is used up; not used without one.':
    'Cuánto se alarga hasta agotarse; no se usa si no hay.',
  'What the anchor is known to hold in the direction of the line.':
    'Lo que se sabe que aguanta el anclaje en la dirección del cable.',
  'Anchor height': 'Altura del anclaje',
  'Of the anchor above the floor that the performer runs on.':
    'Del anclaje sobre el suelo por el que corre el especialista.',
  'Of the harness point above the floor, running.': 'Del punto del arnés sobre el suelo, corriendo.',
  'Top of the pads above the floor, negative when lower. The harness point is taken to land 0.2 m above it.':
    'Parte alta de las colchonetas sobre el suelo, negativa si queda más baja. Se toma que el punto del arnés llega 0,2 m por encima.',
  'Pads ahead of the mark': 'Colchonetas tras la marca',
  'From the mark where the line comes taut to the far edge of the pads, the way of the run.':
    'De la marca donde se tensa el cable al borde lejano de las colchonetas, en el sentido de la carrera.',
  'Pads behind the mark': 'Colchonetas antes de la marca',
  'From that mark to the near edge of the pads.': 'De esa marca al borde cercano de las colchonetas.',
  'Stops on the day': 'Paradas ese día',
  'Hard stops of this performer on the day, rehearsals included.':
    'Paradas fuertes de este especialista ese día, ensayos incluidos.',
  'Clear run past the mark': 'Espacio libre tras la marca',
  'Free of anything hard from the mark on, the way of the run.':
    'Sin nada duro desde la marca, en el sentido de la carrera.',
  'Peak force': 'Fuerza máxima',
  'Highest tension of the line, which harness and anchor take too.':
    'Mayor tensión del cable, que también reciben arnés y anclaje.',
  "That force over the performer's mass.": 'Esa fuerza entre la masa del especialista.',
  'From the taut line to standing still, legs carrying.':
    'Del cable tenso a quedar quieto, con las piernas sosteniendo.',
  'From the taut line to standing still.': 'Del cable tenso a quedar quieto.',
  'Speed at the end of the line': 'Velocidad al final del cable',
  'What the slack lets the runner reach.': 'La que deja alcanzar la holgura.',
  'Run time': 'Tiempo de carrera',
  'From the first step to the taut line.': 'Del primer paso al cable tenso.',
  'Energy of the run': 'Energía de la carrera',
  'What line, absorber and body must take.': 'Lo que deben absorber cable, absorbedor y cuerpo.',
  'Fall with the same speed': 'Caída de igual velocidad',
  "Height of a free fall that ends at the runner's speed.":
    'Altura de una caída libre que acaba a la velocidad de la carrera.',
  'Stiffness of the line': 'Rigidez del cable',
  'Of line and harness together.': 'De cable y arnés juntos.',
  'How far the stop shakes the body along its direction (dynamic response model).':
    'Cuánto sacude la parada al cuerpo en su dirección (modelo de respuesta dinámica).',
  'Speed flung back': 'Velocidad de rebote',
  'With which the stretched line lets the body go again.':
    'Con la que el cable estirado vuelve a soltar el cuerpo.',
  'Absorber used': 'Absorbedor usado',
  'Length torn; nothing without an absorber.': 'Largo desgarrado; nada si no hay absorbedor.',
  'Anchor strength over the highest tension.': 'Resistencia del anclaje entre la mayor tensión.',
  'Furthest ahead': 'Lo más lejos que llega',
  'How far past the mark the harness point comes, legs carrying or swept.':
    'Cuánto pasa de la marca el punto del arnés, con las piernas sosteniendo o barridas.',
  'Landing ahead of the mark': 'Llegada tras la marca',
  'Where the body comes down when its legs are swept; negative behind the mark.':
    'Dónde cae el cuerpo si se le barren las piernas; negativa antes de la marca.',
  'Time to the ground': 'Tiempo hasta el suelo',
  'From the taut line, legs swept.': 'Desde el cable tenso, con las piernas barridas.',
  'Speed at which the body meets the pads, along and down together.':
    'Velocidad con que el cuerpo llega a las colchonetas, a lo largo y hacia abajo juntas.',
  'Pads around the landing': 'Colchonetas junto a la llegada',
  'From the landing to the nearer edge of the pads.':
    'De la llegada al borde más cercano de las colchonetas.',
  '{speed} stopped in {distance} peaks at {peak}; less slack, a softer line or an absorber brings it down.':
    '{speed} frenados en {distance} llegan a un pico de {peak}; menos holgura, un cable más blando o un absorbedor lo bajan.',
  '{speed} stopped in {distance} gives a dynamic response of {response}; less slack, a softer line or an absorber brings it down.':
    '{speed} frenados en {distance} dan una respuesta dinámica de {response}; menos holgura, un cable más blando o un absorbedor la bajan.',
  'Force, European absorber limit': 'Fuerza, límite europeo de absorbedor',
  '{force} where an energy absorber may let no more than {limit} through.':
    '{force} donde un absorbedor de energía no puede dejar pasar más de {limit}.',
  'Arrest distance': 'Distancia de detención',
  'The body stops in {distance}; fall arrest allows {limit}, which a run on level ground may pass when the way is clear.':
    'El cuerpo para en {distance}; la detención de caídas admite {limit}, que una carrera en llano puede pasar si el camino está libre.',
  'Run as a free fall': 'La carrera como caída libre',
  'The run has the speed of a fall of {fall}; arrest gear is made for {limit}.':
    'La carrera tiene la velocidad de una caída de {fall}; el equipo anticaídas se hace para {limit}.',
  'The stretched line flings the body back at {speed}; a line with more damping or an absorber keeps the energy.':
    'El cable estirado lanza el cuerpo hacia atrás a {speed}; un cable más amortiguado o un absorbedor se quedan la energía.',
  '{factor}: the line peaks at {peak}; a stronger line or a softer stop raises it.':
    '{factor}: el pico del cable es {peak}; un cable más fuerte o una parada más suave lo suben.',
  '{factor}: the anchor takes up to {load}.': '{factor}: el anclaje recibe hasta {load}.',
  'Anchor without a design': 'Anclaje sin cálculo',
  "The anchor holds {strength}; under {limit} it needs a qualified person's design and the factor above.":
    'El anclaje aguanta {strength}; por debajo de {limit} necesita el cálculo de una persona cualificada y el factor de arriba.',
  'Absorber not used up': 'Absorbedor sin agotar',
  "{torn} of the absorber's {stroke} tear; once it is used up the line stops the rest.":
    'Se desgarran {torn} de los {stroke} del absorbedor; una vez agotado, el cable frena el resto.',
  'Swept off the legs the body comes down {place} ahead of the mark, {margin} from the nearer edge of the pads.':
    'Con las piernas barridas el cuerpo cae {place} pasada la marca, a {margin} del borde más cercano de las colchonetas.',
  'Swept off the legs the body comes down {place} behind the mark, {margin} from the nearer edge of the pads.':
    'Con las piernas barridas el cuerpo cae {place} antes de la marca, a {margin} del borde más cercano de las colchonetas.',
  'The harness point comes {distance} past the mark, up to {most} within the tolerances, where {clear} are clear; arms and legs reach further.':
    'El punto del arnés pasa {distance} de la marca, hasta {most} con las tolerancias, donde hay {clear} libres; brazos y piernas llegan más lejos.',
  'Hard stops on the day': 'Paradas fuertes ese día',
  '{n} planned for this performer, rehearsals included.':
    '{n} previstas para este especialista, ensayos incluidos.',
  'The stop': 'La parada',
  'Time from the taut line': 'Tiempo desde el cable tenso',
  'Distance past the mark': 'Distancia pasada la marca',
  'The way to the ground': 'El camino al suelo',
  'Height above lying': 'Altura sobre el reposo',
  'Run, line and landing': 'Carrera, cable y llegada',
  'The line springs up, the body is flung back and slides; nobody stands or steps in here. Measured from the mark where the line comes taut.':
    'El cable salta, el cuerpo sale hacia atrás y resbala; aquí no hay ni entra nadie. Medido desde la marca donde se tensa el cable.',
  'A line of {length} does not reach from an anchor {rise} above or below the harness point: it is taut before the run begins.':
    'Un cable de {length} no llega desde un anclaje {rise} por encima o por debajo del punto del arnés: está tenso antes de empezar a correr.',
  "The stop could not be followed with these inputs: check the line's modulus and the mass.":
    'No se pudo seguir la parada con estos datos: revise el módulo del cable y la masa.',
  '{slack} of slack lets the runner reach {speed} of {top}: more slack is a harder stop.':
    '{slack} de holgura dejan llegar a {speed} de {top}: más holgura es una parada más dura.',
  'The run of {slack} begins {distance} on the far side of the anchor: the line trails past the feet.':
    'La carrera de {slack} empieza {distance} al otro lado del anclaje: el cable pasa junto a los pies.',
  'The body loses {speed} in {time} while head and arms go on; the peak of {peak} does not count what that does to the neck.':
    'El cuerpo pierde {speed} en {time} mientras cabeza y brazos siguen; el pico de {peak} no cuenta lo que eso le hace al cuello.',
  "With no give but the line's {stiffness} the peak is {peak}: measure what harness and body give, or put in an absorber.":
    'Sin más cesión que los {stiffness} del cable el pico es {peak}: mida lo que ceden arnés y cuerpo, o ponga un absorbedor.',
  'The pads are as high as the harness point lies: where the body comes down is not computed.':
    'Las colchonetas están tan altas como queda el punto del arnés: no se calcula dónde cae el cuerpo.',
  'Swept off the legs the body meets the pads at {speed} after {time}, and the stop may not be over by then.':
    'Con las piernas barridas el cuerpo llega a las colchonetas a {speed} tras {time}, y puede que la parada no haya acabado.',
  'From an anchor {rise} above the harness point the line keeps the body off the ground: it swings, and no landing is computed.':
    'Desde un anclaje {rise} por encima del punto del arnés el cable mantiene el cuerpo en el aire: se balancea y no se calcula la llegada.',
  'Walk, jog, then run up to {speed}, a weight bag first; measure the line of {length} again after each stop, since a loaded line stays longer.':
    'Andando, al trote y luego corriendo hasta {speed}, primero con un saco de peso; vuelva a medir el cable de {length} tras cada parada, porque un cable cargado queda más largo.',
};
