import type { ComponentChildren } from 'preact';
import type { System } from '../../bench/entries.ts';
import { formatQuantity } from '../../core/quantity/format.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import type { Answered } from '../engine/answer.ts';
import type { Sure } from '../engine/doubt.ts';
import { handy } from '../engine/handy.ts';
import { precision } from '../engine/say.ts';
import type { ResultSpec } from '../worksheet.ts';

/** How a result is displayed, wherever it comes from. */
type Shown = Omit<ResultSpec<never>, 'of' | 'scatter' | 'listed'>;

/** The smallest relative ± to show: a smaller one would promise digits that no reading holds. */
const LEAST_SHARE = 5e-5;

/** A result in one system of units: its number, its unit and its ±, rounded to match. */
export function worded(value: number, spec: Shown, found: Sure | undefined, system: System) {
  const kind = spec.kind;
  const sure = found && found.pm <= LEAST_SHARE * Math.abs(value) ? undefined : found;
  const unit = handy(value, kind, (spec.units ?? KINDS[kind].shown)[system]);
  const how = sure ? { uncertainty: sure.pm } : precision(kind, spec);
  const { text, number, unit: symbol } = formatQuantity(value, kind, unit, how);
  if (!sure) return { text, number, symbol, pm: undefined };
  const spread = kind === 'temperature' ? 'temperatureDifference' : kind;
  const pm = formatQuantity(sure.pm, spread, unit, { uncertainty: sure.pm }).number;
  return { text, number, symbol, pm };
}

/**
 * The answer in large figures, then the verdict on it (`children`), then the rest, each with the
 * other system of units beside it. The verdict thus stays with the answer, however many figures
 * follow.
 */
export function Results({
  sheet,
  answered,
  system,
  children,
}: {
  readonly sheet: { readonly results: Readonly<Record<string, Shown>> };
  readonly answered: Pick<Answered, 'numbers'>;
  readonly system: System;
  readonly children?: ComponentChildren;
}) {
  const other: System = system === 'metric' ? 'us' : 'metric';
  const shown = Object.entries(answered.numbers);
  const first = shown[0]?.[0];
  const isLarge = (name: string) => name === first || sheet.results[name]!.answer === true;
  const list = (large: boolean) => {
    const listed = shown.filter(([name]) => isLarge(name) === large);
    if (listed.length === 0) return;
    return (
      <dl class="results">
        {listed.map(([name, { value, sure }]) => {
          const spec = sheet.results[name]!;
          const here = worded(value, spec, sure, system);
          const there = worded(value, spec, sure, other);
          return (
            <div class={large ? 'result answer' : 'result'}>
              <dt>{spec.label}</dt>
              <dd>
                {/* Not an <output>: the worksheet announces its answer once, when settled. */}
                <span class="number">
                  {here.number}
                  {here.pm && <span class="pm">{` ±\u00a0${here.pm}`}</span>}
                  {here.symbol && <span class="unit">{`\u00a0${here.symbol}`}</span>}
                </span>
                {there.symbol !== here.symbol && (
                  <span class="other">
                    {' '}
                    {there.pm
                      ? `${there.number}\u00a0±\u00a0${there.pm}\u00a0${there.symbol}`
                      : there.text}
                  </span>
                )}
                {here.pm && sure?.mostFrom && name === first && (
                  <span class="most">Most of the ± comes from: {sure.mostFrom}.</span>
                )}
              </dd>
              {spec.note && <dd class="most">{spec.note}</dd>}
            </div>
          );
        })}
      </dl>
    );
  };
  return (
    <>
      {list(true)}
      {children}
      {list(false)}
    </>
  );
}
