import { wholeOnes } from '../../core/mix/whole.ts';
import { dayClock, type Remedy } from '../../core/placing/clock.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { BATCH_VOLUME } from '../shared/mix/batch-volume.ts';
import { largestLoad, leastLoads } from '../shared/mix/load-fields.ts';
import { ClockChart } from './drawn/ClockChart.tsx';

const minutes = (label: string, example: string, more: object = {}) =>
  number('time', { label, example, min: '0 min', max: '1 d', ...more });
const REMEDIES: Readonly<Record<Exclude<Remedy, 'a-larger-mixer'>, string>> = {
  'foam-for-each-load': 'make the foam for each load when it is needed',
  'a-second-pair-of-hands': 'have a second person make the next base mix',
  'fewer-pieces': 'cast fewer pieces in a day',
  'quicker-steps': 'practise until each step takes half as long',
};

/** Fewer loads: the mixer takes them only where more were asked for than it needs. */
function fewerLoads(
  fewer: number,
  v: { readonly volume: number; readonly load: number },
  say: Say,
) {
  const many = (what: string) => `${fewer}\u00a0${what}${fewer === 1 ? '' : 's'}`;
  if (wholeOnes(v.volume / v.load) <= fewer) return `take ${many('larger load')}`;
  // Up to the litre: one of a little less would not hold it.
  const mixer = Math.ceil((v.volume / fewer) * 1000) / 1000;
  return `take a mixer of ${say(mixer, 'volume', { plain: true, significant: 4 })}, for ${many('load')}`;
}

export default worksheet({
  id: 'clock',
  question: 'Can I place it all in time?',
  fields: {
    volume: number('volume', {
      label: 'Foamed mix to make',
      example: '105.12 L',
      min: '0 L',
      aboveMin: true,
      max: '100 m3',
      ...BATCH_VOLUME,
    }),
    load: largestLoad,
    leastLoads,
    latest: minutes('The foam lasts', '10.6 min', {
      help: 'From the lance until it must be in the mix.',
      aboveMin: true,
      takes: 'foam.timeInHand',
    }),
    foamMade: choice({
      label: 'The foam is made',
      options: { each: 'For each load', once: 'All of it, before the first' },
      example: 'each',
    }),
    hands: choice({
      label: 'People',
      options: { one: 'Alone', two: 'Two people' },
      example: 'one',
    }),
    foam: minutes('Making the foam of a load', '3 min'),
    place: minutes('Placing a load', '5 min'),
    mixLasts: minutes('A blended load may wait', '15 min', {
      help: 'Until it is in the form. Common practice, no source: your jar test knows better.',
      aboveMin: true,
    }),
    base: minutes('Mixing the base mix of a load', '6 min', { folded: true }),
    blend: minutes('Blending', '2 min', { folded: true }),
    weigh: minutes('Weighing and one correction', '4 min', { folded: true }),
    joint: minutes('One load may wait for the next', '30 min', {
      help: 'In a form that takes several: after that the joint may show. Common practice, no source.',
      aboveMin: true,
      folded: true,
    }),
  },
  work: (v) => {
    const loads = wholeOnes(v.volume / v.load, v.leastLoads);
    const clock = dayClock({
      loads,
      base: v.base,
      foam: v.foam,
      blend: v.blend,
      weigh: v.weigh,
      place: v.place,
      foamMade: v.foamMade,
      hands: v.hands === 'two' ? 2 : 1,
      foamLasts: v.latest,
      mixLasts: v.mixLasts,
      joint: v.joint,
    });
    const oldest = Math.max(...clock.loads.map(({ foamAge }) => foamAge));
    return { loads, clock, oldest, spare: v.latest - oldest };
  },
  results: {
    total: {
      label: 'From the first water to the last form',
      kind: 'time',
      of: (r) => r.clock.total,
      decimals: 0,
    },
    loads: { label: 'Mixer loads', kind: 'count', of: (r) => r.loads, decimals: 0 },
    oldest: {
      label: 'The oldest foam, when blended in',
      kind: 'time',
      of: (r) => r.oldest,
      significant: 2,
    },
    spare: {
      label: 'Minutes to spare for the oldest foam',
      kind: 'time',
      of: (r) => (r.spare > 0 ? r.spare : undefined),
      significant: 2,
    },
  },
  judge: ({ clock }, v, say) => {
    const [first] = clock.obstacles;
    if (!first)
      return {
        verdict: 'good',
        say: `It fits, with every step at the minutes given. Set out foam, bucket, scale and strike-off bar before the first bag is opened.`,
      };
    const took = 'age' in first ? first.age : first.wait;
    const limit = { 'foam-too-old': v.latest, 'mix-waits': v.mixLasts, 'cold-joint': v.joint }[
      first.code
    ];
    const time = (s: number, significant: number) => say(s, 'time', { significant });
    // A time over its limit is not said in the limit's own words.
    const digits = [2, 3, 4].find((n) => time(took, n) !== time(limit, n)) ?? 5;
    const [long, most] = [time(took, digits), time(limit, digits)];
    const what = {
      'foam-too-old': `In load ${first.load} the foam would be ${long} old when it is in, and it lasts ${most}.`,
      'mix-waits': `A blended load would wait ${long} until it is placed; ${most} is what you allow.`,
      'cold-joint': `Load ${first.load} would come ${long} after the one before it, more than the ${most} you allow.`,
    }[first.code];
    const change =
      clock.remedies.length > 0
        ? `${clock.remedies.length > 1 ? 'Any one of these' : 'This'} would do: ${clock.remedies.map((remedy) => (remedy === 'a-larger-mixer' ? fewerLoads(clock.fewer, v, say) : REMEDIES[remedy])).join('; ')}.`
        : `Make ${first.code === 'foam-too-old' ? 'foam that lasts longer, or ' : ''}smaller loads, each of whose steps is shorter; or change two things at once.`;
    return { verdict: 'stop', say: `The plan cannot work. ${what} ${change}` };
  },
  notes: () => [
    'Larger loads take longer to mix and to place: enter the minutes you have seen, not those of a small trial.',
  ],
  refusals: {
    'too-many-loads': (e) =>
      `That makes ${e.value} loads; at most ${e.allowed.max} are worked out: a larger mixer, or fewer pieces.`,
  },
  folded: 'The other steps',
  blames: { foamLasts: 'latest', loads: 'load' },
  working: [
    {
      tex: String.raw`t_{\text{foam}} = t_{\text{lance}} + t_{\text{blend}} \le t_{\text{lasts}}`,
      put: ({ oldest }, v, say) =>
        `oldest foam ${say(oldest, 'time')}, against ${say(v.latest, 'time')}`,
    },
  ],
  figure: ({ result: { clock }, say }) => (
    <ClockChart loads={clock.loads} total={clock.total} say={say} />
  ),
  tables: [
    {
      caption: 'Load by load, from the start',
      columns: ['Load', 'Start', 'Foam ready', 'Blended', 'Foam’s age by then', 'Placed'],
      rows: ({ clock }, _, say) => {
        const at = (s: number) => say(s, 'time', { decimals: 0 });
        return clock.loads
          .slice(0, 20)
          .map((load) => [
            `${load.load}`,
            at(load.start),
            at(load.foamReady),
            at(load.blended),
            say(load.foamAge, 'time', { significant: 2 }),
            at(load.placed),
          ]);
      },
    },
  ],
  cautions: ['caustic-slurry', 'drill-mixer'],
  defers: [
    'How long a mix may wait is for the sheet of its concentrate, and for your own jar test.',
  ],
  sources: ['common-practice', 'food-foam-drainage'],
});
