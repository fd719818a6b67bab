import type { Drainage } from '../../../core/foam/drainage-curve.ts';
import { MINUTE } from '../../../core/quantity/constants.ts';
import { number } from '../../../islands/fields.ts';
import { PERCENT } from '../words/amounts.ts';

/** The ways a foam is known to drain, as a choice asks for them. */
export const DRAINS = { curve: 'Along a fitted curve', line: 'A steady share a minute' } as const;

export const howItDrains = {
  label: 'How does it drain?',
  example: 'curve',
  follows: { 'foam.drainageExponent': 'curve', 'foam.drainageRate': 'line' },
} as const;

/** What each way is known by; a sheet says `when`. */
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

/** The drainage of these fields, for core. */
export const drainageOf = (
  way: keyof typeof DRAINS,
  v: { readonly half: number; readonly exponent: number; readonly perMinute: number },
): Drainage =>
  way === 'curve' ? { halfTime: v.half, exponent: v.exponent } : { rate: v.perMinute / MINUTE };
