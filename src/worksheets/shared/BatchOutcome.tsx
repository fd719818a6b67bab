import { READINGS } from '../../bench/records/readings.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Verdict } from '../../islands/parts/Verdict.tsx';
import { DENSITY, LITRES, PERCENT } from './amounts.ts';
import { HOURS } from './part-fields.ts';
import { reconcileJudgement } from './reconcile-words.ts';
import { ageWhenStripped, driedDensity, reckon } from './record-numbers.ts';

/** What the readings of a batch come to so far: reconciled, aged, dried. */
export function BatchOutcome({ record, say }: { readonly record: BatchRecord; readonly say: Say }) {
  const reckoned = reckon(record);
  const age = ageWhenStripped(record);
  const dry = driedDensity(record);
  const rows: [string, string][] = [];
  if (reckoned.ok) {
    const { verdict } = reckoned;
    const pm = (u: number, factor: number, digits: number) =>
      Number.isFinite(u) && u > 0 ? ` ± ${(u * factor).toFixed(digits)}` : '';
    rows.push(
      ['Wet density', say(verdict.wetDensity, 'density', { units: DENSITY })],
      [
        'Foam that survived',
        `${(verdict.survival * 100).toFixed(0)}${pm(verdict.u.survival, 100, 0)} %`,
      ],
      ['Gas in the mix', say(verdict.air, 'ratio', { units: PERCENT })],
      ['w/c with the foam’s water', verdict.waterCement.toFixed(2)],
      ['Yield', say(verdict.yield, 'volume', { units: LITRES })],
    );
    if (verdict.missing !== undefined)
      rows.push(['Went in, not found', say(verdict.missing, 'mass', { significant: 2 })]);
  }
  if (age !== undefined)
    rows.push(['Age when stripped, at 20 °C', say(age, 'time', { units: HOURS, significant: 2 })]);
  if (dry)
    rows.push([
      dry.dried === 'oven' ? 'Oven-dry density' : 'Air-dry density',
      say(dry.density, 'density', { units: DENSITY }),
    ]);
  return (
    <div class="outcome" data-outcome>
      {reckoned.ok && <Verdict {...reconcileJudgement(reckoned.verdict, say)} />}
      {!reckoned.ok && reckoned.refused && (
        <p class="problem">“{labelOf(reckoned.refused.quantity)}” cannot be: look at it again.</p>
      )}
      {!reckoned.ok && reckoned.missing.length > 0 && (
        <p class="note">
          To hold what went in against what came out, write down:{' '}
          {reckoned.missing.map((name) => READINGS[name].label.toLowerCase()).join(', ')}.
        </p>
      )}
      {rows.length > 0 && (
        <dl class="results">
          {rows.map(([name, value]) => (
            <div class="result">
              <dt>{name}</dt>
              <dd>
                <output class="number">{value}</output>
              </dd>
            </div>
          ))}
        </dl>
      )}
    </div>
  );
}

const labelOf = (quantity: string) =>
  quantity in READINGS ? READINGS[quantity as keyof typeof READINGS].label : quantity;
