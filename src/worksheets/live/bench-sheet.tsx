import type { Entries, KeptResults, System } from '../../bench/entries.ts';
import { COLDEST_CURE } from '../../core/curing/limits.ts';
import type { Answered } from '../../islands/engine/answer.ts';
import { type Say, speaker } from '../../islands/engine/say.ts';
import { useEntries, useKept, useUnits } from '../../islands/hooks.ts';
import { Table } from '../../islands/parts/Table.tsx';
import foamDensity from '../foam/foam-density.tsx';
import { BENCH_COLUMNS, benchRows } from '../mix/bench-rows.ts';
import correct from '../mix/correct.tsx';
import proportion from '../mix/proportion.tsx';
import pieces from '../placing/pieces.tsx';
import { countInWords, piecesInWords } from '../placing/pieces-words.ts';
import { solutionOrder } from '../shared/foam/solution-order.ts';
import { overflows } from '../shared/mix/correction-advice.ts';
import { jointsKnown } from '../shared/mix/whole-pieces.ts';
import { FOAM, JUG, PERCENT } from '../shared/words/amounts.ts';
import { onScale } from '../shared/words/as-said.ts';
import waterHardness from '../water/water-hardness.tsx';
import { PlanHeld, planHeld } from './run/PlanHeld.tsx';
import { AT_THE_BENCH, nextLoad } from './sheet/next-load.ts';
import { sheetBlanks } from './sheet/sheet-blanks.ts';
import { foamInBuckets, foamVessel, vesselWords } from './sheet/sheet-buckets.ts';
import { restsOn, stillExample } from './sheet/still-example.ts';
import { worked } from './worked.ts';

/** The most loads with their own column on one page. */
const MOST_LOADS = 3;

/**
 * One printed page for the bench: amounts, what to add for each bucket weight, cautions, blanks.
 */
export default function BenchSheet() {
  return <Sheet system={useUnits()} entries={useEntries()} kept={useKept()} />;
}

/** The same for a given bench. */
export function Sheet({ system, entries, kept }: SheetProps) {
  const say = speaker(system);
  const batch = worked(proportion, entries, kept, say);
  const bench = nextLoad(entries, kept, say);
  const foam = worked(foamDensity, entries, kept, say);
  const water = worked(waterHardness, entries, kept, say);
  const cast = worked(pieces, entries, kept, say);
  const held = planHeld(batch, kept, say);
  if (held)
    return (
      <div class="note">
        <p>There is no bench sheet yet.</p>
        <p>
          <PlanHeld {...held} />
          {!('waits' in held) && ' The steps at the bench take their amounts from it.'}
        </p>
      </div>
    );
  if (!batch.result || !bench.result)
    return (
      <div class="note">
        <p>There is no bench sheet yet:</p>
        <ul>
          {[batch, bench].flatMap(({ outcome }) =>
            outcome.ok ? [] : outcome.problems.map((problem) => <li>{problem.say}</li>),
          )}
        </ul>
      </div>
    );

  const { mix, loads, solution } = batch.result;
  const { each, count } = loads;
  const values = (batch.outcome as Answered).values;
  const weighed = (bench.outcome as Answered).values;
  const { volume, foamDensity: foamUsed, bucket } = batch.reading.fields;
  const ofMix = { tare: weighed.tare, vessel: weighed.vessel };
  const vessel = foamVessel(foam, ofMix);
  const measure = bucket?.origin === 'yours' ? values.bucket : undefined;
  // A typed volume, or one of another worksheet, has no known pieces.
  const ofPieces = restsOn(pieces, volume, kept['batch.volume']);
  const open = [
    ...(ofPieces ? stillExample(pieces, cast.reading) : []),
    ...stillExample(proportion, batch.reading),
    ...(restsOn(foamDensity, foamUsed, kept['foam.density'])
      ? stillExample(foamDensity, foam.reading)
      : []),
    ...stillExample(correct, bench.reading, AT_THE_BENCH),
  ];
  const assumed = foam.result?.assumed ?? false;
  const toFill = Array.from({ length: Math.min(count, MOST_LOADS) }, (_, i) => i + 1);
  // Many loads need several sheets; their numbers are written in by hand.
  const several = count > MOST_LOADS;
  const weighedIn = toFill.map((load) =>
    count === 1 ? 'Weighed' : `Weighed, load ${several ? '___' : load}`,
  );
  const amounts = (kind: 'mass' | 'volume', part: number) => [
    kind === 'mass' ? onScale(part, {}, say) : say(part, kind),
    ...(count === 1 ? [] : [say(part * count, kind)]),
  ];
  const once = (text: string) => (count === 1 ? [text] : ['', text]);
  // Poured amounts are given by weight too, which is more exact.
  const poured = (volume: number, mass: number) =>
    once(`${say(volume, 'volume')} (${say(mass, 'mass')})`);
  const form = ofPieces
    ? cast.outcome.ok && piecesInWords(cast.outcome.values.pieces, say)
    : volume?.origin === 'kept' && countInWords(kept['batch.volume'], kept['batch.count']);
  const { volume: mixed, load: largestLoad } = values;
  const joints = jointsKnown(entries, kept, { loads: count, volume: mixed, largestLoad });
  // The example's rain butt is not used.
  const soft = water.reading.fields.soft?.origin === 'example' ? undefined : water.result?.soft;
  const jug = say(mix.baseDensity, 'density', { units: JUG, significant: 3 });
  const rows = benchRows(bench.result.common, weighed as Recipe, say);
  return (
    <article class="bench-sheet" aria-label="Bench sheet">
      <header>
        <h3>Bench sheet</h3>
        <p>
          {say(mix.volume, 'volume')} at {say(mix.wetDensity, 'density')} wet, w/c{' '}
          {mix.waterCementBase.toFixed(2)}, in {count} {count === 1 ? 'load' : 'loads'}
          {several && `, with room here for ${MOST_LOADS}: print it anew for every ${MOST_LOADS}`}.
          {form && ` For ${form}.`}{' '}
          {/* A line of its own would not leave room for all else on one page. */}
          {joints && <span class="sheet-warning">{joints.short} </span>}
          <span class="kept">Date ____________</span> <span class="kept">Batch ____________</span>
        </p>
        <p>
          {vesselWords(
            vessel,
            ofMix,
            { foam: values.foamDensity, mix: weighed.target },
            { foam: each.foamVolume, mix: weighed.mass / weighed.target },
            say,
          )}
        </p>
        {open.length > 0 && (
          <div class="sheet-warning">
            <p>
              {open.length} {open.length === 1 ? 'reading is' : 'readings are'} still the invented
              example’s: put your own in before you weigh by this sheet.
            </p>
            <p class="sheet-open">
              {open.map(({ label, input }) => (
                <a href={`#${input}`}>{label}</a>
              ))}
            </p>
          </div>
        )}
      </header>
      <div class="weigh-out" data-loads={count === 1 ? 'one' : 'more'}>
        <Table
          caption="Weigh out"
          columns={[
            'Part',
            ...(count === 1 ? ['Amount'] : ['One load', `All ${count} loads`]),
            ...weighedIn,
          ]}
          rows={[
            ['Cement', ...amounts('mass', each.cement)],
            ['Mixing water', ...amounts('mass', each.water)],
            ...(each.sand > 0 ? [['Sand', ...amounts('mass', each.sand)]] : []),
            ['Base mix in a jug', jug, ...(count === 1 ? [] : [''])],
            [
              `Foam, ${say(values.foamDensity, 'density', { units: FOAM })}${assumed ? ', ASSUMED' : ''}`,
              ...amounts('volume', each.foamVolume),
            ],
            ['the same by weight', ...amounts('mass', each.foamMass)],
            [
              'the same in buckets',
              foamInBuckets(each, values.foamDensity, vessel, measure, say),
              ...(count === 1 ? [] : ['']),
            ],
            ['Foaming solution: soft water', ...poured(solution.waterVolume, solution.waterMass)],
            ...(solution.glycerolMass > 0
              ? [['glycerol', ...once(say(solution.glycerolMass, 'mass'))]]
              : []),
            ['concentrate', ...poured(solution.concentrateVolume, solution.concentrateMass)],
          ].map((row) => [...row, ...toFill.map(() => '')])}
        />
      </div>
      {rows.length === 0 && (
        <p>
          No table of what to add: enter that vessel’s weight and volume under ‘{correct.question}’
          and print again.
        </p>
      )}
      <Table
        caption={`With ${say(weighed.mass, 'mass')} in the mixer (near enough: ${say(weighed.tolerance, 'ratio', { units: PERCENT, significant: 2 })} either way)`}
        columns={BENCH_COLUMNS}
        rows={rows}
      />
      <ol class="sheet-steps">
        <li>Forms waxed, level and clamped; goggles, gloves, rinse water, waste bucket at hand.</li>
        <li>
          Foaming solution with soft water{soft === undefined ? '' : ` (${said(soft, say)})`}:{' '}
          {solutionOrder(solution)}; stir gently. Have some over for a correction.
        </li>
        <li>
          Base mix{count > 1 && ' for one load'}: water first, cement into it, until no lump is
          left. Weigh a jug of it.
        </li>
        <li>
          Foam last, the bucket rinsed and wiped. Weigh a{' '}
          {vessel.vessel > each.foamVolume ? 'smaller vessel' : 'bucket'} of it; fold it in slowly,
          at once, a third first.
        </li>
        <li>
          Weigh a {overflows(bench.result.common) ? 'vessel' : 'bucket'} of the blend. Tip it back
          before you correct: at most twice, never with water. Place a little proud, test bars too.
          {count > 1 && ' Next load: step 3.'}
        </li>
        <li>
          Cover, the sheet held clear. Bleed tank and hose to zero, refill with water, run it
          through the lance into the waste bucket, bleed again. Wash up in a tub, not at a drain.
          Strike off once it has stopped sinking; cover again.
        </li>
        <li>
          Keep damp and above {say(COLDEST_CURE, 'temperature', { decimals: 0 })}. Test before you
          strip.
        </li>
      </ol>
      <p class="sheet-cautions">
        Wet cement burns without pain at first: gloves, goggles, wash off at once. Eyes: rinse at
        once, for at least 20 minutes, while somebody calls; then hospital. Dust: respirator to open
        the bag. Drill: battery, RCD or GFCI; two hands, hair and cuffs tied. Air: rated vessel and
        relief valve, bleed before opening; never point the lance at anyone. Lift with two. This
        part carries nothing but itself.
      </p>
      <dl class="sheet-blanks">
        {sheetBlanks(system).map((blank) => (
          <div>
            <dt>{blank}</dt>
            {toFill.map((load) => (
              <dd>{count > 1 && !several && load}</dd>
            ))}
          </div>
        ))}
      </dl>
      <button type="button" class="main" onClick={() => window.print()}>
        Print this sheet
      </button>
    </article>
  );
}

interface SheetProps {
  readonly system: System;
  readonly entries: Entries;
  readonly kept: KeptResults;
}

interface Recipe {
  readonly waterCement: number;
  readonly sandCement: number;
}

const said = (hardness: number, say: Say) => say(hardness, 'hardness');
