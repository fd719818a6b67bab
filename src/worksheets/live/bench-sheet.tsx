import { toUnit } from '../../core/quantity/convert.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useEntries, useKept, useUnits } from '../../islands/hooks.ts';
import { Table } from '../../islands/parts/Table.tsx';
import foamDensity from '../foam/foam-density.tsx';
import correct from '../mix/correct.tsx';
import proportion from '../mix/proportion.tsx';
import pieces from '../placing/pieces.tsx';
import { DENSITY, FOAM, LITRES, SMALL_MASS, SMALL_VOLUME } from '../shared/amounts.ts';
import { run } from '../shared/run.ts';
import waterHardness from '../water/water-hardness.tsx';

const HARDNESS = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' } as const;
const BLANKS = [
  'Water temperature',
  'Base mix finished at',
  'Foam made at',
  'Foam weighed',
  'Bucket weighed',
  'Added',
  'Bucket weighed again',
  'Placed at',
  'Left proud by',
  'Settled by',
] as const;

/** One printed page for the bench: amounts, what to add for each bucket weight, cautions, blanks. */
export default function BenchSheet() {
  const system = useUnits();
  const entries = useEntries();
  const kept = useKept();
  const say = speaker(system);
  const batch = run(proportion, entries, kept, say);
  const bench = run(correct, entries, kept, say);
  const foam = run(foamDensity, entries, kept, say);
  const water = run(waterHardness, entries, kept, say);
  const cast = run(pieces, entries, kept, say);
  if (!batch.result)
    return (
      <p class="note">The bench sheet appears here when “{proportion.question}” has an answer.</p>
    );

  const { mix, loads, solution } = batch.result;
  const { each, count, foamBuckets } = loads;
  const examples = [batch, foam, cast].flatMap(({ reading }) =>
    Object.values(reading.fields).filter(({ origin }) => origin === 'example'),
  ).length;
  const assumed = foam.result?.assumed ?? false;
  const both = (kind: 'mass' | 'volume', part: number, units?: typeof LITRES) => [
    say(part, kind, units && { units }),
    say(part * count, kind, units && { units }),
  ];
  const bucket = toUnit(each.foamVolume, 'volume', 'L') > 0 ? foamBuckets : { whole: 0, part: 0 };

  return (
    <article class="bench-sheet" aria-label="Bench sheet">
      <header>
        <h3>Bench sheet</h3>
        <p>
          {say(mix.volume, 'volume', { units: LITRES })} at{' '}
          {say(mix.wetDensity, 'density', { units: DENSITY })} wet, in {count}{' '}
          {count === 1 ? 'load' : 'loads'}. Date ____________ Batch ____________
        </p>
        {examples > 0 && (
          <p class="sheet-warning">
            {examples} readings are still the example’s. Put your own in before you weigh by this
            sheet.
          </p>
        )}
      </header>
      <Table
        caption="Weigh out"
        columns={['', 'One load', count === 1 ? 'Batch' : `All ${count} loads`]}
        rows={[
          ['Cement', ...both('mass', each.cement)],
          ['Mixing water', ...both('mass', each.water)],
          ...(each.sand > 0 ? [['Sand', ...both('mass', each.sand)]] : []),
          [
            `Foam, ${say(mix.foamMass / mix.foamVolume || 0, 'density', { units: FOAM })}${assumed ? ', ASSUMED' : ''}`,
            ...both('volume', each.foamVolume, LITRES),
          ],
          ['the same by weight', ...both('mass', each.foamMass)],
          ['in buckets', `${bucket.whole} full + ${(bucket.part * 100).toFixed(0)} % of one`, ''],
          [
            'Foaming solution: soft water',
            '',
            say(solution.waterVolume, 'volume', { units: LITRES }),
          ],
          ['concentrate', '', say(solution.concentrateVolume, 'volume', { units: SMALL_VOLUME })],
          ...(solution.glycerolMass > 0
            ? [['glycerol', '', say(solution.glycerolMass, 'mass', { units: SMALL_MASS })]]
            : []),
        ]}
      />
      {bench.result && (
        <Table
          caption={`One load in the mixer: if the bucket weighs …, add …`}
          columns={['Bucket weighs', 'Density', 'Add foam', 'Add base mix']}
          rows={bench.result.table.map((row) => [
            say(row.reading, 'mass', { decimals: 2 }),
            say(row.density, 'density', { units: DENSITY }),
            row.foamVolume > 0 ? say(row.foamVolume, 'volume', { units: LITRES }) : '—',
            row.baseMass > 0
              ? say(row.baseMass, 'mass')
              : row.foamVolume > 0
                ? '—'
                : 'leave it, place it',
          ])}
        />
      )}
      <ol class="sheet-steps">
        <li>Forms waxed, level and clamped; rinse water, goggles and gloves at hand.</li>
        <li>Foaming solution mixed with soft water{soft(water.result?.soft)}.</li>
        <li>Base mix: water first, cement into it, until no lump is left.</li>
        <li>Foam last. Weigh a bucket of it; blend it in gently, at once.</li>
        <li>Weigh a bucket of the blend. Correct at most twice. Place; leave the top proud.</li>
        <li>Cover the same hour. Keep damp and above 5 °C (41 °F). Test before you strip.</li>
      </ol>
      <p class="sheet-cautions">
        Wet cement burns without pain at first: gloves, goggles, wash off at once; eyes: rinse 15
        minutes, then get help. Dust: wear the mask when the bag is opened. Air: rated vessel and
        relief valve only, bleed before opening. Lift with two. This part carries nothing but
        itself.
      </p>
      <dl class="sheet-blanks">
        {BLANKS.map((blank) => (
          <div>
            <dt>{blank}</dt>
            <dd />
          </div>
        ))}
      </dl>
      <button type="button" class="main" onClick={() => window.print()}>
        Print this sheet
      </button>
    </article>
  );

  function soft(hardness: number | undefined) {
    return hardness === undefined ? '' : ` (${say(hardness, 'hardness', { units: HARDNESS })})`;
  }
}
