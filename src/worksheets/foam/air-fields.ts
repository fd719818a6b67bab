import { demand } from '../../core/domain-error.ts';
import { number } from '../../islands/fields.ts';
import { BAR, vesselSaid } from '../shared/foam/stored-air.ts';

export const GAUGE = BAR;
export const AIR_FLOW = { metric: 'L/min', us: 'cfm' } as const;
export const AIR_VOLUME = { metric: 'L', us: 'ft3' } as const;

/** The vessel of air, and the air around it: shared by what is worked out about either. */
export const vesselFields = {
  vessel: number('volume', {
    label: 'Receiver’s volume',
    example: '24 L',
    min: '0.1 L',
    max: '10 m3',
    bench: 'air.receiver',
  }),
  full: number('pressure', {
    label: 'Full, by its gauge',
    help: 'No more than the vessel is marked for.',
    example: '8 bar',
    min: '0.01 bar',
    max: '40 bar',
    units: GAUGE,
    bench: 'air.tankPressure',
  }),
  low: number('pressure', {
    label: 'Lowest gauge pressure that still serves',
    example: '4 bar',
    min: '0 bar',
    max: '40 bar',
    units: GAUGE,
    bench: 'air.low',
  }),
  made: { ...vesselSaid.made, folded: true },
  marking: { ...vesselSaid.marking, folded: true },
  relief: { ...vesselSaid.relief, folded: true },
};

/**
 * Refuses a vessel whose full pressure is not above the lowest usable one. Both as the gauge reads;
 * core works with absolute pressures.
 */
export const demandFuller = ({ full, low }: { readonly full: number; readonly low: number }) =>
  demand('full', full, 'pressure', { min: low, aboveMin: true });

export const aroundFields = {
  atmosphere: number('pressure', {
    label: 'Pressure of the air around',
    help: 'Absolute, where you stand: a weather report gives it for sea level. About 11\u00a0% less for the first 1000\u00a0m (3300\u00a0ft) above that.',
    example: '1013 mbar',
    min: '0.5 bar',
    max: '1.1 bar',
    units: { metric: 'mbar', us: 'psi' },
    bench: 'air.atmosphere',
    folded: true,
  }),
  temperature: number('temperature', {
    label: 'Temperature of the air',
    example: '20 °C',
    min: '-20 °C',
    max: '60 °C',
    bench: 'air.temperature',
    folded: true,
  }),
};
