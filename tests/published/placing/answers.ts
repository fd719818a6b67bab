import { pieceVolume } from '../../../src/core/placing/volume.ts';
import { type Answers, answer } from '../answer.ts';

export const answers: Answers = {
  'placing/cylinder': answer({
    asks: 'Volume of a cylinder',
    input: { diameter: 'length', height: 'length' },
    gives: 'volume',
    work: ({ diameter, height }) => pieceVolume({ shape: 'cylinder', diameter, height }),
  }),
};
