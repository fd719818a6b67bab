import type { Answers } from '../answer.ts';
import { beamAnswers } from './beam-answers.ts';
import { liftingAnswers } from './lifting-answers.ts';
import { stripAnswers } from './strip-answers.ts';

export const answers: Answers = {
  ...liftingAnswers,
  ...beamAnswers,
  ...stripAnswers,
};
