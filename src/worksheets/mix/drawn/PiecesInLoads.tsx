import { enter } from '../../../bench/store.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { useEntries, useKept } from '../../../islands/hooks.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { Verdict } from '../../../islands/parts/Verdict.tsx';
import { TYPED_VOLUME } from '../../shared/mix/batch-volume.ts';
import { jointsKnown, PIECES_KEPT } from '../../shared/mix/whole-pieces.ts';

/** Says that some pieces are filled from two loads and, if there is a way, how to make loads of whole pieces. */
export function PiecesInLoads({
  loads,
  volume,
  largestLoad,
  say,
  stays,
}: {
  readonly loads: number;
  readonly volume: number;
  readonly largestLoad: number;
  readonly say: Say;
  /** What has the focus once the button has gone. */
  readonly stays: string;
}) {
  const kept = useKept(PIECES_KEPT);
  const entries = useEntries([TYPED_VOLUME]);
  const joints = jointsKnown(entries, kept, { loads, volume, largestLoad });
  if (!joints) return null;
  const { better } = joints;
  return (
    <div data-joints>
      <Verdict verdict="look" say={joints.say} />
      {better !== undefined && (
        <button
          type="button"
          onClick={(event) => {
            keepFocus(event, stays);
            enter('mix.leastLoads', { t: String(better), u: '1', s: say.system });
          }}
        >
          Make it in {better === 1 ? 'one load' : `${better} loads`}
        </button>
      )}
    </div>
  );
}
