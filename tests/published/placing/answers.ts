import { pieceVolume } from '../../../src/core/placing/volume.ts';
import { type Answers, answer } from '../answer.ts';
import { formAnswers } from './form-answers.ts';

export const answers: Answers = {
  ...formAnswers,
  'placing/cylinder': answer({
    asks: 'Volume of a cylinder',
    input: { diameter: 'length', height: 'length' },
    gives: 'volume',
    work: ({ diameter, height }) => pieceVolume({ shape: 'cylinder', diameter, height }),
  }),
};
