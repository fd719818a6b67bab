import type { AmountProps } from '~/components/prose/amount.ts';
import { type ExposureLimit, strictestLimit } from '~/core/safety/exposure.ts';
import { demoSlabMix } from '~/worksheets/demo-worked.ts';
import { inMilligrams } from './limits-in-air.ts';

/** The limit on what of cement can be breathed deep: law and advice have the same. */
function respirableCement(): string {
  const law = inMilligrams('cement-pel-respirable');
  if (law !== inMilligrams('cement-rel-respirable'))
    throw new Error('The law and NIOSH do not have one limit for respirable cement.');
  return law;
}

export const cement = {
  law: inMilligrams('cement-pel'),
  niosh: inMilligrams('cement-rel'),
  respirable: respirableCement(),
  acgih: inMilligrams('cement-tlv'),
  dangerous: inMilligrams('cement-idlh'),
};
export const silica = {
  law: inMilligrams('silica-pel'),
  niosh: inMilligrams('silica-rel'),
  acgih: inMilligrams('silica-tlv'),
  employerActs: inMilligrams('silica-action'),
};

/** A ten-thousandth of the cement of one demo slab, kg. */
export const pinch = demoSlabMix.cement * 1e-4;

/** How much air such a pinch brings to a limit: rounded before it is put in other units, so that they agree. */
function filledTo(limit: ExposureLimit | undefined): AmountProps {
  if (!limit) throw new Error('There is no limit on one of the two dusts.');
  return {
    value: Number((pinch / limit.value).toPrecision(2)),
    kind: 'volume',
    metric: 'm3',
    us: 'ft3',
    significant: 2,
  };
}
export const airFilled = {
  ofCement: filledTo(strictestLimit('portland-cement', 'total')),
  ofSilica: filledTo(strictestLimit('crystalline-silica', 'respirable')),
};
