import type { wholeBags } from '../../core/mix/bags.ts';
import type { Design } from '../../core/mix/batch-design.ts';
import type { Say } from '../../islands/engine/say.ts';
import { FURTHER, FURTHER_NAMES, type Further } from '../shared/mix/further.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';

export const NAMES: Readonly<Record<keyof Design['volumes'], string>> = {
  binder: 'cement',
  fillers: 'sand and filler',
  pigment: 'pigment',
  fibre: 'fibre',
  water: 'water',
  foam: 'foam',
};

const BINDERS: Readonly<Record<string, string>> = { portland: 'Cement', ...FURTHER };

/** Each thing to weigh out, for the batch, a load and a part; and how much of it the mix holds. */
export function amountsOf(
  design: Design,
  by: { readonly loads: number; readonly volume: number; readonly parts: number },
  say: Say,
): string[][] {
  const things: (readonly [string, number])[] = [
    ...design.binder.map(({ kind, mass }) => [BINDERS[kind]!, mass] as const),
    ['Water', design.waterToAdd],
    ['Sand', design.sand],
    [FURTHER.lightFiller, design.lightFiller],
    [FURTHER.fibre, design.fibre],
    [FURTHER.pigment, design.pigment],
    [FURTHER.admixture, design.admixture],
  ];
  // A third of a kilogram is weighed in grams.
  const kg = (x: number) => say(x, 'mass', x < 0.5 ? { units: SMALL_MASS } : {});
  const row = (name: string, all: number, put: (x: number) => string, held: string) => [
    name,
    put(all),
    put(all / by.loads),
    held,
    put(all / by.parts),
  ];
  const held = (mass: number) => say(mass / by.volume, 'density');
  return [
    ...things.filter(([, mass]) => mass > 0).map(([name, mass]) => row(name, mass, kg, held(mass))),
    row(
      'Foam',
      design.mix.foamVolume,
      (x) => say(x, 'volume'),
      say(design.volumes.foam / by.volume, 'ratio', { units: PERCENT }),
    ),
    row('All of it', design.mass, (x) => say(x, 'mass'), held(design.mass)),
  ];
}

/** How much of a thing of that name it takes, kg; undefined for nothing. */
const furtherOf = ({ binder, ...others }: Design, name: Further): number | undefined =>
  (name in others
    ? others[name as keyof typeof others & Further]
    : binder.find(({ kind }) => kind === name)?.mass) || undefined;

/** What is weighed out beside cement, water, sand and foam, each and in all, kg. */
export const leavesFurther = {
  ...Object.fromEntries(
    FURTHER_NAMES.map((name) => [
      `mix.${name}`,
      ({ design }: { readonly design: Design }) => furtherOf(design, name),
    ]),
  ),
  'mix.further': ({ design }: { readonly design: Design }) =>
    FURTHER_NAMES.reduce((sum, name) => sum + (furtherOf(design, name) ?? 0), 0),
  // What takes no part in the water and the cement is put in as planned, and can be counted: m³.
  'mix.furtherVolume': ({ design }: { readonly design: Design }) =>
    FURTHER_NAMES.some((name) => name !== 'fibre' && name !== 'pigment' && furtherOf(design, name))
      ? 0
      : design.volumes.fibre + design.volumes.pigment,
};

/** What whole bags do: the recipe kept, or the volume. */
export function bagRows({ down, up }: ReturnType<typeof wholeBags>, say: Say): string[][] {
  const row = (choice: typeof up) => {
    const { sameVolume } = choice;
    // With more cement the base mix alone exceeds the volume. With less, the foam takes too much of a
    // water that is counted in all.
    const not = choice === down ? 'too little water' : 'does not fit';
    const density = (of: 'wetDensity' | 'ovenDryDensity') =>
      sameVolume ? say(sameVolume[of], 'density') : not;
    return [
      `${choice.bags}`,
      say(choice.volume, 'volume'),
      density('wetDensity'),
      density('ovenDryDensity'),
    ];
  };
  return down && down.bags !== up.bags ? [row(down), row(up)] : [row(up)];
}
