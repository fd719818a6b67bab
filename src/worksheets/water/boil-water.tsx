import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../core/quantity/kinds.ts';
import { waterPerVolume } from '../../core/water/carbonate/from-report.ts';
import { hardnessParts as partsOf } from '../../core/water/hardness.ts';
import { softEnoughForFoam } from '../../core/water/hardness-class.ts';
import * as MOLAR_MASS from '../../core/water/molar-masses.ts';
import { boil, POT_CARBON_DIOXIDE } from '../../core/water/soften/boil.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { lazy } from '../shared/lazy.ts';
import { SMALL_MASS } from '../shared/words/amounts.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { IonBars } from './drawn/IonBars.tsx';
import { hardnessParts } from './hardness-parts.ts';
import { ofPH, washedNote } from './of-ph.ts';
import { softWater } from './soft-water.ts';
import { softenedOrSlip } from './softened-or-slip.ts';
import { otherIons, others, readAlkalinity, readPH, waterTemperature } from './water-fields.ts';
import { WATER_BLAMES, WATER_REFUSALS, waterOf } from './water-solved.ts';

/** The scale of the picture reaches to this, mol/m³. */
const LEAST_DRAWN = fromUnit(50, 'hardness', 'mg/L CaCO3');
/** Less than this share taken out is not worth the fuel. Common practice, no source. */
const WORTH_IT = 0.3;
/** Less than this share is no more than a test of hardness tells. A choice. */
const NEXT_TO_NOTHING = 0.05;
/** What one person lifts with its pot, m³. A choice: no source draws this line. */
const LOT = 0.01;

export default worksheet({
  id: 'boil-water',
  question: 'What does boiling take out of this water?',
  fields: {
    ...hardnessParts,
    alkalinity: readAlkalinity,
    pH: readPH,
    volume: number('volume', {
      label: 'Water to boil',
      ...softWater,
      bench: 'water.toBoil',
    }),
    temperature: { ...waterTemperature, folded: true },
    others: { ...others, example: 'none', folded: true },
    ...otherIons,
  },
  folded: 'Temperature and other ions',
  work: (v, _, typed) => {
    const raw = waterOf(v);
    const perVolume = waterPerVolume({ temperature: v.temperature });
    const before = (raw.calcium + raw.magnesium) * perVolume;
    demandFresh(before);
    const { water, hardness } = boil({ water: raw });
    return {
      raw,
      water,
      perVolume,
      before,
      alkalinity: typed?.('alkalinity') ? v.alkalinity : undefined,
      hardness: hardness * perVolume,
      // Not before less after: where nothing comes out, that leaves dust of the last digits.
      most: lazy(
        () =>
          boil({ water: raw, carbonDioxidePressure: POT_CARBON_DIOXIDE }).water.precipitated *
          perVolume,
      ),
      removed: water.precipitated * perVolume,
      scale: water.precipitated * perVolume * v.volume * MOLAR_MASS.calciumCarbonate,
      textbook: partsOf({ total: before, alkalinity: Math.max(0, raw.alkalinity * perVolume) })
        .nonCarbonate,
    };
  },
  results: {
    removed: {
      label: 'Boiling takes out',
      kind: 'hardness',
      of: (r) => r.removed,
    },
    hardness: {
      label: 'Hardness left, at rest with air once cold',
      kind: 'hardness',
      of: (r) => r.hardness,
      answer: true,
      sure: true,
      aboutZero: 'good',
    },
    textbook: {
      label: 'The textbook’s least',
      kind: 'hardness',
      of: (r) => r.textbook,
      significant: 2,
      note: 'the non-carbonate hardness: what would stay if all the rest came out',
    },
    pH: {
      label: 'pH once it has stood',
      kind: 'count',
      of: (r) => r.water.pH,
      significant: 2,
    },
    scale: {
      label: 'Scale in the pot, dry',
      kind: 'mass',
      of: (r) => r.scale,
      units: SMALL_MASS,
      significant: 2,
    },
  },
  judge: (r, v, say) => {
    const mg = (left: number) => say(left, 'hardness');
    const unfit = ofPH(v.pH, say);
    if (unfit) return unfit;
    const doubt = softenedOrSlip(r.before, r.alkalinity, 'it need not be boiled', say);
    if (doubt) return { verdict: 'look', say: doubt };
    if (softEnoughForFoam(r.before))
      return {
        verdict: 'good',
        say: `At ${mg(r.before)} it is soft enough for foam, and need not be boiled.`,
      };
    const most = r.most();
    if (most <= 0)
      return {
        verdict: 'stop',
        say: 'Boiling takes nothing out of this water: it holds no calcite to spare. If it is too hard, use a softener, or blend it with soft water.',
      };
    const least = r.before - most;
    if (most < WORTH_IT * r.before && !softEnoughForFoam(least))
      return {
        verdict: 'stop',
        say: `Not worth the fuel: even a hard boil would leave some ${mg(least)}. Use washing soda or a softener, or blend with soft water.`,
      };
    const litres = (volume: number) => say(volume, 'volume', { significant: 2 });
    const stays =
      r.removed > NEXT_TO_NOTHING * r.before
        ? `About ${mg(r.hardness)} stays once it is cold; a hard boil may leave less. `
        : `${r.removed > 0 ? 'Next to nothing' : 'Nothing'} comes out of it at rest with air. If it has been boiled already, blend it with soft water: a second boil is not worth the fuel. If not, a hard boil may leave some ${mg(least)} of its ${mg(r.before)}. `;
    const lots = v.volume > LOT ? `, in lots of no more than ${litres(LOT)},` : '';
    return {
      verdict: 'look',
      say: `${stays}Boil ${litres(v.volume)}${lots} for some minutes, let it cool and settle where it stands, draw off the clear water and test it: if it is still harder than you want, blend it with soft water.`,
    };
  },
  notes: (_, v) => [
    ...washedNote(v.pH),
    'Worked out for water that has come to rest with the air and with its own calcite once it is cool. How near a pot gets to that in an hour is not known here: short boiling leaves more.',
    'Magnesium is counted as staying, and what steams off as nothing.',
  ],
  refusals: { ...WATER_REFUSALS, ...BRINE_REFUSAL },
  blames: WATER_BLAMES,
  working: [
    {
      tex: String.raw`\mathrm{Ca^{2+}} + 2\,\mathrm{HCO_3^-} \rightarrow \mathrm{CaCO_3} + \mathrm{CO_2} + \mathrm{H_2O}`,
      put: (r, _, say) =>
        `CO₂ leaves until the water rests with air; ${say(r.removed, 'hardness')} of calcium comes out before calcite is just saturated.`,
    },
    {
      tex: String.raw`H_{\text{rest}} = H - \min(H,\ A)`,
      put: (r, _, say) =>
        `The textbook’s sum, which takes all the carbonate hardness for gone: ${say(r.textbook, 'hardness', { significant: 2 })}.`,
    },
  ],
  figure: ({ result: { raw, water, perVolume }, say }) => {
    const unit = KINDS.hardness.shown[say.system];
    const { symbol } = unitOf('hardness', unit);
    const part = (name: string, molal: number, tone: 'water' | 'sand') => {
      const amount = toUnit(molal * perVolume, 'hardness', unit);
      // Grains to the gallon are few: a tenth of one counts.
      return { label: `${name} ${amount.toFixed(say.system === 'us' ? 1 : 0)}`, amount, tone };
    };
    const row = (name: string, calcium: number, magnesium: number) => ({
      name,
      parts: [part('Ca', calcium, 'water'), part('Mg', magnesium, 'sand')],
    });
    return (
      <IonBars
        title={`Hardness before and after boiling, ${symbol}`}
        caption={`In ${symbol}. Boiling takes calcium, as far as there is bicarbonate to go with it.`}
        rows={[
          row('Before', raw.calcium, raw.magnesium),
          row('Boiled, cooled and settled', water.calcium, water.magnesium),
        ]}
        atLeast={toUnit(LEAST_DRAWN, 'hardness', unit)}
      />
    );
  },
  cautions: ['boiling-water'],
  defers: ['A test of the clear water: it outranks this sum.'],
  sources: ['plummer-busenberg-1982', 'wateq4f', 'davis-2010', 'en-1008-memory', 'common-practice'],
});
