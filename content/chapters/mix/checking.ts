import { checkBase } from '~/core/mix/base-check.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';

const ask = (measuredDensity: number, air = 0) =>
  checkBase({
    measuredDensity,
    air,
    recipe: { waterCement: demo.waterCement },
    cement: demoLoad.cement,
  });

/** What the jug shows, kg/m³; the demo base mix is meant to weigh less. */
export const heard = 1890;
export const found = ask(heard);
/** The same jug with a hundredth of whipped air in it. */
export const airy = ask(heard, 0.01);
