import { percent } from '~/components/prose/percent.ts';
import { demoMix, demoVolume } from '~/worksheets/demo-worked.ts';

const { net, total } = demoVolume();

export const batch = demoMix(total);
/** Of what is made. */
export const wasted = percent(1 - net / total, { decimals: 1 });
