import { choice, number } from '../../islands/fields.ts';
import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { PERCENT } from '../shared/amounts.ts';
import { batchFields } from './batch-fields.ts';

const DOSES = {
  whole: 'All that was made is tipped in',
  volume: 'By volume, from a larger stock',
  mass: 'By weight, from a larger stock',
} as const;

/** How the foam drains, how long it waits, how it is dosed, and whether the mix lets it live. */
export const waitingFields = {
  how: choice({
    label: 'How does it drain?',
    options: {
      curve: 'Along a fitted curve',
      line: 'So much a minute',
    },
    example: 'curve',
    follows: { 'foam.drainageExponent': 'curve', 'foam.drainageRate': 'line' },
  }),
  half: number('time', {
    label: 'Half has drained after',
    example: '22 min',
    min: '1 s',
    max: '30 d',
    takes: 'foam.halfTime',
    when: { how: ['curve'] },
  }),
  exponent: number('count', {
    label: 'Exponent n of the curve',
    example: '1.5',
    min: '0.05',
    max: '60',
    takes: 'foam.drainageExponent',
    when: { how: ['curve'] },
  }),
  perMinute: number('ratio', {
    learned: learned('foam.drained'),
    label: 'Drained a minute, at first',
    example: '2.36 %',
    min: '0 %',
    max: '100 %',
    units: PERCENT,
    takes: 'foam.drainageRate',
    when: { how: ['line'] },
  }),
  wait: number('time', {
    label: 'From making the foam to blending it',
    usual: true,
    example: '5 min',
    min: '0 min',
    max: '1 d',
    bench: 'foam.wait',
  }),
  dose: choice({
    label: 'How is it measured out?',
    options: DOSES,
    example: 'volume',
    bench: 'foam.dose',
  }),
  tolerance: number('density', {
    label: 'Wet density may be off by',
    usual: true,
    example: '30 kg/m3',
    min: '0 kg/m3',
    aboveMin: true,
    max: '500 kg/m3',
    bench: 'foam.tolerance',
  }),
  survives: choice({
    label: 'Does the foam survive the mix?',
    options: { no: 'Not tested: reckon as planned', jar: 'I did the jar test' },
    example: 'no',
    follows: { 'foam.survivalRate': 'jar' },
  }),
  loss: number('ratio', {
    label: 'Gas lost a minute in the mix',
    example: '0.269 %',
    min: '0 %',
    max: '100 %',
    units: PERCENT,
    takes: 'foam.survivalRate',
    when: { survives: ['jar'] },
  }),
  inMix: number('time', {
    label: 'From blending to placing',
    usual: true,
    example: '10 min',
    min: '0 min',
    max: '1 d',
    when: { survives: ['jar'] },
  }),
  ...batchFields,
};
