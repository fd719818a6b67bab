import { dryConductivityBand } from '~/core/finished/conductivity.ts';
import { demoDryDensity } from '~/worksheets/demo-worked.ts';
import { demoStrength } from './demo-strength.ts';

const conducts = dryConductivityBand({ dryDensity: demoDryDensity });

/** Pa */
export const strength = [demoStrength.low, demoStrength.high] as const;
/** W/(m·K), dry. */
export const conductivity = [conducts.low, conducts.high] as const;
