import type { Answers } from '../answer.ts';
import { bubbleAnswers } from './bubble-answers.ts';
import { heatAnswers } from './heat-answers.ts';
import { pasteAnswers } from './paste-answers.ts';
import { pieceAnswers } from './piece-answers.ts';
import { stiffnessAnswers } from './stiffness-answers.ts';

export const answers: Answers = {
  ...heatAnswers,
  ...pasteAnswers,
  ...stiffnessAnswers,
  ...bubbleAnswers,
  ...pieceAnswers,
};
