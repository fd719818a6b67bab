import type { wholeBags } from '../../core/mix/bags.ts';
import type { Design } from '../../core/mix/batch-design.ts';
import type { Say } from '../../islands/engine/say.ts';
import { DENSITY, LITRES, PERCENT } from '../shared/amounts.ts';

export const NAMES: Readonly<Record<keyof Design['volumes'], string>> = {
  binder: 'cement',
  fillers: 'sand and filler',
  pigment: 'pigment',
  fibre: 'fibre',
  water: 'water',
  foam: 'foam',
};

const BINDERS: Readonly<Record<string, string>> = {
  portland: 'Cement',
  slag: 'Ground slag',
  'fly-ash': 'Fly ash',
  'silica-fume': 'Silica fume',
  limestone: 'Limestone powder',
};

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
    ['Light filler', design.lightFiller],
    ['Fibre', design.fibre],
    ['Pigment', design.pigment],
    ['Admixture', design.admixture],
  ];
  // A third of a kilogram is weighed in grams.
  const kg = (x: number) => say(x, 'mass', x < 0.5 ? { units: { metric: 'g', us: 'oz' } } : {});
  const row = (name: string, all: number, put: (x: number) => string, held: string) => [
    name,
    put(all),
    put(all / by.loads),
    held,
    put(all / by.parts),
  ];
  const held = (mass: number) => say(mass / by.volume, 'density', { units: DENSITY });
  return [
    ...things.filter(([, mass]) => mass > 0).map(([name, mass]) => row(name, mass, kg, held(mass))),
    row(
      'Foam',
      design.mix.foamVolume,
      (x) => say(x, 'volume', { units: LITRES }),
      say(design.volumes.foam / by.volume, 'ratio', { units: PERCENT }),
    ),
    row('All of it', design.mass, (x) => say(x, 'mass'), held(design.mass)),
  ];
}

/** What is weighed out otherwise than as cement, water, dry sand and foam alone, kg; undefined for nothing. */
export function further(d: Design): number | undefined {
  const binder = d.binder.filter(({ kind }) => kind !== 'portland').map(({ mass }) => mass);
  const parts = [...binder, d.lightFiller, d.fibre, d.pigment, d.admixture];
  const all = parts.reduce((sum, mass) => sum + mass, Math.abs(d.broughtByFillers));
  return all > NOTHING ? all : undefined;
}
/** kg */
const NOTHING = 1e-6;

/** What whole bags do: the recipe kept, or the volume. */
export function bagRows({ down, up }: ReturnType<typeof wholeBags>, say: Say): string[][] {
  const row = (choice: typeof up) => {
    const { sameVolume } = choice;
    // With more cement the base mix overfills the volume; with less the foam takes too much of a total of water.
    const not = choice === down ? 'too little water' : 'does not fit';
    const density = (of: 'wetDensity' | 'ovenDryDensity') =>
      sameVolume ? say(sameVolume[of], 'density', { units: DENSITY }) : not;
    return [
      `${choice.bags}`,
      say(choice.volume, 'volume', { units: LITRES }),
      density('wetDensity'),
      density('ovenDryDensity'),
    ];
  };
  return down && down.bags !== up.bags ? [row(down), row(up)] : [row(up)];
}
