// What the core says of a slide-in to a mark, in Spanish, keyed by its own English words.

export const slideIn: Record<string, string> = {
  'Slide-in to a mark': 'Entrada derrapando hasta una marca',
  "A car brakes straight, slides on the hand brake and rests at a mark near people. Covers braking, slide and turn, the spread of the stop and the chances, wet and dry; leaves out kerbs, ruts, load shift and the driver's corrections.":
    'Un coche frena recto, derrapa con el freno de mano y queda en una marca cerca de personas. Incluye frenado, derrape y giro, la dispersión de la parada y las probabilidades, en mojado y en seco; no incluye bordillos, roderas, traslado de peso ni las correcciones del conductor.',
  'Approach speed': 'Velocidad de llegada',
  'At the brake mark, measured on the day and not read from the dial alone.':
    'En la marca de frenado, medida ese día y no solo leída en el velocímetro.',
  'Lateness at the brake mark': 'Retraso en la marca de frenado',
  'From passing the brake mark to braking, from runs; a driver who expects it needs little.':
    'De pasar la marca a frenar, según las pasadas; un conductor que la espera necesita poco.',
  'Share of grip braking straight': 'Parte del agarre al frenar recto',
  'How much of the friction the driver uses before the slide.':
    'Cuánto del rozamiento usa el conductor antes del derrape.',
  'Speed at the hand brake': 'Velocidad al freno de mano',
  'Where the hand brake comes on; as the approach speed or more when there is no straight braking.':
    'Cuando entra el freno de mano; igual o mayor que la de llegada si no se frena recto.',
  'Front wheels in the slide': 'Ruedas delanteras en el derrape',
  'Of the wheels, not the steering wheel, held from the hand brake to rest; 0 goes straight.':
    'De las ruedas, no del volante, mantenido del freno de mano hasta parar; 0 va recto.',
  'Friction, dry': 'Rozamiento, seco',
  'From braked runs on the surface itself. Dry asphalt is about 0.6 to 0.8, gravel 0.4 to 0.7.':
    'De frenadas en el propio firme. El asfalto seco da de 0,6 a 0,8, la grava de 0,4 a 0,7.',
  'Friction, wet': 'Rozamiento, mojado',
  'From braked runs on the surface wetted down. Wet asphalt is about 0.45 to 0.7, snow 0.1 to 0.25.':
    'De frenadas en el firme mojado. El asfalto mojado da de 0,45 a 0,7, la nieve de 0,1 a 0,25.',
  'Surface in the shot': 'Firme en el plano',
  Dry: 'Seco',
  Wet: 'Mojado',
  'Which of the two the shot is planned on; both are checked, because rain comes.':
    'Con cuál de los dos se prevé el plano; se comprueban ambos, porque puede llover.',
  'Rise of the road': 'Subida del firme',
  'Along the approach; negative where it falls towards the mark.':
    'A lo largo de la llegada; negativa si baja hacia la marca.',
  'Brake mark to stop mark': 'De marca de frenado a la de parada',
  "Along the approach, both for the car's middle.":
    'A lo largo de la llegada, ambas para el centro del coche.',
  'Allowed past the mark': 'Margen pasada la marca',
  'How far past its mark the car may stop and the shot still works.':
    'Cuánto puede pasarse de su marca el coche y que el plano valga.',
  'Stop mark to people': 'De la marca de parada a las personas',
  'From the stop mark on along the approach to the nearest person, camera crew included.':
    'De la marca de parada en adelante hasta la persona más cercana, incluido el equipo de cámara.',
  'Wanted heading at rest': 'Orientación deseada al parar',
  'How far the car has turned when it rests; 90 degrees is side on.':
    'Cuánto ha girado el coche al parar; 90 grados es de costado.',
  'Accepted chance past the mark': 'Probabilidad admitida de pasarse',
  'Chance of a spoiled take that the coordinator accepts.':
    'Probabilidad de toma perdida que acepta el coordinador.',
  'Accepted chance to reach people': 'Probabilidad admitida de alcanzar',
  'Chance in one run that the car comes to where people stand; a person chooses it and answers for it.':
    'Probabilidad en una pasada de que el coche llegue a donde hay personas; alguien la elige y responde de ella.',
  'Clear ground to the side': 'Espacio libre a los lados',
  'From the line of the approach to the nearest thing or person, on the nearer side.':
    'De la línea de llegada a la cosa o persona más cercana, en el lado más próximo.',
  'Reaction to an abort call': 'Reacción a un aviso de aborto',
  'From the call to braking, with a driver busy with the slide; roads are designed with 2.5 s.':
    'Del aviso a frenar, con un conductor ocupado en el derrape; las carreteras se proyectan con 2,5 s.',
  "Car's length": 'Largo del coche',
  'Bumper to bumper, with anything built on.': 'De parachoques a parachoques, con lo que lleve montado.',
  "Car's width": 'Ancho del coche',
  'With its mirrors.': 'Con los espejos.',
  Wheelbase: 'Distancia entre ejes',
  'Between the axles.': 'Entre los dos ejes.',
  'Share of weight in front': 'Parte del peso delante',
  'From scales under the front wheels, driver in; about 0.6 with the engine in front.':
    'De básculas bajo las ruedas delanteras, con el conductor; unos 0,6 con el motor delante.',
  Track: 'Ancho de vía',
  'Between the middles of the tyres of one axle, the narrower one.':
    'Entre los centros de los neumáticos de un eje, el más estrecho.',
  'Height of the centre of mass': 'Altura del centro de masas',
  'Over the ground, loaded; about 0.5 m for a saloon, 0.7 m for a tall car.':
    'Sobre el suelo, cargado; unos 0,5 m en un turismo, 0,7 m en un coche alto.',
  'Gap to people': 'Distancia a las personas',
  'From where the car comes nearest to the people, on the surface of the shot.':
    'De donde el coche llega más cerca a las personas, en el firme del plano.',
  'Past the mark': 'Pasada la marca',
  "Where the car's middle rests beyond its mark on the surface of the shot; negative is short of it.":
    'Dónde queda el centro del coche pasada su marca en el firme del plano; negativo es antes de ella.',
  'Chance to reach people, dry': 'Probabilidad de alcanzar, seco',
  'From the tolerances of speed, timing, friction, steering and road.':
    'Según las tolerancias de velocidad, tiempo, rozamiento, dirección y firme.',
  'Chance to reach people, wet': 'Probabilidad de alcanzar, mojado',
  'The same on the wet surface, driven as for the shot.': 'Lo mismo en mojado, conduciendo como en el plano.',
  'Chance past the mark, dry': 'Probabilidad de pasarse, seco',
  'Of resting further past the mark than allowed.': 'De quedar más allá de la marca de lo admitido.',
  'Chance past the mark, wet': 'Probabilidad de pasarse, mojado',
  'The same on the wet surface.': 'Lo mismo en mojado.',
  'Gap to people, dry': 'Distancia a las personas, seco',
  'From where the car comes nearest to the people, on the dry surface.':
    'De donde el coche llega más cerca a las personas, en seco.',
  'Gap to people, wet': 'Distancia a las personas, mojado',
  'From where the car comes nearest to the people, on the wet surface.':
    'De donde el coche llega más cerca a las personas, en mojado.',
  'Spread of the stop, dry': 'Dispersión de la parada, seco',
  'One standard deviation of where the car rests; a tolerance counts as two.':
    'Una desviación típica de dónde para el coche; una tolerancia cuenta como dos.',
  'Spread of the stop, wet': 'Dispersión de la parada, mojado',
  'Heading at rest': 'Orientación al parar',
  'How far the car has turned, on the surface of the shot.':
    'Cuánto ha girado el coche, en el firme del plano.',
  'Aside at rest': 'Desvío al parar',
  "How far the car's middle rests from the line of the approach.":
    'A cuánto de la línea de llegada queda el centro del coche.',
  'Reach to the side': 'Alcance lateral',
  'Furthest that a part of the car may come from that line on the way or at rest, on either surface, however it lies.':
    'Lo más lejos de esa línea que puede llegar una parte del coche, en marcha o parado, en cualquier firme y posición.',
  'Straight braking': 'Frenado recto',
  'From the brake mark to the hand brake, lateness included.':
    'De la marca de frenado al freno de mano, incluido el retraso.',
  Slide: 'Derrape',
  'Along the approach from the hand brake to rest.': 'A lo largo de la llegada, del freno de mano a parar.',
  'Brake mark to rest': 'De la marca de frenado a parar',
  'For the cue of whoever acts when the car arrives.':
    'Para dar la señal a quien actúa cuando llega el coche.',
  'Distance to stop on an abort': 'Distancia de parada si se aborta',
  "Straight, from the car's middle at the call to its nose at rest, at approach speed on the slipperier surface.":
    'En recto, del centro del coche al avisar a su morro al parar, a velocidad de llegada en el firme más resbaladizo.',
  'Margin against tipping': 'Margen contra el vuelco',
  'Static stability factor over the higher friction: at 1 the tyres can tip the car on level ground.':
    'Factor estático de estabilidad entre el mayor rozamiento: con 1 los neumáticos pueden volcar el coche en llano.',
  'On the {@surface} surface the chance is {#chance} with {gap} of gap and a spread of {spread}; {accepted} is accepted, so move the people back, slow down or brake earlier.':
    'En {surface} la probabilidad es {chance}, con {gap} de distancia y una dispersión de {spread}; se admite {accepted}: aleje a las personas, vaya más despacio o frene antes.',
  'The car rests {gap} from the people on the {@surface} surface, as little as {least} within the tolerances; {wanted} is wanted.':
    'En {surface} el coche queda a {gap} de las personas, hasta {least} con las tolerancias; se quieren {wanted}.',
  'On the {@surface} surface {#chance} of runs end more than {allowed} past the mark, with a spread of {spread}; move the brake mark back for this surface.':
    'En {surface}, {chance} de las pasadas acaban más de {allowed} pasada la marca, con una dispersión de {spread}; adelante el frenado para este firme.',
  'Room to stop on an abort': 'Espacio para parar si se aborta',
  'A call at the brake mark stops the car with its nose {distance} on, up to {most} within the tolerances; the people are {room} on, {least} at the least, so a later call comes too late.':
    'Un aviso en la marca de frenado para el coche con el morro a {distance}, hasta {most} con las tolerancias; las personas están a {room}, como mínimo a {least}, así que un aviso posterior llega tarde.',
  'The car reaches {reach} to the side, up to {most} within the tolerances, where {clear} are clear, {least} at the least.':
    'El coche llega {reach} hacia el lado, hasta {most} con las tolerancias, donde hay {clear} libres, como mínimo {least}.',
  "{#factor}: the car tips at that many times its tyres' grip on level ground; {wanted} is wanted, because a kerb or a rut trips it sooner.":
    '{factor}: el coche vuelca a esas veces el agarre de sus neumáticos en llano; se quiere {wanted}, porque un bordillo o una rodera lo vuelca antes.',
  'Friction that is counted on': 'Rozamiento con que se cuenta',
  '{#friction} is counted on; more than {most} is rarely measured on a road, so measure it again.':
    'Se cuenta con {friction}; más de {most} rara vez se mide en una carretera: mídalo otra vez.',
  'The run from the brake mark': 'La pasada desde la marca de frenado',
  Heading: 'Orientación',
  "Where the car's middle is": 'Dónde está el centro del coche',
  'Along the approach': 'A lo largo de la llegada',
  Aside: 'De lado',
  'Run-off of the car': 'Zona de escape del coche',
  'From as far behind the brake mark as it slides back to where one run in a million comes, wet or dry: nobody stands, crouches or leaves a camera with a person in here.':
    'Desde lo que retrocede por detrás de la marca de frenado hasta donde llega una pasada entre un millón, en mojado o en seco: aquí nadie está de pie ni agachado ni deja una cámara con una persona.',
  'From the brake mark to where one run in a million ends, wet or dry: nobody stands, crouches or leaves a camera with a person in here.':
    'De la marca de frenado a donde acaba una pasada de cada millón, en mojado o en seco: aquí nadie está de pie, agachado ni con una cámara atendida.',
  'The same run rests {further} further when the surface is wet: measure friction again after any rain, wetting down or oil.':
    'La misma pasada acaba {further} más allá con el firme mojado: mida otra vez el rozamiento tras lluvia, riego o aceite.',
  'The same run rests {further} further when the surface is dry: see whether the two frictions were exchanged.':
    'La misma pasada acaba {further} más allá con el firme seco: compruebe si los dos rozamientos están cambiados.',
  'The slope is steeper than locked wheels hold: the car slides back {back} from where it came furthest, and the gap is the one there.':
    'La pendiente es mayor de lo que aguantan las ruedas bloqueadas: el coche retrocede {back} desde donde llegó más lejos, y la holgura es la de allí.',
  'Within the spread of friction more than one run in a million does not come to rest: the run-off has no end that can be drawn.':
    'Con la dispersión del rozamiento, más de una pasada de cada millón no llega a parar: la zona de escape no tiene un final que se pueda dibujar.',
  'The hand brake is planned at {speed} and the car comes at {approach}: it slides from the mark with no straight braking.':
    'El freno de mano se prevé a {speed} y el coche llega a {approach}: derrapa desde la marca sin frenar recto.',
  'Off the wanted heading': 'Error de orientación',
  'The heading at rest less the wanted one: negative is turned less than wanted.':
    'La orientación al parar menos la deseada: negativo es girar menos de lo deseado.',
  'Turned past the wanted heading': 'Giro más allá del deseado',
  'Turned short of the wanted heading': 'Giro menor que el deseado',
  'The car rests turned by {heading}, {off} off what is wanted, {least} to {most} within the tolerances; more speed at the hand brake or more steering turns it further.':
    'El coche queda girado {heading}, a {off} de lo deseado, de {least} a {most} con las tolerancias; más velocidad al freno de mano o más dirección lo giran más.',
  'With this friction and this fall of the road the car does not come to rest.':
    'Con este rozamiento y esta bajada del firme el coche no llega a parar.',
  'The wet gap is {#times} spreads of {spread}: a burst tyre, a stuck hand brake or a late foot is not in that spread, so people need a way out as well as a gap.':
    'La distancia en mojado es de {times} dispersiones de {spread}: un reventón, un freno de mano trabado o un pie tardío no están en esa dispersión; las personas necesitan salida además de distancia.',
};
