import { demand } from '../../core/domain-error.ts';
import { checkBase } from '../../core/mix/base-check.ts';
import { baseMix } from '../../core/mix/base-mix.ts';
import { CEMENT_DENSITY } from '../../core/mix/densities.ts';
import { plannedWith } from '../../core/mix/planned-with.ts';
import { BASE_WATER_CEMENT, ROBS_FOAM_BELOW } from '../../core/mix/water-cement-limits.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import { number } from '../../islands/fields.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { densityDoubt } from '../shared/mix/density-doubt.ts';
import { pasteWaterCement, solutionCement } from '../shared/mix/paste-water.ts';
import { sandCement, waterCement } from '../shared/mix/recipe.ts';
import { counts, helpedCementDensity } from '../shared/mix/recipe-details.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';

/** How far the w/c may be off before it is worth mending, and how well it must be known. Common practice, no source. */
const NEAR = 0.02;
/** Whether a w/c is off by more than a jug can tell; half a thousandth is in its last digit. */
const worthIt = (off: number) => Math.abs(off) > NEAR + 5e-4;

/** What cement may weigh with all the rest counted as part of it, kg/m³: beyond, a jug cannot tell the water. A choice. */
const CEMENT = { min: 2000, max: 4000 } as const;

/** Of two densities of cement, nearer than this share is the same one. */
const SAME_CEMENT = 1e-3;

/**
 * The density of cement with which these ratios come to the plan's base mix, kg/m³. What else is in that counts as
 * part of the cement: for the mix as meant that is exact, and one off by some hundredths of w/c is read a few per
 * cent of that too near.
 */
function cementBy(plan: number, ratios: { waterCement: number; sandCement: number }): number {
  const least = baseMix({ ...ratios, cementDensity: CEMENT.min }).density;
  const most = baseMix({ ...ratios, cementDensity: CEMENT.max }).density;
  demand('plan', plan, 'density', { min: least, max: most }, 'another-base-mix');
  const { waterCement: water, sandCement: sand } = ratios;
  const neat = { foamVolume: 0, foamDensity: 0, wetDensity: plan, baseDensity: plan };
  return plannedWith({ cement: 1, water, sand, ...neat }).cementDensity;
}

/** What a slip may lie in. */
const JUG = 'the jug empty, full, and its volume with water';

/** What makes the w/c surer, by what most of its ± comes from. */
const SURER = {
  jug: 'Weigh the jug’s volume with water on a finer scale, or take a larger jug',
  cement: 'Find the cement’s own density',
  plan: 'Look at the base mix density by the plan',
} as const;

/** More than this share of the cement is no correction but a slip. A line of our own, no source. */
const MOST_ADDED = 0.5;

export default worksheet({
  id: 'base-check',
  question: 'Is the base mix what I meant?',
  fields: {
    full: number('mass', {
      label: 'Jug, struck full of base mix',
      help: 'Before any foam is in it.',
      example: '2.04 kg',
      plusMinus: '0.005 kg',
      min: '0 kg',
      max: '1000 kg',
    }),
    tare: number('mass', {
      label: 'Jug, empty',
      example: '0.150 kg',
      plusMinus: '0.005 kg',
      min: '0 kg',
      max: '200 kg',
      bench: 'jug.tare',
    }),
    jug: number('volume', {
      label: 'Jug’s volume to the brim',
      help: 'From the weight of water that fills it under a flat sheet, not from its marks.',
      example: '1 L',
      plusMinus: '0.007 L',
      min: '0 L',
      aboveMin: true,
      max: '200 L',
      bench: 'jug.volume',
    }),
    cement: number('mass', {
      label: 'Cement in the base mix',
      example: '13.57 kg',
      min: '0 kg',
      aboveMin: true,
      max: '10 t',
      takes: 'mix.loadCement',
    }),
    waterCement,
    counts,
    solutionCement,
    sandCement,
    air: number('ratio', {
      label: 'Air stirred into it',
      help: 'A fast paddle whips in one or two per cent, and each reads as more water.',
      example: '0 %',
      min: '0 %',
      max: '20 %',
      units: PERCENT,
      folded: true,
    }),
    cementDensity: { ...helpedCementDensity, plusMinus: '30 kg/m3' },
    plan: number('density', {
      label: 'Base mix density by the plan',
      help: 'It tells of pigment, filler and blended cement. Empty, there are none.',
      example: '',
      // As much as that of the cement comes to.
      plusMinus: '8 kg/m3',
      optional: true,
      min: '0 kg/m3',
      aboveMin: true,
      max: '4000 kg/m3',
      takes: 'mix.baseDensity',
      folded: true,
    }),
  },
  work: (v, pm) => {
    const measured = wetDensity({ tare: v.tare, full: v.full, vessel: v.jug });
    const wanted = pasteWaterCement(v);
    const ratios = { waterCement: wanted, sandCement: v.sandCement };
    const cementDensity = v.plan === undefined ? v.cementDensity : cementBy(v.plan, ratios);
    // What every amount leads to, or one would undo the other: drier than this no paste should meet foam.
    const aim = Math.max(wanted, ROBS_FOAM_BELOW);
    const check = checkBase({
      measuredDensity: measured,
      recipe: { ...ratios, waterCement: aim, cementDensity },
      cement: v.cement,
      air: v.air,
    });
    const off = check.waterCement - aim;
    const fromMeant = check.waterCement - wanted;
    // The ± of the cement’s own volume, m³/kg: by its density, or by that of the planned base mix.
    const space =
      v.plan === undefined
        ? pm.cementDensity / cementDensity ** 2
        : ((1 + wanted + v.sandCement) * pm.plan) / v.plan ** 2;
    const weighing = densityDoubt(
      { ...v, vessel: v.jug },
      { full: pm.full, tare: pm.tare, vessel: pm.jug },
    );
    const [byJug, bySpace] = [check.perDensity * weighing, check.perSpace * space].map(Math.abs);
    const doubt = Math.hypot(byJug!, bySpace!);
    // Off by more than its ± it is told so; by less than twice that, weighed once more first.
    const doubtful = doubt > NEAR && Math.abs(off) <= doubt;
    // What most of the doubt comes from.
    const rest = v.plan === undefined ? SURER.cement : SURER.plan;
    const surer = bySpace! <= byJug! ? SURER.jug : rest;
    const slip =
      check.waterCement < BASE_WATER_CEMENT.min ||
      Math.max(check.addCement, check.addWater) > MOST_ADDED * v.cement;
    // Not dry by a slip on the way: the recipe itself is. One that is not, or was mended, is too dry by more than its ± alone.
    const asMeant = !worthIt(fromMeant);
    const dryBelow = ROBS_FOAM_BELOW - (wanted < ROBS_FOAM_BELOW && asMeant ? 0 : doubt);
    const dryAsMeant = check.waterCement < dryBelow && (fromMeant > 0 || asMeant);
    // Only a correction that should be made is shown as an amount.
    const add = worthIt(off) && !slip && !doubtful && !dryAsMeant ? check : undefined;
    const plain = Math.abs(cementDensity / v.cementDensity - 1) < SAME_CEMENT;
    return {
      measured,
      check,
      wanted,
      aim,
      off,
      slip,
      doubt,
      doubtful,
      surer,
      dryAsMeant,
      add,
      plain,
    };
  },
  results: {
    ratio: {
      label: 'Water/cement ratio mixed',
      kind: 'count',
      of: (r) => r.check.waterCement,
      sure: true,
    },
    addWater: {
      label: 'Add water',
      kind: 'mass',
      of: (r) => r.add?.addWater || undefined,
      sure: true,
      answer: true,
    },
    addCement: {
      label: 'Add cement',
      kind: 'mass',
      of: (r) => r.add?.addCement || undefined,
      sure: true,
      answer: true,
    },
    addSand: {
      label: 'Sand to add with the cement',
      kind: 'mass',
      of: (r) => r.add?.addSand || undefined,
      significant: 2,
    },
    measured: {
      label: 'Base mix density',
      kind: 'density',
      of: (r) => r.measured,
      sure: true,
    },
    wanted: {
      label: 'Base mix density it should have',
      kind: 'density',
      of: (r) => r.check.wantedDensity,
      significant: 4,
    },
  },
  judge: (
    { check, wanted, aim, off, slip, doubt, doubtful, surer, dryAsMeant, plain },
    { cement, cementDensity },
    say,
  ) => {
    const some = (kg: number) => say(kg, 'mass', { significant: 2 });
    const driest = `${ROBS_FOAM_BELOW}, the driest to meet foam`;
    const to = aim > wanted ? `, which brings it to ${driest}` : '';
    if (slip)
      return {
        verdict: 'stop',
        say: `Weigh again: ${JUG}. Look at the units: a w/c of ${check.waterCement.toFixed(2)} where ${wanted.toFixed(2)} was meant is a slip, not a splash. If it stands, make the base mix afresh.`,
      };
    if (doubtful)
      return {
        verdict: 'look',
        say: `${surer}, and type each ±: these readings tell the w/c to ±\u00a0${say(doubt, 'count', { significant: 2 })}, and cannot tell a base mix that is off by ${NEAR} from one as meant.`,
      };
    if (dryAsMeant) {
      const found = saidApart(check.waterCement, 'count', [ROBS_FOAM_BELOW], say, { decimals: 3 });
      const short = ROBS_FOAM_BELOW - check.waterCement;
      return {
        verdict: 'look',
        say: `${found} is below ${ROBS_FOAM_BELOW}, whatever was meant: a paste so dry takes water out of the foam. Add ${short < doubt ? 'a little' : `${some(short * cement)} of`} water, or be ready for a heavier mix.`,
      };
    }
    if (!worthIt(off))
      return {
        verdict: 'good',
        say: `${check.waterCement.toFixed(3)} is as near to ${to ? `${driest},` : aim.toFixed(2)} as a jug can tell${to && `; ${wanted.toFixed(2)} was meant`}. Leave it and make the foam${to && worthIt(check.waterCement - wanted) ? ', planned anew for that w/c: the base mix is more than was planned' : ''}.`,
      };
    if (off > 0)
      return {
        verdict: 'look',
        say: `Wetter than meant. Tap the jug, let the air rise for a minute, top it up, strike it, wipe it and weigh once more: whipped air reads as water${plain && cementDensity >= CEMENT_DENSITY ? ', and so does limestone, slag or ash in the cement (give its density, folded below)' : ''}. If it is still wetter, add ${some(check.addCement)} of cement${to}, mix until no lump is left, and weigh again before any foam.`,
      };
    const dry = check.waterCement < ROBS_FOAM_BELOW;
    const again = doubt > NEAR && -off < 2 * doubt;
    return {
      verdict: dry ? 'stop' : 'look',
      say: `Drier than meant${dry ? ', and dry enough to take water out of the foam' : ''}${again ? '. Weigh once more; if it is still drier, add' : '. Add'} ${some(check.addWater)} of water${to && `${to},`} and mix again.`,
    };
  },
  notes: ({ check, plain, slip }, _, say) => [
    ...(slip
      ? []
      : [
          `${say(1 / Math.abs(check.perDensity) / 100, 'density', { significant: 2 })} of density is a hundredth of w/c here: weigh on a scale that shows it, in a jug whose volume you have weighed with water.`,
        ]),
    'Base mix that has been added to is more base mix: raise the foam by the same share, or the load lands heavy.',
    ...(plain
      ? []
      : [
          'By the plan it holds pigment, a filler or a blended cement. “Cement” is here with what stands in for it; what you add of it takes its share of pigment and filler along.',
        ]),
  ],
  refusals: {
    'thinner-than-water': (e, say) =>
      `${say(e.value, 'density')} is not above ${say(e.allowed.min!, 'density')}, what water with that air in it weighs. Weigh again: ${JUG}.`,
    'another-base-mix': (e, say) =>
      `With that water/cement ratio and that sand no cement makes a base mix of ${say(e.value, 'density', { significant: 4 })}: ${say(e.allowed.min!, 'density', { significant: 4 })} to ${say(e.allowed.max!, 'density', { significant: 4 })}. With so much else in it a jug cannot tell the water.`,
    'drier-than-no-water': (e, say) =>
      `${say(e.value, 'density', { significant: 4 })} is more than cement and sand weigh with that air and no water at all (${say(e.allowed.max!, 'density', { significant: 4 })}). Weigh again: ${JUG}.`,
  },
  folded: 'Air, the cement, and what the ratio counts',
  blames: { measuredDensity: 'full', vessel: 'jug' },
  working: [
    {
      tex: String.raw`w = \frac{1 + s - \rho\left(\frac{1}{\rho_c} + \frac{s}{\rho_s}\right)}{\rho/\rho_w - 1}`,
      put: (v, r, say) =>
        `w = (1 + ${v.sandCement} − ${say(r.measured / (1 - v.air), 'density', { significant: 4 })} × volume of the solids in a kilogram of cement) ÷ (density over water’s − 1) = ${r.check.waterCement.toFixed(3)}`,
    },
    {
      tex: String.raw`\Delta W = (w_0 - w)\,C \qquad \Delta C = \left(\frac{w}{w_0} - 1\right) C`,
      put: (v, { check, aim, off }, say) =>
        off > 0
          ? `ΔC = (${check.waterCement.toFixed(4)} ÷ ${Number(aim.toFixed(4))} − 1) × ${say(v.cement, 'mass', { significant: 4 })} = ${say(check.addCement, 'mass', { units: SMALL_MASS })}`
          : `ΔW = (${Number(aim.toFixed(4))} − ${check.waterCement.toFixed(4)}) × ${say(v.cement, 'mass', { significant: 4 })} = ${say(check.addWater, 'mass', { units: SMALL_MASS })}`,
    },
  ],
  figure: ({ result: { measured, check }, say }) => (
    <DensityScale
      title="The base mix, before any foam"
      from={Math.min(measured, check.wantedDensity) * 0.92}
      to={Math.max(measured, check.wantedDensity) * 1.08}
      bands={[]}
      marks={[
        { at: check.wantedDensity, label: 'should be', role: 'target' },
        { at: measured, label: 'jug', role: 'measured' },
      ]}
      say={say}
    />
  ),
  cautions: ['caustic-slurry', 'cement-dust', 'drill-mixer'],
  defers: [
    'The cement bag’s own sheet outranks the density used here; a blended cement is lighter.',
  ],
  sources: ['navedtra-14071', 'pca-cement', 'en-197-1', 'astm-c138', 'common-practice'],
});
