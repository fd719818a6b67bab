import {
  tabledConductivity,
  valoreUsConductivity,
} from '../../../src/core/finished/conductivity.ts';
import {
  ASHRAE_CONDUCTIVITY,
  BCA_CONDUCTIVITY,
} from '../../../src/core/finished/conductivity-data.ts';
import { moistConductivity } from '../../../src/core/finished/moisture.ts';
import {
  INSIDE_SURFACE,
  layerResistance,
  thicknessForResistance,
  transmittance,
} from '../../../src/core/finished/thermal-resistance.ts';
import { valoreConductivity } from '../../../src/core/finished/valore.ts';
import { type Answers, answer } from '../answer.ts';

export const heatAnswers: Answers = {
  'finished-part/conductivity-si': answer({
    asks: 'Conductivity of oven-dry concrete from its density, SI form',
    input: { dryDensity: 'density' },
    gives: 'conductivity',
    work: (of) => valoreConductivity(of).conductivity,
  }),
  'finished-part/conductivity-us': answer({
    asks: 'Conductivity of oven-dry concrete from its density, US form',
    input: { dryDensity: 'density' },
    gives: 'conductivity',
    beside: true,
    work: (of) => valoreUsConductivity(of).conductivity,
  }),
  'finished-part/conductivity-table': answer({
    asks: 'Conductivity a table gives at a dry density, least and most, W/(m·K)',
    input: { table: 'text', dryDensity: 'density' },
    gives: 'numbers',
    work: ({ dryDensity }) => {
      const { low, high } = tabledConductivity(BCA_CONDUCTIVITY, dryDensity)!;
      return [low, high];
    },
  }),
  'finished-part/conductivity-ashrae': answer({
    asks: 'Conductivity of foam concrete in a table of materials',
    input: { dryDensity: 'density' },
    gives: 'conductivity',
    work: ({ dryDensity }) => tabledConductivity(ASHRAE_CONDUCTIVITY, dryDensity)!.low,
  }),
  'finished-part/moist-conductivity': answer({
    asks: 'Conductivity when moist from that when dry',
    input: { dry: 'conductivity', moisture: 'ratio' },
    gives: 'conductivity',
    work: (of) => moistConductivity(of).conductivity,
  }),
  'finished-part/resistance': answer({
    asks: 'Thermal resistance of one layer',
    input: { thickness: 'length', conductivity: 'conductivity' },
    gives: 'thermalResistance',
    work: layerResistance,
  }),
  'finished-part/u-value': answer({
    asks: 'Thermal transmittance of layers (m, W/(m·K)) with their surfaces (m²·K/W)',
    input: { thickness: 'numbers', conductivity: 'numbers', surfaces: 'number' },
    gives: 'thermalTransmittance',
    work: ({ thickness, conductivity, surfaces }) => {
      const layers = thickness.map((t, i) => ({ thickness: t, conductivity: conductivity[i]! }));
      return transmittance({ layers, surfaces }).transmittance;
    },
  }),
  'finished-part/thickness': answer({
    asks: 'Thickness for a wanted thermal resistance',
    input: { resistance: 'thermalResistance', conductivity: 'conductivity' },
    gives: 'length',
    work: (wanted) => thicknessForResistance({ ...wanted, density: 500 }).thickness,
  }),
  'finished-part/surface-resistance': answer({
    asks: 'Inside surface resistance by the way heat flows',
    input: { flow: 'text' },
    gives: 'thermalResistance',
    work: ({ flow }) => INSIDE_SURFACE[flow as keyof typeof INSIDE_SURFACE],
  }),
};
