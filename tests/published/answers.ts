import type { Answers } from './answer.ts';

const files = import.meta.glob<{ answers: Answers }>('./*/answers.ts', { eager: true });

/** Every answer by its full name, `<subject>/<question>`. */
export const answers: Answers = Object.fromEntries(
  Object.values(files).flatMap((file) => Object.entries(file.answers)),
);
