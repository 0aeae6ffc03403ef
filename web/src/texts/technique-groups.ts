// Which group each technique is chosen from, by its machine name. A technique that is not named here is found under
// "other".

export const GROUPS = [
  'falls',
  'pulls',
  'wires',
  'fire',
  'blast',
  'vehicles',
  'bodies',
  'camera',
  'other',
] as const;
export type Group = (typeof GROUPS)[number];

const MEMBERS: Partial<Record<Group, readonly string[]>> = {
  falls: ['high-fall', 'descender-drop', 'dead-man-line'],
  pulls: ['ratchet-pull', 'air-ram'],
  wires: ['wire-flight', 'body-gimbal', 'run-assist'],
  fire: ['full-burn'],
  blast: ['glass-exit', 'blast-stand-off', 'blank-firing'],
  vehicles: ['towed-surface', 'pod-car', 'slide-in', 'car-hit', 'motorcycle-jump', 'vehicle-roll'],
  bodies: ['fight', 'stair-fall', 'horse-fall', 'water-work'],
  camera: ['occluder-switch', 'lock-off-composite'],
};

const groupOfName = new Map<string, Group>(
  Object.entries(MEMBERS).flatMap(([group, names]) => names.map((name) => [name, group as Group] as const)),
);

export function groupOf(technique: string): Group {
  return groupOfName.get(technique) ?? 'other';
}

/** Techniques under their groups, in the order they came; groups with none are left out. */
export function grouped<T extends { name: string }>(
  techniques: readonly T[],
): { group: Group; items: T[] }[] {
  return GROUPS.map((group) => ({
    group,
    items: techniques.filter((one) => groupOf(one.name) === group),
  })).filter((one) => one.items.length > 0);
}
