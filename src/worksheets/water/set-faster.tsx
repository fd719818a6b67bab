import { CHLORIDE_LIMIT } from '../../core/curing/accelerator.ts';
import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../core/quantity/kinds.ts';
import { besideCementWater, calciumChlorideEquivalent } from '../../core/water/set-effect.ts';
import { LIME_SODA_DEMAND } from '../../core/water/soften/lime-soda.ts';
import { Curve, Dot, Level, Plot, type Point } from '../../islands/plots/Plot.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { waterCement } from '../shared/mix/recipe.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { alkalinity, hardness } from './water-fields.ts';

/** kg/m³ of calcium or magnesium bicarbonate said to be tolerable. @source pca-tolerable-salts */
const TOLERABLE_BICARBONATE = 0.4;
/** Less than this share of the usual dose nobody sees. Common practice, no source. */
const UNSEEN = 0.1;
/** mol/m³: 800 mg/L as CaCO₃, as far as “extremely hard” and a little beyond. */
const END = fromUnit(800, 'hardness', 'mg/L CaCO3');

export default worksheet({
  id: 'set-faster',
  question: 'Does this hard water set cement faster?',
  fields: {
    hardness,
    waterCement,
    alkalinity: { ...alkalinity, label: 'Alkalinity, if you know it', optional: true },
  },
  work: (v) => {
    demandFresh(v.hardness);
    return {
      ...calciumChlorideEquivalent({ hardness: v.hardness, waterCement: v.waterCement }),
      beside: besideCementWater({ calcium: v.hardness, waterCement: v.waterCement }),
      bicarbonate:
        v.alkalinity === undefined
          ? undefined
          : v.alkalinity * LIME_SODA_DEMAND.calciumBicarbonate.molarMass,
    };
  },
  refusals: BRINE_REFUSAL,
  results: {
    share: {
      label: 'If it were all calcium chloride, of the cement',
      kind: 'ratio',
      of: (r) => r.shareOfCement,
      units: PERCENT,
      sure: true,
      aboutZero: 'good',
    },
    ofLimit: {
      label: 'Of the usual greatest dose',
      kind: 'ratio',
      of: (r) => r.shareOfLimit,
      units: PERCENT,
      significant: 2,
      note: 'which is 2\u00a0% of the cement, in plain concrete',
    },
    warmth: {
      label: 'As warmth, that would be',
      kind: 'temperatureDifference',
      of: (r) => r.warmth,
      significant: 1,
    },
    quicker: {
      label: 'Set shorter by',
      kind: 'ratio',
      of: (r) => 1 - r.setFactor,
      units: PERCENT,
      significant: 2,
    },
    beside: {
      label: 'All of it as calcium, beside what cement gives',
      kind: 'ratio',
      of: (r) => r.beside.share,
      units: PERCENT,
      significant: 2,
      note: 'cement saturates its water with lime within minutes',
    },
    bicarbonate: {
      label: 'Its bicarbonate, as Ca(HCO₃)₂',
      kind: 'concentration',
      of: (r) => r.bicarbonate,
      note: 'all of it counted as calcium’s; about 400\u00a0mg/L of that, and as much of magnesium’s, is called tolerable',
    },
  },
  judge: (r, _, say) => {
    const warmth = say(r.warmth, 'temperatureDifference', { significant: 1 });
    if (r.bicarbonate !== undefined && r.bicarbonate > TOLERABLE_BICARBONATE)
      return {
        verdict: 'look',
        say: `Set one cup with this water beside one with rain: all its bicarbonate, counted as calcium’s, comes to ${saidApart(r.bicarbonate, 'concentration', [TOLERABLE_BICARBONATE], say)}, above the ${say(TOLERABLE_BICARBONATE, 'concentration', { plain: true })} called tolerable, and may hold back the set or quicken it. Its hardness, as calcium chloride, would do no more than ${warmth} of warmth.`,
      };
    if (r.shareOfLimit <= UNSEEN)
      return {
        verdict: 'good',
        say: `No: ${r.shareOfCement > 0 ? `even as calcium chloride it would do what ${warmth} of warmth does` : 'there is no hardness in it to quicken the set'}. If your batch set early, look at its temperature and its cement first.`,
      };
    return {
      verdict: 'look',
      say: `As calcium chloride it would be as much as ${warmth} of warmth, which a thermometer in the mixer tells better. Set one cup with this water beside one with rain.`,
    };
  },
  notes: ({ bicarbonate }) =>
    bicarbonate === undefined ? ['Its bicarbonate is not judged: that takes the alkalinity.'] : [],
  working: [
    {
      tex: String.raw`s = H\,M_{\mathrm{CaCl_2}}\,\frac{w/c}{\rho_w}`,
      put: (r, v, say) =>
        `${say(v.hardness, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })}\u00a0×\u00a0110.98\u00a0g/mol × ${say(v.waterCement, 'count')} = ${say(r.shareOfCement, 'ratio', { units: PERCENT })} of the cement`,
    },
    {
      tex: String.raw`\Delta T = s \times \frac{11\ {}^\circ\mathrm{F}}{1\ \%} \qquad \frac{t}{t_0} = \left(\tfrac34\right)^{\Delta T / 10\ {}^\circ\mathrm{F}}`,
      put: (r, _, say) =>
        `${say(r.warmth, 'temperatureDifference', { significant: 1 })} warmer, so the set is ${say(1 - r.setFactor, 'ratio', { units: PERCENT, significant: 2 })} shorter.`,
    },
  ],
  figure: ({ values: v, result: r, say }) => {
    const unit = KINDS.hardness.shown[say.system];
    const shown = (hardness: number) => toUnit(hardness, 'hardness', unit);
    const end = Math.max(END, v.hardness);
    const share = (hardness: number) =>
      100 * calciumChlorideEquivalent({ hardness, waterCement: v.waterCement }).shareOfCement;
    const limit = 100 * CHLORIDE_LIMIT;
    return (
      <Plot
        words={`At ${say(v.hardness, 'hardness')} the hardness would be ${say(r.shareOfCement, 'ratio', { units: PERCENT, decimals: 3 })} of the cement as calcium chloride; the usual greatest dose of CaCl₂ is ${limit}\u00a0%, half of that ${limit / 2}\u00a0%.`}
        caption="Hardness as if it were calcium chloride, in per cent of the cement, on the scale of a dose."
        x={[0, shown(end)]}
        y={[0, Math.max(limit * 1.15, share(end))]}
        xLabel={`hardness, ${unitOf('hardness', unit).symbol}`}
        yLabel="% of cement"
      >
        {(axes) => (
          <>
            <Level axes={axes} y={limit} label="usual greatest dose of CaCl₂" />
            <Level axes={axes} y={limit / 2} label="half of that" />
            <Curve
              axes={axes}
              points={[0, end / 2, end].map((at): Point => [shown(at), share(at)])}
            />
            <Dot axes={axes} at={[shown(v.hardness), 100 * r.shareOfCement]} label="yours" />
          </>
        )}
      </Plot>
    );
  },
  cautions: ['caustic-slurry'],
  defers: ['A cup of your own cement with each water, side by side.'],
  sources: [
    'jove-16919',
    'concrete-construction-accelerators',
    'lime-solubility',
    'pca-tolerable-salts',
    'common-practice',
  ],
});
