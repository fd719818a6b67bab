import { READINGS } from '~/bench/records/readings.ts';
import type { AmountProps } from '~/components/prose/amount.ts';
import { percent } from '~/components/prose/percent.ts';
import { judgeBatch } from '~/core/records/verdict.ts';
import { demo } from '~/worksheets/demo.ts';
import { onScale } from '~/worksheets/demo-tools.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';

/** One load of the demo as it was weighed in, and its bucket. In SI. */
export const load = {
  cement: onScale(demoLoad.cement),
  water: onScale(demoLoad.water),
  sand: 0,
  foamVolume: 0.0253,
  foamDensity: demo.foam.density,
  foamAdded: 0,
  baseAdded: 0,
  tare: demo.bucket.tare,
  full: 13.44,
  vessel: demo.bucket.volume,
};
/** The ± of each reading, in SI. */
const doubts = {
  cement: demo.scale,
  water: demo.scale,
  foamVolume: 0.0005,
  foamDensity: 1,
  tare: demo.scale,
  full: demo.scale,
  vessel: 0.0002,
};

export const verdict = judgeBatch(load, doubts);
export const massIn = onScale(verdict.massIn);
export const survived = {
  share: percent(verdict.survival),
  plusMinus: percent(verdict.u.survival),
};

/** The same load, had its bucket shown less, kg. */
export const tooLight = 12.3;
const contradiction = judgeBatch({ ...load, full: tooLight }, doubts);
const [suspect] = contradiction.suspects;
if (!suspect) throw new Error('A bucket that light is not explained by any one reading.');
const { label, kind } = READINGS[suspect.reading];
const explains: AmountProps = { value: Math.abs(suspect.by), kind, significant: 2 };
export const light = {
  survived: percent(contradiction.survival),
  suspect: label.toLowerCase(),
  explains,
  way: suspect.by > 0 ? 'more' : 'less',
  timesItsDoubt: suspect.doubts.toFixed(0),
};
