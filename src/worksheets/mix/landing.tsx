import { demand } from '../../core/domain-error.ts';
import { MIX_WATER_DENSITY, SAND_DENSITY } from '../../core/mix/densities.ts';
import { LANDING_TRIALS, landing } from '../../core/mix/landing.ts';
import { justOver } from '../../core/quantity/dust.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import { histogram, shareWithin } from '../../core/uncertainty/spread.ts';
import { refused } from '../../islands/engine/problems.ts';
import { exampleNumber } from '../../islands/engine/read-number.ts';
import type { Say } from '../../islands/engine/say.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { cubicMetre } from '../shared/mix/cubic-metre.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { NEAR_ENOUGH } from '../shared/mix/near-enough.ts';
import { sandTakenAsDry } from '../shared/mix/sand-taken-as-dry.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { LandingHistogram } from './drawn/LandingHistogram.tsx';
import { RankedBars } from './drawn/RankedBars.tsx';
import { landingFields, SUPPLY_BAND } from './landing-fields.ts';
import { ranked } from './landing-ranked.ts';

const BINS = 36;
/** What a foam is weighed on while the slider says nothing else, kg. */
const USUAL_SCALE = exampleNumber(landingFields.foamScale)!;
/** Loads that land this often need no better scale; below half, more miss than land. A choice. */
const [MOSTLY, SELDOM] = [0.9, 0.5];

/** No number of trials is certainty: beyond these, odds are told as more or fewer. A choice. */
const [FEWEST, MOST] = [0.01, 0.99];

/** Odds at the head of a sentence. What misses a line does not read as it. */
function oddsInWords(odds: number, say: Say): string {
  const how = { units: PERCENT, significant: 2 };
  if (odds > MOST) return `More than ${say(MOST, 'ratio', how)}`;
  return odds < FEWEST
    ? `Fewer than ${say(FEWEST, 'ratio', { ...how, plain: true })}`
    : saidApart(odds, 'ratio', [SELDOM, MOSTLY], say, how);
}

export default worksheet({
  id: 'landing',
  question: 'How close will I land?',
  fields: landingFields,
  work: (v, pm) => {
    const cube = cubicMetre(v, v.target);
    const foamVolume = (cube.foamVolume * v.cement) / cube.cement;
    // Two weighings of the foam’s bucket, and its volume.
    const weighedTo = (scale: number) => (Math.SQRT2 * scale) / v.bucket / v.foamDensity;
    const scaleShare = weighedTo(v.foamScale);
    const bucketShare = pm.bucket / v.bucket;
    // The part of the foam density's ± that scale and bucket do not explain: the foam was assumed, or
    // varies from one weighing to the next.
    const known = pm.foamDensity / v.foamDensity;
    const weighed = Math.hypot(weighedTo(USUAL_SCALE), bucketShare);
    const foundShare = known > justOver(weighed, 0.01) ? Math.sqrt(known ** 2 - weighed ** 2) : 0;
    const shared = v.sameBucket === 'same' ? bucketShare : 0;
    const volumeShare = Math.hypot(v.foamFill, shared);
    const densityShare = Math.hypot(scaleShare, bucketShare, foundShare);
    const sand = v.sandCement * v.cement;
    const water = (cube.water * v.cement) / cube.cement;
    // Each ± held to half of what it is of, in the unit and at the field where it is typed.
    const half = (share: number) => Math.sqrt(Math.max(0, 0.25 - share ** 2));
    const most = (name: string, pm: number, kind: Kind, max: number) =>
      demand(name, pm, kind, { min: 0, max: justOver(max) }, 'too-doubtful');
    most('bucket', pm.bucket, 'volume', v.bucket / 2);
    most('baseScale', v.baseScale, 'mass', Math.min(v.cement, water, sand || water) / 2);
    const foamNet = v.bucket * v.foamDensity;
    most('foamDensity', pm.foamDensity, 'density', v.foamDensity / 2);
    const unweighed = Math.hypot(bucketShare, foundShare);
    most('foamScale', v.foamScale, 'mass', (half(unweighed) * foamNet) / Math.SQRT2);
    most('foamFill', v.foamFill, 'ratio', half(shared));
    const found = landing({
      waterDensity: MIX_WATER_DENSITY,
      together: v.together,
      sameBucket: shared > 0 ? shared ** 2 / (volumeShare * densityShare) : 0,
      readings: {
        cement: { value: v.cement, u: v.baseScale },
        water: { value: water, u: v.baseScale },
        sand: { value: sand, u: sand > 0 ? v.baseScale : 0 },
        foamVolume: { value: foamVolume, u: volumeShare * foamVolume },
        foamDensity: { value: v.foamDensity, u: densityShare * v.foamDensity },
        gasLost: { value: v.gasLost, u: pm.gasLost },
        cementDensity: { value: v.cementDensity, u: pm.cementDensity },
        sandDensity: { value: SAND_DENSITY, u: 0 },
      },
    });
    const near = { percent: NEAR_ENOUGH * v.target, supply: SUPPLY_BAND, own: v.own }[v.near];
    const band = { low: v.target - near, high: v.target + near };
    const odds = shareWithin(found.wetDensity.landed, band);
    return {
      found,
      near,
      band,
      odds,
      ranked: ranked(found, {
        scale: scaleShare,
        bucket: bucketShare,
        found: foundShare,
        density: densityShare,
        fill: v.foamFill,
        sameBucket: shared,
        volume: volumeShare,
      }),
    };
  },
  results: {
    odds: {
      label: 'Odds of landing near enough',
      kind: 'ratio',
      of: (r) => Math.max(FEWEST, Math.min(MOST, r.odds)),
      units: PERCENT,
      significant: 2,
      note: 'the trials tell no more than 99\u00a0%, and no less than 1',
    },
    mean: {
      label: 'Wet density to expect',
      kind: 'density',
      of: (r) => r.found.wetDensity.trials.mean,
    },
    u: {
      label: 'Wet density, plus or minus',
      kind: 'density',
      of: (r) => r.found.wetDensity.trials.sd,
      significant: 2,
    },
    low: {
      label: 'Wet density of 19 loads in 20, from',
      kind: 'density',
      of: (r) => r.found.wetDensity.low,
    },
    high: {
      label: 'Wet density of 19 loads in 20, up to',
      kind: 'density',
      of: (r) => r.found.wetDensity.high,
    },
    yield: {
      label: 'Yield of the load',
      kind: 'volume',
      of: (r) => r.found.yield.trials.mean,
    },
    yieldU: {
      label: 'Yield, plus or minus',
      kind: 'volume',
      of: (r) => r.found.yield.trials.sd,
      significant: 2,
    },
    dry: {
      label: 'Oven-dry density to expect',
      kind: 'density',
      of: (r) => r.found.ovenDryDensity.trials.mean,
    },
    dryU: {
      label: 'Oven-dry density, plus or minus',
      kind: 'density',
      of: (r) => r.found.ovenDryDensity.trials.sd,
      significant: 2,
    },
  },
  judge: (
    { odds, found, near, ranked: [first] },
    { target, foamDensity, plannedSurvival, gasLost },
    say,
  ) => {
    const unfit = unfitFoam(foamDensity, say);
    if (unfit) return unfit;
    const percent = (share: number) => say(share, 'ratio', { units: PERCENT, significant: 2 });
    // As the readings stand: what doubtful ones bend the mean by, no plan takes away.
    const { value, first: u, landed } = found.wetDensity;
    const bias = value - target;
    const allowed = 1 - plannedSurvival;
    const off = say(Math.abs(bias), 'density', { significant: 2 });
    const losses = `the plan allows for ${percent(allowed)} of the gas to be lost, and you put the loss at ${percent(gasLost)}`;
    // Then most of the bias is not the plan’s, which can allow for no loss at all, but for no less.
    const gains = gasLost < -allowed;
    const aiming =
      Math.abs(bias) <= near / 2
        ? ''
        : gains
          ? `You are aiming light by ${off}: you put the loss at ${percent(gasLost)}, which is a gain. Weigh again: a reading is wrong, or the mixer stirred air in.`
          : bias > 0
            ? `You are aiming heavy by ${off}: ${losses}. Plan for the gas that is lost.`
            : `You are aiming light by ${off}: ${losses}. Plan for less loss, if that is what your own batches lost; else put in here what they did.`;
    const bar =
      first && (!aiming || first.size > Math.abs(bias)) ? first.label.toLowerCase() : undefined;
    /** The odds, were the trials so much nearer to one another and aimed that far off. */
    const played = (nearer: number, aside: number) =>
      shareWithin(landed, {
        low: value - (near + aside) / nearer,
        high: value + (near - aside) / nearer,
      });
    // The advice that raises the odds more comes first: to make that reading surer, or to correct the
    // aim. A gain of gas is a slip to find.
    const barFirst = () =>
      !gains && played(Math.sqrt(Math.max(1e-6, 1 - (first!.size / u) ** 2)), bias) > played(1, 0);
    const advice = !bar
      ? aiming
      : !aiming
        ? `What to improve first: ${bar}.`
        : barFirst()
          ? `What to improve first: ${bar}. ${aiming}`
          : `${aiming} What to improve next: ${bar}.`;
    const inWords = oddsInWords(odds, say);
    if (odds >= MOSTLY && gains && aiming)
      return { verdict: 'look', say: `${inWords} of such loads would land near enough. ${aiming}` };
    if (odds >= MOSTLY)
      return {
        verdict: 'good',
        say: `${inWords} of such loads land near enough. Weigh each all the same: odds are not a reading.`,
      };
    return {
      verdict: odds >= SELDOM ? 'look' : 'stop',
      say: `${odds < FEWEST ? '' : 'Only '}${inWords} of such loads land near enough without a correction. ${advice}`,
    };
  },
  notes: ({ found }, v) => [
    `${formatNumber(LANDING_TRIALS, { decimals: 0 })} trials, the same each time: odds less than half a per cent apart are the same. Every ± is one standard uncertainty: the truth lies within it about two times in three.`,
    ...(found.impossible > 0
      ? [
          `${found.impossible} trials asked for what cannot be, such as less than no water, and were left out: some ± is very large for its reading.`,
        ]
      : []),
    ...sandTakenAsDry(v),
  ],
  refusals: {
    ...mixRefusals,
    'too-doubtful': (e, say) => {
      const field = landingFields[e.quantity as 'bucket' | 'foamFill' | 'foamDensity'];
      // The others are each a ± by their own names.
      const label = 'plusMinus' in field || 'takes' in field ? `± of ${field.label}` : field.label;
      const finer = e.quantity === 'foamScale' || e.quantity === 'baseScale';
      return `${refused(e, { ...field, label }, say)} ${finer ? 'So small a load needs a finer scale: type what yours shows.' : 'A reading so doubtful is no reading.'}`;
    },
  },
  folded: 'The load, the bucket, and errors that go together',
  blames: { wetDensity: 'target' },
  working: [
    {
      tex: String.raw`\rho = \frac{C + W + S + \rho_f F}{C/\rho_c + W/\rho_w + S/\rho_s + F - \ell\,F\,(1 - \rho_f/\rho_w)}`,
      put: ({ found }, _, say) =>
        `ρ = ${say(found.wetDensity.value, 'density')} from the readings as they stand; the trials’ mean is ${say(found.wetDensity.trials.mean, 'density')}`,
    },
    {
      tex: String.raw`u^2(\rho) = \sum_i \sum_j c_i\,c_j\,r_{ij}\,u_i\,u_j \qquad c_i = \frac{\partial \rho}{\partial x_i}`,
      put: ({ found }, _, say) =>
        `u = ${say(found.wetDensity.first, 'density', { significant: 3 })} to first order, where the trials give ${say(found.wetDensity.trials.sd, 'density', { significant: 3 })}; yield ${say(found.yield.first, 'volume', { significant: 3 })} and ${say(found.yield.trials.sd, 'volume', { significant: 3 })}, oven-dry density ${say(found.ovenDryDensity.first, 'density', { significant: 3 })} and ${say(found.ovenDryDensity.trials.sd, 'density', { significant: 3 })}`,
    },
  ],
  figure: ({ values, result: { found, band, odds, ranked }, say }) => {
    const { low, high } = found.wetDensity;
    const reach = Math.max(0.7 * (high - low), 1e-6 * values.target);
    const ends = {
      low: Math.max(0, Math.min(low - reach / 2, band.low - reach / 8)),
      high: Math.max(high + reach / 2, band.high + reach / 8),
    };
    return (
      <>
        <LandingHistogram
          bins={histogram(found.wetDensity.landed, { ...ends, bins: BINS })}
          band={band}
          target={values.target}
          odds={oddsInWords(odds, say)}
          say={say}
        />
        <RankedBars
          title="What each reading alone does to the wet density"
          bars={ranked.map((bar) => ({
            ...bar,
            text: `±\u00a0${say(bar.size, 'density', { significant: 2 })}`,
          }))}
        />
      </>
    );
  },
  cautions: ['not-load-bearing'],
  defers: [
    'How close is close enough is for whoever asked for the part, or the code it is made to.',
  ],
  sources: [
    'jcgm-100',
    'jcgm-101',
    'california-721-2-1',
    'uk-supply-practice',
    'astm-c138',
    'common-practice',
  ],
});
