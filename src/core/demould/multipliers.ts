/** A multiplier on the weight of a part, from a published table. */
export interface HandlingMultiplier {
  /** What the table says it applies to, as a short code. */
  readonly form: FormShape | 'any';
  readonly finish: 'retarded-exposed' | 'smooth-oiled' | 'any';
  readonly during: 'stripping' | 'yard-handling' | 'travel';
  readonly factor: number;
}

export type FormShape = 'flat-removable-sides' | 'flat-with-joints' | 'fluted' | 'sculptured';

const row = (
  form: HandlingMultiplier['form'],
  finish: HandlingMultiplier['finish'],
  during: HandlingMultiplier['during'],
  factor: number,
): HandlingMultiplier => ({ form, finish, during, factor });

/**
 * Factor on the weight of a part that is free of its form and carried. From memory.
 * @source pci-handbook
 */
export const CARRIED = 1.2;

/**
 * Multipliers on the weight of a normal-weight precast part for form suction, impact and travel.
 * From memory, unchecked against a copy. None is published for foamed concrete, which weighs less
 * than its mould's suction assumes: that is why `MOULD_ADHESION` is the better guide for a light
 * part.
 * @source pci-handbook
 */
export const HANDLING_MULTIPLIERS: readonly HandlingMultiplier[] = [
  row('flat-removable-sides', 'retarded-exposed', 'stripping', 1.2),
  row('flat-with-joints', 'retarded-exposed', 'stripping', 1.3),
  row('fluted', 'retarded-exposed', 'stripping', 1.4),
  row('sculptured', 'retarded-exposed', 'stripping', 1.5),
  row('flat-removable-sides', 'smooth-oiled', 'stripping', 1.3),
  row('flat-with-joints', 'smooth-oiled', 'stripping', 1.4),
  row('fluted', 'smooth-oiled', 'stripping', 1.6),
  row('sculptured', 'smooth-oiled', 'stripping', 1.7),
  row('any', 'any', 'yard-handling', CARRIED),
  row('any', 'any', 'travel', 1.5),
];

/**
 * Which multiplier goes with a form, a finish and a stage? Undefined when the table has none. No
 * range is published for foamed concrete.
 * @source pci-handbook
 */
export function handlingMultiplier(asked: {
  readonly form: FormShape;
  readonly finish: 'retarded-exposed' | 'smooth-oiled';
  readonly during: HandlingMultiplier['during'];
}): HandlingMultiplier | undefined {
  return HANDLING_MULTIPLIERS.find(
    (m) =>
      m.during === asked.during &&
      (m.form === 'any' || m.form === asked.form) &&
      (m.finish === 'any' || m.finish === asked.finish),
  );
}

export type MouldFace = 'oiled-steel-or-plastic' | 'varnished-timber' | 'rough-timber';

/**
 * The pull of a mould on the face that leaves it, Pa (the first is "at least"). From memory,
 * unchecked against a copy, and given for ordinary concrete.
 * @source cen-tr-15728
 */
export const MOULD_ADHESION: Readonly<Record<MouldFace, number>> = {
  'oiled-steel-or-plastic': 1000,
  'varnished-timber': 2000,
  'rough-timber': 3000,
};

/**
 * How many times its load a lifting insert or hardware of a precast part must hold. From memory.
 * @source osha-1926-704
 */
export const LIFTING_HARDWARE_FACTOR = {
  /** Inserts in precast parts other than tilt-up. */
  insert: 4,
  /** Inserts in tilt-up parts. */
  tiltUpInsert: 2,
  /** Lifting hardware: hooks, slings, shackles. */
  hardware: 5,
} as const;
