import type { Reconciled } from '../../../core/records/reconcile.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { scaleLinear } from '../../../islands/plots/scale.ts';

const [LEFT, RIGHT] = [10, 410] as const;

/** The batch as it was meant and as it came out: solids and liquid, then gas. */
export function ReconcileBars({ found, say }: { readonly found: Reconciled; readonly say: Say }) {
  const meant = found.airless + found.gasIn;
  const x = scaleLinear([0, Math.max(meant, found.yield)], [LEFT, RIGHT]);
  const litres = (volume: number) => say(volume, 'volume');
  const rows = [
    { name: 'if all foam survives', gas: found.gasIn, total: meant, y: 24 },
    { name: 'as weighed', gas: Math.max(0, found.gasFound), total: found.yield, y: 92 },
  ];
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 150"
        role="img"
        aria-label={`All parts but gas fill ${litres(found.airless)}. With all of its gas, ${litres(found.gasIn)}, the batch would be ${litres(meant)}; by the bucket it is ${litres(found.yield)}, ${litres(Math.max(0, found.gasFound))} of it gas.`}
      >
        {rows.map(({ name, gas, total, y }) => (
          <g>
            <text x={LEFT} y={y - 7}>
              {name}
            </text>
            <text class="strong" x={RIGHT} y={y - 7} text-anchor="end">
              {litres(total)}
            </text>
            <rect
              class="cement"
              x={LEFT}
              width={Math.max(0, x(Math.min(found.airless, total)) - LEFT)}
              y={y}
              height="34"
            />
            <rect
              class="foam swatch"
              x={x(Math.min(found.airless, total))}
              width={Math.max(0, x(total) - x(Math.min(found.airless, total)))}
              y={y}
              height="34"
            />
            {x(total) - x(found.airless) > 100 && (
              <text
                class="on-foam"
                x={(x(found.airless) + x(total)) / 2}
                y={y + 22}
                text-anchor="middle"
              >
                gas {litres(gas)}
              </text>
            )}
          </g>
        ))}
        {/* Between the bars the line pauses, for a name stands there. */}
        <path class="level" d={`M${x(Math.min(found.airless, meant))} 24v42m0 26v46`} />
      </svg>
      <figcaption>Grey: cement, sand and all liquid. Pale: gas. {theRest(found)}</figcaption>
    </figure>
  );
}

/** What it tells that one bar is not as long as the other. */
function theRest({ gasFound, gasIn }: Reconciled): string {
  if (gasFound > gasIn)
    return 'The lower bar is the longer: it holds more gas than the foam brought, or a reading is off.';
  if (gasFound < 0) return 'The lower bar is shorter than what is no gas at all: a reading is off.';
  return 'What the lower bar is shorter by is the gas that was lost.';
}
