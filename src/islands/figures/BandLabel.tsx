import { LETTER, WIDTH } from '../plots/scale.ts';

/** A band's label: after it if there is room, else before it, else inside it. */
export function BandLabel({
  text,
  from,
  to,
  y,
}: {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly y: number;
}) {
  const wide = 6 + text.length * LETTER;
  const before = to + wide >= WIDTH && from > wide;
  const at = to + wide < WIDTH ? to : from;
  return (
    <text class="soft" x={before ? from - 6 : at + 6} y={y} text-anchor={before ? 'end' : 'start'}>
      {text}
    </text>
  );
}
