import { number } from '../../../islands/fields.ts';

/** The bench key of the volume of the cores, present only if the form has any. */
const cores = 'part.cores';
const aWall = (side: string) => ({
  beside: cores,
  say: `the form has cores, and this is worked out for a solid part. Type the ${side} of one wall.`,
});

// The sides of a solid part.

export const partLength = number('length', {
  label: 'Length',
  example: '450 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.length',
  bench: 'part.length',
  asks: aWall('length'),
});

export const partWidth = number('length', {
  label: 'Width',
  example: '300 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.width',
  bench: 'part.width',
  asks: aWall('width'),
});

export const partThickness = number('length', {
  label: 'Thickness',
  help: 'The thin way through; of a hollow part, its wall.',
  example: '60 mm',
  min: '5 mm',
  max: '3 m',
  takes: 'piece.thickness',
  bench: 'part.thickness',
  asks: {
    beside: cores,
    say: 'the form has cores, so its sides do not tell how thick the part is. Type its wall or, where the cores are only small holes, the whole part.',
  },
});

// The part as it lies in its form: its depth there may not be its thickness, nor its open face its
// two long sides.

export const partDepth = number('length', {
  label: 'Depth of the part as it lies',
  example: '60 mm',
  min: '5 mm',
  max: '2 m',
  takes: 'piece.deep',
  bench: 'part.deep',
});

export const openLength = number('length', {
  label: 'Open face, length',
  example: '450 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.long',
  bench: 'part.long',
});

export const openWidth = number('length', {
  label: 'Open face, width',
  example: '300 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.wide',
  bench: 'part.wide',
});
