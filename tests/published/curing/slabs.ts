import { conduct } from '../../../src/core/curing/heat/conduction.ts';
import { type Face, NO_FLOW, steadyFace } from '../../../src/core/curing/heat/face.ts';
import { temperatureInside } from '../../../src/core/curing/heat/inside.ts';

const START = 300;

/** Half a slab of unit half thickness and unit properties, its near face to `face`, its middle the far one. */
function halfSlab(face: Face, time: number, cells: number, steps: number) {
  return conduct({
    thickness: 1,
    conductivity: 1,
    heatCapacity: 1,
    initialTemperature: START,
    near: face,
    far: NO_FLOW,
    duration: time,
    step: time / steps,
    cells,
  });
}

/** Rise at a depth after the face was raised by 100 K and held, K. */
export function heldSlab(of: {
  readonly fromFace: number;
  readonly time: number;
  readonly cells: number;
  readonly steps: number;
}): number {
  const face = steadyFace({ temperature: START + 100, transfer: Number.POSITIVE_INFINITY });
  const run = halfSlab(face, of.time, of.cells, of.steps);
  return temperatureInside(run, of.fromFace, of.steps) - START;
}

/** Share of the first difference left at the middle and at the face, in air 100 K colder. */
export function convectiveSlab(of: {
  readonly biot: number;
  readonly fourier: number;
  readonly cells: number;
  readonly steps: number;
}): [middle: number, face: number] {
  const face = steadyFace({ temperature: START - 100, transfer: of.biot });
  const run = halfSlab(face, of.fourier, of.cells, of.steps);
  const left = (depth: number) => (temperatureInside(run, depth, of.steps) - (START - 100)) / 100;
  return [left(1), left(0)];
}
