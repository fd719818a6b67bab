import { tellLost } from '../../../bench/arrived.ts';

/** In place of charts that have not arrived. */
export const noCharts = (): void => tellLost('lost-charts', 'its charts are missing');
