// What the core says of a descender or winch drop, in Spanish, keyed by its own English words.

export const descenderDrop: Record<string, string> = {
  'Descender or winch drop': 'Descenso con descensor o torno',
  "One or two people let down fast on a long line and braked above the ground. Covers speed, stretch, bounce, the brake's heat, emergency stops and drift; leaves out swing, spin and the controller.":
    'Una o dos personas bajan deprisa por un cable largo y frenan sobre el suelo. Incluye velocidad, alargamiento, rebote, calor del freno, paradas de emergencia y deriva; no incluye balanceo, giro ni el control.',
  'People on the line': 'Personas en el cable',
  'One person': 'Una persona',
  'Two people on one line': 'Dos personas en un cable',
  'How many hang on this one line.': 'Cuántas cuelgan de este único cable.',
  'Clothed and kitted, with harness, weighed on the day.': 'Vestido y equipado, con arnés, pesado ese día.',
  "Second person's mass": 'Masa de la segunda persona',
  'Of the other person on the same line, kitted; not used for one.':
    'De la otra persona en el mismo cable, equipada; no se usa si va una sola.',
  'Height of the head': 'Altura de la cabecera',
  'Of the anchor or sheave that the line hangs from, above the ground or the highest thing below.':
    'Del anclaje o la polea de donde cuelga el cable, sobre el suelo o lo más alto que haya debajo.',
  'Line out at the start': 'Cable fuera al empezar',
  'From the head to the harness point before the drop.':
    'De la cabecera al punto del arnés antes de la bajada.',
  'Line out at the end': 'Cable fuera al acabar',
  'From the head to the harness point when stopped, read at the drum: the stretch comes on top.':
    'De la cabecera al punto del arnés una vez parado, leído en el tambor: el alargamiento se suma.',
  'Body below the harness point': 'Cuerpo bajo el punto del arnés',
  'From the harness point to the lowest part of the body, prop or wardrobe as it hangs.':
    'Del punto del arnés a la parte más baja del cuerpo, el atrezo o el vestuario, colgando.',
  'Top speed': 'Velocidad máxima',
  'The even speed in the middle of the drop.': 'La velocidad constante en mitad de la bajada.',
  'Acceleration at the start': 'Aceleración al empezar',
  'How fast the line is let go; a body left to itself falls with 1 g.':
    'Con qué rapidez se suelta el cable; un cuerpo libre cae con 1 g.',
  Braking: 'Frenado',
  'Steady deceleration of the planned stop.': 'Deceleración constante de la parada prevista.',
  'Ramp time': 'Tiempo de rampa',
  'As set at the controller: acceleration and braking are brought in, and taken out again, over it.':
    'Como se ajusta en el control: en él entran, y vuelven a salir, la aceleración y el frenado.',
  'Brake lateness': 'Retraso del freno',
  'How late the planned stop may begin: operator, controller and brake together, from test runs.':
    'Cuánto puede tardar de más la parada prevista: operador, control y freno juntos, según las pruebas.',
  'Emergency stop': 'Parada de emergencia',
  'Deceleration of the line when the emergency stop is hit at full speed, as the maker states.':
    'Deceleración del cable si se pulsa la parada de emergencia a toda velocidad, según el fabricante.',
  'Place of the brake': 'Lugar del freno',
  'At the head: the line runs out': 'En la cabecera: el cable corre',
  'On the body: the line hangs still': 'En el cuerpo: el cable está quieto',
  'A drum or brake at the head also moves and stops the line; a device on the body does not.':
    'Un tambor o freno en la cabecera también mueve y para el cable; un aparato en el cuerpo, no.',
  'Mass of 100 m of line': 'Masa de 100 m de cable',
  "From the maker's sheet: about 9.7 kg for 3/16 in wire, 16 kg for 1/4 in, 7.5 kg for 11 mm rope.":
    'De la ficha del fabricante: unos 9,7 kg en cable de 3/16 in, 16 kg en 1/4 in, 7,5 kg en cuerda de 11 mm.',
  'Force per unit strain (EA): about 20 kN for a low-stretch rope, 900 kN for 3/16 in wire.':
    'Fuerza por unidad de deformación (EA): unos 20 kN en una cuerda semiestática, 900 kN en cable de 3/16 in.',
  'Line damping': 'Amortiguación del cable',
  'Share of critical damping of the bounce, from how fast it dies away in a weight-bag run.':
    'Parte de la amortiguación crítica del rebote, según lo que tarda en apagarse en una prueba con saco.',
  'Line diameter': 'Diámetro del cable',
  "For the wind's push on the line.": 'Para el empuje del viento en el cable.',
  "Minimum breaking strength of the line, from the maker's sheet.":
    'Carga mínima de rotura del cable, según la ficha del fabricante.',
  'Line end': 'Terminal del cable',
  'Strength is as rigged, end included': 'Resistencia ya montado, con terminal',
  Clips: 'Sujetacables',
  'What closes the line at the harness; it keeps only a share of the strength.':
    'Lo que cierra el cable en el arnés; conserva solo una parte de la resistencia.',
  'Smallest bend ratio': 'Menor relación de curvatura',
  "Diameter of the smallest sheave or drum over the line's own.":
    'Diámetro de la polea o tambor más pequeño entre el del cable.',
  'The head': 'La cabecera',
  'Hung from its anchor': 'Cuelga de su anclaje',
  'Sheave, winch level with it': 'Polea, torno a su altura',
  'Sheave, winch below it': 'Polea, torno debajo',
  'How the line leaves the head: a sheave that turns it back takes twice its tension.':
    'Cómo sale el cable de la cabecera: una polea que lo devuelve recibe el doble de su tensión.',
  'What the anchor of the head is known to hold.': 'Lo que se sabe que aguanta el anclaje de la cabecera.',
  "Brake's heated mass": 'Masa del freno que se calienta',
  'Of the discs, drum or bars that take the heat during one drop.':
    'De los discos, el tambor o las barras que reciben el calor en una bajada.',
  "Brake's material": 'Material del freno',
  'Steel or iron': 'Acero o hierro',
  Aluminium: 'Aluminio',
  'Of that mass: steel takes 465 J/(kg K), aluminium 900 J/(kg K).':
    'De esa masa: el acero toma 465 J/(kg K), el aluminio 900 J/(kg K).',
  'Share of heat in the brake': 'Parte del calor en el freno',
  'The rest goes to the motor, a fan or the air; 1 when nobody has measured it.':
    'El resto va al motor, a un ventilador o al aire; 1 si nadie lo ha medido.',
  'Energy the brake may take': 'Energía que admite el freno',
  'In one stop or drop, as its maker states.': 'En una parada o bajada, según su fabricante.',
  'Temperature the brake may have': 'Temperatura que admite el freno',
  'Highest temperature of brake, and of the line that touches it, as their makers state.':
    'Temperatura máxima del freno, y del cable que lo toca, según sus fabricantes.',
  'Cooling time of the brake': 'Tiempo de enfriado del freno',
  'Time in which 63 % of its heat is gone, from two readings after a weight-bag run.':
    'Tiempo en que pierde el 63 % de su calor, según dos lecturas tras una prueba con saco.',
  'Rewind speed': 'Velocidad de recogida',
  'Of the line on its way back to the start.': 'Del cable al volver al principio.',
  'Changeover time': 'Tiempo de cambio',
  'To unhook below, hook up above and check again, for each drop.':
    'Para soltar abajo, enganchar arriba y volver a revisar, en cada bajada.',
  'Drops in a row': 'Bajadas seguidas',
  'Planned one after another with the same brake, rehearsals included.':
    'Previstas una tras otra con el mismo freno, ensayos incluidos.',
  'Wind limit at the head': 'Límite de viento en la cabecera',
  'The highest wind, gusts included, in which the drop will be done.':
    'El viento máximo, rachas incluidas, con el que se hará la bajada.',
  'Drag area of one body': 'Área de arrastre de un cuerpo',
  'Drag coefficient times side area. A hanging adult has about 0.6 m²; loose costume adds to it.':
    'Coeficiente de arrastre por área lateral. Un adulto colgado tiene unos 0,6 m²; el vestuario suelto la aumenta.',
  'Clear distance to the side': 'Distancia libre a los lados',
  'From the plumb line to the nearest face, ledge or cable, all the way down.':
    'De la plomada a la fachada, repisa o cable más cercano, en toda la bajada.',
  "Body's reach to the side": 'Alcance lateral del cuerpo',
  'From the line to the furthest hand, foot or prop; two people side by side reach further.':
    'Del cable a la mano, el pie o el atrezo más alejado; dos personas juntas alcanzan más.',
  'Drilled time from a stuck line to the ground, at the worst height.':
    'Tiempo ensayado desde el cable atascado hasta el suelo, a la peor altura.',
  'Of the air around the brake; the brake starts at it.':
    'Del aire junto al freno; el freno empieza con ella.',
  'Clearance at the lowest point': 'Espacio libre en el punto más bajo',
  'Left under the body at full stretch and in the bounce, when the brake comes late.':
    'Lo que queda bajo el cuerpo con todo el alargamiento y el rebote, si el freno llega tarde.',
  'Drop time': 'Tiempo de bajada',
  'From the start to standing still, bounce left out.': 'Del principio a quedar quieto, sin el rebote.',
  'Speed reached': 'Velocidad alcanzada',
  'The top speed, or less where the drop is too short for it.':
    'La velocidad máxima, o menos si la bajada es demasiado corta.',
  'Start distance': 'Distancia de arranque',
  'Line paid out until the top speed.': 'Cable que sale hasta la velocidad máxima.',
  'Distance at top speed': 'Distancia a velocidad máxima',
  'Line paid out at the even speed.': 'Cable que sale a velocidad constante.',
  'Brake distance': 'Distancia de frenado',
  'Line paid out while braking.': 'Cable que sale al frenar.',
  'Brake height': 'Altura de frenado',
  'Height of the harness point above the ground where the brake must begin.':
    'Altura del punto del arnés sobre el suelo donde debe empezar el freno.',
  'Felt at the start': 'Lo que siente al empezar',
  'What the body feels while it gathers speed, without bounce.':
    'Lo que siente el cuerpo al coger velocidad, sin rebote.',
  'Felt while braking': 'Lo que siente al frenar',
  'What the body feels in the planned stop, without bounce.':
    'Lo que siente el cuerpo en la parada prevista, sin rebote.',
  'Least felt': 'Lo mínimo que siente',
  'Lowest with the bounce; at nothing the line is slack.':
    'Lo menor con el rebote; en cero el cable está flojo.',
  'Peak felt': 'Lo máximo que siente',
  'Highest with the bounce, in the drop as planned.': 'Lo mayor con el rebote, en la bajada prevista.',
  'Stretch at rest': 'Alargamiento en reposo',
  'Of the whole line under people and its own weight.': 'De todo el cable con las personas y su propio peso.',
  'Bounce period': 'Periodo del rebote',
  'Of the people on the whole line, up and down once.':
    'De las personas con todo el cable fuera, una subida y una bajada.',
  'Bounce after braking': 'Rebote tras frenar',
  'How far below rest the body may swing, if the bounces of start and stop meet at their worst.':
    'Cuánto puede pasar el cuerpo bajo el reposo si los rebotes del inicio y la parada coinciden en lo peor.',
  'Tension at rest': 'Tensión en reposo',
  'At the head with the whole line out.': 'En la cabecera con todo el cable fuera.',
  'Peak tension as planned': 'Tensión máxima prevista',
  'Highest at the head in the drop as planned.': 'La mayor en la cabecera en la bajada prevista.',
  'Felt in an emergency stop': 'Lo que siente en una emergencia',
  'Highest when the emergency stop is hit at the worst moment before the brake.':
    'Lo mayor si se pulsa la parada en el peor momento antes del freno.',
  'Emergency stop tension': 'Tensión en la parada',
  'Highest at the head in such a stop.': 'La mayor en la cabecera en esa parada.',
  'Emergency force on one body': 'Fuerza de emergencia en un cuerpo',
  'What the harness of the heavier body takes in such a stop.':
    'Lo que recibe en esa parada el arnés del cuerpo más pesado.',
  'Strength as rigged': 'Resistencia montado',
  'Of the line with its end and its smallest bend, whichever leaves less.':
    'Del cable con su terminal y su menor curva, lo que deje menos.',
  'Line factor at rest': 'Factor del cable en reposo',
  'Strength as rigged over the tension at rest.': 'Resistencia montado entre la tensión en reposo.',
  'Line factor, emergency stop': 'Factor del cable en emergencia',
  'Strength as rigged over the highest tension of an emergency stop or of the drop as planned.':
    'Resistencia montado entre la mayor tensión de una parada de emergencia o de la bajada prevista.',
  "Highest on the anchor of the head, by the line's turn there.":
    'La mayor en el anclaje de la cabecera, según el giro del cable allí.',
  'Energy into the brake': 'Energía en el freno',
  'Of one drop; drag of the air is left out.': 'De una bajada; sin contar la resistencia del aire.',
  'Peak power into the brake': 'Potencia máxima en el freno',
  'Highest tension times speed at the brake.': 'El mayor producto de tensión y velocidad en el freno.',
  'Brake after one drop': 'Freno tras una bajada',
  'With all of its share of the heat in its own mass.': 'Con toda su parte del calor en su propia masa.',
  'Brake after the last drop': 'Freno tras la última bajada',
  'After the planned drops in a row, cooling in between.':
    'Tras las bajadas seguidas previstas, enfriándose entre ellas.',
  'Time of one cycle': 'Tiempo de un ciclo',
  'Drop, changeover and rewind.': 'Bajada, cambio y recogida.',
  'Wind drift': 'Deriva por viento',
  'Sideways with the whole line out, at the wind limit.':
    'Hacia un lado con todo el cable fuera, en el límite de viento.',
  'Reach to the side': 'Alcance lateral',
  "Of the furthest hand, foot or prop: the drift and the body's own reach.":
    'De la mano, el pie o el atrezo más alejado: la deriva más el alcance del cuerpo.',
  '{clearance} stays free under the body with {stretch} of stretch, {bounce} of bounce and a late brake, as little as {least} within the tolerances; less line out raises it.':
    'Quedan {clearance} libres bajo el cuerpo con {stretch} de alargamiento, {bounce} de rebote y el freno tarde, hasta {least} con las tolerancias; con menos cable fuera queda más.',
  'Felt in the planned stop': 'Lo que siente en la parada prevista',
  '{felt} is the most felt in the drop as planned; softer braking or a longer ramp lowers it.':
    '{felt} es lo máximo que siente en la bajada prevista; un frenado más suave o una rampa más larga lo bajan.',
  'Line stays taut': 'El cable sigue tenso',
  '{felt} is the least felt, bounce included; at nothing the line is slack and snatches: a gentler start or a longer ramp raises it.':
    '{felt} es lo mínimo que siente, con el rebote; en cero el cable se afloja y luego da un tirón: un arranque más suave o una rampa más larga lo suben.',
  '{felt} is felt when the emergency stop is hit at the worst moment; a softer stop, a gentler start or a slower drop lowers it.':
    '{felt} es lo que siente si se pulsa la parada de emergencia en el peor momento; una parada más suave, un inicio más suave o una bajada más lenta lo reducen.',
  'Force on one body': 'Fuerza en un cuerpo',
  'The harness of the heavier body, {mass}, takes up to {force} at {felt} in an emergency stop.':
    'El arnés del cuerpo más pesado, {mass}, recibe hasta {force} con {felt} en una parada de emergencia.',
  '{factor}: the line holds {tension} at rest with all of it out; a stronger line or fewer people raise it.':
    '{factor}: el cable aguanta {tension} en reposo con todo fuera; un cable más fuerte o menos personas lo suben.',
  '{factor}: an emergency stop brings the line to {tension}; a softer stop or a stronger line raises it.':
    '{factor}: una parada de emergencia lleva el cable a {tension}; una parada más suave o un cable más fuerte lo suben.',
  '{factor}: the anchor of the head takes up to {load}.':
    '{factor}: el anclaje de la cabecera recibe hasta {load}.',
  'One drop puts {energy} into the brake, at most {power} at once; it may take {rating}.':
    'Una bajada mete {energy} en el freno, como mucho {power} a la vez; admite {rating}.',
  'Drop {n} in a row, one every {cycle}, leaves the brake at {temperature}, up to {most} within the tolerances; a longer wait or a heavier brake lowers it.':
    'La bajada {n} seguida, una cada {cycle}, deja el freno a {temperature}, hasta {most} con las tolerancias; más espera o un freno más pesado la bajan.',
  'Wind at the head': 'Viento en la cabecera',
  'The drop may go in wind up to {wind}; the wind at the top of a long line is higher than at the ground.':
    'La bajada puede hacerse con viento de hasta {wind}; en lo alto de un cable largo sopla más que en el suelo.',
  'Wind drift against the clear distance': 'Deriva frente a la distancia libre',
  'Steady wind at its limit brings the furthest hand or foot {drift} to the side, up to {most} within the tolerances, where {clear} are clear.':
    'Un viento constante en su límite lleva la mano o el pie más alejado {drift} hacia un lado, hasta {most} con las tolerancias, donde hay {clear} libres.',
  '{time} drilled from a stuck line to the ground; a hanging body is in danger within minutes.':
    '{time} ensayados desde el cable atascado hasta el suelo; un cuerpo colgado corre peligro en minutos.',
  'The drop': 'La bajada',
  'Depth below the head': 'Profundidad bajo la cabecera',
  'Tension at the head': 'Tensión en la cabecera',
  'Emergency stop before the brake': 'Parada de emergencia antes del freno',
  'Ground under the line': 'Suelo bajo el cable',
  'The body, the line or something dropped comes down in here; only who unhooks enters, on the word.':
    'Aquí bajan el cuerpo, el cable o algo que se caiga; solo entra quien desengancha, cuando se le avisa.',
  'The line is {start} out at the start and {end} at the end: there is no drop to compute.':
    'Hay {start} de cable fuera al empezar y {end} al acabar: no hay bajada que calcular.',
  "The drop could not be followed with these inputs: check the line's modulus and the emergency stop.":
    'No se pudo seguir la bajada con estos datos: revise el módulo del cable y la parada de emergencia.',
  '{travel} of travel is too short for {wanted}: the body reaches {reached} and the brake follows at once.':
    '{travel} de recorrido son pocos para {wanted}: el cuerpo llega a {reached} y el freno entra enseguida.',
  "With all of it out the line stretches {stretch} and bounces with a period of {period}: mark the stop by the body's height under load, not by the length read at the drum.":
    'Con todo fuera el cable se alarga {stretch} y rebota con un periodo de {period}: marque la parada por la altura del cuerpo con carga, no por el largo leído en el tambor.',
  'The brake comes in within {ramp}, under half of the bounce period of {period}: the body swings past as if the brake had struck at once.':
    'El freno entra en {ramp}, menos de la mitad del periodo de rebote de {period}: el cuerpo se pasa como si el freno entrara de golpe.',
  'The emergency stop, {emergency}, is softer than the planned brake, {brake}: hit late, it runs past the planned stop.':
    'La parada de emergencia, {emergency}, es más suave que el freno previsto, {brake}: pulsada tarde, se pasa de la parada prevista.',
  "An emergency stop at full speed gives {felt} and {tension} at the head; hit it with a weight bag of the people's mass before anybody hangs on the line.":
    'Una parada de emergencia a toda velocidad da {felt} y {tension} en la cabecera; púlsela con un saco de la masa de las personas antes de que nadie cuelgue del cable.',
  "{energy} of heat go into a device at the body: keep skin, wardrobe and the line's core away from it.":
    '{energy} de calor van a un aparato junto al cuerpo: aparte de él la piel, el vestuario y el alma de la cuerda.',
};
