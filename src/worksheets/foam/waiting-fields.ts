import { choice, number } from '../../islands/fields.ts';
import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { DRAINS, drains, howItDrains } from '../shared/foam/drains.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { plannedFields } from './planned-fields.ts';

const DOSES = {
  whole: 'All that was made is tipped in',
  volume: 'By volume, from a larger stock',
  mass: 'By weight, from a larger stock',
} as const;

/** How the foam drains, how long it waits, how it is dosed, and whether the mix lets it live. */
export const waitingFields = {
  how: choice({
    ...howItDrains,
    options: DRAINS,
    help: 'What your own batches drained is offered with “A steady share a minute”.',
  }),
  half: { ...drains.half, when: { how: ['curve'] } },
  exponent: { ...drains.exponent, when: { how: ['curve'] } },
  perMinute: {
    ...drains.perMinute,
    plusMinus: '0 %',
    learned: learned('foam.drained'),
    when: { how: ['line'] },
  },
  seen: number('time', {
    label: 'Read over the first',
    help: 'What your own batches drained is of ten minutes. Left empty, no wait is compared with it.',
    usual: true,
    optional: true,
    example: '10.6 min',
    min: '1 s',
    max: '1 d',
    takes: 'foam.drainageSeen',
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
    options: { no: 'Not tested: count it as planned', jar: 'I did the jar test' },
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
  ...plannedFields,
};
