import type { Answers } from '../answer.ts';
import { carbonateAnswers } from './carbonate-answers.ts';
import { cementAnswers } from './cement-answers.ts';
import { constantAnswers } from './constant-answers.ts';
import { langelierAnswers } from './langelier-answers.ts';
import { softeningAnswers } from './softening-answers.ts';

export const answers: Answers = {
  ...constantAnswers,
  ...carbonateAnswers,
  ...langelierAnswers,
  ...softeningAnswers,
  ...cementAnswers,
};
