// What the core says of a lock-off composite, in Spanish. What it shares with other techniques of the camera is said
// there.

export const lockOffComposite: Record<string, string> = {
  'Lock-off composite': 'Composición con cámara fija',
  "Passes from one locked camera, joined later. Covers how far the corners move by turn, shift and focal length, what aligning cannot undo, and the sun's shadows and light between passes; leaves out lens distortion, clouds and haze.":
    'Pases desde una cámara bloqueada, unidos después. Incluye cuánto se mueven las esquinas por giro, desplazamiento y distancia focal, lo que alinear no corrige, y las sombras y la luz del sol entre pases; no incluye distorsión del objetivo, nubes ni bruma.',
  'Picture width': 'Ancho de imagen',
  'Picture elements across the frame that is joined.': 'Píxeles a lo ancho del encuadre que se une.',
  'Picture height': 'Alto de imagen',
  'Picture elements down the frame that is joined.': 'Píxeles a lo alto del encuadre que se une.',
  'Pan between passes': 'Giro lateral entre pases',
  'Turn to the right from the first to the last pass, read off a mark far away or off the head.':
    'Giro a la derecha del primer al último pase, leído en una marca lejana o en el cabezal.',
  'Tilt between passes': 'Inclinación entre pases',
  'Turn upward from the first to the last pass, read off a mark far away or off the head.':
    'Giro hacia arriba del primer al último pase, leído en una marca lejana o en el cabezal.',
  'Roll between passes': 'Alabeo entre pases',
  'Turn clockwise about the lens from the first to the last pass, read off a level or two marks.':
    'Giro horario en torno al objetivo del primer al último pase, leído en un nivel o en dos marcas.',
  'Shift across': 'Desplazamiento lateral',
  'How far the camera slid to the right between passes; a floor that gives counts too.':
    'Cuánto se deslizó la cámara a la derecha entre pases; también cuenta un suelo que cede.',
  'Shift up': 'Desplazamiento hacia arriba',
  'How far the camera rose between passes; negative when its legs sank.':
    'Cuánto subió la cámara entre pases; negativo si se hundieron las patas.',
  'Shift forward': 'Desplazamiento hacia delante',
  'How far the camera slid forward between passes.': 'Cuánto se deslizó la cámara hacia delante entre pases.',
  'Pupil ahead of the pan axis': 'Pupila por delante del eje',
  "From the head's pan axis forward to the lens's entrance pupil: a turn carries it sideways.":
    'Del eje de giro del cabezal a la pupila de entrada del objetivo: un giro la lleva de lado.',
  'Focal length change': 'Cambio de distancia focal',
  'Share by which the picture grew between passes: a zoom that crept, or focus that breathes.':
    'Parte en que creció la imagen entre pases: un zum que se corrió, o un foco que respira.',
  'Nearest thing on the join': 'Lo más cercano en la unión',
  'From the lens to the nearest thing that both passes show at the join.':
    'Del objetivo a lo más cercano que ambos pases muestran en la unión.',
  'Furthest thing on the join': 'Lo más lejano en la unión',
  'From the lens to the furthest thing that both passes show at the join.':
    'Del objetivo a lo más lejano que ambos pases muestran en la unión.',
  Light: 'Luz',
  'What lights the picture; only the sun casts shadows that move.':
    'Lo que ilumina la imagen; solo el sol da sombras que se mueven.',
  Sun: 'Sol',
  'Overcast or open shade': 'Nublado o a la sombra',
  'Lamps only': 'Solo focos',
  Latitude: 'Latitud',
  'North of the equator; negative is south.': 'Al norte del ecuador; negativo es sur.',
  Longitude: 'Longitud geográfica',
  'East of Greenwich; negative is west.': 'Al este de Greenwich; negativo es oeste.',
  Year: 'Año',
  'Of the day of the shot.': 'Del día del rodaje.',
  'Day of the year': 'Día del año',
  '1 is the first of January, 32 the first of February; by the date in universal time.':
    '1 es el uno de enero, 32 el uno de febrero; según la fecha en tiempo universal.',
  'First pass, universal time': 'Primer pase, tiempo universal',
  'Time since midnight in universal time, not on the wall clock of the place.':
    'Tiempo desde medianoche en tiempo universal, no en el reloj del lugar.',
  'Time between passes': 'Tiempo entre pases',
  'From the first pass that is joined to the last.': 'Del primer pase que se une al último.',
  Skyline: 'Perfil del horizonte',
  'How high hills, trees or walls stand where the sun goes down or comes up.':
    'A qué altura quedan montes, árboles o muros por donde se pone o sale el sol.',
  'Height that casts the shadow': 'Altura que da la sombra',
  'Of the thing whose shadow crosses the join.': 'De aquello cuya sombra cruza la unión.',
  'Ground kept clear round camera': 'Suelo despejado ante la cámara',
  'Nobody but the operator steps nearer than this between passes.':
    'Nadie salvo el operador se acerca más que esto entre pases.',
  'Worst drift at a corner': 'Peor deriva en una esquina',
  'The furthest that a corner or the middle moves between passes, near or far, all causes together.':
    'Lo más que se mueve una esquina o el centro entre pases, cerca o lejos, con todas las causas juntas.',
  'Drift left after aligning': 'Deriva que queda tras alinear',
  'What is left when one whole picture is moved, turned and scaled onto the other as well as can be.':
    'Lo que queda cuando una imagen entera se mueve, gira y escala sobre la otra lo mejor posible.',
  Parallax: 'Paralaje',
  'How much further the nearest thing moves than the furthest; no aligning undoes it.':
    'Cuánto más se mueve lo más cercano que lo más lejano; alinear no lo corrige.',
  'Drift by pan alone': 'Deriva solo por giro lateral',
  "The worst corner's move by the pan and nothing else.":
    'Movimiento de la peor esquina por el giro lateral y nada más.',
  'Drift by tilt alone': 'Deriva solo por inclinación',
  "The worst corner's move by the tilt and nothing else.":
    'Movimiento de la peor esquina por la inclinación y nada más.',
  'Drift by roll alone': 'Deriva solo por alabeo',
  "The worst corner's move by the roll and nothing else.":
    'Movimiento de la peor esquina por el alabeo y nada más.',
  'Drift by shift alone': 'Deriva solo por desplazamiento',
  "The worst corner's move by the pupil's shift, the part that a turn carries it included.":
    'Movimiento de la peor esquina por el desplazamiento de la pupila, incluido lo que la lleva un giro.',
  'Drift by focal length alone': 'Deriva solo por distancia focal',
  "The worst corner's move by the change of focal length and nothing else.":
    'Movimiento de la peor esquina por el cambio de distancia focal y nada más.',
  'Sun at the first pass': 'Sol en el primer pase',
  'Sun at the last pass': 'Sol en el último pase',
  'Height of the sun above a level horizon, as seen through air.':
    'Altura del sol sobre un horizonte llano, vista a través del aire.',
  'Sun above the skyline': 'Sol sobre el perfil del horizonte',
  'Height of the lower of the two suns above the skyline.':
    'Altura del más bajo de los dos soles sobre el perfil del horizonte.',
  'Shadow turn': 'Giro de la sombra',
  'Angle between the shadows of the first and the last pass.':
    'Ángulo entre las sombras del primer y el último pase.',
  'Shadow at the first pass': 'Sombra en el primer pase',
  'Shadow at the last pass': 'Sombra en el último pase',
  'Length on level ground of the shadow of the height entered.':
    'Longitud en suelo llano de la sombra de la altura indicada.',
  'Shadow length change': 'Cambio de longitud de la sombra',
  'Share by which the shadow grew or shrank between passes.':
    'Parte en que la sombra creció o menguó entre pases.',
  'Shadow tip moves': 'La punta de la sombra se mueve',
  "How far the shadow's tip moves over level ground between passes.":
    'Cuánto se mueve la punta de la sombra en suelo llano entre pases.',
  'Direct light change, in stops': 'Cambio de luz directa, en pasos',
  'Change of direct sunlight between passes in clear air; a stop is a factor of two.':
    'Cambio de luz solar directa entre pases con aire limpio; un paso es un factor de dos.',
  'Drift against the pixel limit': 'Deriva frente al límite de píxeles',
  'A corner moves by {drift} between passes, most of it by {cause}; the limit is {limit}, so lock the head, weigh the legs down and shoot a still of the marks before each pass.':
    'Una esquina se mueve {drift} entre pases, sobre todo por {cause}; el límite es {limit}: bloquee el cabezal, lastre las patas y tome una foto de las marcas antes de cada pase.',
  pan: 'giro lateral',
  tilt: 'inclinación',
  roll: 'alabeo',
  shift: 'desplazamiento',
  'focal length': 'distancia focal',
  'Drift that aligning leaves': 'Deriva que deja la alineación',
  '{left} are left after the best alignment of the whole picture; {limit} can be hidden, so keep near things off the join or stop the camera from shifting.':
    'Quedan {left} tras la mejor alineación de la imagen entera; pueden disimularse {limit}: aparte lo cercano de la unión o evite que la cámara se desplace.',
  'Ground kept clear round the camera': 'Suelo despejado alrededor de la cámara',
  '{clear} round the camera are kept clear between passes; {habit} is the habit, more on boards or soft ground.':
    'Se dejan libres {clear} alrededor de la cámara entre pases; lo habitual son {habit}, más sobre tablas o suelo blando.',
  'The sun stands {height} over the skyline at its lower pass; under {limit} it goes or comes while you shoot, so bring the passes nearer to midday.':
    'En su pase más bajo el sol queda {height} sobre el perfil del horizonte; por debajo de {limit} se va o llega mientras rueda: acerque los pases al mediodía.',
  'Turn of the shadows': 'Giro de las sombras',
  'Shadows turn by {turn} between passes and the tip moves {tip}; {limit} goes unseen, so bring the passes closer together or shade the join.':
    'Las sombras giran {turn} entre pases y la punta se mueve {tip}; {limit} no se nota: acerque los pases entre sí o ponga la unión en sombra.',
  'Length of the shadows': 'Longitud de las sombras',
  'Shadows change in length by {change} between passes; {limit} goes unseen, so shoot nearer to midday or closer together.':
    'Las sombras cambian {change} de longitud entre pases; {limit} no se nota: ruede más cerca del mediodía o más seguido.',
  'Change of direct light': 'Cambio de luz directa',
  'Clear sun changes by {stops} stops between passes; {limit} can be evened out, and its colour shifts too when it is low.':
    'El sol despejado cambia {stops} pasos entre pases; pueden igualarse {limit}, y si está bajo cambia también de color.',
  'Drift along the middle row': 'Deriva en la fila central',
  'From the middle': 'Desde el centro',
  'Nearest thing': 'Lo más cercano',
  'Furthest thing': 'Lo más lejano',
  'The sun between passes': 'El sol entre pases',
  'Time from the first pass': 'Tiempo desde el primer pase',
  'Height of the sun': 'Altura del sol',
  Shadow: 'Sombra',
  'Round the locked camera': 'Alrededor de la cámara bloqueada',
  'Nobody steps here between passes: a footfall on the same boards moves the picture.':
    'Nadie pisa aquí entre pases: una pisada en las mismas tablas mueve la imagen.',
  "What stands {near} off moves {parallax} more than the background, by the camera's shift alone; nothing done later undoes that.":
    'Lo que está a {near} se mueve {parallax} más que el fondo, solo por el desplazamiento de la cámara; nada que se haga después lo corrige.',
  'A drift of {drift} is a matter for the picture; that each pass is clear of what the other holds is a matter of life, and is read back before every pass.':
    'Una deriva de {drift} es cosa de la imagen; que en cada pase no esté lo que hay en el otro es cuestión de vida, y se repite en voz alta antes de cada pase.',
  'The sun is down at one of the passes, so there are no shadows to match.':
    'En uno de los pases el sol está puesto, así que no hay sombras que igualar.',
  'The sun goes from {first} to {last} above the horizon in clear air; a cloud in one pass undoes the match.':
    'El sol pasa de {first} a {last} sobre el horizonte con aire limpio; una nube en un pase lo desbarata.',
  'Not everything is computed before these are entered: {list}.': 'No se calcula todo hasta indicar: {list}.',
};
