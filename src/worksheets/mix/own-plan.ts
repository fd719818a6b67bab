import { choices, isInvented, isShown, type Reading } from '../../islands/engine/reading.ts';

/** Left by a plan: how much of it is the reader's, whatever its foam is. */
export const OWN_PLAN = 'mix.ownPlan';
/** At least the density it aims at. */
export const OWN_AIM = 1;
/** How much of it is made, too. */
export const OWN_AMOUNT = 2;

/** What a plan leaves under that. */
export function ownPlan(_: unknown, { fields }: Reading): number {
  const chosen = choices(fields);
  const invented = (name: string) =>
    fields[name] && isShown(fields[name].field.when, chosen) && isInvented(fields[name]);
  if (['wetDensity', 'dryDensity', 'content', 'bags'].some(invented)) return 0;
  return invented('volume') ? OWN_AIM : OWN_AMOUNT;
}
