import { longestSpan, panelBending } from '~/core/placing/panel.ts';
import { floatUp, headPressure, leaningFace, sidePush } from '~/core/placing/pressure.ts';
import { STANDARD_GRAVITY } from '~/core/quantity/constants.ts';
import { fromUnit } from '~/core/quantity/convert.ts';
import { demo } from '~/worksheets/demo.ts';

// Masses in kg, measures in m, pressures in Pa, forces in N throughout.

const density = demo.wetDensity;
/** The mass that weighs as much as a force. */
const asMass = (force: number) => force / STANDARD_GRAVITY;

export const slabPressure = headPressure({ density, depth: demo.slab.thickness });

const side = { depth: 0.9, width: 0.6 };
const push = sidePush({ density, ...side });
export const wall = {
  ...side,
  pressure: push.pressure,
  push: push.resultant,
  mass: asMass(push.resultant),
};

/** Plywood between battens, one span, pressed as at the foot of that wall. */
const board = { thickness: 0.018, modulus: 7e9, spans: 1, pressure: wall.pressure } as const;
const battens = 0.6;
export const panel = {
  ...board,
  battens,
  bulge: panelBending({ ...board, span: battens }).deflection,
  /** The longest span where the face is seen, of plywood of unknown grade. */
  longest: longestSpan({ ...board, share: 1 / 360, stress: 10e6 }).span,
};

/** A tub as deep as it is wide: each of the two places where its halves meet bears half the push. */
const width = 0.3;
export const tub = { width, pull: sidePush({ density, depth: width, width }).resultant / 2 };

const hollow = { displaced: 0.002, mass: 0.1 };
const lift = floatUp({ density, ...hollow });
export const core = { ...hollow, lift, liftAsMass: asMass(lift) };

/** A side that leans over the mix, by degrees from upright. */
const leaning = { height: 0.3, width: 0.45 };
const degrees = 20;
const lean = fromUnit(degrees, 'angle', 'deg');
export const face = {
  ...leaning,
  degrees,
  lift: leaningFace({ density, top: 0, lean, ...leaning }).lift,
};
