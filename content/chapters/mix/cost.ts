import { toTenth } from '~/components/prose/percent.ts';
import { demoVolume } from '~/worksheets/demo-worked.ts';

const { net, total } = demoVolume();

/** How much of what is made is never part of a slab. */
export const wasted = toTenth(1 - net / total);
