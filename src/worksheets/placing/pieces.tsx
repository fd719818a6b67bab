import { DomainError } from '../../core/domain-error.ts';
import { evenLoads } from '../../core/mix/loads.ts';
import { batchVolume, type Piece, pieceVolume } from '../../core/placing/volume.ts';
import { rows } from '../../islands/fields/rows.tsx';
import { choice, number } from '../../islands/fields.ts';
import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { leavesSides } from './piece-sides.ts';
import {
  CHECK_MEASURES,
  makeWords,
  maybeSlip,
  type PieceRow,
  piecesInWords,
} from './pieces-words.ts';
import { holeNotInside } from './short.ts';

const measure = (label: string, example: string, shapes: readonly string[]) =>
  number('length', {
    label,
    example,
    min: '1 mm',
    max: '5 m',
    when: { shape: shapes },
  });

/** The piece a row describes, by its shape. */
function pieceOf(row: PieceRow): Piece {
  const { shape, length, width, thickness, height, diameter, inner } = row;
  if (shape === 'slab') return { shape, length, width, thickness };
  if (shape === 'block') return { shape, length, width, height };
  if (shape === 'cylinder') return { shape, diameter, height };
  return { shape, outerDiameter: diameter, innerDiameter: inner, height };
}

/** A piece's volume; a refusal names the row and the cell it is about. */
function volumeOf(row: PieceRow, at: number): number {
  try {
    return pieceVolume(pieceOf(row));
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const cell = { innerDiameter: 'inner', outerDiameter: 'diameter' }[error.quantity];
    throw new DomainError({ ...error, quantity: `pieces.${at}.${cell ?? error.quantity}` });
  }
}

export default worksheet({
  id: 'pieces',
  question: 'How much must I make?',
  fields: {
    pieces: rows({
      label: 'Pieces',
      help: 'Inside measures of the form.',
      row: 'piece',
      most: 20,
      example: [
        { shape: 'slab', count: '12', length: '450 mm', width: '300 mm', thickness: '60 mm' },
      ],
      of: {
        shape: choice({
          label: 'Shape',
          options: { slab: 'Slab', block: 'Block', cylinder: 'Cylinder', ring: 'Ring' },
          example: 'slab',
        }),
        count: number('count', {
          label: 'How many',
          example: '12',
          min: '1',
          max: '1000',
          whole: true,
        }),
        length: measure('Length', '450 mm', ['slab', 'block']),
        width: measure('Width', '300 mm', ['slab', 'block']),
        thickness: measure('Thickness', '60 mm', ['slab']),
        diameter: measure('Diameter', '300 mm', ['cylinder', 'ring']),
        inner: measure('Diameter of the hole', '200 mm', ['ring']),
        height: measure('Height', '300 mm', ['block', 'cylinder', 'ring']),
      },
    }),
    settling: number('ratio', {
      label: 'Left proud, for settling',
      usual: true,
      learned: learned('form.settling'),
      help: 'For the top that sinks before it sets. A guess until you have seen yours.',
      example: '3 %',
      min: '0 %',
      max: '50 %',
      units: PERCENT,
    }),
    waste: number('ratio', {
      label: 'Waste',
      usual: true,
      help: 'What stays in the mixer, the bucket and the samples you weigh.',
      example: '5 %',
      min: '0 %',
      max: '50 %',
      units: PERCENT,
    }),
  },
  work: ({ pieces, settling, waste }) => {
    const each = pieces.map(volumeOf);
    const made = batchVolume({
      pieces: pieces.map((row) => ({ piece: pieceOf(row), count: row.count })),
      settling,
      waste,
    });
    return {
      each,
      sole: pieces.length === 1 ? pieceOf(pieces[0]!) : undefined,
      count: pieces.reduce((sum, { count }) => sum + count, 0),
      evenLoads: evenLoads(
        pieces.map(({ count }, i) => ({ count, volume: each[i]! })),
        made.waste,
      ),
      ...made,
    };
  },
  results: {
    total: { label: 'Foamed mix to make', kind: 'volume', of: (r) => r.total },
    net: { label: 'Mix in the forms', kind: 'volume', of: (r) => r.net },
    settling: { label: 'Mix for settling', kind: 'volume', of: (r) => r.settling, significant: 2 },
    waste: { label: 'Mix for waste', kind: 'volume', of: (r) => r.waste, significant: 2 },
    count: { label: 'Pieces', kind: 'count', of: (r) => r.count, decimals: 0 },
    one: {
      label: 'Mix in one piece',
      kind: 'volume',
      of: (r) => (r.each.length === 1 ? r.each[0] : undefined),
    },
  },
  judge: (r, { pieces, settling, waste }, say) => {
    const slip = pieces.findIndex((row, i) => maybeSlip(r.each[i]!, pieceOf(row)));
    if (slip >= 0)
      return {
        verdict: 'look',
        say: `${piecesInWords([pieces[slip]!], say)}, of ${say(r.each[slip]!, 'volume')}${pieces[slip]!.count === 1 ? '' : ' each'}: ${CHECK_MEASURES}`,
      };
    return settling + waste < 0.03
      ? {
          verdict: 'look',
          say: `That leaves ${say(r.total - r.net, 'volume', { significant: 2 })} spare. A form left short cannot be topped up once the first mix has set.`,
        }
      : {
          verdict: 'good',
          say: makeWords(r.total, r.net, say),
        };
  },
  refusals: { 'hole-not-inside': holeNotInside },
  keeps: { total: 'batch.volume', net: 'batch.net', count: 'batch.count', one: 'part.volume' },
  leaves: {
    ...leavesSides,
    'batch.evenLoads': (r) => r.evenLoads,
    'batch.largest': (r) => Math.max(...r.each),
  },
  givesWay: { total: 'mix.volume' },
  working: [
    {
      tex: String.raw`V = \sum n\,V_{\text{piece}}\,(1+s)(1+x)`,
      put: (r, { pieces, settling, waste }, say) =>
        `V = (${pieces.map((row, i) => `${row.count} × ${say(r.each[i]!, 'volume')}`).join(' + ')}) × ${(1 + settling).toFixed(2)} × ${(1 + waste).toFixed(2)} = ${say(r.total, 'volume')}`,
    },
  ],
  cautions: ['not-load-bearing'],
  defers: ['The allowances are common practice with no source; your own last batch decides.'],
  sources: ['common-practice'],
});
