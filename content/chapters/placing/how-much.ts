import { floatUp, upperHalfLift } from '~/core/placing/pressure.ts';
import { netVolume, type Shape, shapeVolume } from '~/core/placing/shapes.ts';
import { pieceVolume } from '~/core/placing/volume.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoPlan, demoSlab, demoSlabMix, demoVolume } from '~/worksheets/demo-worked.ts';

const { thickness } = demo.slab;
/** A millimetre of its thickness, as a share of a slab. */
export const millimetreOff = 0.001 / thickness;

/** How wide each of two holes through a slab is, m. */
export const hole = 0.04;
const through = { shape: 'cylinder', diameter: hole, height: thickness } as const satisfies Shape;
/** What the form of a slab holds, whole and with the holes, m³. */
export const slab = {
  whole: demoSlabMix.volume,
  holed: netVolume({ shape: demoSlab, cores: [{ shape: through, count: 2 }] }).net,
};

/** The core of a square planter, sloped one in ten on each side, m. */
const [wide, deep, side] = [0.2, 0.26, 0.3];
const end = wide - (2 * deep) / 10;
export const core = {
  shape: 'box-frustum',
  length: wide,
  width: wide,
  topLength: end,
  topWidth: end,
  height: deep,
} as const satisfies Shape;
const box = { shape: 'block', length: side, width: side, height: side } as const satisfies Shape;
const straight = {
  shape: 'block',
  length: wide,
  width: wide,
  height: deep,
} as const satisfies Shape;
const round = (shape: Shape) => netVolume({ shape: box, cores: [{ shape, count: 1 }] }).net;
/** What its form holds, m³, and how far short of that one computed with a straight core falls, as a share. */
export const planter = { side, holds: round(core), short: 1 - round(straight) / round(core) };

export const pot = {
  shape: 'cone-frustum',
  bottomDiameter: 0.2,
  topDiameter: 0.3,
  height: 0.25,
} as const satisfies Shape;
const asCylinder = pieceVolume({
  shape: 'cylinder',
  diameter: (pot.bottomDiameter + pot.topDiameter) / 2,
  height: pot.height,
});
/** What the pot holds, m³, and how far short a cylinder of its middle width falls of that, as a share. */
export const potHolds = {
  truly: shapeVolume(pot),
  asCylinder,
  short: 1 - asCylinder / shapeVolume(pot),
};

/** A closed ball of the demo mix: its width, m, and what lifts its upper half, N. */
const diameter = 0.4;
export const ball = {
  diameter,
  lift: upperHalfLift({ density: demo.wetDensity, diameter }),
};

/** A ball with a ball for its core, of the demo mix: widths and the wall between them, m. */
const [outside, inside] = [0.3, 0.25];
const sphere = (width: number) =>
  ({ shape: 'cap', baseDiameter: 0, height: width }) as const satisfies Shape;
const shut = netVolume({
  shape: sphere(outside),
  cores: [{ shape: sphere(inside), count: 1 }],
});
/** What it takes, m³, and the lift on a core that weighs next to nothing, N. */
export const hollowBall = {
  outside,
  wall: (outside - inside) / 2,
  takes: shut.net,
  lift: floatUp({ density: demo.wetDensity, displaced: shut.cores, mass: 0 }),
};

export const batch = demoVolume();
/** Of a part that used up the allowance for settling, kg/m³. */
export const settledDensity = demo.wetDensity * (1 + demoPlan.settling);

/** A test bar. */
export const bar = {
  shape: 'block',
  length: 0.3,
  width: 0.05,
  height: 0.05,
} as const satisfies Shape;
/** What four of them take, m³. */
export const fourBars = 4 * pieceVolume(bar);
