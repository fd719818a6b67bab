import { dryConductivityBand } from '~/core/finished/conductivity.ts';
import { demoDryDensity, demoStrength } from '~/worksheets/demo-worked.ts';

const { low, high } = demoStrength();
const conducts = dryConductivityBand({ dryDensity: demoDryDensity });

/** Pa */
export const strength = [low, high] as const;
/** W/(m·K), dry. */
export const conductivity = [conducts.low, conducts.high] as const;
