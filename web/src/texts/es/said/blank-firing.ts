// What the core says of blank firing, in Spanish, keyed by its own English words.

export const blankFiring: Record<string, string> = {
  'Blank firing': 'Disparo de fogueo',
  "A weapon swings while it fires blanks near people. Covers who comes how near the muzzle and its line, against the stand-offs the armourer gives, a shield's cover, sound at the ear, misfires, cases and the count of rounds; leaves out what a blank throws, ricochets and sound in small rooms.":
    'Un arma gira mientras dispara fogueo cerca de personas. Incluye quién queda a qué distancia de la boca y de su línea, frente a las distancias que da el armero, lo que cubre una pantalla, el sonido en el oído, los fallos, las vainas y la cuenta de cartuchos; no incluye lo que lanza un cartucho de fogueo, los rebotes ni el sonido en salas pequeñas.',
  'Stand-off ahead, as given': 'Distancia al frente, según se da',
  'Given by the armourer for this weapon and blank: nobody within it in front of the muzzle.':
    'La da el armero para esta arma y este fogueo: nadie dentro de ella delante de la boca.',
  'Stand-off to the side, as given': 'Distancia al lado, según se da',
  'Given by the armourer: nobody within it in any other direction, for gas, wads and the action.':
    'La da el armero: nadie dentro de ella en cualquier otra dirección, por gases, tacos y mecanismo.',
  'Counts as ahead, to each side': 'Cuenta como frente, a cada lado',
  'Given by the armourer: within this angle of the line of fire the stand-off ahead holds.':
    'Lo da el armero: dentro de este ángulo de la línea de tiro rige la distancia al frente.',
  'Safe direction': 'Dirección segura',
  "Where a muzzle is held after a misfire, to the left of the set's axis, as the armourer shows it.":
    'Hacia donde se mantiene la boca tras un fallo, a la izquierda del eje del decorado, como la indica el armero.',
  'Wait after a misfire': 'Espera tras un fallo',
  'How long the muzzle is held in the safe direction before the armourer takes the weapon.':
    'Cuánto se mantiene la boca en la dirección segura antes de que el armero coja el arma.',
  'Chance that a round misfires': 'Probabilidad de que falle un cartucho',
  "From the armourer's own count with this weapon and blank.":
    'De la cuenta del propio armero con esta arma y este fogueo.',
  'Rounds are counted': 'Los cartuchos se cuentan',
  'Before the takes': 'Antes de las tomas',
  'After the takes': 'Tras las tomas',
  'Before the take rounds are out; after it every one is accounted for.':
    'Antes de la toma hay cartuchos fuera; después se da cuenta de cada uno.',
  'Rounds issued': 'Cartuchos entregados',
  'Blanks counted out by the armourer for these takes.':
    'Cartuchos contados y entregados por el armero para estas tomas.',
  'Rounds fired': 'Cartuchos disparados',
  "After the takes, from the armourer's count; leave out before.":
    'Tras las tomas, según la cuenta del armero; antes, déjelo en blanco.',
  'Rounds misfired': 'Cartuchos fallados',
  "After the takes: struck and not fired, now in the armourer's hands.":
    'Tras las tomas: percutidos y no disparados, ya en manos del armero.',
  'Rounds returned': 'Cartuchos devueltos',
  'After the takes: never chambered or cleared unstruck, counted back.':
    'Tras las tomas: nunca cargados o sacados sin percutir, contados de vuelta.',
  'Fired cases found': 'Vainas halladas',
  'After the takes: picked up or taken out of the weapon.': 'Tras las tomas: recogidas o sacadas del arma.',
  'Peak level of a shot, dB(C)': 'Nivel de pico de un disparo, dB(C)',
  "Measured to the side of this weapon with this blank, at the distance below. Not a maker's figure for live rounds.":
    'Medido al lado de esta arma con este fogueo, a la distancia de abajo. No es el dato de un fabricante para munición real.',
  'Measured at': 'Medido a',
  'From the muzzle to the meter, to the side.': 'De la boca al sonómetro, al lado.',
  'Louder ahead by, dB': 'Más fuerte al frente en, dB',
  "Level straight ahead less the level to the side; as much is taken off behind, but not at the firer's ear. Measure both.":
    'Nivel de frente menos el nivel al lado; otro tanto se resta detrás, pero no en el oído del tirador. Mida ambos.',
  'Louder by reflections, dB': 'Más fuerte por reflejos, dB',
  '0 in the open on soft ground; up to 6 by one hard wall close by, more in a hard corner.':
    '0 al aire libre en suelo blando; hasta 6 por una pared dura cercana, más en un rincón duro.',
  'Peak less exposure level, dB': 'Pico menos nivel de exposición, dB',
  'Peak in dB(C) less the A-weighted exposure level of one shot. About 25 to 35 for small arms, from memory; measure it.':
    'Pico en dB(C) menos el nivel de exposición con ponderación A de un disparo. De 25 a 35 en armas ligeras, de memoria; mídalo.',
  'Cases are thrown': 'Las vainas salen',
  'To the right': 'A la derecha',
  'To the left': 'A la izquierda',
  'Kept in the weapon': 'Quedan en el arma',
  'As the armourer names it; a revolver keeps its cases.':
    'Como lo indica el armero; un revólver conserva sus vainas.',
  'Cases leave at': 'Las vainas salen a',
  'From a filmed shot, or the range of cases on the ground.':
    'De un disparo filmado, o del alcance de las vainas en el suelo.',
  'Cases leave upward by': 'Las vainas salen hacia arriba',
  'Above the level, from a filmed shot.': 'Sobre la horizontal, de un disparo filmado.',
  'Height of the weapon': 'Altura del arma',
  'Muzzle and ejection port over the ground that people stand on.':
    'Boca y ventana de expulsión sobre el suelo que pisan las personas.',
  'Aim at the start': 'Puntería al empezar',
  "Line of fire to the left of the set's axis at the first round; negative is to the right. Beyond 180 degrees where it swings across the back.":
    'Línea de tiro a la izquierda del eje del decorado en el primer disparo; negativa es a la derecha. Más de 180 grados si gira por la espalda.',
  'Aim at the end': 'Puntería al acabar',
  'Line of fire at the last round; the same as at the start where it does not swing. Beyond 180 degrees where it swings across the back.':
    'Línea de tiro en el último disparo; la misma que al empezar si no gira. Más de 180 grados si gira por la espalda.',
  'First round to last': 'Del primer disparo al último',
  'In one take; the aim and the people move evenly over it.':
    'En una toma; la puntería y las personas se mueven por igual durante ese tiempo.',
  'Aim strays by': 'La puntería se desvía',
  'How far the line of fire strays to either side under recoil and acting, from dry runs on film.':
    'Cuánto se desvía la línea de tiro a cada lado con el retroceso y la actuación, según pases en seco filmados.',
  'Firer to muzzle': 'Del tirador a la boca',
  "From the firer's middle, about which the weapon swings, to the muzzle.":
    'Del centro del tirador, en torno al cual gira el arma, a la boca.',
  'Firer moves, along': 'El tirador se mueve, a lo largo',
  "During the firing, along the set's axis. Places are measured from where the firer starts.":
    'Durante el tiro, a lo largo del eje del decorado. Los lugares se miden desde donde empieza el tirador.',
  'Firer moves, across': 'El tirador se mueve, de lado',
  "During the firing, to the left of the set's axis.":
    'Durante el tiro, a la izquierda del eje del decorado.',
  'Performer starts, along': 'Intérprete al empezar, a lo largo',
  "The nearest other performer at the first round, along the set's axis.":
    'El otro intérprete más cercano en el primer disparo, a lo largo del eje del decorado.',
  'Performer starts, across': 'Intérprete al empezar, de lado',
  'The same, to the left of the axis.': 'Lo mismo, a la izquierda del eje.',
  'Performer ends, along': 'Intérprete al acabar, a lo largo',
  'The same performer at the last round.': 'El mismo intérprete en el último disparo.',
  'Performer ends, across': 'Intérprete al acabar, de lado',
  'Rounds in a take': 'Cartuchos por toma',
  'Fired by this weapon in one take.': 'Los que dispara esta arma en una toma.',
  'Takes in the day': 'Tomas en el día',
  'Takes that fire blanks, rehearsals that fire them included.':
    'Tomas en que se dispara fogueo, incluidos los ensayos en que se dispara.',
  'Nearest crew, along': 'Equipo más cercano, a lo largo',
  "Along the set's axis from where the firer starts.":
    'A lo largo del eje del decorado desde donde empieza el tirador.',
  'Nearest crew, across': 'Equipo más cercano, de lado',
  'To the left of the axis.': 'A la izquierda del eje.',
  'Nearest camera, along': 'Cámara más cercana, a lo largo',
  "The people at it, along the set's axis from where the firer starts.":
    'Las personas en ella, a lo largo del eje del decorado desde donde empieza el tirador.',
  'Nearest camera, across': 'Cámara más cercana, de lado',
  'Behind a shield, as given': 'Tras pantalla, según se da',
  'Given by the armourer: muzzle to people behind the shield used; only where there is one.':
    'La da el armero: de la boca a las personas tras la pantalla usada; solo donde la hay.',
  'Shield before the people': 'Pantalla ante las personas',
  'From the people at the camera to the shield that faces the middle of the sweep.':
    'De las personas en la cámara a la pantalla, que mira al centro del barrido.',
  'Shield width': 'Ancho de la pantalla',
  'The part that stops what a blank throws.': 'La parte que detiene lo que lanza un cartucho de fogueo.',
  'Shield top over the ground': 'Alto de la pantalla sobre el suelo',
  'Lowest part of its top edge; its foot reaches below anything to be covered.':
    'La parte más baja de su borde superior; su pie llega por debajo de todo lo que ha de cubrir.',
  'Width of people at the camera': 'Ancho de las personas en cámara',
  'Everybody who stays behind the shield, across.': 'Todos los que quedan tras la pantalla, a lo ancho.',
  'Head height at the camera': 'Altura de cabeza en cámara',
  'The tallest of them as they stand or sit.': 'La de la persona más alta, de pie o sentada.',
  "Firer's ear to muzzle": 'Del oído del tirador a la boca',
  'In the pose of the shot; shorter with the weapon held close.':
    'En la postura del plano; menor con el arma pegada al cuerpo.',
  "Performers' ear protection, dB": 'Protección de intérpretes, dB',
  "What the firer's and the other performer's plugs take off, as worn; 0 for bare ears.":
    'Lo que restan los tapones del tirador y del otro intérprete, tal como se llevan; 0 sin protección.',
  "Crew's ear protection, dB": 'Protección del equipo, dB',
  "What the crew's plugs or muffs take off, as worn; 0 for bare ears.":
    'Lo que restan los tapones u orejeras del equipo, tal como se llevan; 0 sin protección.',
  'Room beyond the stand-off': 'Espacio más allá de la distancia',
  'Least distance from the muzzle less the stand-off given for that direction and cover, over the whole sweep.':
    'Menor distancia a la boca menos la dada para esa dirección y protección, en todo el barrido.',
  'Nearest person ahead': 'Persona más cercana al frente',
  'Least distance from the muzzle to an unshielded person who is ahead of it; 300 m when nobody ever is.':
    'Menor distancia de la boca a una persona sin pantalla que esté al frente; 300 m si nunca hay nadie.',
  'Nearest to the line of fire': 'Lo más cerca de la línea de tiro',
  'Least angle between the line of fire and an unshielded person, at any moment of the sweep.':
    'Menor ángulo entre la línea de tiro y una persona sin pantalla, en cualquier momento del barrido.',
  'Muzzle to performer': 'De la boca al intérprete',
  'Least over the sweep, in any direction.': 'La menor en el barrido, en cualquier dirección.',
  'Muzzle to crew': 'De la boca al equipo',
  'Muzzle to camera': 'De la boca a la cámara',
  'Least over the sweep to the people at the camera, in any direction.':
    'La menor en el barrido hasta las personas en la cámara, en cualquier dirección.',
  'Spare cover of the shield': 'Margen que cubre la pantalla',
  'Least of what the shield reaches past the people, sideways and above, seen from the muzzle; negative is bare.':
    'Lo menos que la pantalla sobresale de las personas, a los lados y por arriba, vista desde la boca; negativo es al descubierto.',
  "Peak at the firer's ear, dB(C)": 'Pico en el oído del tirador, dB(C)',
  'Under protection as worn.': 'Bajo la protección tal como se lleva.',
  "Peak at the performer's ear, dB(C)": 'Pico en el oído del intérprete, dB(C)',
  'Loudest over the sweep, under protection as worn.':
    'El más fuerte del barrido, bajo la protección tal como se lleva.',
  "Peak at the crew's ear, dB(C)": 'Pico en el oído del equipo, dB(C)',
  'Loudest over the sweep at crew or camera, under protection as worn.':
    'El más fuerte del barrido en equipo o cámara, bajo la protección tal como se lleva.',
  'Peak pressure, firer': 'Presión de pico, tirador',
  'The same level as a sound pressure: 140 dB is 200 Pa.':
    'El mismo nivel como presión sonora: 140 dB son 200 Pa.',
  'Peak pressure, performer': 'Presión de pico, intérprete',
  'The same level as a sound pressure.': 'El mismo nivel como presión sonora.',
  'Peak pressure, crew': 'Presión de pico, equipo',
  'Protectors needed within': 'Protectores obligados hasta',
  'Distance ahead at which a bare ear still has 137 dB(C), where protectors must be worn.':
    'Distancia al frente a la que un oído sin protección aún recibe 137 dB(C), donde es obligado llevar protectores.',
  'Daily exposure, dB(A)': 'Exposición diaria, dB(A)',
  'Of the most exposed ear, all shots of the day spread over 8 hours.':
    'Del oído más expuesto, con todos los disparos del día repartidos en 8 horas.',
  'Noise dose of the day': 'Dosis de ruido del día',
  'The same as a share of 85 dB(A) over 8 hours.': 'Lo mismo como parte de 85 dB(A) durante 8 horas.',
  'Shots until a full dose': 'Disparos hasta la dosis completa',
  'Of this weapon at the most exposed ear; a million stands for more.':
    'De esta arma en el oído más expuesto; un millón vale por más.',
  'Chance of a misfire in a take': 'Probabilidad de fallo en una toma',
  'That at least one round of a take does not fire.': 'De que al menos un cartucho de una toma no dispare.',
  'Safe direction to people': 'De la dirección segura a personas',
  'Least angle from the safe direction to anybody, wherever the muzzle is when a round misfires.':
    'Menor ángulo de la dirección segura a cualquiera, esté donde esté la boca cuando falla un cartucho.',
  'Cases land within': 'Las vainas caen hasta',
  'To the side of the weapon, without drag and before they roll.':
    'Al lado del arma, sin resistencia del aire y antes de rodar.',
  'Cases to people': 'De las vainas a las personas',
  "Least distance from the cases' way to an unshielded person, over the whole sweep.":
    'Menor distancia del camino de las vainas a una persona sin pantalla, en todo el barrido.',
  'Rounds not accounted for': 'Cartuchos sin justificar',
  'Issued less fired, misfired and returned, either way.':
    'Entregados menos disparados, fallados y devueltos, en más o en menos.',
  'Cases not accounted for': 'Vainas sin justificar',
  'Fired less found, either way.': 'Disparados menos halladas, en más o en menos.',
  "Armourer's stand-off kept": 'Se guarda la distancia del armero',
  "Over the sweep the nearest person has {room} beyond the armourer's stand-off, {least} at the least; move people back or stop the swing sooner.":
    'En el barrido la persona más cercana tiene {room} más allá de la distancia del armero, {least} como mínimo; aleje a las personas o acabe antes el giro.',
  'People ahead against guidance': 'Personas al frente y la guía',
  'No unshielded person is within {angle} of the line of fire at any moment of the sweep.':
    'Ninguna persona sin pantalla está a menos de {angle} de la línea de tiro en ningún momento del barrido.',
  'Nobody unshielded is within {angle} of the line of fire as stated, but within the tolerances somebody is, as near as {least}; guidance is {wanted}.':
    'Según lo indicado nadie sin pantalla está a menos de {angle} de la línea de tiro, pero con las tolerancias hay alguien, a {least} lo más cerca; la guía es {wanted}.',
  'The nearest unshielded person within {angle} of the line of fire is {distance} away, {least} at the least; guidance is {wanted}.':
    'La persona sin pantalla más cercana a menos de {angle} de la línea de tiro está a {distance}, a {least} como mínimo; la guía es {wanted}.',
  'Given stand-off against guidance': 'La distancia dada y la guía',
  'The armourer gives {given} ahead and guidance is {wanted}; for less, the armourer shows with this weapon and blank why it is enough.':
    'El armero da {given} al frente y la guía es {wanted}; si es menos, el armero muestra con esta arma y este fogueo por qué basta.',
  'Nobody in the line of fire': 'Nadie en la línea de tiro',
  'The line of fire comes within {angle} of an unshielded person, {least} at the least; {cone} counts as ahead, straying included. Published guidance is never to point at anyone (Ontario film and television safety guideline 39, item 3): cheat the aim or move the person.':
    'La línea de tiro pasa a {angle} de una persona sin pantalla, a {least} como mínimo; {cone} cuenta como frente, desvío incluido. La guía publicada es no apuntar nunca a nadie (guía 39 de seguridad en cine y televisión de Ontario, punto 3): falsee la puntería o mueva a la persona.',
  "Shield covers the camera's people": 'La pantalla cubre a los de cámara',
  'Seen from the muzzle the shield reaches {spare} past the people at the worst moment, {least} at the least; {wanted} is wanted, so bring it nearer to the people, widen it or shorten the swing.':
    'Vista desde la boca, la pantalla sobresale {spare} de las personas en el peor momento, {least} como mínimo; se quieren {wanted}: acérquela a las personas, ensánchela o acorte el giro.',
  "Peak at the firer's ear": 'Pico en el oído del tirador',
  "Peak at the performer's ear": 'Pico en el oído del intérprete',
  "Peak at the crew's ear": 'Pico en el oído del equipo',
  'A shot peaks at {level} at the ear of the firer, up to {most} within the tolerances; {limit} is the limit, so give better protection, more distance or a quieter blank.':
    'Un disparo llega a {level} de pico en el oído del tirador, hasta {most} con las tolerancias; el límite es {limit}: dé mejor protección, más distancia o un fogueo más silencioso.',
  'A shot peaks at {level} at the ear of the performer, up to {most} within the tolerances; {limit} is the limit, so give better protection, more distance or a quieter blank.':
    'Un disparo llega a {level} de pico en el oído del intérprete, hasta {most} con las tolerancias; el límite es {limit}: dé mejor protección, más distancia o un fogueo más silencioso.',
  'A shot peaks at {level} at the ear of the crew, up to {most} within the tolerances; {limit} is the limit, so give better protection, more distance or a quieter blank.':
    'Un disparo llega a {level} de pico en el oído del equipo, hasta {most} con las tolerancias; el límite es {limit}: dé mejor protección, más distancia o un fogueo más silencioso.',
  "{#shots} shots give the most exposed ear {dose} of a day's dose, up to {most} within the tolerances; {allowed} shots fill it.":
    '{shots} disparos dan al oído más expuesto {dose} de la dosis de un día, hasta {most} con las tolerancias; {allowed} disparos la completan.',
  'Daily exposure to noise': 'Exposición diaria al ruido',
  '{#shots} shots over 8 hours come to {level} at the most exposed ear, up to {most} within the tolerances; {limit} is the limit.':
    '{shots} disparos en 8 horas suponen {level} en el oído más expuesto, hasta {most} con las tolerancias; el límite es {limit}.',
  'The muzzle is held in the safe direction for {time}; {wanted} is wanted, because a round may still go.':
    'La boca se mantiene en la dirección segura durante {time}; se quieren {wanted}, porque un cartucho aún puede salir.',
  'Nobody in the safe direction': 'Nadie en la dirección segura',
  'Held in the safe direction the muzzle comes within {angle} of somebody, {least} at the least; {cone} counts as ahead.':
    'Mantenida en la dirección segura, la boca queda a {angle} de alguien, a {least} como mínimo; {cone} cuenta como frente.',
  'People clear of thrown cases': 'Personas libres de vainas',
  'Hot cases fly {range} to the side and pass {distance} from the nearest unshielded person, {least} at the least; {wanted} is wanted, or a net at the port.':
    'Las vainas calientes vuelan {range} hacia el lado y pasan a {distance} de la persona sin pantalla más cercana, a {least} como mínimo; se quieren {wanted}, o una red en la ventana.',
  'Rounds issued for the plan': 'Cartuchos entregados para el plan',
  '{#issued} are issued for {planned} planned; rounds fetched in a hurry are where counts go wrong.':
    'Se entregan {issued} para {planned} previstos; las cuentas fallan con los cartuchos que se traen con prisa.',
  'Every round accounted for': 'Cada cartucho, justificado',
  '{#issued} issued, {fired} fired, {misfired} misfired and {returned} returned: {missing} not accounted for. Unless none is, the set stays closed until they are found.':
    '{issued} entregados, {fired} disparados, {misfired} fallados y {returned} devueltos: {missing} sin justificar. Si falta alguno, el decorado sigue cerrado hasta hallarlos.',
  'Every case accounted for': 'Cada vaina, justificada',
  '{#fired} fired and {found} cases found: {missing} not accounted for. A case that is missing may be a round still in the weapon.':
    '{fired} disparados y {found} vainas halladas: {missing} sin justificar. Una vaina que falta puede ser un cartucho aún en el arma.',
  'Distance from the muzzle': 'Distancia a la boca',
  Performer: 'Intérprete',
  Crew: 'Equipo',
  'Angle off the line of fire': 'Ángulo con la línea de tiro',
  'Peak at a bare ear, dB(C)': 'Pico en un oído sin protección, dB(C)',
  'Straight ahead': 'De frente',
  'To the side': 'Al lado',
  'Ahead of the muzzle, as given': 'Delante de la boca, según se da',
  "The box around the armourer's stand-off over the whole sweep: nobody is in here without a shield.":
    'El rectángulo en torno a la distancia del armero en todo el barrido: aquí nadie está sin pantalla.',
  'Around the weapon, as given': 'Alrededor del arma, según se da',
  "The armourer's stand-off in every other direction, wherever the firer is.":
    'La distancia del armero en las demás direcciones, esté donde esté el tirador.',
  "The stand-offs of {ahead} ahead and {aside} elsewhere are the armourer's for one weapon and one blank: a change of either asks for new ones.":
    'Las distancias de {ahead} al frente y {aside} en lo demás son del armero para un arma y un fogueo: si cambia uno de los dos, hacen falta otras.',
  'Up to {bare} ahead, {most} with every tolerance against it, a bare ear has {level} or more: everybody nearer wears protection, visitors too.':
    'Hasta {bare} al frente, {most} con todas las tolerancias en contra, un oído sin protección recibe {level} o más: todos los que estén más cerca llevan protección, también las visitas.',
  "The firer's ear is at {ear} and the level was measured at {measured}: so near, a blast is stronger than spreading sound says, so measure at the ear.":
    'El oído del tirador está a {ear} y el nivel se midió a {measured}: tan cerca, el golpe es más fuerte de lo que da el sonido al propagarse; mida en el oído.',
  'The chance of a misfire in a take is {chance}: the firer calls it, turns to the safe direction without crossing anybody, and waits {wait}; nobody else touches the weapon but the armourer.':
    'La probabilidad de un fallo en una toma es {chance}: el tirador lo avisa, gira a la dirección segura sin cruzar a nadie y espera {wait}; nadie más toca el arma salvo el armero.',
  '{#issued} rounds are out: the count is closed only after the takes, and the set is not released before it.':
    'Hay {issued} cartuchos fuera: la cuenta se cierra solo tras las tomas, y el decorado no se libera antes.',
  'People at the camera are in the open, {distance} from the muzzle at the least: an unmanned camera or a shield takes them out of it.':
    'Las personas en la cámara están al descubierto, a {distance} de la boca como mínimo: una cámara sin nadie o una pantalla las saca de ahí.',
  "Nobody's distance is computed before these are entered: {missing}.":
    'No se calcula la distancia de nadie hasta indicar: {missing}.',
};
