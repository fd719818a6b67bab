import { choice, number } from '../../islands/fields.ts';
import { dryDensity } from '../shared/part/part-densities.ts';
import { partThickness } from '../shared/part/part-sides.ts';
import { PERCENT } from '../shared/words/amounts.ts';

const wish = {
  label: 'Resistance wanted of the layer',
  example: '1 m2.K/W',
  min: '0.01 m2.K/W',
  max: '20 m2.K/W',
  bench: 'heat-through.wanted',
} as const;

/** What “How well does it insulate?” asks for. */
export const heatThroughFields = {
  ask: choice({
    label: 'What you ask',
    options: {
      resistance: 'What a thickness resists',
      thickness: 'How thick it must be',
    },
    example: 'resistance',
  }),
  dry: dryDensity,
  wetness: choice({
    label: 'How moist it is in use',
    options: {
      dry: 'Oven-dry, as data sheets have it',
      dryRoom: 'In a dry room: 2.6\u00a0% by mass',
      dampRoom: 'In a damp room: 4.5\u00a0%',
      service: 'In an outside wall: 6\u00a0%',
      other: 'I know it',
    },
    example: 'dampRoom',
  }),
  moisture: number('ratio', {
    label: 'Moisture, of the dry mass',
    example: '10 %',
    min: '0 %',
    max: '100 %',
    units: PERCENT,
    when: { wetness: ['other'] },
  }),
  thickness: { ...partThickness, when: { ask: ['resistance'] } },
  place: choice({
    label: 'Where it lies',
    help: 'Wherever it lies, it bears nothing and hangs over nobody.',
    options: {
      floor: 'On the ground, under a floor on battens',
      wall: 'In a wall, bearing nothing',
      roof: 'On a full roof deck',
      none: 'The layer alone',
    },
    example: 'floor',
  }),
  wanted: number('thermalResistance', { ...wish, when: { ask: ['thickness'] } }),
  // The same number, which a reader who asks what a layer resists need not have.
  hoped: number('thermalResistance', { ...wish, optional: true, when: { ask: ['resistance'] } }),
} as const;
