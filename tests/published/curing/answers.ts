import type { Answers } from '../answer.ts';
import { ageAnswers } from './age-answers.ts';
import { airAnswers } from './air-answers.ts';
import { freshAnswers } from './fresh-answers.ts';
import { heatAnswers } from './heat-answers.ts';

export const answers: Answers = {
  ...ageAnswers,
  ...airAnswers,
  ...heatAnswers,
  ...freshAnswers,
};
