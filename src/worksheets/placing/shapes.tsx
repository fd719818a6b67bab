import { DomainError } from '../../core/domain-error.ts';
import { evenLoads } from '../../core/mix/loads.ts';
import { coreOutgrows } from '../../core/placing/core-fits.ts';
import { netVolume } from '../../core/placing/shapes.ts';
import { pieceVolume } from '../../core/placing/volume.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { ShapeDrawing } from './drawn/ShapeDrawing.tsx';
import { leavesSides } from './piece-sides.ts';
import { CHECK_MEASURES, makeWords, maybeSlip } from './pieces-words.ts';
import { shapeFields } from './shape-fields.ts';
import { barOf, cellOf, coresOf, shapeOf } from './shape-of.ts';
import { holeNotInside, short } from './short.ts';

/** A pot's core takes half of its form and more; beyond this its walls are hardly there. A choice. */
const MUCH = 0.8;

export default worksheet({
  id: 'shapes',
  question: 'What does this form hold?',
  fields: shapeFields,
  work: (v) => {
    const shape = shapeOf(v);
    const cores = coresOf(v);
    const each = netVolume({ shape, cores });
    cores.forEach(({ shape: core }, i) => {
      const outgrown = coreOutgrows({ core, form: shape });
      if (!outgrown) return;
      const { measure, value, most } = outgrown;
      throw new DomainError({
        quantity: `cores.${i}.${cellOf(v.cores[i]!, measure)}`,
        value,
        kind: 'length',
        allowed: { max: most },
        because: `core-${measure}`,
      });
    });
    const sizes = [{ count: v.count, volume: each.net }];
    if (v.bars === 'some') sizes.push({ count: v.barCount, volume: pieceVolume(barOf(v)) });
    const filled = sizes.map(({ count, volume }) => count * volume);
    const net = filled.reduce((sum, volume) => sum + volume);
    const proud = net * (1 + v.settling);
    return {
      sole: shape,
      cores,
      each,
      net,
      bars: filled[1],
      count: sizes.reduce((sum, { count }) => sum + count, 0),
      evenLoads: evenLoads(sizes, proud * v.waste),
      largest: Math.max(...sizes.map(({ volume }) => volume)),
      total: proud * (1 + v.waste),
    };
  },
  results: {
    total: { label: 'Foamed mix to make', kind: 'volume', of: (r) => r.total },
    net: { label: 'Mix in the forms', kind: 'volume', of: (r) => r.net },
    one: { label: 'Mix in one form', kind: 'volume', of: (r) => r.each.net },
    cores: {
      label: 'Left out of each',
      kind: 'volume',
      of: (r) => (r.each.cores > 0 ? r.each.cores : undefined),
    },
    bars: { label: 'Mix in test bars', kind: 'volume', of: (r) => r.bars, significant: 2 },
    count: { label: 'Pieces', kind: 'count', of: (r) => r.count, decimals: 0 },
  },
  judge: ({ net, total, each, sole }, { settling, waste }, say) => {
    if (maybeSlip(each.net, sole))
      return {
        verdict: 'look',
        say: `One form holds ${say(each.net, 'volume')}: ${CHECK_MEASURES}`,
      };
    if (settling + waste < 0.03)
      return {
        verdict: 'look',
        say: `That leaves ${say(total - net, 'volume', { significant: 2 })} spare. A form left short cannot be topped up once the first mix has set.`,
      };
    if (each.cores > MUCH * each.gross)
      return {
        verdict: 'look',
        say: 'The cores take more than four fifths of the form. Check their number and measures.',
      };
    return {
      verdict: 'good',
      say: makeWords(total, net, say),
    };
  },
  notes: ({ each, cores }, _, say) => [
    'What the part weighs, its lift and the pressure on its form go by the form entered here last: for weight and lift enter the heaviest last, for pressure the deepest.',
    ...(each.cores > 0
      ? [
          `A core that the mix flows under floats: “Does the form hold, and does it stay straight?” says how hard ${say(each.cores, 'volume')} of it pushes up.`,
          'Pages that ask how thick the part is do not take the form’s sides for it, but ask you for its wall.',
          ...(cores.some(({ shape }) => shape.shape === 'cap')
            ? [
                'A ball shut in by the mix stays in it, and a stiff one cracks the wall as that shrinks: take one that gives way, or cast two halves, each as “Bowl or dome”.',
              ]
            : []),
          ...(cores.some(({ shape }) => shape.shape === 'block')
            ? [
                'A box core with straight sides hardly comes out again: slope it one in ten, and enter it as “Box, tapered”, for it leaves more to fill.',
              ]
            : []),
        ]
      : []),
  ],
  refusals: {
    'cores-fill-it': (e, say) =>
      `The cores take ${say(e.value, 'volume')}, all of the form’s ${say(e.allowed.max!, 'volume')} or more.`,
    'hole-not-inside': holeNotInside,
    'core-height': (e, say) =>
      `This core is ${short(e.value, say)} deep, and its form only ${short(e.allowed.max!, say)}.`,
    'core-narrow': (e, say) =>
      `This core is ${short(e.value, say)} wide, and its form only ${short(e.allowed.max!, say)}.`,
    'core-long': (e, say) =>
      `This core is ${short(e.value, say)} long, and its form only ${short(e.allowed.max!, say)}; it is too wide to lie askew in it.`,
    'core-corners': (e, say) =>
      `The corners of this core are ${short(e.value, say)} apart, and its round form is only ${short(e.allowed.max!, say)} across.`,
    'too-thick': (e, say) =>
      `A bowl ${say(e.allowed.max!, 'length')} high cannot be ${say(e.value, 'length')} thick.`,
    'more-than-half-a-ball': (e, say) =>
      `A bowl is at most half a ball: ${say(e.allowed.max!, 'length')} high for that width.`,
    'too-few-corners': () => 'An outline has at least three corners.',
    'crosses-itself': () => 'The outline crosses itself. Give the corners in order round it.',
    'no-area': () => 'The corners lie on one line: there is nothing inside them.',
  },
  blames: { outerDiameter: 'diameter', innerDiameter: 'inner', corner: 'corners' },
  keeps: {
    total: 'batch.volume',
    net: 'batch.net',
    count: 'batch.count',
    one: 'part.volume',
    cores: 'part.cores',
  },
  leaves: {
    ...leavesSides,
    'batch.evenLoads': (r) => r.evenLoads,
    'batch.largest': (r) => r.largest,
  },
  givesWay: { total: 'mix.volume' },
  working: [
    {
      tex: String.raw`V = \bigl(n\,(V_{\text{form}} - \textstyle\sum V_{\text{core}}) + \sum V_{\text{bar}}\bigr)(1+s)(1+x)`,
      put: ({ each, bars, total }, v, say) =>
        `V = (${v.count} × (${say(each.gross, 'volume')} − ${say(each.cores, 'volume')}) + ${say(bars ?? 0, 'volume')}) × ${(1 + v.settling).toFixed(2)} × ${(1 + v.waste).toFixed(2)} = ${say(total, 'volume')}`,
    },
  ],
  figure: ({ result: { sole, cores }, say }) => (
    <ShapeDrawing shape={sole} cores={cores} say={say} />
  ),
  cautions: ['heavy-lift', 'not-load-bearing'],
  defers: ['The allowances are common practice with no source; your own last batch decides.'],
  sources: ['common-practice'],
});
