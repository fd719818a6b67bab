import type { Checklist } from '../../worksheets/live/before-you-mix.tsx';
import { RUN_STEPS } from '../../worksheets/live/run/RunSteps.tsx';
import { cautionOf, cautions } from '../library.ts';
import { worksheets } from './catalogue.ts';

/** The order of a working day, used for the check list. */
const DAY = [
  'not-load-bearing',
  'who-decides-structure',
  'stored-rainwater',
  'washing-soda',
  'sequestrant-powder',
  'boiling-water',
  'softener-salt',
  'glycerol-and-concentrate',
  'pressurised-vessel',
  'compressed-air-jet',
  'cement-dust',
  'hot-sand',
  'pigment-dust',
  'glass-fibre',
  'calcium-chloride',
  'caustic-slurry',
  'drill-mixer',
  'alkaline-washout',
  'frost-and-heat',
  'heavy-lift',
  'falling-and-tipping',
  'falling-load',
  'flying-pieces',
  'hot-oven',
];

/** Cautions in the order of the day; one that is missing from DAY fails the build. */
export function inDay(ids: readonly string[]): readonly string[] {
  const unplaced = ids.find((id) => !DAY.includes(id));
  if (unplaced) throw new Error(`src/components/live/given.ts: '${unplaced}' has no place in DAY`);
  return DAY.filter((id) => ids.includes(id));
}

/**
 * The cautions as lines to tick, and the worksheets that have them: data that only the worksheets'
 * modules hold.
 */
function checklist(): Checklist {
  const found = [...worksheets.values()].map((sheet) => ({
    id: sheet.id,
    question: sheet.question,
    cautions: [...sheet.cautions],
  }));
  return {
    sheets: found,
    cautions: inDay([...cautions.keys()]).map((id) => {
      const { title, precaution, first } = cautionOf(id, 'the check list');
      return { id, title, steps: sentences(precaution), first };
    }),
  };
}

/** The cautions beside each step at the bench. */
const runCautions = () =>
  RUN_STEPS.map(({ cautions }) =>
    cautions.map((id) => {
      const { title, short } = cautionOf(id, 'the run at the bench');
      return { id, title, short };
    }),
  );

/** One precaution per line: a sentence is one thing to do. */
const sentences = (text: string) => text.split(/(?<=[.!?]) +(?=[A-Z])/);

/**
 * The data a live part gets when its page is built, by the part's id; it is embedded in the page.
 */
export const given: Readonly<Record<string, () => unknown>> = {
  'before-you-mix': checklist,
  'bench-run': runCautions,
};
