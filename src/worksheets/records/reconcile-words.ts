import { READINGS } from '../../bench/records/readings.ts';
import { SAND_DENSITY } from '../../core/mix/densities.ts';
import { KINDS, type Kind } from '../../core/quantity/kinds.ts';
import type { BatchWeighed } from '../../core/records/reconcile.ts';
import type { VerdictCorrected } from '../../core/records/taken-out.ts';
import { HARDLY } from '../../core/records/verdict.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Units } from '../../islands/fields.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { LEAST_SURVIVAL } from '../shared/foam/foam-share.ts';
import { noBaseMixWords } from '../shared/mix/no-base-mix.ts';
import { FOAM, PERCENT } from '../shared/words/amounts.ts';
import { withPm } from '../shared/words/with-pm.ts';

type Suspect = VerdictCorrected['suspects'][number];

const KIND_OF: Readonly<Record<keyof BatchWeighed, Kind>> = {
  cement: 'mass',
  water: 'mass',
  sand: 'mass',
  foamVolume: 'volume',
  foamDensity: 'density',
  foamAdded: 'volume',
  baseAdded: 'mass',
  tare: 'mass',
  full: 'mass',
  vessel: 'volume',
  placed: 'volume',
  leftOver: 'mass',
};

/** The most readings that are named as a possible explanation. */
const MOST_SUSPECTS = 4;

/** “Look first at “foam put in”: 0.31 L more would explain it.”, or each that could where none is near. */
function suspectWords({ suspects }: VerdictCorrected, say: Say): string {
  const [first, second] = suspects;
  if (!first)
    return 'Weigh everything once more, and look at each unit: none of them explains it alone.';
  const name = (of: Suspect) => READINGS[of.reading].label.toLowerCase();
  if (first.doubts > HARDLY) {
    const far = suspects.slice(0, MOST_SUSPECTS).map((one) => {
      const { to, by } = one;
      const [kind, units] = asRead(one);
      const toward = by > 0 ? 'up' : 'down';
      const end =
        to === 0
          ? 'none'
          : `${by > 0 ? 'at least' : 'at most'} ${say(to, kind, { significant: 3, toward, units, steady: true })}`;
      const read = say(to - by, kind, { plain: true, significant: 4, units });
      return `“${name(one)}” ${end}, not ${read}`;
    });
    return `Look for a slip of the pen, a wrong unit or another bucket. ${second ? 'Any one of these' : 'Only this'} would explain it${second ? '' : ' alone'}, though far beyond its ±: ${far.join('; ')}${suspects.length > far.length ? '; and others' : ''}.`;
  }
  const [kind, units] = asRead(first);
  const amount = say(Math.abs(first.by), kind, { significant: 2, toward: 'up', units });
  const next = second && second.doubts < 2 * first.doubts ? ` After it: “${name(second)}”.` : '';
  return `Look first at “${name(first)}”: ${amount} ${first.by > 0 ? 'more' : 'less'} would explain it.${next}`;
}

/** The kind of a reading, and its units. */
function asRead({ reading }: Suspect): readonly [Kind, Units] {
  const kind = KIND_OF[reading];
  return [kind, kind === 'density' ? FOAM : KINDS[kind].shown];
}

/** Less of the foam’s gas living than this is looked at. A choice. */
const FEW_LIVE = 0.75;

/** What a low survival comes of, if the readings stand. */
const fewWords = ({ survival }: VerdictCorrected): string =>
  `If they are right: base mix too stiff or thirsty, foam too thin or too old, or too much stirring. Change one of them.${survival < LEAST_SURVIVAL ? ' As it stands it teaches nothing of foam.' : ''}`;

/** What survived, of a batch whose mass does not close or cannot be told to; `share`: as it is said. */
const ifBucketRight = (verdict: VerdictCorrected, share: string): string =>
  verdict.survival < FEW_LIVE
    ? `Only ${share} of the foam’s gas survived: check what went in and the bucket’s volume. ${fewWords(verdict)}`
    : `${share} of the foam’s gas survived, if the bucket was right.`;

/** What the readings of a batch say together, in one or two sentences; `sand` written down, kg. */
export function reconcileJudgement(
  verdict: VerdictCorrected,
  sand: number | undefined,
  say: Say,
): Judgement {
  const share = withPm(say, verdict.survival, verdict.u.survival, 'ratio', PERCENT);
  const { finding, mostMissing = 0, massIn } = verdict;
  const kilograms = say(Math.abs(mostMissing), 'mass', { significant: 2 });
  switch (finding) {
    case 'no-such-base-mix':
      return {
        verdict: 'stop',
        say: `${noBaseMixWords(verdict.waterCementBase, say)} Until that is settled nothing can be said of the foam.`,
      };
    case 'heavier-than-airless':
      return {
        verdict: 'stop',
        say: `At ${say(verdict.wetDensity, 'density')} the bucket is heavier than the same parts would be without a single bubble, ${say(verdict.massIn / verdict.airless, 'density')}, so one reading is wrong${sand || verdict.wetDensity > SAND_DENSITY ? '' : ', or sand is not written down'}. ${suspectWords(verdict, say)}`,
      };
    case 'more-air-than-foam':
      return {
        verdict: 'stop',
        say: `The mix holds more gas than the foam brought (${share}), so one reading is wrong, or air was stirred in with the base mix. ${suspectWords(verdict, say)}`,
      };
    case 'gained-mass':
      return {
        verdict: 'stop',
        say: `${kilograms} more came out than went in, so one reading is wrong. ${suspectWords(verdict, say)}`,
      };
    case 'lost-mass':
      return {
        verdict: 'look',
        say: `${kilograms} of ${say(massIn, 'mass')} is missing: spilled, left in the mixer, mis-tared, or a slip in what went in or filled the forms. ${ifBucketRight(verdict, share)}`,
      };
    case 'cannot-tell':
      return {
        verdict: 'look',
        say: `These readings are too coarse to say how much foam survived. Know the volumes of bucket and foam better, or weigh a larger share of the batch.`,
      };
    case 'cannot-tell-mass':
      return {
        verdict: 'look',
        say: `Look at what came out and its ±: it is too wide to tell whether mass is missing. ${ifBucketRight(verdict, share)}`,
      };
    case 'consistent':
      return verdict.survival < FEW_LIVE
        ? {
            verdict: 'look',
            say: `Check what went in and the bucket’s volume: the readings agree, and only ${share} of the foam’s gas survived. ${fewWords(verdict)}`,
          }
        : {
            verdict: 'good',
            say: `The readings agree: ${share} of the foam’s gas was in the mix when it was weighed. That is one batch: plan the next with the average of yours.`,
          };
  }
}
