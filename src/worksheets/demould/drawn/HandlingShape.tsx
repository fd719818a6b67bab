import type { HeldBeam } from '../../../core/demould/beam.ts';
import { bendingShape } from '../../../core/demould/bending-shape.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { KPA } from '../../shared/words/amounts.ts';

interface Props {
  /** How the part is held, seen from the side. */
  readonly beam: HeldBeam;
  /** m */
  readonly depth: number;
  /** Pa */
  readonly stress: number;
  /** A hinge on the floor instead of the left hold. */
  readonly tipped: boolean;
  readonly say: Say;
}

const [X0, X1, Y] = [40, 380, 56] as const;
const BEND = 24;
const MOMENT = 218;

/** The part from the side, bending drawn far too large, where it is held, and its moments below. */
export function HandlingShape({ beam, depth, stress, tipped, say }: Props) {
  const { x, deflection, moment } = bendingShape(beam, 1);
  const across = (at: number) => X0 + ((X1 - X0) * at) / beam.length;
  const most = Math.max(...deflection.map(Math.abs)) || 1;
  const drop = (i: number) => Y + (BEND * deflection[i]!) / most;
  const thick = Math.min(26, Math.max(9, ((X1 - X0) * depth) / beam.length));
  const top = x.map((at, i) => `${across(at).toFixed(1)} ${drop(i).toFixed(1)}`);
  const under = x.map((at, i) => `${across(at).toFixed(1)} ${(drop(i) + thick).toFixed(1)}`);
  const greatest = moment.reduce((w, m, i) => (Math.abs(m) > Math.abs(moment[w]!) ? i : w), 0);
  const highest = Math.abs(moment[greatest]!) || 1;
  const hogs = moment[greatest]! < 0;
  const bow = moment.map(
    (m, i) => `${across(x[i]!).toFixed(1)} ${(MOMENT + (30 * m) / highest).toFixed(1)}`,
  );
  const holds = [beam.left, beam.length - beam.right];
  const crack = across(x[greatest]!);
  const crackAt = drop(greatest) + (hogs ? 0 : thick);
  const words = (m: number) => say(m, 'length');
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 272"
        role="img"
        aria-label={`Held ${words(beam.left)} and ${words(beam.right)} from its ends, ${words(beam.length)} long: the ${hogs ? 'top' : 'underside'} is stretched most, ${words(x[greatest]!)} from the left end, with ${say(stress, 'stress', { units: KPA })}.`}
      >
        <path class="cement" d={`M${top.join('L')}L${under.reverse().join('L')}Z`} />
        {holds.map((at, i) => {
          const foot = drop(Math.round((at / beam.length) * (x.length - 1))) + thick;
          return i === 0 && tipped ? (
            <path class="outline" d={`M${across(at)} ${foot + 2}l-10 18h20Z`} />
          ) : (
            <path class="outline" d={`M${across(at)} ${foot + 34}V${foot + 4}m-6 9l6 -9 6 9`} />
          );
        })}
        <path
          class="arrow"
          d={`M${crack} ${crackAt + (hogs ? -7 : 7)}V${crackAt + (hogs ? 6 : -6)}`}
        />
        <text
          class="strong"
          x={Math.min(340, Math.max(80, crack))}
          y={hogs ? crackAt - 14 : crackAt + 26}
          text-anchor="middle"
        >
          {`${say(stress, 'stress', { units: KPA })}, ${hogs ? 'top' : 'underside'} stretched`}
        </text>
        <path class="leader" d={`M${X0} 160V174M${X1} 160V174M${X0} 167H168M252 167H${X1}`} />
        <text x="210" y="172" text-anchor="middle">
          {words(beam.length)}
        </text>
        <path class="axis" d={`M${X0} ${MOMENT}H${X1}`} />
        <path class="band" d={`M${X0} ${MOMENT}L${bow.join('L')}L${X1} ${MOMENT}Z`} />
        <path class="curve" d={`M${bow.join('L')}`} />
        <text class="soft" x={X0} y="266">
          bending moment, drawn on the stretched side
        </text>
      </svg>
      <figcaption>
        From the side, not to scale: the bending is drawn many times too large, and a stocky part
        too thin. A crack would start at the mark.
      </figcaption>
    </figure>
  );
}
