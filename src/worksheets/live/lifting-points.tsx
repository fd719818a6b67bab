import { useState } from 'preact/hooks';
import { BEST_SUPPORT_FRACTION } from '../../core/demould/beam.ts';
import { handlingStress } from '../../core/demould/handling.ts';
import { CARRIED } from '../../core/demould/multipliers.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { demo } from '../demo.ts';
import { HandlingShape } from '../demould/drawn/HandlingShape.tsx';
import { KPA, PERCENT } from '../shared/words/amounts.ts';

const { length, width, thickness } = demo.slab;
const slab = { length, width, depth: thickness, density: demo.wetDensity };
/** The demo slab, stripped from its form. */
const PART = { ...slab, factor: CARRIED, adhesion: 0 };
/**
 * The largest inset of a hold, as a share of the length: the two holds need some room between them.
 */
const FARTHEST = 0.48;
const stretched = (share: number) =>
  handlingStress(PART, { by: 'two-points', left: share * length, right: share * length });

/** The demo slab on two holds, whose distance from the ends the reader changes. */
export default function LiftingPoints() {
  const say = speaker(useUnits());
  const [share, setShare] = useState<number>(0.1);
  const { load, stress } = stretched(share);
  const least = stretched(BEST_SUPPORT_FRACTION).stress;
  const words = `${say(share, 'ratio', { units: PERCENT, decimals: 0 })} of the length in from each end`;
  const tension = `Tension as it is carried ${say(stress, 'stress', { units: KPA })}: ${(stress / least).toFixed(1)} times the least that two holds can do.`;
  return (
    <div class="home-bucket">
      <HandlingShape
        beam={{ length, left: share * length, right: share * length, load }}
        depth={thickness}
        stress={stress}
        tipped={false}
        say={say}
      />
      <label>
        Held <strong>{words}</strong>
        <input
          type="range"
          min="0"
          max={FARTHEST}
          step="0.01"
          value={share}
          aria-valuetext={`${words}. ${tension}`}
          onInput={(event) => setShare(Number(event.currentTarget.value))}
        />
      </label>
      <p>{tension}</p>
    </div>
  );
}
