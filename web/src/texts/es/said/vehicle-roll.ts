// What the core says of a vehicle roll, in Spanish, keyed by its own English words.

export const vehicleRoll: Record<string, string> = {
  'Vehicle roll': 'Vuelco de coche',
  "A car is thrown over by a one-sided ramp, or by a roller as measured. Covers take-off, turns, the way to rest, what the driver takes, belt and cage, and a fire of spilled fuel; leaves out crush, bounce and any charge, which is the licensed operator's.":
    'Un coche se vuelca con una rampa de un solo lado, o con un volcador según lo medido. Incluye salida, vueltas, recorrido hasta parar, lo que aguanta el conductor, arnés y jaula, y un fuego de combustible derramado; no incluye aplastamiento, rebotes ni carga alguna, que es del operador con licencia.',
  'Of the driver, clothed and kitted, with helmet, weighed on the day.':
    'Del conductor, vestido y equipado, con casco, pesado ese día.',
  'What rolls the car': 'Qué vuelca el coche',
  'Pipe or one-sided ramp': 'Tubo o rampa de un solo lado',
  'Roller or cannon, as measured': 'Volcador o cañón, según lo medido',
  "A pipe or ramp is computed; of a roller or cannon only what the empty car did is taken, its charge is its operator's.":
    'Un tubo o una rampa se calcula; de un volcador o cañón solo se toma lo que hizo el coche vacío: su carga es cosa de su operador.',
  "Speed at the ramp's foot": 'Velocidad al pie de la rampa',
  'Measured with a timing pair there and not read from the dial alone; for a roller, where it works.':
    'Medida allí con un par de células y no solo leída en el velocímetro; con un volcador, donde actúa.',
  'Length of the ramp': 'Largo de la rampa',
  'Along the ground, from its foot to its end.': 'Por el suelo, de su pie a su final.',
  'Slope of the ramp': 'Pendiente de la rampa',
  "Of a straight ramp, with the car's weight on it.": 'De una rampa recta, con el peso del coche encima.',
  "Share of the ramp's turn": 'Parte del giro de la rampa',
  'How much of the roll rate that the ramp makes is left as the car leaves it: springs and tyres take some.':
    'Cuánto queda, al dejar la rampa, del giro que ella da: muelles y neumáticos se llevan algo.',
  'Roll rate as measured': 'Velocidad de giro medida',
  "As the roller lets go, from the empty car's run as its licensed operator set it; filmed or logged.":
    'Cuando el volcador suelta, de la pasada del coche vacío tal como la preparó su operador con licencia; filmada o registrada.',
  'Upward speed as measured': 'Velocidad de subida medida',
  "Of the car's middle as the roller lets go, from the same run.":
    'Del centro del coche cuando el volcador suelta, de la misma pasada.',
  'Mass of the car': 'Masa del coche',
  'Weighed as for the shot, cage and fuel in, without the driver.':
    'Pesado como para el plano, con jaula y combustible, sin el conductor.',
  'Over the ground, with cage and driver.': 'Sobre el suelo, con jaula y conductor.',
  'Height of the roof': 'Altura del techo',
  "Over the ground, at the roof's corners or the cage's, whichever are higher.":
    'Sobre el suelo, en las esquinas del techo o de la jaula, las que estén más altas.',
  'Width at the roof': 'Ancho en el techo',
  'Between the corners that strike when the car is on its roof.':
    'Entre las esquinas que golpean cuando el coche está sobre el techo.',
  'Slowing while it tumbles': 'Frenado mientras da vueltas',
  'As a share of g. Measured rolls of cars lie about 0.4 to 0.65; soft ground gives more.':
    'Como parte de g. Los vuelcos medidos están entre 0,4 y 0,65; el suelo blando da más.',
  'Slowing while it slides': 'Frenado mientras desliza',
  'As a share of g, on its roof, its side or its wheels; sheet metal on asphalt gives about 0.3 to 0.5.':
    'Como parte de g, sobre el techo, el costado o las ruedas; la chapa en asfalto da de 0,3 a 0,5.',
  'Veer allowed for': 'Desvío que se prevé',
  'How far to either side the car may leave the line of the run.':
    'Cuánto puede apartarse el coche, a cada lado, de la línea de la pasada.',
  'Turns wanted': 'Vueltas deseadas',
  'In whole turns and quarters of one; 0.5 lies on the roof.':
    'En vueltas enteras y cuartos de vuelta; con 0,5 queda sobre el techo.',
  'Clear ground ahead': 'Suelo libre por delante',
  "From the ramp's end to the nearest thing or person, cameras with a person included.":
    'Del final de la rampa a la cosa o persona más cercana, incluidas las cámaras con operador.',
  'From the line of the run to the nearest thing or person, on the nearer side.':
    'De la línea de la pasada a la cosa o persona más cercana, en el lado más próximo.',
  "Driver's seat from the middle": 'Asiento del conductor desde el centro',
  'Positive on the side that the car rolls to, negative on the side that the ramp lifts.':
    'Positivo en el lado hacia el que vuelca, negativo en el lado que levanta la rampa.',
  "Driver's chest over the ground": 'Pecho del conductor sobre el suelo',
  'Belted in, the car on its wheels.': 'Con el arnés puesto y el coche sobre sus ruedas.',
  'Give in a landing': 'Cesión en un golpe',
  "How far metal, seat and belt give while a corner stops; from the empty car's dents.":
    'Cuánto ceden chapa, asiento y arnés mientras una esquina se para; según las abolladuras del coche vacío.',
  "Give of the cage's corner": 'Cesión de la esquina de la jaula',
  "How far metal alone gives as a roof corner stops, seat and belt left out; from the empty car's dents.":
    'Cuánto cede solo la chapa mientras se para una esquina del techo, sin asiento ni arnés; según las abolladuras del coche vacío.',
  "Driver's belt": 'Cinturón del conductor',
  'No belt': 'Sin cinturón',
  'No cage': 'Sin jaula',
  'Lap belt': 'Cinturón abdominal',
  'Three-point belt': 'Cinturón de tres puntos',
  'Four-point harness': 'Arnés de cuatro puntos',
  'Five-point harness or more': 'Arnés de cinco puntos o más',
  'What holds the driver in, counted by the straps that come to the seat.':
    'Lo que sujeta al conductor, contado por las cintas que llegan al asiento.',
  'Roll cage': 'Jaula antivuelco',
  'Built, not signed for': 'Hecha, sin firma',
  'By a specialist, or certified': 'De especialista, o certificada',
  'Who made it and who signed for it.': 'Quién la hizo y quién la firmó.',
  'Force that the cage is good for': 'Fuerza que aguanta la jaula',
  'On one upper corner, as whoever built or certified it gives it.':
    'En una esquina superior, según quien la hizo o certificó.',
  'Driver out of the car': 'Conductor fuera del coche',
  'Rehearsed, belted and upside down where that may be, with the near door blocked.':
    'Ensayado, con el arnés y boca abajo si puede darse, con la puerta más cercana bloqueada.',
  'Fire crew at the car': 'Bomberos junto al coche',
  'From its coming to rest to the first extinguisher working, walked at the far end of the zone.':
    'De quedar parado al primer extintor actuando, ensayado en el extremo lejano de la zona.',
  Fuel: 'Combustible',
  Petrol: 'Gasolina',
  Diesel: 'Gasóleo',
  Ethanol: 'Etanol',
  'What is in the tank in the shot.': 'Lo que hay en el depósito en el plano.',
  'Fuel aboard': 'Combustible a bordo',
  'All that can spill, measured in.': 'Todo lo que puede derramarse, medido al echarlo.',
  'Depth of a spill': 'Espesor del derrame',
  'About 1 mm where it runs free on a hard surface; deeper where a dip holds it.':
    'Como 1 mm si corre libre en firme duro; más donde lo retiene un hoyo.',
  'Share of heat that radiates': 'Parte del calor que irradia',
  'About 0.3 to 0.4 for small pools of petrol or diesel, less for alcohol.':
    'De 0,3 a 0,4 en charcos pequeños de gasolina o gasóleo, menos con alcohol.',
  'Radiant heat people may have': 'Calor radiante admitido',
  'In ordinary clothes for as long as it burns: about 1.6 kW/m2; a person chooses it and answers for it.':
    'Con ropa normal mientras dure el fuego: unos 1,6 kW/m2; alguien lo elige y responde de ello.',
  'People from the car': 'Personas a partir del coche',
  'From the nearest ground where it may rest, fire crew in their gear left out.':
    'Del suelo más cercano donde puede quedar, sin contar a los bomberos con su equipo.',
  'Take-off speed': 'Velocidad de salida',
  "At the ramp's end, less than at its foot by what lifting and turning the car takes.":
    'Al final de la rampa, menor que a su pie por lo que cuesta levantar y girar el coche.',
  'Rise of the ramp': 'Subida de la rampa',
  'Of its end over the ground.': 'De su final sobre el suelo.',
  "Roll at the ramp's end": 'Inclinación al final de la rampa',
  'How far the car leans as it leaves the ramp.': 'Cuánto se inclina el coche al dejar la rampa.',
  'Roll rate at take-off': 'Velocidad de giro a la salida',
  'As the car leaves ramp or roller.': 'Cuando el coche deja la rampa o el volcador.',
  'Energy to go over': 'Energía para volcar',
  'Of the turning at take-off over what it takes to stand the car on its side wheels; above 1 it rolls.':
    'La del giro a la salida entre lo que cuesta poner el coche de pie sobre las ruedas de un lado; por encima de 1 vuelca.',
  'Turns at least': 'Vueltas como mínimo',
  'Of the turning at take-off alone until it lies, in quarters of a turn.':
    'Solo con el giro de la salida hasta quedar tumbado, en cuartos de vuelta.',
  'Turns at most': 'Vueltas como máximo',
  'If it comes to lie across its way and rolls over the ground all the way to rest.':
    'Si se cruza en su camino y rueda por el suelo todo el recorrido hasta parar.',
  'Time in the air': 'Tiempo en el aire',
  'All flights of the roll together.': 'Todos los vuelos del vuelco juntos.',
  'Rolled at landing': 'Girado al caer',
  'When its body first strikes the ground.': 'Cuando su carrocería toca el suelo por primera vez.',
  'Lands ahead of the ramp': 'Cae por delante de la rampa',
  'Where its body first strikes, along the run.':
    'Donde la carrocería golpea primero, a lo largo de la pasada.',
  'Highest place of the middle': 'Lugar más alto del centro',
  'Of the centre of mass, over the ground.': 'Del centro de masas, sobre el suelo.',
  'Time until it lies': 'Tiempo hasta quedar tumbado',
  "From the ramp's end; it may still slide.": 'Desde el final de la rampa; aún puede deslizar.',
  'Rests ahead of the ramp': 'Queda por delante de la rampa',
  'Where its middle comes to rest, along the run.': 'Donde se para su centro, a lo largo de la pasada.',
  'Reach ahead': 'Alcance por delante',
  'Furthest that a part of the car may rest, however it lies; not given when it ends on its wheels.':
    'Lo más lejos que puede quedar una parte del coche, en cualquier posición; no se da si acaba sobre sus ruedas.',
  'Furthest that a part of the car may rest from the line of the run, veer included.':
    'Lo más lejos de la línea de la pasada que puede quedar una parte del coche, con el desvío.',
  'Time until it rests': 'Tiempo hasta parar',
  "From the ramp's end to the end of the slide.": 'Del final de la rampa al final del deslizamiento.',
  'Hardest change at the driver': 'Cambio más duro en el conductor',
  "Largest sudden change of velocity at the driver's chest in any strike.":
    'Mayor cambio brusco de velocidad en el pecho del conductor en un golpe.',
  'Mean felt in that strike': 'Media que siente en ese golpe',
  'That change taken up over the give.': 'Ese cambio absorbido en la cesión.',
  'Peak felt in that strike': 'Máximo que siente en ese golpe',
  'For a half-sine pulse.': 'Con un pulso de medio seno.',
  'Largest sideways mean': 'Mayor media lateral',
  "Across the driver's seat, in the strike that gives the most of it.":
    'De través en el asiento del conductor, en el golpe que más da.',
  "Share of the body's limits": 'Parte de los límites del cuerpo',
  'Dynamic response sideways and along the spine together, against the limits of low risk; at most 1.':
    'Respuesta dinámica lateral y a lo largo de la columna juntas, frente a los límites de riesgo bajo; 1 como mucho.',
  'Force on a cage corner': 'Fuerza en una esquina de la jaula',
  "The car's and driver's mass at the peak of the hardest strike on a roof corner, over the metal's give.":
    'La masa de coche y conductor con el máximo del golpe más duro en una esquina del techo, con lo que cede la chapa.',
  'Factor on the cage': 'Factor de la jaula',
  'What the cage is good for over that force.': 'Lo que aguanta la jaula entre esa fuerza.',
  'Straps of the belt': 'Cintas del cinturón',
  'As chosen.': 'Según lo elegido.',
  'Signatures on the cage': 'Aval de la jaula',
  'Two when it was built by a specialist or certified by an engineer, one when built and unsigned, none without.':
    'Dos si la hizo un especialista o la certificó un ingeniero, uno si está hecha y sin firma, ninguno si no hay.',
  'Width of the spill': 'Ancho del derrame',
  'All the fuel, spread round.': 'Todo el combustible, extendido en redondo.',
  'Heat of the fire': 'Calor del fuego',
  'When all of it burns.': 'Cuando arde todo.',
  'Height of the flames': 'Altura de las llamas',
  'Over the spill, in still air.': 'Sobre el derrame, sin viento.',
  'Time that it burns': 'Tiempo que arde',
  'Left alone.': 'Si no se apaga.',
  'Radiant heat at the people': 'Calor radiante en las personas',
  'From a spill at the nearest place where the car may rest.':
    'De un derrame en el lugar más cercano donde puede quedar el coche.',
  'Distance for people': 'Distancia de las personas',
  'From the middle of the spill to where radiant heat is what is accepted, and never under 2.5 of its widths.':
    'Del centro del derrame a donde el calor radiante es el admitido, y nunca menos de 2,5 veces su ancho.',
  '{margin} times what stands the car on its side, {least} at the worst, from {rate} at take-off; {wanted} is wanted, and more speed or a steeper ramp gives it.':
    '{margin} veces lo que pone el coche de costado, {least} en lo peor, con {rate} a la salida; se quieren {wanted}, y lo da más velocidad o una rampa más empinada.',
  '{#least} turns are to be had, {worst} at the worst of the tolerances and {most} at most; {wanted} are wanted.':
    'Se pueden tener {least} vueltas, {worst} en lo peor de las tolerancias y {most} como mucho; se quieren {wanted}.',
  'Rest zone ahead': 'Zona de parada por delante',
  'Ahead of the ramp the car reaches {reach}, up to {most} within the tolerances; {clear} are clear, so slow down or clear more.':
    'Por delante de la rampa el coche alcanza {reach}, hasta {most} con las tolerancias; hay {clear} libres: vaya más despacio o despeje más.',
  'Rest zone to the side': 'Zona de parada a los lados',
  'To the side of the run the car reaches {reach}, up to {most} within the tolerances; {clear} are clear.':
    'A los lados de la pasada el coche alcanza {reach}, hasta {most} con las tolerancias; hay {clear} libres.',
  'Harness on the driver': 'Arnés del conductor',
  'The belt has {#straps} straps; a roll asks for a harness of {limit} or more: the guideline asks for a harness or a cage as necessary, both is the habit.':
    'El cinturón tiene {straps} cintas; un vuelco pide un arnés de {limit} o más: la guía pide arnés o jaula según haga falta, lo habitual son ambos.',
  'By a specialist maker or certified. The Ontario guideline asks for a harness or a cage as necessary; both is the habit.':
    'De un fabricante especialista o certificada. La guía de Ontario pide arnés o jaula según haga falta; lo habitual son ambos.',
  'Built, but nobody signed for it. The Ontario guideline asks for a harness or a cage as necessary; both is the habit.':
    'Hecha, pero nadie la firmó. La guía de Ontario pide arnés o jaula según haga falta; lo habitual son ambos.',
  'No cage. The Ontario guideline asks for a harness or a cage as necessary; both is the habit.':
    'Sin jaula. La guía de Ontario pide arnés o jaula según haga falta; lo habitual son ambos.',
  'The cage is good for {factor} times the hardest strike on the roof of {load}, {least} at the worst; {wanted} is wanted.':
    'La jaula aguanta {factor} veces el golpe más duro en el techo, de {load}, {least} en lo peor; se quieren {wanted}.',
  "Body's limits in the landing": 'Límites del cuerpo en el golpe',
  "The hardest strike changes the driver's speed by {change} over {give}: {share} of the limits for low risk, up to {most}; a lower ramp or more give softens it.":
    'El golpe más duro cambia la velocidad del conductor en {change} a lo largo de {give}: {share} de los límites de riesgo bajo, hasta {most}; una rampa más baja o más cesión lo suavizan.',
  'Without a belt nothing holds the driver, and no limit is known that a body thrown about meets.':
    'Sin cinturón nada sujeta al conductor, y no se conoce límite que cumpla un cuerpo que sale despedido dentro.',
  'Sideways g on the driver': 'g laterales en el conductor',
  '{mean} across the seat on the mean, up to {most}; volunteers with a {@belt} bore {limit} for a tenth of a second.':
    '{mean} de media de través en el asiento, hasta {most}; voluntarios con {belt} aguantaron {limit} una décima de segundo.',
  'lap belt and torso harness': 'cinturón abdominal y arnés de tronco',
  'lap belt only': 'solo cinturón abdominal',
  'The driver is out {time} after the car rests, up to {most}; {limit} is the habit.':
    'El conductor está fuera {time} después de parar el coche, hasta {most}; lo habitual es {limit}.',
  'People clear of a fuel fire': 'Personas lejos de un fuego',
  'If all the fuel burns, people stay {distance} off, up to {most}; they stand at {place} and would have {flux}, with flames {height} high.':
    'Si arde todo el combustible, las personas se quedan a {distance}, hasta {most}; están a {place} y recibirían {flux}, con llamas de {height}.',
  '{#volume} are aboard, up to {most}; {limit} is the habit, in a small cell with a cut-off.':
    'Hay {volume} a bordo, hasta {most}; lo habitual es {limit}, en un depósito pequeño con corte.',
  'The fire crew works {time} after the car rests, up to {most}; {limit} is the habit.':
    'Los bomberos actúan {time} después de parar el coche, hasta {most}; lo habitual es {limit}.',
  "The roll from the ramp's end": 'El vuelco desde el final de la rampa',
  Rolled: 'Girado',
  'Roll rate': 'Velocidad de giro',
  'Height of the middle': 'Altura del centro',
  'The way to rest': 'El recorrido hasta parar',
  'Ramp to rest': 'De la rampa a la parada',
  'The car may roll, slide and lie anywhere in here, and parts of it come off: nobody is inside, cameras stand alone.':
    'El coche puede volcar, deslizar y quedar en cualquier punto de aquí, y se desprenden piezas: no hay nadie dentro, las cámaras están solas.',
  'Clear of a fuel fire': 'Lejos de un fuego de combustible',
  'Wherever the car lies, its fuel may burn: only the fire crew, in their gear, comes in here before it is called safe.':
    'Quede donde quede el coche, su combustible puede arder: aquí solo entran los bomberos, con su equipo, hasta que se dé por seguro.',
  'The car falls back on its wheels at {speed} and drives on: the driver needs brakes and steering after it, and how far it reaches is not given.':
    'El coche recae sobre sus ruedas a {speed} y sigue: el conductor necesita frenos y dirección después, y no se da hasta dónde llega.',
  'After {turns} turns it lies on its wheels, and may roll on past {distance}: how far it reaches is not given.':
    'Tras {turns} vueltas queda sobre sus ruedas, y puede seguir rodando más allá de {distance}: no se da hasta dónde llega.',
  'Within the tolerances it lies after {low} turns or {high}: belt, exit and fire crew are ready for each.':
    'Con las tolerancias queda tumbado tras {low} vueltas o {high}: arnés, salida y bomberos están listos para cada caso.',
  'It lies on its roof with the driver hanging {height} from the ground: the exit is rehearsed upside down.':
    'Queda sobre el techo con el conductor colgado a {height} del suelo: la salida se ensaya boca abajo.',
  'Only the turning that it took off with is counted, {least} turns: a car that comes to lie across its way is rolled on by its speed, up to {most}, and strikes again in each.':
    'Solo se cuenta el giro con que salió, {least} vueltas: a un coche que se cruza en su camino lo sigue volcando su velocidad, hasta {most}, y golpea de nuevo en cada una.',
  "The roll rate is the empty car's: another mass, track or charge gives another, and the charge is the licensed operator's.":
    'La velocidad de giro es la del coche vacío: otra masa, otra vía u otra carga dan otra, y la carga es del operador con licencia.',
  'Spilled fuel burns for {burns} with flames of {height}, and the driver takes {out} to get out: the fire crew stands by and does not wait for a call.':
    'El combustible derramado arde {burns} con llamas de {height}, y el conductor tarda {out} en salir: los bomberos están listos y no esperan a que los llamen.',
  'People at {distance} are so near a spill of {width} across that heat from a single point tells too little: stand back.':
    'Las personas a {distance} están tan cerca de un derrame de {width} de ancho que el calor desde un solo punto dice demasiado poco: apártense.',
  'The car does not come off this ramp: it is too slow, the ramp is too high for its track, or the roof is not over the middle of the mass.':
    'El coche no sale de esta rampa: va demasiado despacio, la rampa es demasiado alta para su vía, o el techo no queda por encima del centro de masas.',
  'The roll does not come to an end that this model can follow.':
    'El vuelco no llega a un final que este modelo pueda seguir.',
};
