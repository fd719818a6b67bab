import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import { alkaliesOf } from '../../core/water/fitness.ts';
import { LIMITS } from '../../core/water/mixing-water-limits.ts';
import * as MOLAR_MASS from '../../core/water/molar-masses.ts';
import { ionExchange } from '../../core/water/soften/ion-exchange.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { inThousands } from '../shared/words/spelt.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { IonBars } from './drawn/IonBars.tsx';
import { stillHard } from './still-hard.ts';
import { hardness } from './water-fields.ts';

const EQUIVALENTS = { metric: 'mol/L', us: 'mol/L' } as const;
/** The strictest line on alkalis, kg/m³. */
const ALKALIES = Math.min(
  ...LIMITS.filter(({ of }) => of === 'alkalies').map(({ most }) => most ?? Infinity),
);

/** More than any resin regenerated with salt holds, in equivalents per litre: they hold about 2. From memory. */
const MOST_HELD = '2.5 mol/L';

/** The result for a water without hardness. */
const NOTHING = {
  volume: undefined,
  salt: undefined,
  leastSalt: undefined,
  sodiumAdded: 0,
  alkalies: 0,
} as const;

export default worksheet({
  id: 'softener',
  question: 'How far does a softener go, and what does it cost in salt?',
  fields: {
    hardness,
    by: choice({
      label: 'How big is the softener?',
      options: {
        resin: 'I know how much resin it holds',
        degrees: 'Its plate says m³ × °dH',
        grains: 'Its plate says grains',
      },
      example: 'resin',
      bench: 'softener.by',
    }),
    resin: number('volume', {
      label: 'Resin in it',
      example: '5 L',
      plusMinus: '0.2 L',
      plusMinusGrows: true,
      min: '0 L',
      aboveMin: true,
      max: '1000 L',
      bench: 'softener.resin',
      when: { by: ['resin'] },
    }),
    perLitre: number('amountConcentration', {
      label: 'Equivalents a litre of it holds',
      help: 'About 1 for a softener that is not starved of salt (common practice, no source); its sheet gives the figure.',
      example: '1 mol/L',
      min: '0 mol/L',
      aboveMin: true,
      max: MOST_HELD,
      units: EQUIVALENTS,
      bench: 'softener.perLitre',
      when: { by: ['resin'] },
    }),
    degrees: number('count', {
      label: 'Capacity, m³ × °dH',
      example: '14',
      min: '0',
      aboveMin: true,
      max: '100000',
      bench: 'softener.degrees',
      when: { by: ['degrees'] },
    }),
    grains: number('count', {
      label: 'Capacity, grains as CaCO₃',
      example: '3900',
      min: '0',
      aboveMin: true,
      max: '100000000',
      spelt: inThousands,
      bench: 'softener.grains',
      when: { by: ['grains'] },
    }),
    leaves: number('hardness', {
      label: 'Hardness that still comes through',
      example: '0 mg/L CaCO3',
      min: '0 mg/L CaCO3',
      bench: 'softener.leaves',
    }),
  },
  work: (v) => {
    demandFresh(v.hardness);
    const capacity = capacityOf(v);
    if (v.hardness === 0) return { ...NOTHING, capacity };
    const run = ionExchange({ capacity, hardness: v.hardness, leaves: v.leaves });
    return {
      ...run,
      capacity,
      alkalies: alkaliesOf({ sodium: run.sodiumAdded, potassium: 0 }),
    };
  },
  results: {
    volume: {
      label: 'Soft water before it must be regenerated',
      kind: 'volume',
      of: (r) => r.volume,
      sure: true,
      aboutZero: 'good',
    },
    salt: { label: 'Salt to regenerate it', kind: 'mass', of: (r) => r.salt },
    sodium: {
      label: 'Sodium it puts in the water',
      kind: 'concentration',
      of: (r) => r.sodiumAdded,
      note: 'two sodium ions for each calcium or magnesium',
    },
    alkalies: {
      label: 'Alkalis from that sodium, as Na₂O',
      kind: 'concentration',
      of: (r) => r.alkalies,
      note: 'the strictest limit for mixing water is 600\u00a0mg/L, optional',
    },
  },
  judge: (r, v, say) => {
    if (r.volume === undefined)
      return { verdict: 'good', say: 'There is nothing to soften: use this water as it is.' };
    const soft = say(v.leaves, 'hardness');
    if (v.leaves > 0.5 * v.hardness)
      return {
        verdict: 'stop',
        say: `At ${soft} most of the hardness comes through: the bed is spent or bypassed. Regenerate it and test again.`,
      };
    const still = stillHard(v.leaves, say);
    if (still)
      return {
        verdict: 'look',
        say: `At ${soft} the bed lets too much through.${still} Regenerate the bed and test again, or pass the water through once more, before it makes foam.`,
      };
    if (r.alkalies > ALKALIES)
      return {
        verdict: 'look',
        say: `Good for the foam, at ${soft}. Its sodium alone exceeds the strictest limit on alkalis for mixing water, so keep the unsoftened water for the base mix.`,
      };
    return {
      verdict: 'good',
      say: `Make the foam with it, at ${soft}. Test the water each time before a batch: a spent bed looks like a fresh one.`,
    };
  },
  notes: () => [
    'The alkalinity and pH stay as they were: only the partner of the bicarbonate changes. A conductivity meter sees hardly any difference.',
    'Brine from the regeneration does not belong in any mix, and not on a bed of plants.',
  ],
  blames: { capacity: 'resin' },
  refusals: BRINE_REFUSAL,
  working: [
    {
      tex: String.raw`V = \frac{Q}{2\,(H - H_{\text{through}})}`,
      put: (r, v, say) =>
        r.volume === undefined
          ? 'Nothing to soften.'
          : `V = ${say(r.capacity, 'count')} eq ÷ (2 × ${say(v.hardness - v.leaves, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })}) = ${say(r.volume, 'volume')}`,
    },
    {
      tex: String.raw`\begin{aligned} m_{\text{salt}} & = 0.105\ \tfrac{\text{kg}}{\text{eq}}\ Q \\ m_{\text{least}} & = 0.0584\ \tfrac{\text{kg}}{\text{eq}}\ Q \end{aligned}`,
      put: (r, _, say) =>
        r.salt === undefined
          ? 'None.'
          : `${say(r.salt, 'mass')} at 0.3\u00a0lb for each kilograin; ${say(r.leastSalt, 'mass')} mole for mole.`,
    },
    {
      tex: String.raw`c_{\text{Na}} = 2\,(H - H_{\text{through}})\,M_{\text{Na}}`,
      put: (r, _, say) => `Sodium added: ${say(r.sodiumAdded, 'concentration')}.`,
    },
  ],
  figure: ({ values: v, result: r, say }) => {
    const us = say.system === 'us';
    const unit = us ? 'grains per US gallon' : 'mg/L';
    const inUnit = (si: number) => toUnit(si, 'hardness', KINDS.hardness.shown[say.system]);
    const short = (si: number) => inUnit(si).toFixed(us ? 1 : 0);
    const exchanged = r.sodiumAdded / MOLAR_MASS.sodium / 2;
    return (
      <IonBars
        title={`What the softener exchanges, ${unit} as calcium carbonate`}
        caption={`${us ? 'Grains per US gallon' : unit} as CaCO₃: the bar keeps its length, and sodium takes the place of calcium and magnesium.`}
        rows={[
          {
            name: 'In',
            parts: [
              {
                label: `Ca and Mg ${short(v.hardness)}`,
                amount: inUnit(v.hardness),
                tone: 'water',
              },
            ],
          },
          {
            name: 'Out',
            parts: [
              {
                label: `Ca and Mg ${short(v.leaves)}`,
                amount: inUnit(v.leaves),
                tone: 'water',
              },
              {
                label: `Na ${short(exchanged)}`,
                amount: inUnit(exchanged),
                tone: 'cement',
              },
            ],
          },
        ]}
        atLeast={us ? 3 : 50}
      />
    );
  },
  cautions: ['softener-salt'],
  defers: ['The softener’s own plate and sheet, for its capacity and its salt.'],
  sources: ['definition', 'ten-states-standards', 'pca-mixing-water', 'common-practice'],
});

/** Equivalents the bed holds: two for each mole of hardness. */
function capacityOf(v: {
  readonly by: 'resin' | 'degrees' | 'grains';
  readonly resin: number;
  readonly perLitre: number;
  readonly degrees: number;
  readonly grains: number;
}): number {
  if (v.by === 'resin') return v.resin * v.perLitre;
  if (v.by === 'degrees') return 2 * v.degrees * fromUnit(1, 'hardness', 'dH');
  // A grain in each gallon, over a gallon.
  return 2 * v.grains * fromUnit(1, 'hardness', 'gpg') * fromUnit(1, 'volume', 'gal');
}
