// What the core says of a pod car, in Spanish, keyed by its own English words.

export const podCar: Record<string, string> = {
  'Pod car': 'Coche con cabina oculta',
  "A hidden driver in a pod drives while an actor sits at the wheel. Covers tipping in a bend and a swerve, axle loads, stopping, sight, mounts and tie-downs; leaves out the frame's own strength, kerbs and ruts, wind and how the car handles.":
    'Un conductor oculto conduce desde una cabina añadida mientras un actor va al volante. Incluye el vuelco en una curva y en una esquiva, las cargas por eje, la frenada, la visibilidad, los anclajes y las sujeciones; no incluye la resistencia del propio bastidor, bordillos y roderas, el viento ni el comportamiento del coche.',
  'Of the hidden driver, clothed and kitted, weighed on the day.':
    'Del conductor oculto, vestido y equipado, pesado ese día.',
  'Mass of the pod': 'Masa de la cabina añadida',
  'Frame, seat, cage, controls and fixings, weighed, without the driver.':
    'Bastidor, asiento, jaula, mandos y fijaciones, pesados, sin el conductor.',
  "Height of the pod's middle": 'Altura del centro de la cabina',
  'Over the ground, of the mass of pod and driver together.':
    'Sobre el suelo, del centro de masas de cabina y conductor juntos.',
  'Pod ahead of the rear axle': 'Cabina por delante del eje trasero',
  'To the middle of its mass; negative when the pod hangs behind the axle.':
    'Hasta su centro de masas; negativo si la cabina cuelga detrás del eje.',
  "Pod's middle over its mounts": 'Centro de la cabina sobre sus anclajes',
  'From the plane of the mounts up to the middle of pod and driver.':
    'Del plano de los anclajes hasta el centro de cabina y conductor.',
  Mounts: 'Anclajes',
  'Bolted or clamped feet that carry the pod, half of them at each end.':
    'Apoyos atornillados o mordidos que llevan la cabina, la mitad en cada extremo.',
  'Mounts apart, along': 'Separación de anclajes, a lo largo',
  'Between the front and the rear mounts.': 'Entre los anclajes delanteros y los traseros.',
  'Mounts apart, across': 'Separación de anclajes, a lo ancho',
  'Between the left and the right mounts.': 'Entre los anclajes izquierdos y los derechos.',
  'Strength of one mount': 'Resistencia de un anclaje',
  'Breaking strength of its weakest part, roof or chassis included, as the engineer gives it.':
    'Carga de rotura de su parte más débil, techo o chasis incluidos, según el ingeniero.',
  'Tie-downs on the pod': 'Amarres de la cabina',
  'Straps or chains that hold it as well as its mounts.':
    'Cinchas o cadenas que la sujetan además de sus anclajes.',
  'Working load limit of each': 'Carga de trabajo de cada uno',
  'As marked on the strap or chain.': 'La marcada en la cincha o la cadena.',
  'How they run': 'Cómo van',
  'Car to pod, or same side': 'Del coche a la cabina, o al mismo lado',
  'Over the pod, side to side': 'Sobre la cabina, de lado a lado',
  'A tie-down from the car to the pod, or back to the same side, counts for half its limit.':
    'Un amarre del coche a la cabina, o que vuelve al mismo lado, cuenta por la mitad de su límite.',
  'Mass of the loaded car': 'Masa del coche cargado',
  'On scales with everybody and everything in the shot, without pod and pod driver.':
    'En báscula con todas las personas y cosas del plano, sin la cabina ni su conductor.',
  "Height of the car's middle": 'Altura del centro del coche',
  'Of the centre of mass of that loaded car, over the ground; about 0.55 m for a saloon.':
    'Del centro de masas de ese coche cargado, sobre el suelo; unos 0,55 m en un turismo.',
  'From scales under the front wheels of that loaded car.':
    'De básculas bajo las ruedas delanteras de ese coche cargado.',
  'Lean at a pull of 1 g': 'Balanceo con un tirón de 1 g',
  'Of the car with its pod, from a slow circle: the measured lean over the pull in g.':
    'Del coche con su cabina, en un círculo lento: la inclinación medida entre el tirón en g.',
  'Height that it leans about': 'Altura del eje de balanceo',
  'Of the roll axis under the middle of the mass; low on most cars.':
    'Del eje de balanceo bajo el centro de masas; bajo en casi todos los coches.',
  'Damping of the lean': 'Amortiguación del balanceo',
  'Share of critical; worn dampers give less, and a swerve shows it.':
    'Parte de la crítica; unos amortiguadores gastados dan menos, y se ve en una esquiva.',
  'Gross weight on the plate': 'Peso máximo de la placa',
  'Most that the maker allows in all.': 'Lo máximo que admite el fabricante en total.',
  'Front axle on the plate': 'Eje delantero según la placa',
  'Most that the maker allows on the front axle.': 'Lo máximo que admite el fabricante en el eje delantero.',
  'Rear axle on the plate': 'Eje trasero según la placa',
  'Most that the maker allows on the rear axle.': 'Lo máximo que admite el fabricante en el eje trasero.',
  'Full braking without the pod': 'Frenada a fondo sin la cabina',
  'Deceleration of that car from runs at its planned speed, before the pod is on.':
    'Deceleración de ese coche en pasadas a la velocidad prevista, antes de montar la cabina.',
  'Share of braking in front': 'Parte de la frenada delante',
  'Of the braking force, as the brakes are made.': 'De la fuerza de frenado, según están hechos los frenos.',
  Friction: 'Rozamiento',
  'From braked runs on the road itself, as wet as it may be. Wet asphalt is about 0.45 to 0.7.':
    'De frenadas en el propio firme, tan mojado como pueda estar. El asfalto mojado da de 0,45 a 0,7.',
  'Top speed': 'Velocidad máxima',
  'The fastest that the pod driver will go in the shot.':
    'La mayor a la que irá el conductor de la cabina en el plano.',
  'Speed in the bend': 'Velocidad en la curva',
  'Where speed and bend together are worst on the route.':
    'Donde velocidad y curva juntas son lo peor del recorrido.',
  'Radius of the bend': 'Radio de la curva',
  "Of the path of the car's middle in that bend.": 'De la trayectoria del centro del coche en esa curva.',
  'Outward fall of the bend': 'Caída de la curva hacia fuera',
  'How the road falls away to the outside of the bend; negative when it is banked inward.':
    'Cuánto cae el firme hacia el exterior de la curva; negativo si está peraltada hacia dentro.',
  'Swerve aside': 'Desvío de la esquiva',
  "What the pod driver must be able to dodge at top speed: about a car's width.":
    'Lo que el conductor de la cabina debe poder esquivar a velocidad máxima: como el ancho de un coche.',
  'Road for that swerve': 'Recorrido de esa esquiva',
  'Along the road from the first turn of the wheel until the car runs straight again.':
    'A lo largo del firme, del primer golpe de volante a ir recto de nuevo.',
  'Reaction of the pod driver': 'Reacción del conductor de la cabina',
  'From the abort word or the sight of trouble to braking; roads are designed with 2.5 s.':
    'De la palabra de aborto o de ver el peligro a frenar; las carreteras se proyectan con 2,5 s.',
  'Clear road ahead': 'Firme libre por delante',
  "Least, anywhere in the shot, from the car's nose to the nearest person or thing in its way.":
    'Lo menos, en cualquier momento del plano, del morro del coche a la persona o cosa más cercana en su camino.',
  'Sight ahead': 'Visibilidad por delante',
  'How far the pod driver sees the road ahead, at the worst place of the route.':
    'Hasta dónde ve el firme el conductor de la cabina, en el peor punto del recorrido.',
  "Pod driver's eyes": 'Ojos del conductor de la cabina',
  'Over the ground, belted in.': 'Sobre el suelo, con el cinturón puesto.',
  'Edge that hides the road': 'Borde que tapa el firme',
  'Height over the ground of the roof, bonnet, camera or light that the pod driver looks over.':
    'Altura sobre el suelo del techo, capó, cámara o foco por encima del que mira el conductor de la cabina.',
  'Eyes to that edge': 'De los ojos a ese borde',
  'Level, straight ahead.': 'En horizontal, recto hacia delante.',
  "Eyes to the car's nose": 'De los ojos al morro del coche',
  'Level, to the foremost part of the car or what is rigged on it.':
    'En horizontal, hasta lo más adelantado del coche o de lo montado en él.',
  'People aboard': 'Personas a bordo',
  'Everybody in, on or towed with the car, pod driver and camera crew included.':
    'Todas las que van dentro, encima o remolcadas, con el conductor de la cabina y el equipo de cámara.',
  'Wheel and pedals of the actor': 'Volante y pedales del actor',
  'Dead: nothing works': 'Anulados: nada funciona',
  'Live: something works': 'Activos: algo funciona',
  'What the actor can still steer, brake or drive, tried with the car on stands.':
    'Lo que el actor aún puede girar, frenar o mover, probado con el coche sobre borriquetas.',
  'Stability factor, loaded': 'Factor de estabilidad, cargado',
  "Track over twice the height of the whole's middle: the pull in g that tips a rigid car.":
    'Ancho de vía entre el doble de la altura del centro del conjunto: el tirón en g que vuelca un coche rígido.',
  'Pull that tips it': 'Tirón que lo vuelca',
  'The same with the lean on its springs and the fall of the bend taken off.':
    'Lo mismo, descontando el balanceo de los muelles y la caída de la curva.',
  'Sideways pull in the bend': 'Tirón lateral en la curva',
  'Speed squared over radius.': 'Velocidad al cuadrado entre el radio.',
  'Margin against rolling over': 'Margen contra el vuelco en curva',
  'The pull that tips it over the pull in the bend; at 1 the inner wheels lift.':
    'El tirón que lo vuelca entre el de la curva; con 1 se levantan las ruedas interiores.',
  'Speed that tips it in the bend': 'Velocidad que lo vuelca en la curva',
  'If the tyres held that well.': 'Si los neumáticos agarraran tanto.',
  'Tipping over grip': 'Vuelco frente a agarre',
  "The pull that tips it over the road's grip; below 1 it rolls before it slides.":
    'El tirón que lo vuelca entre el agarre del firme; por debajo de 1 vuelca antes de deslizar.',
  'Sideways pull of the swerve': 'Tirón lateral de la esquiva',
  'At its peak, at top speed, for the swerve aside in the road given.':
    'En su máximo, a velocidad máxima, para ese desvío en el recorrido dado.',
  'Share of grip in the swerve': 'Parte del agarre en la esquiva',
  'That pull over what the road can give.': 'Ese tirón entre lo que el firme puede dar.',
  'Load off the inner wheels': 'Carga que pierden las ruedas interiores',
  "Largest share in the swerve, the lean's own swing included; at 1 they lift.":
    'La mayor parte en la esquiva, con el propio vaivén del balanceo; con 1 se levantan.',
  'Share of grip in the bend': 'Parte del agarre en la curva',
  'The pull in the bend over what the road can give.':
    'El tirón de la curva entre lo que el firme puede dar.',
  'Whole mass': 'Masa total',
  'Car, pod and both drivers.': 'Coche, cabina y los dos conductores.',
  "Height of the whole's middle": 'Altura del centro del conjunto',
  'Over the ground, with the pod on.': 'Sobre el suelo, con la cabina montada.',
  'Share of weight in front, loaded': 'Parte del peso delante, cargado',
  'Standing, with the pod on: what the front wheels steer with.':
    'Parado, con la cabina montada: con lo que guían las ruedas delanteras.',
  'Front axle, loaded': 'Eje delantero, cargado',
  'Rear axle, loaded': 'Eje trasero, cargado',
  'Standing, with the pod on.': 'Parado, con la cabina montada.',
  'Front axle in full braking': 'Eje delantero frenando a fondo',
  'With the load that the stop throws forward.': 'Con la carga que la frenada echa hacia delante.',
  'Braking, loaded': 'Frenada, cargado',
  'The least of brakes with more to stop, and of either axle locking on this road.':
    'Lo menor entre unos frenos con más que parar y el bloqueo de un eje en este firme.',
  'Distance to stop': 'Distancia de parada',
  "From top speed, the driver's reaction included.":
    'Desde la velocidad máxima, con la reacción del conductor.',
  'Distance that the pod adds': 'Distancia que añade la cabina',
  'To the braking of the car by itself on this road.': 'A la frenada del coche solo en este firme.',
  'Sight that roads are designed for': 'Visibilidad con que se proyectan',
  'AASHTO stopping sight distance at top speed: 2.5 s and 3.4 m/s2.':
    'Distancia de visibilidad de parada AASHTO a velocidad máxima: 2,5 s y 3,4 m/s2.',
  'Road hidden before the nose': 'Firme oculto ante el morro',
  'From the nose to the first ground that the pod driver sees.':
    'Del morro al primer suelo que ve el conductor de la cabina.',
  "Tie-downs over the pod's weight": 'Amarres frente al peso de la cabina',
  'Working load limits that count, over the weight of pod and driver.':
    'Cargas de trabajo que cuentan, entre el peso de cabina y conductor.',
  'Stop that the mounts hold': 'Frenada que aguantan los anclajes',
  'Forward deceleration at which one mount comes to its strength.':
    'Deceleración hacia delante con la que un anclaje llega a su resistencia.',
  'Side pull that the mounts hold': 'Tirón lateral de los anclajes',
  'Sideways pull at which one mount comes to its strength.':
    'Tirón lateral con el que un anclaje llega a su resistencia.',
  'Factor on the mounts': 'Factor de los anclajes',
  "Strength over the worst load of one mount, by the road rule's pulls or the drive's own.":
    'Resistencia entre la peor carga de un anclaje, con los tirones de la norma o los de la conducción.',
  'People who can drive it': 'Personas que pueden conducirlo',
  "One when the actor's controls are dead, two when any is live.":
    'Una si los mandos del actor están anulados, dos si alguno está activo.',
  '{margin}, {least} at the worst of the tolerances, where {wanted} is wanted: the bend pulls {pull} and {tips} tip the car, so slow down or lower the pod.':
    '{margin}, {least} en lo peor de las tolerancias, y se quieren {wanted}: la curva tira {pull} y {tips} vuelcan el coche; vaya más despacio o baje la cabina.',
  'Slides before it tips': 'Desliza antes de volcar',
  "The car tips at {margin} times the road's grip, {least} at the worst; {wanted} is wanted, so lower the pod or widen the track.":
    'El coche vuelca a {margin} veces el agarre del firme, {least} en lo peor; se quieren {wanted}: baje la cabina o ensanche la vía.',
  'The people aboard feel {pull} in the bend, up to {most}; {limit} is the habit.':
    'Las personas a bordo sienten {pull} en la curva, hasta {most}; lo habitual es {limit}.',
  'The bend takes {share} of the grip, up to {most}; {limit} is the most wanted, so slow down or wait for a dry road.':
    'La curva toma {share} del agarre, hasta {most}; como mucho se quieren {limit}: vaya más despacio o espere al firme seco.',
  'At top speed the swerve takes {share} of the grip, up to {most}; {limit} is the most wanted, so leave it more road or go slower.':
    'A velocidad máxima la esquiva toma {share} del agarre, hasta {most}; como mucho se quieren {limit}: déle más recorrido o vaya más despacio.',
  "The swerve takes {share} of their load off the inner wheels, up to {most} with the lean's own swing; {limit} is the most wanted.":
    'La esquiva quita {share} de su carga a las ruedas interiores, hasta {most} con el propio vaivén del balanceo; como mucho se quieren {limit}.',
  'The whole comes to {mass}, up to {most}; the plate allows {limit}.':
    'El conjunto llega a {mass}, hasta {most}; la placa admite {limit}.',
  'The front axle carries {mass}, up to {most}, and the plate allows {limit}: move the pod back.':
    'El eje delantero lleva {mass}, hasta {most}, y la placa admite {limit}: retrase la cabina.',
  'The rear axle carries {mass}, up to {most}, and the plate allows {limit}: move the pod forward.':
    'El eje trasero lleva {mass}, hasta {most}, y la placa admite {limit}: adelante la cabina.',
  'Weight left to steer with': 'Peso que queda para guiar',
  '{share} of the weight stands on the front wheels, {least} at the worst; {wanted} is wanted, so move the pod forward or put ballast in front.':
    'Sobre las ruedas delanteras queda {share} del peso, {least} en lo peor; se quieren {wanted}: adelante la cabina o ponga lastre delante.',
  'Room to stop, loaded': 'Espacio para parar, cargado',
  'From top speed the loaded car stops in {distance}, up to {most}, at {braking} of braking; {room} of road are clear.':
    'Desde la velocidad máxima el coche cargado para en {distance}, hasta {most}, frenando a {braking}; hay {room} de firme libres.',
  'Stops within sight': 'Para dentro de lo que ve',
  'The pod driver sees {sight} ahead and needs {distance}, up to {most}, to stop.':
    'El conductor de la cabina ve {sight} por delante y necesita {distance}, hasta {most}, para parar.',
  'A public road would give {wanted} of sight at this speed, up to {most}; the pod driver has {sight}.':
    'Una carretera pública daría {wanted} de visibilidad a esta velocidad, hasta {most}; el conductor de la cabina tiene {sight}.',
  '{hidden} before the nose are hidden from the pod driver, up to {most}; {limit} is the most wanted, so raise the eyes or lower what is in the way, and nobody walks in front.':
    'Al conductor de la cabina se le ocultan {hidden} ante el morro, hasta {most}; como mucho se quieren {limit}: suba los ojos o baje lo que estorba, y que nadie pase por delante.',
  'Mounts in a hard stop': 'Anclajes en una frenada fuerte',
  'A mount comes to its strength at a stop of {pull}, {least} at the worst; the rule asks {limit}, so set the mounts wider apart or use stronger ones.':
    'Un anclaje llega a su resistencia frenando a {pull}, {least} en lo peor; la norma pide {limit}: separe más los anclajes o póngalos más fuertes.',
  'Mounts under a side pull': 'Anclajes con tirón lateral',
  'A mount comes to its strength at a side pull of {pull}, {least} at the worst; the rule asks {limit}.':
    'Un anclaje llega a su resistencia con un tirón lateral de {pull}, {least} en lo peor; la norma pide {limit}.',
  '{factor} on the worst loaded mount, {least} at the worst; {wanted} is wanted where a person sits on it.':
    '{factor} en el anclaje más cargado, {least} en lo peor; se quieren {wanted} si encima va una persona.',
  'The limits that count come to {share} of the weight of pod and driver, {weight}; the rule asks {limit}.':
    'Los límites que cuentan llegan a {share} del peso de cabina y conductor, {weight}; la norma pide {limit}.',
  '{#count} are aboard; the guideline for camera cars allows {limit}, so leave behind who need not ride.':
    'Van {count} a bordo; la guía para coches de cámara admite {limit}: deje en tierra a quien no haga falta.',
  'One person drives': 'Conduce una sola persona',
  "{#count} can steer, brake or drive the car; {limit} may, so the actor's wheel and pedals are made dead.":
    'El coche lo pueden guiar, frenar o mover {count}; puede hacerlo {limit}: anule el volante y los pedales del actor.',
  'The swerve at top speed': 'La esquiva a velocidad máxima',
  'Sideways pull': 'Tirón lateral',
  Lean: 'Inclinación',
  'Load moved to the outer wheels': 'Carga pasada a las ruedas exteriores',
  'The stop from top speed': 'La parada desde la velocidad máxima',
  'Before the moving car': 'Ante el coche en marcha',
  'Moves with the car from its nose: it cannot stop within this, and it may swerve to either side.':
    'Se mueve con el coche desde su morro: dentro de esto no puede parar, y puede desviarse a cualquier lado.',
  'The pod lifts the middle of the mass from {low} to {high}: in this bend the car tips at {speed}, sooner than it did without the pod.':
    'La cabina sube el centro de masas de {low} a {high}: en esta curva el coche vuelca a {speed}, antes que sin ella.',
  'With the pod on, braking from top speed takes {distance} more road than the car by itself.':
    'Con la cabina montada, frenar desde la velocidad máxima pide {distance} más de firme que el coche solo.',
  'The swerve would take {pull}, which this road does not give: the car slides straight on instead.':
    'La esquiva pediría {pull}, que este firme no da: el coche seguiría recto deslizando.',
  'In the swerve the inner wheels leave the ground: the load moved comes to {share} of theirs.':
    'En la esquiva las ruedas interiores se levantan: la carga que pasa llega a {share} de la suya.',
  "The pod driver's eyes at {eyes} are not over the edge at {edge}: no road ahead is seen at all.":
    'Los ojos del conductor de la cabina, a {eyes}, no quedan por encima del borde, a {edge}: no ve nada de firme por delante.',
  'With {share} of the weight in front one axle carries nothing: the car stands up, and braking is not computed.':
    'Con {share} del peso delante un eje no lleva nada: el coche se levanta, y la frenada no se calcula.',
  "{#people} ride at up to {speed}: the actor's abort word is tried with the pod driver before the car moves, and nobody stands on a tow bar.":
    'Van {people} a bordo a {speed} como mucho: la palabra de aborto del actor se prueba con el conductor de la cabina antes de mover el coche, y nadie va de pie en una barra de remolque.',
};
