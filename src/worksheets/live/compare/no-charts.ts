import { tellLost } from '../../../bench/arrived.ts';

/** Tells that the charts could not be loaded. */
export const noCharts = (): void => tellLost('lost-charts', 'its charts are missing');
