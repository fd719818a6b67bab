import type { Drainage } from '../../../core/foam/drainage-curve.ts';
import { MINUTE } from '../../../core/quantity/constants.ts';
import { number } from '../../../islands/fields.ts';
import { PERCENT } from '../words/amounts.ts';

/** The two models of drainage, as the options of a choice. */
export const DRAINS = { curve: 'Along a fitted curve', line: 'A steady share a minute' } as const;

export const howItDrains = {
  label: 'How does it drain?',
  example: 'curve',
  follows: { 'foam.drainageExponent': 'curve', 'foam.drainageRate': 'line' },
} as const;

/** The fields of each model. The worksheet adds `when`. */
export const drains = {
  half: number('time', {
    label: 'Half has drained after',
    example: '22 min',
    min: '1 s',
    max: '30 d',
    takes: 'foam.halfTime',
  }),
  exponent: number('count', {
    label: 'Exponent n of the curve',
    example: '1.5',
    min: '0.05',
    max: '60',
    takes: 'foam.drainageExponent',
  }),
  perMinute: number('ratio', {
    label: 'Drained a minute, at first',
    example: '2.36 %',
    min: '0 %',
    max: '100 %',
    units: PERCENT,
    takes: 'foam.drainageRate',
  }),
};

/** The values of these fields as core takes them. */
export const drainageOf = (
  way: keyof typeof DRAINS,
  v: { readonly half: number; readonly exponent: number; readonly perMinute: number },
): Drainage =>
  way === 'curve' ? { halfTime: v.half, exponent: v.exponent } : { rate: v.perMinute / MINUTE };
