import type { wholeBags } from '../../core/mix/bags.ts';
import type { Design } from '../../core/mix/batch-design.ts';
import type { ResultSpec } from '../../islands/worksheet.ts';
import { FURTHER } from '../shared/mix/further.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';

/** The batch as worked out; the mixer loads it takes, and what whole bags would make of it. */
interface Worked {
  readonly design: Design;
  readonly loads: number;
  readonly bags: ReturnType<typeof wholeBags>;
}

const some = (kg: number) => (kg > 0 ? kg : undefined);
const mass = (of: (d: Design) => number, label: string, small = false) => ({
  label,
  kind: 'mass' as const,
  of: (r: Worked) => some(of(r.design)),
  ...(small ? { units: SMALL_MASS } : {}),
});
const binder = (kind: string) => (d: Design) =>
  d.binder.find((part) => part.kind === kind)?.mass ?? 0;

export const results: Readonly<Record<string, ResultSpec<Worked>>> = {
  cement: mass(binder('portland'), 'Cement'),
  slag: mass(binder('slag'), FURTHER.slag),
  ash: mass(binder('fly-ash'), FURTHER['fly-ash']),
  fume: mass(binder('silica-fume'), FURTHER['silica-fume']),
  limestone: mass(binder('limestone'), FURTHER.limestone),
  water: {
    label: 'Water to pour in',
    kind: 'mass',
    of: (r) => r.design.waterToAdd,
  },
  brought: {
    label: 'Water the damp sand, filler and admixture bring',
    kind: 'mass',
    of: ({ design: d }) => {
      const brought = d.broughtByFillers + d.broughtByAdmixture;
      return brought === 0 ? undefined : brought;
    },
  },
  sand: mass((d) => d.sand, 'Sand, as damp as it lies'),
  filler: mass((d) => d.lightFiller, 'Light filler, as it lies'),
  fibre: mass((d) => d.fibre, FURTHER.fibre, true),
  pigment: mass((d) => d.pigment, FURTHER.pigment, true),
  admixture: mass((d) => d.admixture, FURTHER.admixture, true),
  foam: {
    label: 'Foam to make',
    kind: 'volume',
    of: (r) => r.design.mix.foamVolume,
  },
  foamMass: { label: 'Foam, by weight', kind: 'mass', of: (r) => some(r.design.mix.foamMass) },
  wet: {
    label: 'Wet density',
    kind: 'density',
    of: (r) => r.design.wetDensity,
    answer: true,
  },
  dry: {
    label: 'Oven-dry density to expect',
    kind: 'density',
    of: (r) => r.design.ovenDryDensity,
  },
  content: {
    label: 'Cement content, with stand-ins',
    kind: 'density',
    of: (r) => r.design.cementitious / (r.design.mass / r.design.wetDensity),
  },
  ratio: {
    label: 'w/c with the foam’s water',
    kind: 'count',
    of: (r) => r.design.mix.waterCementTotal,
  },
  foamShare: {
    label: 'Foam in the mix, by volume',
    kind: 'ratio',
    of: (r) => (r.design.volumes.foam * r.design.wetDensity) / r.design.mass,
    units: PERCENT,
  },
  bagsNeeded: { label: 'Bags of cement', kind: 'count', of: (r) => r.bags.exact },
  base: {
    label: 'Base mix density',
    kind: 'density',
    of: (r) => r.design.mix.baseDensity,
    significant: 4,
  },
  cementitious: {
    label: 'Cement and stand-ins in all',
    kind: 'mass',
    of: (r) => r.design.cementitious,
  },
  mixing: { label: 'Water of the base mix in all', kind: 'mass', of: (r) => r.design.mix.water },
  loads: { label: 'Mixer loads', kind: 'count', of: (r) => r.loads, decimals: 0 },
  loadMass: { label: 'One load weighs', kind: 'mass', of: (r) => r.design.mass / r.loads },
};
