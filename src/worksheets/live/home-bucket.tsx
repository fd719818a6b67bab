import { useState } from 'preact/hooks';
import { CEMENT_DENSITY, MIX_WATER_DENSITY } from '../../core/mix/densities.ts';
import { proportion } from '../../core/mix/proportion.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { demo } from '../demo.ts';
import { Bucket } from '../shared/mix/Bucket.tsx';

/**
 * The picture on the first page: the parts of one bucket at a density that the reader chooses with
 * a slider.
 */
export default function HomeBucket() {
  const say = speaker(useUnits());
  const [density, setDensity] = useState<number>(demo.wetDensity);
  const mix = proportion({
    volume: demo.bucket.volume,
    target: { wetDensity: density },
    waterCement: demo.waterCement,
    foamDensity: demo.foam.density,
  });
  const words = say(density, 'density');
  const filled = `${say(mix.cement, 'mass')} of cement, ${say(mix.water, 'mass')} of water and ${say(mix.foamMass, 'mass')} of foam`;
  return (
    <div class="home-bucket">
      <Bucket
        title={`What ${words} is made of`}
        parts={[
          { name: 'cement', fill: 'cement', volume: mix.cement / CEMENT_DENSITY },
          { name: 'water', fill: 'water', volume: mix.water / MIX_WATER_DENSITY },
          { name: 'foam', fill: 'foam', volume: mix.foamVolume },
        ]}
        say={say}
      />
      <label>
        Wet density: <strong>{words}</strong>
        <input
          type="range"
          min="300"
          max="1800"
          step="20"
          value={density}
          aria-valuetext={`${words}: ${filled}`}
          onInput={(event) => setDensity(Number(event.currentTarget.value))}
        />
      </label>
      <p>{filled} fill it.</p>
    </div>
  );
}
