// What the core says of a wire flight, in Spanish, keyed by its own English words.

export const wireFlight: Record<string, string> = {
  'Wire flight, two hip wires': 'Vuelo con cables, dos cables a la cadera',
  "A body flown on two hip wires: lift, swing, lowering. Covers each wire's tension and design factor, balance, an emergency stop and the failure of one wire; leaves out winch controls, the structure above and fatigue.":
    'Un cuerpo que vuela con dos cables a la cadera: subida, balanceo, bajada. Incluye la tensión y el factor de diseño de cada cable, el equilibrio, una parada de emergencia y el fallo de un cable; no incluye el mando de los tornos, la estructura superior ni la fatiga.',
  'Clothed, in harness and with everything that leaves the ground, weighed on the day.':
    'Vestido, con arnés y con todo lo que deja el suelo, pesado ese día.',
  'Hip pick spacing': 'Separación de los puntos de cadera',
  'Between the two pick points of the harness, worn.': 'Entre los dos puntos de enganche del arnés, puesto.',
  'Balance point to the side': 'Punto de equilibrio hacia un lado',
  "How far the body's balance point lies to the right of the middle between the picks, from a hang test. Props and wings count.":
    'Cuánto queda el punto de equilibrio a la derecha del centro entre enganches, según una prueba colgado. El atrezo y las alas cuentan.',
  'Balance point forward': 'Punto de equilibrio hacia delante',
  'How far the balance point lies in front of the line through the picks, from a hang test.':
    'Cuánto queda el punto de equilibrio por delante de la línea de los enganches, según una prueba colgado.',
  'Balance point below picks': 'Punto de equilibrio bajo los enganches',
  'How far the balance point lies below the picks when upright; negative when it is above them.':
    'Cuánto queda el punto de equilibrio por debajo de los enganches estando erguido; negativo si queda por encima.',
  'Lift height': 'Altura de subida',
  'From standing to the highest point of the flight.': 'De pie hasta el punto más alto del vuelo.',
  'Lift speed': 'Velocidad de subida',
  'Highest speed up or down on the wires.': 'Velocidad máxima de subida o bajada con los cables.',
  'Lift acceleration': 'Aceleración de subida',
  "How hard the lift starts and stops, from the winch's settings or a load cell.":
    'Con cuánta fuerza arranca y para la subida, según los ajustes del torno o una célula de carga.',
  'Swing angle': 'Ángulo de balanceo',
  'Angle of the wires from the vertical at the release of the swing; 0 for none.':
    'Ángulo de los cables con la vertical al soltar el balanceo; 0 si no hay.',
  Swings: 'Balanceos',
  'Whole swings, out and back, before the body is caught or lowered.':
    'Balanceos completos, ida y vuelta, antes de recoger o bajar el cuerpo.',
  'Wire length while swinging': 'Largo de cable en el balanceo',
  'From the overhead points to the hip picks during the flight.':
    'De los puntos superiores a los enganches de cadera durante el vuelo.',
  'Overhead spread': 'Separación superior',
  'Between the two overhead points, or the ends of the spreader bar.':
    'Entre los dos puntos superiores, o los extremos del balancín.',
  'Wire size': 'Diámetro del cable',
  'Nominal diameter of the aircraft cable, 7x19 from 3/32 up; both wires are alike.':
    'Diámetro nominal del cable de aviación, 7x19 desde 3/32; los dos cables son iguales.',
  '1/16 in': '1/16 pulgadas',
  '3/32 in': '3/32 pulgadas',
  '1/8 in': '1/8 pulgadas',
  '5/32 in': '5/32 pulgadas',
  '3/16 in': '3/16 pulgadas',
  '7/32 in': '7/32 pulgadas',
  '1/4 in': '1/4 pulgadas',
  '9/32 in': '9/32 pulgadas',
  '5/16 in': '5/16 pulgadas',
  '3/8 in': '3/8 pulgadas',
  'Wire material': 'Material del cable',
  'Stainless is weaker than galvanised at the same size.':
    'El inoxidable es más débil que el galvanizado del mismo diámetro.',
  Galvanised: 'Galvanizado',
  Stainless: 'Inoxidable',
  Termination: 'Terminal',
  'The weakest end fitting on either wire.': 'El terminal más débil de los dos cables.',
  'Swaged sleeve': 'Casquillo prensado',
  'Swaged socket': 'Terminal prensado',
  'Spelter socket': 'Terminal con zinc vertido',
  'Hand-tucked splice': 'Gaza trenzada a mano',
  'Wedge socket': 'Terminal de cuña',
  'Wire rope clips': 'Sujetacables',
  'Sheave to wire ratio': 'Relación polea-cable',
  "Diameter of the smallest loaded sheave over the wire's. Enter 80 for a wire that bends nowhere.":
    'Diámetro de la menor polea con carga entre el del cable. Ponga 80 si el cable no se dobla.',
  'Sheaves per wire': 'Poleas por cable',
  'Each takes about 2 % more pull to get past when lifting.': 'Cada una pide un 2 % más de tiro al subir.',
  'Emergency stop': 'Parada de emergencia',
  'Deceleration when the winch or brake stops hardest on the way down, measured with a weight bag.':
    'Deceleración en la parada más fuerte del torno o del freno al bajar, medida con un saco de peso.',
  "What the weaker overhead point is known to hold, by an engineer's figure or a rating.":
    'Lo que se sabe que aguanta el punto superior más débil, por cálculo de un ingeniero o por su marcado.',
  'Proof load': 'Carga de prueba',
  'Load the whole rig was tested with on this site.': 'Carga con que se probó todo el montaje en este lugar.',
  'Wanted design factor': 'Factor de diseño deseado',
  "Breaking strength as rigged over the highest tension in planned flight: the production's policy.":
    'Carga de rotura montado entre la mayor tensión del vuelo previsto: norma de la producción.',
  'Wanted factor, one wire': 'Factor deseado, un cable',
  'The same for the wire that is left when the other fails at the worst moment: policy.':
    'Lo mismo para el cable que queda si el otro falla en el peor momento: norma de la producción.',
  'Trained operators': 'Operadores formados',
  'Operators trained on this flight, the understudy included.':
    'Operadores formados en este vuelo, incluido el suplente.',
  'Rescue time': 'Tiempo de rescate',
  'From the call to feet on the ground, from a timed drill with this rig and a body in it.':
    'Del aviso a los pies en el suelo, en un simulacro cronometrado con este montaje y alguien colgado.',
  'Clear distance to the set': 'Distancia libre al decorado',
  'From below the overhead points to the nearest thing the body could strike, along the swing.':
    'De la vertical de los puntos superiores a lo más cercano que podría golpear el cuerpo, en el balanceo.',
  "Body's reach": 'Alcance del cuerpo',
  'From the hip picks to the furthest hand, foot or prop.':
    'De los enganches de cadera a la mano, el pie o el objeto más alejado.',
  'Drag coefficient times frontal area, costume included.':
    'Coeficiente de arrastre por área frontal, vestuario incluido.',
  'Lowest design factor': 'Factor de diseño mínimo',
  'Breaking strength as rigged over the highest tension in planned flight, on the worse wire.':
    'Carga de rotura montado entre la mayor tensión del vuelo previsto, en el peor cable.',
  'Peak tension, left': 'Tensión máxima, izquierdo',
  'Highest tension of the left hip wire in planned flight.':
    'Mayor tensión del cable izquierdo en el vuelo previsto.',
  'Peak tension, right': 'Tensión máxima, derecho',
  'Highest tension of the right hip wire in planned flight.':
    'Mayor tensión del cable derecho en el vuelo previsto.',
  'Peak the body feels': 'Pico que siente el cuerpo',
  'Highest along the wires in planned flight, gravity included.':
    'Máximo en la línea de los cables en el vuelo previsto, con la gravedad.',
  'When it is lowest': 'Cuándo es mínimo',
  'Time from the start of the lift to the lowest design factor.':
    'Tiempo desde el inicio de la subida hasta el factor de diseño mínimo.',
  'Tension when one fails': 'Tensión si falla uno',
  'Highest in the wire that is left when the other fails at the worst moment of planned flight.':
    'Máxima en el cable que queda si el otro falla en el peor momento del vuelo previsto.',
  'Factor when one fails': 'Factor si falla uno',
  'Breaking strength as rigged over that tension.': 'Carga de rotura montado entre esa tensión.',
  'Emergency-stop tension': 'Tensión en parada de emergencia',
  'Highest tension of the worse wire when the lift is stopped hardest on the way down.':
    'Mayor tensión del peor cable en la parada más fuerte al bajar.',
  'Emergency-stop factor': 'Factor en parada de emergencia',
  'Emergency force on the body': 'Fuerza de emergencia en el cuerpo',
  'What the harness puts on the body in that stop.': 'Lo que el arnés carga sobre el cuerpo en esa parada.',
  "Anchor strength over the highest load on an overhead point, an emergency stop and the other wire's failure included.":
    'Resistencia del anclaje entre la mayor carga en un punto superior, con una parada de emergencia y el fallo del otro cable.',
  'Wire strength as rigged': 'Resistencia del cable montado',
  'Minimum breaking strength less what the termination and the smallest sheave cost.':
    'Carga mínima de rotura menos lo que restan el terminal y la polea menor.',
  'Static tension': 'Tensión estática',
  "The worse wire's tension while the body hangs still.":
    'Tensión del peor cable con el cuerpo colgado quieto.',
  "Heavier side's share": 'Parte del lado más cargado',
  'Share of the load on the side that carries more; 0.5 is even.':
    'Parte de la carga en el lado que más lleva; 0,5 es igualado.',
  'Resting tilt': 'Inclinación en reposo',
  'How far the body tilts forward when it hangs from the picks and does nothing.':
    'Cuánto se inclina el cuerpo hacia delante colgado de los enganches sin hacer nada.',
  'Swing speed': 'Velocidad de balanceo',
  'Highest speed of the swing.': 'Velocidad máxima del balanceo.',
  'Reach of the swing': 'Alcance del balanceo',
  'Furthest from below the overhead points, hands and feet included.':
    'Lo más lejos de la vertical de los puntos superiores, con manos y pies.',
  'Swing period': 'Periodo del balanceo',
  'Out and back once.': 'Una ida y vuelta.',
  'common practice for performer flying': 'práctica habitual en vuelos de personas',
  'on the characteristic load of ANSI E1.43': 'sobre la carga característica de ANSI E1.43',
  'Design factor in flight': 'Factor de diseño en vuelo',
  'Lowest {value}, {place}: the {side} wire carries {planned} of {strength}; a larger wire or a softer start raises it.':
    'Mínimo {value}, {place}: el cable {side} lleva {planned} de {strength}; un cable mayor o un arranque más suave lo suben.',
  left: 'izquierdo',
  right: 'derecho',
  'as the lift starts': 'al empezar la subida',
  'at the bottom of the swing': 'en el punto bajo del balanceo',
  'as the lowering stops': 'al parar la bajada',
  'Factor when one wire fails': 'Factor si falla un cable',
  '{value}: if a wire fails {place}, the other takes {tension} of {strength} at once.':
    '{value}: si un cable falla {place}, el otro recibe de golpe {tension} de {strength}.',
  'Factor in an emergency stop': 'Factor en una parada de emergencia',
  '{value}: stopped hardest on the way down, the worse wire carries {tension} of {strength}; a gentler brake setting raises it.':
    '{value}: en la parada más fuerte al bajar, el peor cable lleva {tension} de {strength}; un freno más suave lo sube.',
  "{value} on the weaker overhead point, with the wire's pull counted twice over its sheave, and the emergency stop and the failure of the other wire included.":
    '{value} en el punto superior más débil, contando dos veces el tiro del cable en su polea e incluyendo la parada de emergencia y el fallo del otro cable.',
  'Reach against the set': 'Alcance frente al decorado',
  'Hands and feet reach {reach} out and the nearest thing stands at {clear}; striking the set is the commonest hurt in flying.':
    'Manos y pies llegan a {reach} y lo más cercano está a {clear}; golpear el decorado es la lesión más común en vuelo.',
  'An emergency stop puts {force} on the body through the hip picks.':
    'Una parada de emergencia carga {force} sobre el cuerpo por los enganches de cadera.',
  'Balance point below the picks': 'Punto de equilibrio bajo los enganches',
  'The balance point lies {distance} above the picks: the body turns over when it does nothing.':
    'El punto de equilibrio queda {distance} por encima de los enganches: el cuerpo vuelca si no hace nada.',
  'The balance point lies {distance} below the picks; the body rests tilted by {tilt}.':
    'El punto de equilibrio queda {distance} por debajo de los enganches; el cuerpo reposa inclinado {tilt}.',
  'Proof load of the rig': 'Carga de prueba del montaje',
  'Tested with {load}; one and a half times the highest planned load is {needed}.':
    'Probado con {load}; una vez y media la mayor carga prevista son {needed}.',
  'Operator and understudy': 'Operador y suplente',
  '{n} trained on this flight; one operator for each flyer and an understudy make 2.':
    '{n} con formación en este vuelo; un operador por persona que vuela y un suplente son 2.',
  'Timed rescue': 'Rescate cronometrado',
  'The drill took {time} to the ground; a suspended body is brought down within 5 minutes, and not by waiting for the emergency services.':
    'El simulacro tardó {time} hasta el suelo; a una persona suspendida se la baja en menos de 5 minutos, sin esperar a los servicios de emergencia.',
  'Tension of each wire': 'Tensión de cada cable',
  Left: 'Izquierdo',
  Right: 'Derecho',
  'Under the flight': 'Bajo el vuelo',
  'The body, or a dropped prop, can come down anywhere here.':
    'El cuerpo, o un objeto que se suelte, puede caer en cualquier punto.',
  'At {acceleration} the wires go slack whenever the lift slows upward or the lowering starts, and then snatch; the tensions here do not include a snatch.':
    'Con {acceleration} los cables se aflojan al frenar la subida o empezar la bajada, y luego dan un tirón; estas tensiones no lo incluyen.',
  'One side carries {share} % of the load: move the picks or the props until the body hangs even.':
    'Un lado lleva el {share} % de la carga: mueva los enganches o el atrezo hasta que el cuerpo cuelgue igualado.',
  'Each wire leans {angle} from the vertical, so the harness is pulled sideways with {share} of the load; a spreader bar takes that off the body.':
    'Cada cable se inclina {angle} de la vertical y tira del arnés hacia los lados con {share} de la carga; un balancín se lo quita al cuerpo.',
  'Within the tolerances the balance point may lie above the picks: the body may turn over without meaning to.':
    'Con las tolerancias, el punto de equilibrio puede quedar por encima de los enganches: el cuerpo puede volcar sin querer.',
  "Snatches, side swing and the {size} wires' own weight are not in the tensions: read a load cell at the first full-speed run.":
    'Las tensiones no incluyen tirones, balanceo lateral ni el peso de los cables de {size}: lea una célula de carga en el primer pase a velocidad real.',
  'Tensions are not computed before these are entered: {list}.':
    'Las tensiones no se calculan hasta indicar: {list}.',
};
