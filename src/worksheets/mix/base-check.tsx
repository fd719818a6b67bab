import { CEMENT_DENSITY } from '../../core/mix/densities.ts';
import { ROBS_FOAM_BELOW } from '../../core/mix/water-cement-limits.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { SMALL_MASS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { baseCheckFields } from './base-check-fields.ts';
import { baseCheckWorked, NEAR, worthIt } from './base-check-worked.ts';

/** What a slip may lie in. */
const JUG = 'the jug empty, full, and its volume with water';

export default worksheet({
  id: 'base-check',
  question: 'Is the base mix what I meant?',
  fields: baseCheckFields,
  work: baseCheckWorked,
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
    { check, wanted, aim, off, slip, all, short, doubt, doubtful, surer, dryAsMeant, plain },
    { cement, cementDensity },
    say,
  ) => {
    const some = (kg: number) => say(kg, 'mass', { significant: 2 });
    const driest = `${ROBS_FOAM_BELOW}, the driest to meet foam`;
    const to = aim > wanted ? `, which brings it to ${driest}` : '';
    if (short)
      return {
        verdict: 'stop',
        say: `The jug holds more than the whole base mix, ${say(all, 'volume')}: one of the readings is of another mix or still the example’s. If they are right, bring a vessel that half of it fills, weighed and measured on a scale that shows grams, and type each ±.`,
      };
    if (slip)
      return {
        verdict: 'stop',
        say: `Weigh again: ${JUG}. Look at the units: a w/c of ${check.waterCement.toFixed(2)} where ${wanted.toFixed(2)} was meant is a slip, not a splash. If it is right, make the base mix afresh.`,
      };
    if (doubtful)
      return {
        verdict: 'look',
        say: `${surer}, and type each ±: these readings tell the w/c to ±\u00a0${say(doubt, 'count', { significant: 2 })}, and cannot tell a base mix that is off by ${NEAR} from one as meant.`,
      };
    if (dryAsMeant) {
      const found = saidApart(check.waterCement, 'count', [ROBS_FOAM_BELOW], say, { decimals: 3 });
      const lacks = ROBS_FOAM_BELOW - check.waterCement;
      return {
        verdict: 'look',
        say: `${found} is below ${ROBS_FOAM_BELOW}, whatever was meant: a paste so dry takes water out of the foam. Add ${lacks < doubt ? 'a little' : `${some(lacks * cement)} of`} water, or be ready for a heavier mix.`,
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
      put: (r, v, say) =>
        `w = (1 + ${v.sandCement} − ${say(r.measured / (1 - v.air), 'density', { significant: 4 })} × volume of the solids in a kilogram of cement) ÷ (density over water’s − 1) = ${r.check.waterCement.toFixed(3)}`,
    },
    {
      tex: String.raw`\Delta W = (w_0 - w)\,C \qquad \Delta C = \left(\frac{w}{w_0} - 1\right) C`,
      put: ({ check, aim, off }, v, say) =>
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
