import { rows } from '../../islands/fields/rows.tsx';
import { choice, number } from '../../islands/fields.ts';
import { zeroed } from '../shared/foam/foam-vessel.ts';
import { AS_ASSUMED } from '../shared/foam/is-foam.ts';
import { FOAM, SMALL_VOLUME } from '../shared/words/amounts.ts';

const full = number('mass', {
  label: 'Vessel, struck full of foam',
  help: 'Fill without gaps, strike off level with a straight edge, wipe the outside.',
  example: '2.45 kg',
  plusMinus: '0.01 kg',
  min: '0 kg',
  max: '200 kg',
  tooLow: zeroed,
  when: { method: ['weighed'], weighings: ['one'] },
});

/** Fields for the foam's density: weighed once or several times, with any liquid already drained; or assumed. */
export const weighingFields = {
  method: choice({
    label: 'How do you know it?',
    options: {
      weighed: 'I weigh a full vessel of it',
      assumed: 'I have not weighed it: assume a figure',
    },
    example: 'weighed',
    bench: 'foam.method',
  }),
  vesselKnown: choice({
    label: 'The vessel’s volume',
    options: {
      marked: 'I know it',
      weighed: 'I weigh it full of water',
    },
    example: 'marked',
    bench: 'foam.vesselKnown',
    when: { method: ['weighed'] },
  }),
  tare: number('mass', {
    label: 'Vessel, empty and dry',
    example: '0.85 kg',
    plusMinus: '0.01 kg',
    min: '0 kg',
    max: '200 kg',
    bench: 'bucket.tare',
    when: { method: ['weighed'] },
  }),
  full,
  weighings: choice({
    label: 'How many times was it weighed?',
    options: { one: 'once', several: 'several times, wiped and filled anew each time' },
    example: 'one',
    bench: 'foam.weighings',
    when: { method: ['weighed'] },
    folded: true,
  }),
  fulls: rows({
    label: 'Vessel, struck full of foam, each time',
    row: 'weighing',
    most: 12,
    example: [{ full: '2.45 kg' }, { full: '2.43 kg' }, { full: '2.47 kg' }],
    when: { method: ['weighed'], weighings: ['several'] },
    folded: true,
    of: {
      full: number('mass', {
        label: 'Full vessel',
        example: '2.45 kg',
        min: '0 kg',
        max: '200 kg',
        tooLow: zeroed,
      }),
    },
  }),
  scale: number('mass', {
    label: '± of the scale',
    help: 'Of each weighing: what the scale has wrong, they have all.',
    example: '0.01 kg',
    min: '0 kg',
    max: '5 kg',
    usual: true,
    when: { method: ['weighed'], weighings: ['several'] },
    folded: true,
  }),
  drained: number('volume', {
    label: 'Clear liquid at the bottom by then',
    help: 'Pour it off under the foam, or read its height. The worksheet takes it off.',
    example: '0 mL',
    plusMinus: '0 mL',
    min: '0 mL',
    max: '100 L',
    units: SMALL_VOLUME,
    when: { method: ['weighed'] },
    folded: true,
  }),
  vessel: number('volume', {
    label: 'Vessel’s volume to the brim',
    example: '20 L',
    plusMinus: '0.2 L',
    plusMinusGrows: true,
    min: '0.1 L',
    max: '500 L',
    bench: 'bucket.volume',
    when: { method: ['weighed'], vesselKnown: ['marked'] },
  }),
  filled: number('mass', {
    label: 'Vessel, full of water to the brim',
    help: 'Its ± is that of the fill, a per cent under a flat sheet: more than the scale’s. Common practice, no source.',
    example: '20.83 kg',
    plusMinus: '0.2 kg',
    plusMinusGrows: true,
    min: '0 kg',
    max: '700 kg',
    when: { method: ['weighed'], vesselKnown: ['weighed'] },
  }),
  temperature: number('temperature', {
    label: 'Temperature of that water',
    example: '15 °C',
    plusMinus: '1 °C',
    min: '0 °C',
    max: '40 °C',
    when: { method: ['weighed'], vesselKnown: ['weighed'] },
  }),
  assumed: number('density', {
    label: 'Foam density to assume',
    help: '80\u00a0g/L (5\u00a0lb/ft³) is the working point of one maker, who wished it denser. Common practice, no source.',
    example: '80 g/L',
    plusMinus: `${AS_ASSUMED} g/L`,
    min: '5 g/L',
    max: '500 g/L',
    units: FOAM,
    when: { method: ['assumed'] },
  }),
};
