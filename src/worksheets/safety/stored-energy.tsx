import {
  ESSENTIAL_REQUIREMENTS,
  HIGH_HAZARD_ENERGY,
  storedEnergy,
  testDistance,
} from '../../core/air/stored-energy.ts';
import { STANDARD_GRAVITY } from '../../core/quantity/constants.ts';
import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { demo } from '../demo.ts';
import { pressureVolume } from '../shared/foam/pressure-volume.ts';
import { BAR, NO_PLATE, OFTEN_MARKED, unfitVessel, vesselSaid } from '../shared/foam/stored-air.ts';
import { SMALL_MASS } from '../shared/words/amounts.ts';
import { EnergyBars } from './drawn/EnergyBars.tsx';

const DISTANCE = { metric: 'm', us: 'ft' } as const;
const SPEED = { metric: 'm/s', us: 'ft/s' } as const;
/** A slab of the demo scenario and a lid: what the energy would do to them, kg. */
const SLAB = demo.slab.length * demo.slab.width * demo.slab.thickness * demo.wetDensity;
const LID = 1;
/** The highest pressure, Pa, that worksheets of this handbook use. A choice. */
const EVER_MARKED = fromUnit(40, 'pressure', 'bar');

export default worksheet({
  id: 'stored-energy',
  question: 'What would come out of this vessel at once?',
  fields: {
    vessel: number('volume', {
      label: 'Volume of the vessel',
      example: '24 L',
      min: '0.1 L',
      max: '10 m3',
      bench: 'air.receiver',
    }),
    gauge: number('pressure', {
      label: 'Pressure on the gauge',
      example: '8 bar',
      min: '0 bar',
      max: '300 bar',
      units: BAR,
      bench: 'air.tankPressure',
    }),
    ...vesselSaid,
    ambient: number('pressure', {
      label: 'Air pressure round it',
      example: '101 kPa',
      min: '50 kPa',
      max: '110 kPa',
      folded: true,
    }),
  },
  work: ({ vessel, gauge, ambient }) => {
    const held = storedEnergy({ vessel, pressure: gauge + ambient, ambient });
    return {
      held,
      distance: testDistance({ isentropic: held.isentropic }),
      drop: held.isentropic / (SLAB * STANDARD_GRAVITY),
      lid: Math.sqrt((2 * held.isentropic) / LID),
    };
  },
  results: {
    isentropic: {
      label: 'If it bursts, air cooling as it expands',
      kind: 'energy',
      of: (r) => r.held.isentropic,
    },
    isothermal: {
      label: 'Heat let in, less what pushes the air outside back',
      kind: 'energy',
      of: (r) => r.held.isothermal,
      note: 'the burst counts that push too: at low pressure this is the smaller',
    },
    brode: {
      label: 'By what it takes to raise the pressure',
      kind: 'energy',
      of: (r) => r.held.brode,
    },
    tnt: {
      label: 'As much as TNT',
      kind: 'mass',
      of: (r) => r.held.tnt,
      units: SMALL_MASS,
      significant: 2,
    },
    distance: {
      label: 'Distance kept when such a vessel is tested with air',
      kind: 'length',
      of: (r) => r.distance.distance,
      units: DISTANCE,
      significant: 2,
    },
    scaled: {
      label: 'By the formula, without its minimum of 30\u00a0m (98\u00a0ft)',
      kind: 'length',
      of: (r) => r.distance.scaled,
      units: DISTANCE,
      significant: 2,
    },
    product: {
      label: 'Pressure × volume, bar·L',
      kind: 'count',
      of: (r) => r.held.pressureVolume / 100,
      significant: 3,
      note: 'the measure of the law: above 50 the European safety requirements apply to a simple vessel',
    },
  },
  doubts: (_, { marking = 0, gauge }, say) =>
    marking > EVER_MARKED || (marking > OFTEN_MARKED && gauge > inPsi(marking))
      ? `Read its plate again, the number and the unit (bar, psi or kPa): ${say(marking, 'pressure', { units: BAR })} is much for a vessel of workshop air (from memory). Fill it no further until you know.`
      : undefined,
  judge: ({ held }, v, say) => {
    const { gauge, made, marking, relief } = v;
    const energy = say(held.isentropic, 'energy', { significant: 2 });
    if (gauge === 0)
      return {
        verdict: 'good',
        say: 'At zero on the gauge nothing would come out. This is the state to open it in.',
      };
    if (made === 'unsaid')
      return {
        verdict: 'stop',
        say: `You have not said what it is. Only a vessel made and marked for pressure may hold ${energy}: no plate, no air.`,
      };
    if (marking === undefined)
      return {
        verdict: 'stop',
        say: `${NO_PLATE} A marking that cannot be read is none.`,
      };
    const unfit = unfitVessel(held, v, say);
    if (unfit) return unfit;
    if (relief !== 'passes')
      return {
        verdict: 'stop',
        say: `You have not said that ${relief === 'fitted' ? 'its relief valve passes enough. If not,' : 'it has a relief valve. Without one,'} nothing but attention holds back ${energy}: look for it, its setting and what it passes.`,
      };
    if (held.isentropic > HIGH_HAZARD_ENERGY)
      return {
        verdict: 'look',
        say: `${energy} is above the ${say(HIGH_HAZARD_ENERGY, 'energy', { significant: 2 })} that one university calls highly hazardous. A smaller vessel would serve a bench.`,
      };
    return {
      verdict: 'good',
      say: `Within its marking, with its relief valve. It still holds ${energy}: goggles on, hoses sound, and see zero before you open anything.`,
    };
  },
  notes: ({ held }, _, say) => [
    'The distance is a rule for testing a vessel with air, not for using one that has been tested.',
    ...(held.pressureVolume > ESSENTIAL_REQUIREMENTS
      ? [
          `Its pressure times volume is above ${pressureVolume(ESSENTIAL_REQUIREMENTS, say)}, where the European rules for simple vessels ask for more than good practice.`,
        ]
      : []),
  ],
  blames: { pressure: 'gauge' },
  folded: 'The air outside',
  working: [
    {
      tex: String.raw`E = 2.5\,pV\left[1 - \left(\tfrac{p_a}{p}\right)^{0.286}\right]`,
      put: ({ held }, { vessel, gauge, ambient }, say) =>
        `p = ${say(gauge + ambient, 'pressure', { units: BAR })} absolute, V = ${say(vessel, 'volume')}: E = ${say(held.isentropic, 'energy')}`,
    },
    {
      tex: String.raw`\begin{gathered}E_T = pV\left[\ln\tfrac{p}{p_a} - 1 + \tfrac{p_a}{p}\right],\\ E_B = \frac{(p-p_a)V}{\gamma-1}\end{gathered}`,
      put: ({ held }, _, say) =>
        `${say(held.isothermal, 'energy')} and ${say(held.brode, 'energy')}`,
    },
    {
      tex: String.raw`R = 20\,(2\,m_{\text{TNT}})^{1/3} \ge 30\ \text{m}`,
      put: ({ held, distance }, _, say) =>
        `m = ${say(held.tnt, 'mass', { units: SMALL_MASS, significant: 3 })}: ${say(distance.scaled, 'length', { units: DISTANCE, significant: 3 })} by the rule${distance.floor === undefined ? ', and beyond the energies the standard covers' : `, ${say(distance.floor, 'length', { units: DISTANCE, significant: 2 })} by its minimum`}`,
    },
  ],
  figure: ({ result: { held }, say }) => (
    <EnergyBars
      bars={[
        ['Burst, air cooling', held.isentropic],
        ['Heat let in, less the push outside', held.isothermal],
        ['Raised at one volume', held.brode],
      ]}
      mark={['“highly hazardous”', HIGH_HAZARD_ENERGY]}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'The same energy would',
      columns: ['Do what', 'How high, how fast'],
      rows: ({ drop, lid }, _, say) => [
        [
          `throw a slab of ${say(SLAB, 'mass')} straight up, if all of it went there`,
          say(drop, 'length', { units: DISTANCE, significant: 2 }),
        ],
        [
          `send off a lid of ${say(LID, 'mass', { significant: 1 })}, if all of it went there`,
          say(lid, 'speed', { units: SPEED, significant: 2 }),
        ],
      ],
    },
  ],
  cautions: ['pressurised-vessel', 'compressed-air-jet'],
  defers: [
    'The vessel’s marking, the pressure-equipment rules of the place, and a competent inspector for anything used, repaired or altered.',
  ],
  sources: [
    'asme-pcc-2',
    'stored-energy-forum',
    'crowl-2003',
    'uc-berkeley-stored-energy',
    'spvd-2014-29',
    'osha-pvc-1991',
    'common-practice',
  ],
});

/** A marking of so many bar, were they psi. */
const inPsi = (marking: number) => fromUnit(toUnit(marking, 'pressure', 'bar'), 'pressure', 'psi');
