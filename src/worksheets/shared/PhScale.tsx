import { scaleLinear } from '../../islands/plots/scale.ts';

const x = scaleLinear([5, 14], [14, 406]);
const LIFE = [6.5, 9] as const;
const MARKS = [
  [9.6, 'fish are harmed'],
  [12, 'wash water'],
] as const;

/** The reader's water on the pH scale, with what lives where. */
export function PhScale({ pH }: { readonly pH: number }) {
  const at = x(Math.min(14, Math.max(5, pH)));
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 150"
        role="img"
        aria-label={`pH ${pH.toFixed(1)} on a scale from 5 to 14. Fresh-water life needs 6.5 to 9; fish are harmed from 9.6; wash water is near 12.`}
      >
        <rect class="track" x={x(5)} width={x(14) - x(5)} y="60" height="18" />
        <rect class="water" x={x(LIFE[0])} width={x(LIFE[1]) - x(LIFE[0])} y="60" height="18" />
        <text x={x((LIFE[0] + LIFE[1]) / 2)} y="118" text-anchor="middle">
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
