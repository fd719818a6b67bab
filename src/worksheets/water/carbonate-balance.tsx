import { STANDARD_ATMOSPHERE } from '../../core/quantity/constants.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import { equilibrateWithCalcite } from '../../core/water/carbonate/equilibrate.ts';
import { solutesFromReport, waterPerVolume } from '../../core/water/carbonate/from-report.ts';
import { precipitationPotential, saturationPH } from '../../core/water/carbonate/langelier.ts';
import { saturationIndex } from '../../core/water/carbonate/saturation.ts';
import { speciate } from '../../core/water/carbonate/speciate.ts';
import { langelierField } from '../../core/water/langelier-field.ts';
import * as MOLAR_MASS from '../../core/water/molar-masses.ts';
import { AIR_CARBON_DIOXIDE } from '../../core/water/soften/boil.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { lazy } from '../shared/lazy.ts';
import { ALKALINITY, PERCENT } from '../shared/words/amounts.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { balanceFields, imbalanceOf, PPM, pairOf, READ_AGAIN, SPECIES } from './balance-fields.ts';
import { balancedBy, isReported } from './balanced-by.ts';
import { BalanceBars } from './drawn/BalanceBars.tsx';
import { twoIons } from './hardness-parts.ts';
import { ofPH } from './of-ph.ts';
import { atBenchPressure, fizzing, theOthers, WATER_REFUSALS } from './water-solved.ts';

/** Within this of nought a water is called balanced. Common practice, no source. */
const BALANCED = 0.3;
/** A report whose charges differ by more is doubted. Common practice, no source. */
const MOST_IMBALANCE = 0.05;

export default worksheet({
  id: 'carbonate-balance',
  question: 'Does this water deposit calcite, or dissolve it?',
  fields: balanceFields,
  folded: 'Other ions, and how it is worked out',
  work: (v) => {
    const perVolume = waterPerVolume({ temperature: v.temperature });
    const { sodium, potassium, sulfate, chloride, nitrate } = theOthers(v);
    const report = {
      ...twoIons(v),
      temperature: v.temperature,
      sodium,
      potassium,
      sulfate,
      chloride,
      nitrate,
    };
    const solutes = { ...solutesFromReport(report, perVolume), activity: v.activity };
    const water = atBenchPressure(speciate(solutes, pairOf(v, perVolume)));
    const index = saturationIndex(water, 'calcite');
    const [calcium, alkali] = [water.calcium * perVolume, water.alkalinity * perVolume];
    const { otherCations: given = 0 } = solutes;
    return {
      water,
      potassium: given,
      /** Taken to balance the charges where no chloride can. */
      cation: water.otherCations - given,
      perVolume,
      index: Number.isFinite(index) ? index : undefined,
      alkalinity: alkali,
      saturationPH: lazy(() => saturationPH(water)),
      potential: lazy(() => precipitationPotential(water)),
      field:
        calcium > 0 && alkali > 0 && v.dissolved > 0 && water.pH >= 0 && water.pH <= 14
          ? langelierField({
              pH: water.pH,
              temperature: v.temperature,
              dissolved: v.dissolved,
              calcium,
              alkalinity: alkali,
            })
          : undefined,
      standing: lazy(() =>
        equilibrateWithCalcite(water, { carbonDioxidePressure: AIR_CARBON_DIOXIDE }),
      ),
      imbalance: imbalanceOf(water),
    };
  },
  results: {
    index: {
      label: 'Saturation index, calcite',
      kind: 'count',
      of: (r) => r.index,
      sure: true,
      aboutZero: 'any',
      significant: 2,
      note: 'above 0 calcite can come out; below, it dissolves',
    },
    pH: { label: 'pH', kind: 'count', of: (r) => r.water.pH },
    alkalinity: {
      label: 'Alkalinity',
      kind: 'hardness',
      of: (r) => r.alkalinity / 2,
      units: ALKALINITY,
    },
    carbon: {
      label: 'Total inorganic carbon',
      kind: 'amountConcentration',
      of: (r) => r.water.carbon * r.perVolume,
    },
    gas: {
      label: 'CO₂ of the air in balance with it',
      kind: 'ratio',
      of: (r) => r.water.carbonDioxidePressure / STANDARD_ATMOSPHERE,
      units: PPM,
      significant: 2,
      note: 'parts per million of the air above it; outdoors some 400',
    },
    dioxide: {
      label: 'CO₂ dissolved',
      kind: 'concentration',
      of: (r) => r.water.molality.carbonDioxide * r.perVolume * MOLAR_MASS.carbonDioxide,
      significant: 2,
    },
    potential: {
      label: 'Calcite that would come out',
      kind: 'concentration',
      of: (r) => r.potential() * r.perVolume * MOLAR_MASS.calciumCarbonate,
      significant: 2,
      note: 'as CaCO₃, closed to the air; below 0, what it would dissolve',
    },
    langelier: {
      label: 'Langelier index, in full',
      kind: 'count',
      of: (r) => minus(r.water.pH, r.saturationPH()),
      significant: 2,
      note: 'pH less the pH at which the same calcium and alkalinity would be in balance',
    },
    field: {
      label: 'Langelier index, field formula',
      kind: 'count',
      of: (r) => r.field?.index,
      significant: 2,
      note: 'what a hand calculation gives; within about 0.3 of the full one',
    },
  },
  judge: (r, v, say) => {
    const calcite = () =>
      say(Math.abs(r.potential()) * r.perVolume * MOLAR_MASS.calciumCarbonate, 'concentration', {
        significant: 2,
      });
    const said = ofPH(r.water.pH, say, undefined, READ_AGAIN[v.pair]) ?? ofIndex(r.index, calcite);
    const off = Math.abs(r.imbalance);
    const misread: Judgement | undefined =
      isReported(v) && off > MOST_IMBALANCE
        ? {
            verdict: 'look',
            say: `Check the report first: its positive and negative charges differ by ${say(off, 'ratio', { units: PERCENT, significant: 2 })} of their sum. An ion is missing, or one is misread.`,
          }
        : undefined;
    return judgeBy([misread, said], said);
  },
  notes: (r, v, say) => {
    const notes: string[] = [];
    const often = r.water.carbonDioxidePressure / AIR_CARBON_DIOXIDE;
    if (often > 1.5)
      notes.push(
        `It holds ${say(often, 'count', { significant: 2 })} times the CO₂ that outdoor air would leave in it. In an open bucket that gas goes, and pH climbs in the end to ${say(r.standing().pH, 'count', { significant: 2 })}; calcite comes out on the way if there is any to spare.`,
      );
    if (!isReported(v)) notes.push(balancedBy(r.water));
    if (r.water.notes.length > 0)
      notes.push(
        'So salty a water is beyond what the activity model is trusted for: read the index as a direction, not as a number.',
      );
    return notes;
  },
  refusals: { ...WATER_REFUSALS, fizzing: fizzing('the two numbers of “What else do you know?”') },
  blames: {
    ionicStrength: ['pH', 'alkalinity', 'carbon'],
    carbonDioxidePressure: ['gas', 'pH', 'carbon'],
    carbon: ['carbon', 'pH'],
  },
  working: [
    {
      tex: String.raw`\mathrm{SI} = \log_{10}\frac{a_{\mathrm{Ca^{2+}}}\,a_{\mathrm{CO_3^{2-}}}}{K_{\mathrm{calcite}}(T)}`,
      put: (r) =>
        r.index === undefined
          ? 'Calcium or carbonate is absent: there is no product to compare.'
          : `log a(Ca²⁺) = ${log10(r.water.lnActivity.calcium)}, log a(CO₃²⁻) = ${log10(r.water.lnActivity.carbonate)}, SI = ${figure(r.index)}`,
    },
    {
      tex: String.raw`\mathrm{LI} = \mathrm{pH} - \mathrm{pH_s}`,
      put: (r) => {
        const at = r.saturationPH();
        return at === undefined
          ? 'Between pH\u00a04 and 11 this water is never just saturated.'
          : `LI = ${r.water.pH.toFixed(2)} − ${at.toFixed(2)} = ${figure(r.water.pH - at)}`;
      },
    },
    {
      tex: String.raw`\begin{aligned} \mathrm{pH_s} \approx{} & 9.3 + \tfrac{\log S - 1}{10} \\ & + 34.55 - 13.12\log(t + 273) \\ & - (\log C - 0.4) - \log A \end{aligned}`,
      put: (r) =>
        r.field
          ? `With dissolved solids S, calcium C and alkalinity A in mg/L (C and A as CaCO₃): pHs = ${figure(r.field.saturationPH)}, index ${figure(r.field.index)}`
          : 'The field formula needs calcium, alkalinity and dissolved solids above 0.',
    },
  ],
  figure: ({ result, values }) => <BalanceBars {...result} balanced={!isReported(values)} />,
  tables: [
    {
      caption: 'What is in it, ion by ion and pair by pair',
      columns: ['', 'In a litre'],
      rows: (r, _, say) =>
        [
          ...Object.entries(SPECIES).map(
            ([name, shown]) => [shown, r.water.molality[name as keyof typeof SPECIES]] as const,
          ),
          ['K⁺', r.potassium] as const,
          ['Cl⁻', r.water.chloride] as const,
          ['NO₃⁻', r.water.otherAnions] as const,
          ['A cation, to balance', r.cation] as const,
        ]
          .filter(([, molal]) => molal > 1e-12)
          .map(([shown, molal]) => [shown, say(molal * r.perVolume, 'amountConcentration')]),
    },
  ],
  cautions: ['stored-rainwater'],
  defers: ['The laboratory’s report; a pH read with paper is good to half a unit at best.'],
  sources: [
    'plummer-busenberg-1982',
    'wateq4f',
    'langelier-1936',
    'lsi-field-formula',
    'en-1008-memory',
    'common-practice',
  ],
});

/** What an index bids; `calcite` is what would come out, or be taken up. */
function ofIndex(index: number | undefined, calcite: () => string): Judgement {
  if (index === undefined)
    return {
      verdict: 'good',
      say: 'Without both calcium and carbonate there is no calcite to come out. For foam this is the water to have.',
    };
  if (Math.abs(index) <= BALANCED)
    return {
      verdict: 'good',
      say: 'Near balance: it neither scales nor dissolves much as it stands. Warmed, or left in the air, it may still cloud.',
    };
  return {
    verdict: 'look',
    say:
      index > 0
        ? `It holds more calcite than it can keep: up to ${calcite()} may come out. Strain what is milky before it reaches a lance, and test its hardness after it has stood, not before.`
        : `It would dissolve calcite, ${calcite()} of it: keep it in plastic rather than in bare metal. For foam this is no fault.`,
  };
}

const minus = (a: number, b: number | undefined) => (b === undefined ? undefined : a - b);
const figure = (x: number) => formatNumber(x, { decimals: 2 });
const log10 = (ln: number) => figure(ln / Math.LN10);
