import { percent } from '~/components/prose/percent.ts';
import { demoVolume } from '~/worksheets/demo-worked.ts';

const { net, total } = demoVolume();

/** How much of what is made is never part of a slab. */
export const wasted = percent(1 - net / total, { decimals: 1 });
