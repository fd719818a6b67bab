import { FISH_HARM_PH, FRESH_WATER_LIFE, WASH_WATER_PH } from '../../../core/safety/washout.ts';
import { scaleLinear } from '../../../islands/plots/scale.ts';

const x = scaleLinear([5, 14], [14, 406]);
const [LEAST, MOST] = FRESH_WATER_LIFE;
const MARKS = [
  [FISH_HARM_PH, 'fish are harmed'],
  [WASH_WATER_PH, 'wash water'],
] as const;

/** The reader's water on the pH scale, with what lives where. */
export function PhScale({ pH }: { readonly pH: number }) {
  const at = x(Math.min(14, Math.max(5, pH)));
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 150"
        role="img"
        aria-label={`pH ${pH.toFixed(1)} on a scale from 5 to 14. Fresh-water life needs ${LEAST} to ${MOST}; fish are harmed from ${FISH_HARM_PH}; wash water is near ${WASH_WATER_PH}.`}
      >
        <rect class="track" x={x(5)} width={x(14) - x(5)} y="60" height="18" />
        <rect class="water" x={x(LEAST)} width={x(MOST) - x(LEAST)} y="60" height="18" />
        <text x={x((LEAST + MOST) / 2)} y="118" text-anchor="middle">
          life in fresh water
        </text>
        {MARKS.map(([mark, name]) => (
          <g>
            <path class="leader" d={`M${x(mark)} 78V84M${x(mark)} 102V120`} />
            <text class="soft" x={x(mark)} y="134" text-anchor="middle">
              {name}
            </text>
          </g>
        ))}
        {x.ticks(10).map((tick) => (
          <text class="soft" x={x(tick)} y="97" text-anchor="middle">
            {tick}
          </text>
        ))}
        <circle class="marker measured" cx={at} cy="69" r="8" />
        <text class="strong" x={Math.min(at, 380)} y="30" text-anchor="middle">
          yours, {pH.toFixed(1)}
        </text>
        <path class="leader" d={`M${at} 36V60`} />
      </svg>
      <figcaption>Each step is ten times as much hydroxide as the one before.</figcaption>
    </figure>
  );
}
