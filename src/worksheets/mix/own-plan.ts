import { choices, isInvented, isShown, type Reading } from '../../islands/engine/reading.ts';

/** Bench key: how much of a plan is the reader's own, apart from its foam. */
export const OWN_PLAN = 'mix.ownPlan';
/** Its target density is the reader's own. */
export const OWN_AIM = 1;
/** And so is the amount to make. */
export const OWN_AMOUNT = 2;

/** The value that a plan leaves under that key. */
export function ownPlan(_: unknown, { fields }: Reading): number {
  const chosen = choices(fields);
  const invented = (name: string) =>
    fields[name] && isShown(fields[name].field.when, chosen) && isInvented(fields[name]);
  if (['wetDensity', 'dryDensity', 'content', 'bags'].some(invented)) return 0;
  return invented('volume') ? OWN_AIM : OWN_AMOUNT;
}
