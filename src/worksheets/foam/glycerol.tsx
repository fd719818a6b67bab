import { glycerolByVolume, glycerolDensity, glycerolViscosity } from '../../core/foam/glycerol.ts';
import { glycerolFreezing } from '../../core/foam/glycerol-freezing.ts';
import { GLYCEROL_DENSITY } from '../../core/foam/solution.ts';
import { ICE_POINT } from '../../core/quantity/constants.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT, SMALL_MASS, SMALL_VOLUME } from '../shared/words/amounts.ts';
import { ViscosityChart } from './drawn/ViscosityChart.tsx';

const WEIGHT = { metric: 'kg/m3', us: 'lb/gal' } as const;
const SHARES = [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4] as const;

export default worksheet({
  id: 'glycerol',
  question: 'What does glycerol do to the solution?',
  fields: {
    glycerol: number('ratio', {
      label: 'Glycerol in the solution',
      help: 'By mass.',
      example: '2 %',
      min: '0 %',
      max: '40 %',
      units: PERCENT,
      bench: 'foam.glycerol',
    }),
    temperature: number('temperature', {
      label: 'Temperature of the solution',
      example: '15 °C',
      min: '0 °C',
      max: '40 °C',
      bench: 'foam.solutionTemperature',
    }),
    volume: number('volume', {
      label: 'Solution to mix',
      example: '7.15 L',
      min: '0.1 L',
      max: '10 m3',
      takes: 'foam.solutionVolume',
    }),
  },
  work: ({ glycerol, temperature, volume }) => {
    const of = (share: number) => ({ glycerol: share, temperature });
    const { density, notes } = glycerolDensity(of(glycerol));
    const mass = glycerol * density * volume;
    return {
      ...glycerolViscosity(of(glycerol)),
      density,
      outside: notes.some(({ code }) => code === 'outside-range'),
      freezing: glycerolFreezing({ glycerol }).freezing,
      byVolume: glycerolByVolume(of(glycerol)),
      mass,
      measured: mass / GLYCEROL_DENSITY,
      // By how much the same water would have to cool to thicken as much.
      cooler: coolerBy(glycerol, temperature),
      at: (share: number) => ({
        ...glycerolViscosity(of(share)),
        ...{ density: glycerolDensity(of(share)).density },
        freezing: glycerolFreezing({ glycerol: share }).freezing,
      }),
    };
  },
  results: {
    thickening: {
      label: 'Thicker than water by',
      kind: 'ratio',
      of: (r) => r.thickening - 1,
      units: PERCENT,
      significant: 2,
      note: 'drainage slows by about as much, and no more',
    },
    viscosity: { label: 'Viscosity', kind: 'viscosity', of: (r) => r.viscosity },
    density: {
      label: 'Density',
      kind: 'density',
      of: (r) => r.density,
      units: WEIGHT,
      significant: 4,
    },
    freezing: {
      label: 'Freezes at',
      kind: 'temperature',
      of: (r) => r.freezing,
      decimals: 1,
    },
    mass: {
      label: 'Glycerol, by weight',
      kind: 'mass',
      of: (r) => r.mass,
      units: SMALL_MASS,
    },
    measured: {
      label: 'Glycerol, by volume',
      kind: 'volume',
      of: (r) => r.measured,
      units: SMALL_VOLUME,
    },
  },
  judge: ({ thickening, cooler }, { glycerol }, say) => {
    if (glycerol === 0)
      return { verdict: 'good', say: 'No glycerol. Foam is made without it every day.' };
    const much = say(thickening - 1, 'ratio', { units: PERCENT, significant: 2 });
    const cold =
      cooler === undefined
        ? ''
        : ` Water ${say(cooler, 'temperatureDifference', { significant: 2 })} colder would be as thick.`;
    if (thickening < 1.25)
      return {
        verdict: 'good',
        say: `The solution is ${much} thicker, so a foam that drains a quarter in 10 minutes takes about ${say(600 * thickening, 'time')}.${cold}`,
      };
    return {
      verdict: 'look',
      say: `The solution is ${much} thicker. That much glycerol is costly, and all of it goes into the mix, where what it does to the cement is not known here.${cold}`,
    };
  },
  notes: ({ outside }) => [
    ...(outside
      ? [
          'The formula for the density is published for 15 to 30\u00a0°C (59 to 86\u00a0°F). This solution is outside that, and with it the glycerol to weigh or measure out.',
        ]
      : []),
    'Concentrate in the solution is not counted; this is glycerol and water.',
  ],
  working: [
    {
      tex: String.raw`\mu = \mu_w^{\,\alpha}\,\mu_g^{\,1-\alpha} \qquad \alpha = 1 - w + \frac{a\,b\,w\,(1-w)}{a\,w + b\,(1-w)}`,
      put: (r, { glycerol, temperature }, say) =>
        `At ${say(temperature, 'temperature')} and w = ${glycerol.toFixed(3)} by mass: μ = ${say(r.viscosity, 'viscosity')}, ${r.thickening.toFixed(3)} times that of water`,
    },
    {
      tex: String.raw`\rho = \left[1 + A \sin(w^{1.31}\pi)^{0.81}\right]\left(\frac{w}{\rho_g} + \frac{1-w}{\rho_w}\right)^{-1}`,
      put: (r, _, say) =>
        `ρ = ${say(r.density, 'density', { units: WEIGHT, significant: 5 })}; glycerol is ${say(r.byVolume, 'ratio', { units: PERCENT })} of the parts by volume`,
    },
  ],
  figure: ({ values, say }) => (
    <ViscosityChart glycerol={values.glycerol} temperature={values.temperature} say={say} />
  ),
  tables: [
    {
      caption: 'At this temperature',
      columns: ['Glycerol', 'Viscosity', 'Thicker by', 'Density', 'Freezes at'],
      rows: ({ at }, _, say) =>
        SHARES.map((share) => {
          const { viscosity, thickening, density, freezing } = at(share);
          return [
            say(share, 'ratio', { units: PERCENT, plain: true }),
            say(viscosity, 'viscosity'),
            say(thickening - 1, 'ratio', { units: PERCENT, significant: 2 }),
            say(density, 'density', { units: WEIGHT, significant: 4 }),
            say(freezing, 'temperature', { decimals: 1 }),
          ];
        }),
    },
  ],
  cautions: ['glycerol-and-concentrate'],
  defers: ['The concentrate’s own sheet says whether it bears glycerol at all.'],
  sources: [
    'cheng-2008',
    'westbrook-glycerol',
    'volk-kahler-2018',
    'segur-oberstar-1951',
    'lange-15',
    'common-practice',
  ],
});

/** The cooling of plain water that thickens it as this glycerol does; undefined below freezing. */
function coolerBy(glycerol: number, temperature: number): number | undefined {
  const wanted = glycerolViscosity({ glycerol, temperature }).viscosity;
  const water = (at: number) => glycerolViscosity({ glycerol: 0, temperature: at }).viscosity;
  let [low, high] = [ICE_POINT, temperature];
  if (water(low) < wanted) return undefined;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (water(middle) > wanted) low = middle;
    else high = middle;
  }
  return temperature - (low + high) / 2;
}
