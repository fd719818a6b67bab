import { liftProfile, PRACTICE_LIFT } from '../../../src/core/placing/lift.ts';
import { panelBending, panelUpTheFill, type Spans } from '../../../src/core/placing/panel.ts';
import { floatUp, headPressure, sidePush } from '../../../src/core/placing/pressure.ts';
import { shapeVolume } from '../../../src/core/placing/shapes.ts';
import { type Answers, answer } from '../answer.ts';

/** A strip of unit stiffness under unit load: E I = 1, so the answers are the tables' factors. */
const unit = { span: 1, thickness: 1, modulus: 12, pressure: 1 };

export const formAnswers: Answers = {
  'placing/head': answer({
    asks: 'Pressure of the fresh mix at a depth',
    input: { density: 'density', depth: 'length' },
    gives: 'pressure',
    work: headPressure,
  }),
  'placing/push': answer({
    asks: 'Push of the fresh mix on an upright side',
    input: { density: 'density', depth: 'length', width: 'length' },
    gives: 'force',
    work: (side) => sidePush(side).resultant,
  }),
  'placing/push-height': answer({
    asks: 'Height above the bottom at which that push acts',
    input: { density: 'density', depth: 'length', width: 'length' },
    gives: 'length',
    work: (side) => sidePush(side).above,
  }),
  'placing/float': answer({
    asks: 'Net lift on a core all round which the mix flows',
    input: { density: 'density', displaced: 'volume', mass: 'mass' },
    gives: 'force',
    work: floatUp,
  }),
  'placing/moment': answer({
    asks: 'Greatest moment of equal spans under an even load, over w L²',
    input: { spans: 'number' },
    gives: 'number',
    work: ({ spans }) => panelBending({ ...unit, spans: spans as Spans }).moment,
  }),
  'placing/deflection': answer({
    asks: 'Greatest deflection of equal spans under an even load, over w L⁴/E I',
    input: { spans: 'number' },
    gives: 'number',
    work: ({ spans }) => panelBending({ ...unit, spans: spans as Spans }).deflection,
  }),
  'placing/triangle-moment': answer({
    asks: 'Greatest moment of a simple span under a load rising from nothing to one end, over W L',
    input: {},
    gives: 'number',
    work: () => 2 * panelUpTheFill(unit).moment,
  }),
  'placing/triangle-deflection': answer({
    asks: 'Greatest deflection of the same, over W L³/E I',
    input: {},
    gives: 'number',
    work: () => 2 * panelUpTheFill(unit).deflection,
  }),
  'placing/panel-deflection': answer({
    asks: 'Bulge of a form panel between its supports',
    input: {
      span: 'length',
      thickness: 'length',
      modulus: 'stress',
      pressure: 'pressure',
      spans: 'number',
    },
    gives: 'length',
    work: (panel) => panelBending({ ...panel, spans: panel.spans as Spans }).deflection,
  }),
  'placing/lift-bottom': answer({
    asks: 'Density at the bottom of a lift',
    input: { density: 'density', gas: 'ratio', depth: 'length' },
    gives: 'density',
    work: (lift) => liftProfile(lift).bottom,
  }),
  'placing/practice-lift': answer({
    asks: 'Lifts in geotechnical work, from and to, in m',
    input: {},
    gives: 'numbers',
    work: () => [PRACTICE_LIFT.min, PRACTICE_LIFT.max],
  }),
  'placing/practice-lift-feet': answer({
    asks: 'Lifts in geotechnical work, from and to, in ft',
    input: {},
    gives: 'numbers',
    work: () => [PRACTICE_LIFT.min / 0.3048, PRACTICE_LIFT.max / 0.3048],
  }),
  'placing/cap': answer({
    asks: 'Volume of a slice off a ball',
    input: { diameter: 'length', height: 'length' },
    gives: 'volume',
    work: ({ diameter, height }) => shapeVolume({ shape: 'cap', baseDiameter: diameter, height }),
  }),
  'placing/cone-frustum': answer({
    asks: 'Volume of a cone cut off flat',
    input: { bottom: 'length', top: 'length', height: 'length' },
    gives: 'volume',
    work: ({ bottom, top, height }) =>
      shapeVolume({
        shape: 'cone-frustum',
        bottomDiameter: bottom,
        topDiameter: top,
        height,
      }),
  }),
  'placing/box-frustum': answer({
    asks: 'Volume of a box with sloping sides',
    input: {
      length: 'length',
      width: 'length',
      topLength: 'length',
      topWidth: 'length',
      height: 'length',
    },
    gives: 'volume',
    work: (box) => shapeVolume({ shape: 'box-frustum', ...box }),
  }),
  'placing/prism': answer({
    asks: 'Volume of a prism from its corners, x and y in turn, in m',
    input: { corners: 'numbers', height: 'length' },
    gives: 'volume',
    work: ({ corners, height }) =>
      shapeVolume({
        shape: 'prism',
        corners: Array.from(
          { length: corners.length / 2 },
          (_, i) => [corners[2 * i]!, corners[2 * i + 1]!] as const,
        ),
        height,
      }),
  }),
};
