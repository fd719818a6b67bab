import type { System } from '../../bench/entries.ts';
import { formatQuantity, type Precision, usualPrecision } from '../../core/quantity/format.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import type { Answered } from '../engine/answer.ts';
import type { Sure } from '../engine/doubt.ts';
import { handy } from '../engine/handy.ts';
import type { AnyWorksheet, ResultSpec } from '../worksheet.ts';

// biome-ignore lint/suspicious/noExplicitAny: a result spec's own type is known to its worksheet
type AnyResult = ResultSpec<any>;

/** A result in one system of units: its number, its unit and its ±, rounded alike. */
export function worded(value: number, spec: AnyResult, sure: Sure | undefined, system: System) {
  const kind = spec.kind;
  const unit = handy(value, kind, (spec.units ?? KINDS[kind].shown)[system]);
  const how: Precision = sure
    ? { uncertainty: sure.pm }
    : spec.decimals !== undefined
      ? { decimals: spec.decimals }
      : spec.significant !== undefined
        ? { significant: spec.significant }
        : usualPrecision(kind);
  const { text, number, unit: symbol } = formatQuantity(value, kind, unit, how);
  if (!sure) return { text, number, symbol, pm: undefined };
  const spread = kind === 'temperature' ? 'temperatureDifference' : kind;
  const pm = formatQuantity(sure.pm, spread, unit, { uncertainty: sure.pm }).number;
  return { text, number, symbol, pm };
}

/** The answer in large figures, the rest below it; the other system of units beside each. */
export function Results({
  sheet,
  answered,
  system,
}: {
  readonly sheet: AnyWorksheet;
  readonly answered: Answered;
  readonly system: System;
}) {
  const other: System = system === 'metric' ? 'us' : 'metric';
  const shown = Object.entries(answered.numbers);
  return (
    <dl class="results">
      {shown.map(([name, { value, sure }], i) => {
        const spec = sheet.results[name] as AnyResult;
        const here = worded(value, spec, sure, system);
        const there = worded(value, spec, sure, other);
        return (
          <div class={i === 0 || spec.answer ? 'result answer' : 'result'} data-result={name}>
            <dt>{spec.label}</dt>
            <dd>
              {/* No <output>: the worksheet says its answer once, when the numbers have settled. */}
              <span class="number">
                {here.number}
                {here.pm && <span class="pm">{`\u00a0±\u00a0${here.pm}`}</span>}
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
              {sure?.mostFrom && i === 0 && (
                <span class="most">Most of the ± comes from: {sure.mostFrom}.</span>
              )}
            </dd>
            {spec.note && <dd class="most">{spec.note}</dd>}
          </div>
        );
      })}
    </dl>
  );
}
