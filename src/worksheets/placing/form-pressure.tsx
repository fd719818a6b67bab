import { PRACTICE_LIFT } from '../../core/placing/lift.ts';
import { longestSpan, panelBending, panelUpTheFill } from '../../core/placing/panel.ts';
import { floatUp, leaningFace, sidePush, tieLoads } from '../../core/placing/pressure.ts';
import { STANDARD_GRAVITY } from '../../core/quantity/constants.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { FormSection } from './drawn/FormSection.tsx';
import { METRES, practiceLift } from './practice-lift.ts';
import { BENDS, MODULUS, pressureFields, RUNS, SPANS } from './pressure-fields.ts';

const ON_FORM = { metric: 'kPa', us: 'psf' } as const;
const NEWTON = { metric: 'N', us: 'lbf' } as const;

/** A form higher than a person is for a designer, m. A choice: no source draws the line here. */
const TALL = 1.8;
/**
 * A panel whose span is fewer thicknesses than this is a deep beam, for which these formulas do not
 * hold. From memory.
 */
const SLENDER = 2;
/** A bulge below this, m, is not mentioned. A choice. */
const LEAST_BULGE = 1e-6;

export default worksheet({
  id: 'form-pressure',
  question: 'Does the form hold, and does it stay straight?',
  fields: pressureFields,
  work: (v) => {
    const { density, depth, spacing, lower } = v;
    const upper = depth - v.below;
    const push = sidePush({ density, depth, width: v.width });
    const panel = {
      spans: SPANS[v.spans],
      thickness: v.thickness,
      modulus: v.material === 'own' ? v.modulus : MODULUS[v.material],
      // The strip at the bottom, as if the whole panel bore that pressure.
      pressure: push.pressure,
    } as const;
    const limits = { share: BENDS[v.limit], stress: v.stress };
    const span = v.spans === 'up' ? depth : v.span;
    const bent =
      v.spans === 'up' ? panelUpTheFill({ ...panel, span }) : panelBending({ ...panel, span });
    return {
      push,
      limits,
      span,
      bent,
      bulges: bent.deflection >= LEAST_BULGE,
      beam: span >= SLENDER * v.thickness,
      longest: longestSpan({ ...panel, ...limits }),
      // A clamp bears no more of the side than there is.
      ties: tieLoads({ density, depth, spacing: Math.min(spacing, v.width), lower, upper }),
      float:
        v.core === 'floats'
          ? floatUp({ density, displaced: v.displaced, mass: v.coreMass })
          : undefined,
      face:
        v.core === 'leans'
          ? leaningFace({ density, top: 0, height: depth, lean: v.lean, width: v.faceWidth })
          : undefined,
    };
  },
  results: {
    pressure: {
      label: 'Pressure at the bottom',
      kind: 'pressure',
      of: (r) => r.push.pressure,
      units: ON_FORM,
    },
    resultant: {
      label: 'Push on the side',
      kind: 'force',
      of: (r) => r.push.resultant,
      units: NEWTON,
    },
    above: {
      label: 'The push acts above the bottom by',
      kind: 'length',
      of: (r) => r.push.above,
    },
    lift: {
      label: 'Lift on the core',
      kind: 'force',
      of: (r) => r.float,
      units: NEWTON,
      answer: true,
    },
    faceLift: {
      label: 'Lift on the face',
      kind: 'force',
      of: (r) => r.face?.lift,
      units: NEWTON,
      answer: true,
    },
    deflection: {
      label: 'The panel bulges by',
      kind: 'length',
      of: (r) => (r.bulges ? r.bent.deflection : undefined),
      significant: 2,
      answer: true,
    },
    mayBend: {
      label: 'Bulge allowed',
      kind: 'length',
      of: ({ limits, span, beam }) => (beam ? limits.share * span : undefined),
    },
    stress: {
      label: 'Bending stress in the panel',
      kind: 'stress',
      of: (r) => (r.beam ? r.bent.stress : undefined),
      significant: 2,
    },
    mayStress: {
      label: 'Stress allowed',
      kind: 'stress',
      of: (r) => (r.beam ? r.limits.stress : undefined),
    },
    longest: {
      label: 'Longest span on upright battens',
      kind: 'length',
      of: (r) => (r.beam ? r.longest.span : undefined),
      toward: 'down',
    },
    lowerTie: {
      label: 'Each lower clamp or tie carries',
      kind: 'force',
      of: (r) => r.ties.lower,
      units: NEWTON,
    },
    upperTie: {
      label: 'Each upper clamp or tie carries',
      kind: 'force',
      of: (r) => r.ties.upper,
      units: NEWTON,
    },
  },
  judge: ({ bent, beam, limits, longest, float, face, ties }, v, say) => {
    const { depth } = v;
    const plain = (metres: number) => say(metres, 'length', { plain: true, significant: 3 });
    const span = say(longest.span, 'length', { significant: 3, toward: 'down' });
    // A pound-force is the weight of a pound already.
    const force = (n: number) =>
      `${say(n, 'force', { units: NEWTON, significant: 2 })}${say.system === 'us' ? '' : `, the weight of ${say(n / STANDARD_GRAVITY, 'mass', { significant: 2 })}`}`;
    if (depth > TALL)
      return {
        verdict: 'stop',
        say: `A form filled ${say(depth, 'length', { units: METRES, plain: true, significant: 2 })} deep is higher than a person. It is for someone licensed to design it, whatever the panel bears.`,
      };
    const all: Judgement[] = [];
    const judged = (verdict: Judgement['verdict'], words: string) =>
      all.push({ verdict, say: words });
    if (bent.stress > limits.stress)
      judged(
        'stop',
        `The panel is bent beyond its limit and may break. Support it every ${span}, or take a thicker one.`,
      );
    else if (bent.share > limits.share)
      judged(
        'stop',
        `The side bulges more than you allow. Support it every ${span}, or take a thicker panel.`,
      );
    const amiss = Math.min(ties.lower, ties.upper) <= 0;
    if (amiss)
      judged(
        'look',
        'Move a row of clamps: put one below a third of the depth and the other above it. As they are, the push does not pass between them, and one row carries nothing or is pulled in.',
      );
    if ((float ?? 0) > 0)
      judged(
        'look',
        `The core floats: hold it down against ${force(float!)}, and twice that while you pour.`,
      );
    if ((face?.lift ?? 0) > 0)
      judged(
        'look',
        `The leaning face is lifted: hold the form down against ${force(face!.lift)}, or the mix runs out under it.`,
      );
    if (depth > PRACTICE_LIFT.max)
      judged(
        'look',
        `Place it in two lifts: no more than ${practiceLift('max', say)} is placed in one lift.`,
      );
    if (all[0]?.verdict !== 'stop') {
      judged(
        'good',
        `The panel holds and stays straight${beam ? `; ${v.spans === 'up' ? 'on upright battens ' : ''}it could span ${span}` : ''}.`,
      );
      if (!amiss)
        judged(
          'good',
          `Clamps are not checked here: one every ${plain(v.spacing)}, in rows ${plain(v.lower)} and ${plain(depth - v.below)} above the bottom, each lower one must carry ${force(ties.lower)}, each upper one ${force(ties.upper)}. Clamp it before the first bucket.`,
        );
    }
    return judgeBy(all, all[0]!);
  },
  notes: () => [
    'Full liquid head: nothing is taken off for a mix that stiffens, and nothing is added for mix dropped from a height.',
    'The panel is worked out for a strip at the bottom as if all of it bore that pressure; one that spans the depth, for the triangle. Wet wood is less stiff than the figure used here (from memory).',
  ],
  refusals: {
    'rows-in-order': () => 'The upper row must stand above the lower one.',
  },
  folded: 'The panel’s wood, its limits, and the rows of clamps',
  blames: { mass: 'coreMass', height: 'depth', upper: 'below' },
  working: [
    {
      tex: String.raw`p = \rho\,g\,h \qquad R = \tfrac12\,\rho\,g\,h^2\,b \quad\text{at}\quad \tfrac{h}{3}`,
      put: ({ push }, v, say) =>
        `p = ${say(v.density, 'density')} × g × ${say(v.depth, 'length')} = ${say(push.pressure, 'pressure', { units: ON_FORM })}; R = ${say(push.resultant, 'force', { units: NEWTON })}`,
    },
    {
      tex: String.raw`\delta = k_\delta\,\frac{p\,L^4}{E\,t^3/12} \qquad \sigma = k_m\,\frac{p\,L^2}{t^2/6}`,
      put: ({ bent, bulges, beam, limits, longest, span }, _, say) =>
        `δ ${bulges ? `= ${say(bent.deflection, 'length', { significant: 2 })}` : `< ${say(LEAST_BULGE, 'length', { plain: true, significant: 1 })}`} over a span of ${say(span, 'length')}, limit span ÷ ${Math.round(1 / limits.share)}${beam ? `; the longest span is set by its ${longest.by}` : ''}`,
    },
  ],
  figure: ({ values, result: { push, bent, bulges, span }, say }) => (
    <FormSection
      depth={values.depth}
      pressure={push.pressure}
      span={span}
      bulge={bulges ? bent.deflection : 0}
      runs={RUNS[values.spans]}
      lower={values.lower}
      upper={values.depth - values.below}
      say={say}
    />
  ),
  cautions: ['caustic-slurry', 'heavy-lift'],
  defers: ['A form higher than a person, or over one, is for someone licensed to design it.'],
  sources: ['hurd-aci-347', 'hydrostatics', 'beam-tables', 'plywood-modulus', 'form-limits'],
});
