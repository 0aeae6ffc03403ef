// Everything the core and the server say in sentences of their own, in Spanish.

import type { Said } from '../../said.ts';
import { airRam } from './air-ram.ts';
import { blankFiring } from './blank-firing.ts';
import { blastStandOff } from './blast-stand-off.ts';
import { bodyGimbal } from './body-gimbal.ts';
import { carHit } from './car-hit.ts';
import { casting } from './casting.ts';
import { clearance } from './clearance.ts';
import { deadManLine } from './dead-man-line.ts';
import { descenderDrop } from './descender-drop.ts';
import { fight } from './fight.ts';
import { fullBurn } from './full-burn.ts';
import { glassExit } from './glass-exit.ts';
import { highFall } from './high-fall.ts';
import { horseFall } from './horse-fall.ts';
import { lockOffComposite } from './lock-off-composite.ts';
import { mechanics } from './mechanics.ts';
import { motorcycleJump } from './motorcycle-jump.ts';
import { occluderSwitch } from './occluder-switch.ts';
import { podCar } from './pod-car.ts';
import { ratchetPull } from './ratchet-pull.ts';
import { roster } from './roster.ts';
import { runAssist } from './run-assist.ts';
import { slideIn } from './slide-in.ts';
import { stairFall } from './stair-fall.ts';
import { theDay } from './the-day.ts';
import { towedSurface } from './towed-surface.ts';
import { trail } from './trail.ts';
import { vehicleRoll } from './vehicle-roll.ts';
import { waterWork } from './water-work.ts';
import { wireFlight } from './wire-flight.ts';

export const said: Said = {
  rules: [
    highFall,
    ratchetPull,
    wireFlight,
    fullBurn,
    descenderDrop,
    deadManLine,
    occluderSwitch,
    airRam,
    slideIn,
    carHit,
    glassExit,
    lockOffComposite,
    waterWork,
    horseFall,
    bodyGimbal,
    motorcycleJump,
    podCar,
    stairFall,
    blastStandOff,
    fight,
    runAssist,
    towedSurface,
    vehicleRoll,
    blankFiring,
    mechanics,
    casting,
    clearance,
    theDay,
    roster,
  ],
  trail: [trail],
};
