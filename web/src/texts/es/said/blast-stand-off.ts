// What the core says of a stand-off from an effect, in Spanish, keyed by its own English words.

export const blastStandOff: Record<string, string> = {
  'Stand-off from an effect': 'Distancia de seguridad a un efecto',
  "A performer runs near one effect whose stand-off and debris zone the licensed operator gives. Covers where the runner is when it goes, goes late or is held, the chances, crew distances, wind and sound; leaves out falls on the run and everything about the effect's own strength.":
    'Un intérprete corre cerca de un efecto cuya distancia y zona de restos da el operador titulado. Incluye dónde está quien corre cuando se dispara, se dispara tarde o se retiene, las probabilidades, las distancias del equipo, el viento y el sonido; no incluye caídas en la carrera ni nada sobre la potencia del efecto.',
  'Kind of effect': 'Clase de efecto',
  Fireball: 'Bola de fuego',
  'Burst of dust or debris': 'Estallido de polvo o restos',
  'Concussion mortar': 'Mortero de concusión',
  'As the licensed operator names it; how strong it is stays with the operator.':
    'Como lo nombra el operador titulado; su potencia es cosa del operador.',
  "Performers' stand-off, as given": 'Distancia de intérpretes, según se da',
  'Given by the licensed operator: nobody is nearer than this when the effect goes.':
    'La da el operador titulado: nadie está más cerca cuando se dispara el efecto.',
  'Debris zone, as given': 'Zona de restos, según se da',
  'Given by the licensed operator for still air: where anything thrown out may land.':
    'La da el operador titulado para aire en calma: donde puede caer lo que salga despedido.',
  'Light debris in the air for': 'Restos ligeros en el aire durante',
  "How long ash, cloth and card stay up, from the operator's test; wind carries them meanwhile.":
    'Cuánto siguen en el aire ceniza, tela y cartón, según la prueba del operador; mientras, los lleva el viento.',
  'Smoke lasts': 'Duración del humo',
  "From the effect until its smoke no longer matters, from the operator's test.":
    'Desde el efecto hasta que su humo ya no importa, según la prueba del operador.',
  'Smoke spreads to each side by': 'Apertura del humo a cada lado',
  "Half the angle of the smoke's wedge, seen from above at the test; wider in gusts.":
    'La mitad del ángulo de la cuña de humo, vista desde arriba en la prueba; más ancha con rachas.',
  'Firing goes by': 'Se dispara según',
  'Count or sequencer': 'Cuenta o secuenciador',
  'Runner passes a mark': 'Paso por una marca',
  "A count or sequencer from the runner's cue, or the operator's eye on a mark that the runner passes.":
    'Una cuenta o un secuenciador desde la señal a quien corre, o el ojo del operador en una marca por la que pasa.',
  "Fired after the runner's cue": 'Disparo tras la señal a quien corre',
  'By count or sequencer; only where firing goes by the clock.':
    'Por cuenta o secuenciador; solo si se dispara por tiempo.',
  'Start to the firing mark': 'De la salida a la marca de disparo',
  'Along the run; the operator presses when the runner passes it. Only where firing goes by a mark.':
    'A lo largo de la carrera; el operador pulsa cuando se pasa por ella. Solo si se dispara por marca.',
  "Operator's reaction": 'Reacción del operador',
  'From seeing to pressing, or to holding back, from rehearsals with the real switch.':
    'De ver a pulsar, o a retener, según ensayos con el pulsador real.',
  'Switch to effect': 'Del pulsador al efecto',
  'Delay of the firing system and the effect, as the operator gives it.':
    'Retardo del sistema de disparo y del efecto, según lo da el operador.',
  'How far firing varies': 'Cuánto varía el disparo',
  'One standard deviation from rehearsals, hand and system together; a sequencer alone varies by little.':
    'Una desviación típica según ensayos, mano y sistema juntos; un secuenciador solo varía poco.',
  'A late shot comes within': 'Un disparo tardío llega antes de',
  'Longest time after the planned moment at which the effect may still go, or be fired again, as given.':
    'Mayor tiempo tras el momento previsto en que el efecto aún puede saltar, o dispararse otra vez, según se da.',
  'Nobody approaches a misfire for': 'Nadie se acerca a un fallo durante',
  'From the failed firing until the operator alone may go near, as given.':
    'Desde el disparo fallido hasta que solo el operador puede acercarse, según se da.',
  'Run starts, along': 'Salida, a lo largo',
  'From the effect, positive the way the run goes; negative is before it.':
    'Desde el efecto, positivo hacia donde va la carrera; negativo es antes de él.',
  'Run starts, across': 'Salida, de lado',
  'From the effect, to the left of the way the run goes.':
    'Desde el efecto, a la izquierda de hacia donde va la carrera.',
  'Run ends, along': 'Final, a lo largo',
  'Where the runner stops and waits, from the effect, positive the way the run goes.':
    'Donde quien corre para y espera, desde el efecto, positivo hacia donde va la carrera.',
  'Run ends, across': 'Final, de lado',
  'Where the runner stops and waits, from the effect, to the left.':
    'Donde quien corre para y espera, desde el efecto, a la izquierda.',
  'Top speed of the run': 'Velocidad máxima de la carrera',
  'In costume, on this ground, timed at rehearsal. In the dark or in smoke it is less.':
    'Con vestuario, en este suelo, cronometrada en ensayo. A oscuras o con humo es menor.',
  'How far the speed varies': 'Cuánto varía la velocidad',
  'One standard deviation over timed runs.': 'Una desviación típica en carreras cronometradas.',
  'Getting up to speed': 'Tiempo en coger velocidad',
  "Time to reach 63 % of top speed; about 0.9 s from a sprinter's start, more on loose ground.":
    'Tiempo hasta el 63 % de la velocidad máxima; unos 0,9 s con salida de velocista, más en suelo suelto.',
  "Runner's reaction to the cue": 'Reacción a la señal de quien corre',
  'From the cue to the first step.': 'De la señal al primer paso.',
  'How far that reaction varies': 'Cuánto varía esa reacción',
  'One standard deviation over rehearsed cues.': 'Una desviación típica en señales ensayadas.',
  'Accepted chance inside': 'Probabilidad admitida de estar dentro',
  'Chance in one take that the runner is inside the stand-off; a person chooses it and answers for it.':
    'Probabilidad en una toma de que quien corre esté dentro de la distancia; alguien la elige y responde de ella.',
  'Ways out': 'Salidas',
  'Clear ways away from the effect that have been walked with those who would use them.':
    'Caminos despejados para alejarse del efecto, recorridos con quienes los usarían.',
  'Nearest crew, along': 'Equipo más cercano, a lo largo',
  'From the effect, positive the way the run goes.': 'Desde el efecto, positivo hacia donde va la carrera.',
  'Nearest crew, across': 'Equipo más cercano, de lado',
  'Nearest bystander': 'Espectador más cercano',
  'From the effect to the nearest person without a part in the take.':
    'Del efecto a la persona más cercana que no participa en la toma.',
  'Camera is': 'La cámara está',
  'Manned, in the open': 'Atendida, al descubierto',
  'Manned, behind a shield': 'Atendida, tras una pantalla',
  Unmanned: 'Sin nadie',
  'Whether people are with the nearest camera, and what is in front of them.':
    'Si hay personas con la cámara más cercana, y qué tienen delante.',
  'Nearest camera, along': 'Cámara más cercana, a lo largo',
  'Nearest camera, across': 'Cámara más cercana, de lado',
  'Stand-off behind a shield, as given': 'Distancia tras pantalla, según se da',
  'Given by the licensed operator for the shield that is used; only where there is one.':
    'La da el operador titulado para la pantalla usada; solo donde la hay.',
  'Wind speed': 'Velocidad del viento',
  'Gusts, at the height of the effect.': 'Las rachas, a la altura del efecto.',
  'Wind blows towards': 'El viento sopla hacia',
  '0 is the way the run goes, 90 degrees to its left; the tolerance is how far it swings.':
    '0 es hacia donde va la carrera, 90 grados a su izquierda; la tolerancia es cuánto oscila.',
  'Air temperature': 'Temperatura del aire',
  'For the speed of sound.': 'Para la velocidad del sonido.',
  'Runner from the effect, as it goes': 'Distancia de quien corre al disparar',
  'At the planned moment, with everything as stated.': 'En el momento previsto, con todo como se indica.',
  'Chance inside the stand-off': 'Probabilidad dentro de la distancia',
  'That the runner is inside the given stand-off when the effect goes, from how speed, reaction and firing vary.':
    'De que quien corre esté dentro de la distancia dada al dispararse el efecto, según varían velocidad, reacción y disparo.',
  "Runner's least, up to a late shot": 'Mínima hasta un disparo tardío',
  'Least distance from the effect between the planned moment and the latest that a late shot may come.':
    'Menor distancia al efecto entre el momento previsto y lo más tarde que puede llegar un disparo tardío.',
  'Chance inside, late shot included': 'Probabilidad dentro, con tardío',
  'That the runner is inside at any moment from the planned firing to the latest that a late shot may come.':
    'De que quien corre esté dentro en algún momento entre el disparo previsto y lo más tarde que puede llegar uno tardío.',
  'Time in hand': 'Tiempo de margen',
  "From the runner's leaving the stand-off to the effect; negative before that, 60 s when never inside.":
    'Desde que quien corre sale de la distancia dada hasta el efecto; negativo antes de salir, 60 s si nunca está dentro.',
  "Runner's least after the effect": 'Mínima tras el efecto',
  'Least distance from the effect from the planned moment to the end of the run, when debris may still fall.':
    'Menor distancia al efecto desde el momento previsto hasta el final de la carrera, cuando aún pueden caer restos.',
  'Time in hand at the decision': 'Margen al decidir',
  "Time in hand less the operator's reaction and the delay to the effect: what is left to see and hold.":
    'Tiempo de margen menos la reacción del operador y el retardo hasta el efecto: lo que queda para ver y retener.',
  'Cue to effect': 'De la señal al efecto',
  "From the runner's cue to the effect.": 'Desde la señal a quien corre hasta el efecto.',
  "Runner's speed as it goes": 'Velocidad de quien corre al disparar',
  'Nothing once the runner waits at the end.': 'Nula una vez que espera en el final.',
  "Spread of the runner's place": 'Dispersión del lugar de quien corre',
  'One standard deviation along the run when the effect goes.':
    'Una desviación típica a lo largo de la carrera cuando se dispara el efecto.',
  'Closest of the whole run': 'Lo más cerca de toda la carrera',
  'Least distance from the effect anywhere on the run, whenever it goes.':
    'Menor distancia al efecto en toda la carrera, se dispare cuando se dispare.',
  'Where the run ends': 'Donde acaba la carrera',
  'From the effect to where the runner waits.': 'Del efecto a donde espera quien corre.',
  'Crew from the debris': 'Equipo a los restos',
  'Least from the nearest crew to the middle of the debris, wherever it falls from still air to all the wind carries.':
    'Menor distancia del equipo más cercano al centro de los restos, caigan donde caigan entre la calma y todo lo que lleva el viento.',
  'Bystanders from the debris': 'Espectadores a los restos',
  'From the nearest bystander to the middle of the debris should the wind carry it straight there.':
    'Del espectador más cercano al centro de los restos si el viento los lleva derechos hacia él.',
  'Camera from the debris': 'Cámara a los restos',
  'The same for the nearest camera with people at it.': 'Lo mismo para la cámara atendida más cercana.',
  'Smoke drifts': 'Deriva del humo',
  'Downwind while it lasts.': 'A favor del viento mientras dura.',
  'Crew from the smoke': 'Equipo al humo',
  "From the nearest crew to the smoke's wedge; nothing inside it.":
    'Del equipo más cercano a la cuña de humo; nula dentro de ella.',
  'Flash to bang at the runner': 'Del destello al estampido, quien corre',
  'Time that the sound takes to the runner at the planned moment.':
    'Tiempo que tarda el sonido hasta quien corre en el momento previsto.',
  'Flash to bang at the crew': 'Del destello al estampido, equipo',
  'Time that the sound takes to the nearest crew.': 'Tiempo que tarda el sonido hasta el equipo más cercano.',
  'Runner against the stand-off': 'Quien corre y la distancia dada',
  'The runner is {distance} from the effect as it goes, {least} at the least; the operator gives {given}. Move the run out or the firing to when the runner is further.':
    'Quien corre está a {distance} del efecto al dispararse, a {least} como mínimo; el operador da {given}. Aleje la carrera o lleve el disparo a cuando esté más lejos.',
  "The chance is {chance} with the runner's place spread by {spread}; {accepted} is accepted. Fire by a mark, or give the run more distance.":
    'La probabilidad es {chance} con el lugar de quien corre disperso en {spread}; se admite {accepted}. Dispare por marca o dé más distancia a la carrera.',
  'Runner against a late shot': 'Quien corre y un disparo tardío',
  'Should the effect go up to {late} late, the runner is as near as {distance}, {least} at the least; the operator gives {given}.':
    'Si el efecto se dispara hasta {late} tarde, quien corre llega a estar a {distance}, a {least} como mínimo; el operador da {given}.',
  'From the planned moment to {late} after it the chance is {chance}; {accepted} is accepted. On a run that only leads away, a late shot finds the runner further out.':
    'Desde el momento previsto hasta {late} después la probabilidad es {chance}; se admite {accepted}. En una carrera que solo se aleja, un disparo tardío coge más lejos a quien corre.',
  'Runner once the effect has gone': 'Quien corre, tras el efecto',
  'From the effect on the runner is as near as {distance}, {least} at the least; the operator gives {given}, and debris may still be falling or a late shot go.':
    'Desde el efecto quien corre llega a estar a {distance}, a {least} como mínimo; el operador da {given}, y aún pueden caer restos o salir un disparo tardío.',
  'Where the runner waits': 'Donde espera quien corre',
  'The run ends {distance} from the effect, {least} at the least, and the operator gives {given}; the runner waits there until the operator says that nothing is left.':
    'La carrera acaba a {distance} del efecto, a {least} como mínimo, y el operador da {given}; quien corre espera ahí hasta que el operador diga que no queda nada.',
  'Time in hand at the effect': 'Tiempo de margen en el efecto',
  'The runner has {time} in hand, {least} at the least; {wanted} is wanted, so fire later after the runner is out.':
    'Quien corre tiene {time} de margen, {least} como mínimo; se quieren {wanted}: dispare más tarde tras su salida.',
  'Operator sees the runner clear': 'El operador ve libre a quien corre',
  'When the operator can last decide, the runner has {time} in hand; below {wanted} a fall is seen too late to hold the firing.':
    'Cuando el operador aún puede decidir, quien corre tiene {time} de margen; por debajo de {wanted} una caída se ve tarde para retener el disparo.',
  'Wait after a misfire': 'Espera tras un fallo',
  'Nobody goes near a misfire for {time}; {wanted} is wanted, and then the licensed operator goes alone.':
    'Nadie se acerca a un fallo durante {time}; se quieren {wanted}, y después va solo el operador titulado.',
  'Ways out that have been walked': 'Salidas ya recorridas',
  '{#count} are clear and walked; {wanted} are wanted, so that one is left if the wind or the effect shuts the other.':
    '{count} están despejadas y recorridas; se quieren {wanted}, para que quede una si el viento o el efecto cierra la otra.',
  'Crew against the debris zone': 'Equipo y la zona de restos',
  'Camera against the debris zone': 'Cámara y la zona de restos',
  'Camera behind its shield': 'Cámara tras su pantalla',
  'The nearest crew member is {distance} from the middle of the debris, {least} at the least with the wind; the operator gives {given}.':
    'El miembro del equipo más cercano está a {distance} del centro de los restos, a {least} como mínimo con el viento; el operador da {given}.',
  'The nearest open camera is {distance} from the middle of the debris, {least} at the least with the wind; the operator gives {given}.':
    'La cámara al descubierto más cercana está a {distance} del centro de los restos, a {least} como mínimo con el viento; el operador da {given}.',
  'The nearest shielded camera is {distance} from the middle of the debris, {least} at the least with the wind; the operator gives {given}.':
    'La cámara con pantalla más cercana está a {distance} del centro de los restos, a {least} como mínimo con el viento; el operador da {given}.',
  "Bystanders' separation": 'Separación de los espectadores',
  'Bystanders are {distance} away, {least} at the least; the greater of {least_given} and twice the debris zone is {apart}.':
    'Los espectadores están a {distance}, a {least} como mínimo; el mayor entre {least_given} y el doble de la zona de restos es {apart}.',
  'Bystanders against the debris zone': 'Espectadores y la zona de restos',
  'Should the wind turn their way, bystanders are {distance} from the middle of the debris, {least} at the least; the operator gives {given}.':
    'Si el viento gira hacia ellos, los espectadores están a {distance} del centro de los restos, a {least} como mínimo; el operador da {given}.',
  'Crew clear of the smoke': 'Equipo libre de humo',
  'The nearest crew is {distance} from the smoke, {least} at the least as the wind swings; {wanted} is wanted, so move upwind or wait.':
    'El equipo más cercano está a {distance} del humo, a {least} como mínimo según oscila el viento; se quieren {wanted}: póngase a barlovento o espere.',
  'The run from the cue': 'La carrera desde la señal',
  'Distance from the effect': 'Distancia al efecto',
  'Chance inside if it goes later': 'Probabilidad dentro si se retrasa',
  'Later by': 'Retraso',
  Chance: 'Probabilidad',
  'Nobody is in here from arming until the licensed operator says that the effect is spent and safe.':
    'Aquí no hay nadie desde el armado hasta que el operador titulado diga que el efecto está agotado y es seguro.',
  'The licensed operator expects debris here; nobody without a shield but the runner.':
    'El operador titulado espera restos aquí; nadie sin pantalla salvo quien corre.',
  'Light debris, carried by the wind': 'Restos ligeros, llevados por el viento',
  'The box around the same debris, from where it falls at once to as far as this wind carries it.':
    'El rectángulo en torno a los mismos restos, desde donde caen enseguida hasta donde los lleva este viento.',
  "The stand-off of {stand_off} and the debris zone of {debris} are the licensed operator's own; nothing here shows that they are enough.":
    'La distancia de {stand_off} y la zona de restos de {debris} son del operador titulado; nada de lo que hay aquí demuestra que basten.',
  'Debris may land {further} outside the stand-off, where the runner is: the operator and the coordinator settle what the runner wears and which way the runner faces.':
    'Pueden caer restos {further} fuera de la distancia, donde está quien corre: el operador y el coordinador acuerdan qué lleva puesto y hacia dónde mira.',
  'The firing mark lies past the end of the run, {length} from its start: the runner never passes it.':
    'La marca de disparo está más allá del final de la carrera, a {length} de su salida: quien corre no llega a pasarla.',
  'The whole run is inside the stand-off of {stand_off}: there is no moment to fire.':
    'Toda la carrera está dentro de la distancia de {stand_off}: no hay momento para disparar.',
  'The run starts inside the stand-off and is out {time} after the cue: until then an effect that goes early finds the runner inside, so arm only after that.':
    'La carrera empieza dentro de la distancia y sale {time} después de la señal: hasta entonces un efecto adelantado coge dentro a quien corre, así que arme solo después.',
  'From {time} after the cue the runner is inside the stand-off and stays there: a shot that has not gone by then must be held.':
    'Desde {time} después de la señal quien corre está dentro de la distancia y ahí se queda: un disparo que no haya salido para entonces debe retenerse.',
  'The runner is inside the stand-off from {from} to {to} after the cue: nothing may go then, early or late.':
    'Quien corre está dentro de la distancia de {from} a {to} después de la señal: entonces no puede dispararse nada, ni antes ni tarde.',
  'A shot up to {late} late finds the runner inside with a chance of {chance}; once it is called a misfire the runner stays at the end, and nobody goes to look.':
    'Un disparo hasta {late} tarde coge dentro a quien corre con una probabilidad de {chance}; una vez declarado fallo, quien corre se queda en el final y nadie va a mirar.',
  'The bang comes {runner} after the flash at the runner and {crew} at the crew: nobody takes it for a cue, and ears are covered before it.':
    'El estampido llega {runner} después del destello a quien corre y {crew} al equipo: nadie lo toma por señal, y los oídos se protegen antes.',
  'This wind carries light debris {debris} and smoke {smoke} before they are gone; look again at both when it turns or rises.':
    'Este viento lleva los restos ligeros {debris} y el humo {smoke} antes de que desaparezcan; vuelva a mirar ambos si cambia o arrecia.',
  'The runner is not computed before these are entered: {missing}.':
    'Quien corre no se calcula hasta indicar: {missing}.',
};
