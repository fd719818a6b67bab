import clock from '../../../src/worksheets/placing/clock.tsx';
import formPressure from '../../../src/worksheets/placing/form-pressure.tsx';
import lift from '../../../src/worksheets/placing/lift.tsx';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';
import { verdicts } from './verdicts.ts';

/** 600 mm of 600 kg/m³ press with 3530 Pa; plywood of 18 mm has an E I of 3402 N·m² a metre. */
const panel = {
  depth: '600 mm',
  density: '600 kg/m3',
  width: '450 mm',
  thickness: '18 mm',
  span: '450 mm',
  stress: '10 MPa',
};

verdicts(formPressure, panel, [
  // Bulge over span, 5 ÷ 384 × 3530 × L³ ÷ 3402: 1 ÷ 360 at 590.2 mm, 1 ÷ 270 at 649.6, 1 ÷ 180 at 743.6.
  [{ limit: 'seen', span: '590 mm' }, 'good', /holds and stays straight/],
  [{ limit: 'seen', span: '591 mm' }, 'stop', /bulges more than you allow/],
  [{ limit: 'plain', span: '649 mm' }, 'good', /holds/],
  [{ limit: 'plain', span: '650 mm' }, 'stop', /bulges/],
  [{ limit: 'rough', span: '743 mm' }, 'good', /holds/],
  [{ limit: 'rough', span: '744 mm' }, 'stop', /bulges/],
  // Over less than two of its thicknesses the panel is no beam; how far the battens may stand rests on no span.
  [{ span: '36 mm' }, 'good', /stays straight; it could span 590\smm/],
  [{ span: '35 mm' }, 'good', /stays straight\.(?!.*could span)/],
  // A row of clamps at a third of the depth, 200 mm, bears all of the push.
  [{ lower: '199 mm' }, 'good', /holds/],
  [{ lower: '200 mm' }, 'look', /one row carries nothing/],
  [{ below: '399 mm' }, 'good', /holds/],
  [{ below: '401 mm' }, 'look', /one row carries nothing/],
  // A litre of the mix weighs 0.6 kg.
  [{ core: 'floats', displaced: '1 L', coreMass: '0.601 kg' }, 'good', /holds/],
  [{ core: 'floats', displaced: '1 L', coreMass: '0.599 kg' }, 'look', /core floats/],
  [{ core: 'leans', lean: '0 deg' }, 'good', /holds/],
  [{ core: 'leans', lean: '1 deg' }, 'look', /leaning face is lifted/],
  // None hides another: 20 L of it less half a kilogram push up with 113 N, and clamps are told where both bear.
  [
    { lower: '300 mm', core: 'floats', displaced: '20 L', coreMass: '0.5 kg' },
    'look',
    /^Move a row of clamps.*core floats: hold it down against 110\sN(?!.*Clamps)/,
  ],
  [{ core: 'leans' }, 'look', /face is lifted.*panel holds.*Clamps are not checked/],
  [{ core: 'leans', thickness: '9 mm' }, 'stop', /bulges.*face is lifted(?!.*holds)/],
]);

// Stiff enough to be bent to its stress first: ¾ × 3530 × L² ÷ 10² mm² is 10 MPa at 614.5 mm.
verdicts(
  formPressure,
  { ...panel, material: 'own', modulus: '250 GPa', thickness: '10 mm', limit: 'seen' },
  [
    [{ span: '614 mm' }, 'good', /holds/],
    [{ span: '615 mm' }, 'stop', /may break/],
  ],
);

// Lifts end at 1.2 m, the larger end of practice; a form higher than a person is a designer’s.
verdicts(formPressure, { ...panel, thickness: '40 mm' }, [
  [{ depth: '1200 mm' }, 'good', /holds/],
  [{ depth: '1210 mm' }, 'look', /no more than 1\.2\sm is placed in one lift/],
  [{ depth: '1800 mm' }, 'look', /in one lift/],
  [
    { depth: '1500 mm', core: 'floats', displaced: '1 L', coreMass: '0.05 kg' },
    'look',
    /^The core floats.*no more than 1\.2\sm.*Clamps are not checked/,
  ],
  [{ depth: '1810 mm' }, 'stop', /higher than a person/],
]);

/** Two thirds of it, 66.435 %, are gas. */
const mix = { density: '600 kg/m3', gain: '5 %', atmosphere: '101.3 kPa' };

verdicts(lift, mix, [
  // What no mix is planned with is no foam here either.
  [{ depth: '0.06 m', foamDensity: '15.9 g/L' }, 'stop', /hardly foam/],
  [{ depth: '0.06 m', foamDensity: '31.9 g/L' }, 'stop', /lighter than the standards/],
  [{ depth: '0.06 m', foamDensity: '32.1 g/L' }, 'good', /Low enough/],
  [{ depth: '0.06 m', foamDensity: '250 g/L' }, 'good', /Low enough/],
  [{ depth: '0.06 m', foamDensity: '251 g/L' }, 'stop', /hardly foam/],
  // 0.6 to 1.2 m, from memory.
  [{ depth: '0.6 m' }, 'good', /Low enough/],
  [{ depth: '0.61 m' }, 'look', /place the lower half/],
  [{ depth: '1.2 m' }, 'look', /place the lower half/],
  [{ depth: '1.21 m' }, 'stop', /practice does not/],
  // Nothing lighter than 500 kg/m³ comes so far: no mix is called light.
  [{ depth: '1.2 m' }, 'look', /^(?!.*light mixes)/],
  // With 5/105 of gas, of foam of 80 kg/m³ in paste of 1953, it weighs 1854.5: all of that gone it is 5 % denser, as allowed.
  [{ density: '1854 kg/m3', depth: '1.2 m' }, 'look', /you have not tried/],
  [{ density: '1855 kg/m3', depth: '1.2 m' }, 'good', /Low enough/],
  // Below 500 kg/m³ no more than 0.3 m.
  [{ density: '499 kg/m3', depth: '0.3 m' }, 'good', /Low enough/],
  [{ density: '499 kg/m3', depth: '0.31 m' }, 'look', /until you have seen your mix stand/],
  [{ density: '500 kg/m3', depth: '0.31 m' }, 'good', /Low enough/],
  // 2 % denser where p/p₀ is 1.0304: (0.33565 × 0.0304 + 0.66435 × ln 1.0304) × 101.3 kPa ÷ 600 g = 0.518 m.
  [{ gain: '2 %', depth: '0.518 m' }, 'good', /Low enough/],
  [{ gain: '2 %', depth: '0.519 m' }, 'stop', /denser before a single bubble has broken/],
]);

const spare = [
  // Less than 3 % to spare is too little.
  [{ settling: '1 %', waste: '1.9 %' }, 'look', /cannot be topped up/],
  [{ settling: '1 %', waste: '2.1 %' }, 'good', /^Make/],
] as const;

verdicts(pieces, {}, spare);
verdicts(shapes, {}, spare);

// A decilitre, 100 mm each way and 10 mm deep; of centimetres taken for millimetres, or of a point for a comma.
const slab = (thickness: string, length = '100 mm', width = '100 mm') => ({
  pieces: [{ shape: 'slab', count: '12', length, width, thickness }],
});
verdicts(pieces, {}, [
  [slab('10 mm'), 'good', /^Make/],
  [slab('10 mm', '99 mm'), 'look', /^12 slabs, 99 × 100 × 10\smm, of 99\.0\smL each: check/],
  [slab('5', '60', '40'), 'look', /of 12\.0\smL each: check each measure, its unit/],
  [slab('9.9 mm', '900 mm', '600 mm'), 'look', /of 5\.35\sL each: check/],
  [slab('1.200', '900 mm', '600 mm'), 'look', /900 × 600 × 1\.2\smm, of 648\smL each/],
  [
    {
      pieces: [
        ...slab('60 mm').pieces,
        { shape: 'cylinder', count: '1', diameter: '15', height: '30' },
      ],
    },
    'look',
    /^1 cylinder, 15 across, 30\smm high, of 5\.30\smL: check/,
  ],
]);
verdicts(shapes, {}, [
  [{ length: '100 mm', width: '100 mm', thickness: '10 mm' }, 'good', /^Make/],
  [{ length: '99 mm', width: '100 mm', thickness: '10 mm' }, 'look', /^One form holds 99\.0\smL/],
  [{ length: '450 mm', width: '300 mm', thickness: '6 mm' }, 'look', /holds 810\smL: check each/],
  // A ball has no flat.
  [{ shape: 'ball', diameter: '300 mm' }, 'good', /^Make/],
  [{ shape: 'ball', diameter: '57 mm' }, 'look', /^One form holds 97\.0\smL: check/],
  [{ shape: 'cap', baseDiameter: '9 mm', height: '300 mm' }, 'look', /check/],
]);

// Half a cubic metre, 5 × 1 m and 100 mm thick; and what is thicker than long and wide lies as no slab does.
verdicts(pieces, {}, [
  [slab('100 mm', '5 m', '1 m'), 'good', /^Make/],
  [slab('101 mm', '5 m', '1 m'), 'look', /of 505\sL each: check/],
  [slab('450 mm', '450 mm', '300 mm'), 'good', /^Make/],
  [slab('60 cm', '450 mm', '300 mm'), 'look', /450 × 300 × 600\smm, of 81\.0\sL each: check/],
  [
    {
      pieces: [{ shape: 'block', count: '1', length: '450 mm', width: '300 mm', height: '600 mm' }],
    },
    'good',
    /^Make/,
  ],
]);
verdicts(shapes, { length: '450 mm', width: '300 mm' }, [
  [{ thickness: '450 mm' }, 'good', /^Make/],
  [{ thickness: '451 mm' }, 'look', /check/],
  [{ length: '450 cm', width: '300 cm', thickness: '60 mm' }, 'look', /holds 810\sL: check/],
]);

// Cores of four fifths of a slab: 400 × 270 mm of 450 × 300.
const core = (wide: string) => ({
  cores: [{ core: 'box', count: '1', across: '400 mm', wide, deep: '60 mm' }],
});
verdicts(shapes, { length: '450 mm', width: '300 mm', thickness: '60 mm', hollow: 'some' }, [
  [core('269 mm'), 'good', /^Make/],
  [core('271 mm'), 'look', /more than four fifths/],
]);

/** Foam in the mix after 5 minutes, placed 9 later, and 20 from one load to the next. */
const steps = {
  volume: '105 L',
  load: '40 L',
  foamMade: 'each',
  hands: 'one',
  foam: '3 min',
  place: '5 min',
  base: '6 min',
  blend: '2 min',
  weigh: '4 min',
};

verdicts(clock, steps, [
  [{ latest: '5 min' }, 'good', /It fits/],
  [{ latest: '4.9 min' }, 'stop', /foam would be 5\.0\smin old/],
  [{ mixLasts: '9 min' }, 'good', /It fits/],
  [{ mixLasts: '8.9 min' }, 'stop', /blended load would wait/],
  [{ joint: '20 min' }, 'good', /It fits/],
  [{ joint: '19.9 min' }, 'stop', /after the one before it/],
]);
