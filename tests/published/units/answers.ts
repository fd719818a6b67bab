import { type Answers, answer } from '../answer.ts';

/** Both sides of such a row are read by the parser: what is checked is its table of units. */
export const answers: Answers = {
  'units/mass': answer({
    asks: 'This mass in another unit',
    input: { mass: 'mass' },
    gives: 'mass',
    work: ({ mass }) => mass,
  }),
  'units/length': answer({
    asks: 'This length in another unit',
    input: { length: 'length' },
    gives: 'length',
    work: ({ length }) => length,
  }),
  'units/area': answer({
    asks: 'This area in another unit',
    input: { area: 'area' },
    gives: 'area',
    work: ({ area }) => area,
  }),
  'units/volume': answer({
    asks: 'This volume in another unit',
    input: { volume: 'volume' },
    gives: 'volume',
    work: ({ volume }) => volume,
  }),
  'units/density': answer({
    asks: 'This density in another unit',
    input: { density: 'density' },
    gives: 'density',
    work: ({ density }) => density,
  }),
  'units/concentration': answer({
    asks: 'This concentration in another unit',
    input: { concentration: 'concentration' },
    gives: 'concentration',
    work: ({ concentration }) => concentration,
  }),
  'units/pressure': answer({
    asks: 'This pressure in another unit',
    input: { pressure: 'pressure' },
    gives: 'pressure',
    work: ({ pressure }) => pressure,
  }),
  'units/stress': answer({
    asks: 'This stress in another unit',
    input: { stress: 'stress' },
    gives: 'stress',
    work: ({ stress }) => stress,
  }),
  'units/force': answer({
    asks: 'This force in another unit',
    input: { force: 'force' },
    gives: 'force',
    work: ({ force }) => force,
  }),
  'units/moment': answer({
    asks: 'This moment in another unit',
    input: { moment: 'moment' },
    gives: 'moment',
    work: ({ moment }) => moment,
  }),
  'units/energy': answer({
    asks: 'This energy in another unit',
    input: { energy: 'energy' },
    gives: 'energy',
    work: ({ energy }) => energy,
  }),
  'units/power': answer({
    asks: 'This power in another unit',
    input: { power: 'power' },
    gives: 'power',
    work: ({ power }) => power,
  }),
  'units/conductivity': answer({
    asks: 'This thermal conductivity in another unit',
    input: { conductivity: 'conductivity' },
    gives: 'conductivity',
    work: ({ conductivity }) => conductivity,
  }),
  'units/thermal-resistance': answer({
    asks: 'This thermal resistance in another unit',
    input: { resistance: 'thermalResistance' },
    gives: 'thermalResistance',
    work: ({ resistance }) => resistance,
  }),
  'units/thermal-transmittance': answer({
    asks: 'This thermal transmittance in another unit',
    input: { transmittance: 'thermalTransmittance' },
    gives: 'thermalTransmittance',
    work: ({ transmittance }) => transmittance,
  }),
  'units/specific-heat': answer({
    asks: 'This specific heat in another unit',
    input: { specificHeat: 'specificHeat' },
    gives: 'specificHeat',
    work: ({ specificHeat }) => specificHeat,
  }),
  'units/specific-energy': answer({
    asks: 'This heat per mass in another unit',
    input: { specificEnergy: 'specificEnergy' },
    gives: 'specificEnergy',
    work: ({ specificEnergy }) => specificEnergy,
  }),
  'units/flow': answer({
    asks: 'This volume flow in another unit',
    input: { flow: 'flow' },
    gives: 'flow',
    work: ({ flow }) => flow,
  }),
  'units/speed': answer({
    asks: 'This speed in another unit',
    input: { speed: 'speed' },
    gives: 'speed',
    work: ({ speed }) => speed,
  }),
  'units/viscosity': answer({
    asks: 'This viscosity in another unit',
    input: { viscosity: 'viscosity' },
    gives: 'viscosity',
    work: ({ viscosity }) => viscosity,
  }),
  'units/temperature': answer({
    asks: 'This temperature on another scale',
    input: { temperature: 'temperature' },
    gives: 'temperature',
    work: ({ temperature }) => temperature,
  }),
  'units/temperature-difference': answer({
    asks: 'This difference of temperature on another scale',
    input: { difference: 'temperatureDifference' },
    gives: 'temperatureDifference',
    work: ({ difference }) => difference,
  }),
  'units/hardness': answer({
    asks: 'This hardness in another unit',
    input: { hardness: 'hardness' },
    gives: 'hardness',
    work: ({ hardness }) => hardness,
  }),
};
