import type { ComponentChildren } from 'preact';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { LETTER, scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';

const LEFT = 10;
const RIGHT = 16;
const BAR = 20;
const ROW = 70;

export interface Segment {
  /** What is drawn under the piece: `Ca 237`. */
  readonly label: string;
  readonly amount: number;
  readonly tone: 'water' | 'sand' | 'cement' | 'foam' | 'bar' | 'track';
}
export interface IonRow {
  readonly name: string;
  readonly parts: readonly Segment[];
}

interface Props {
  /** What the picture shows: the start of the text a screen reader gives. */
  readonly title: string;
  readonly caption: ComponentChildren;
  readonly rows: readonly IonRow[];
  /** The least the scale reaches to. */
  readonly atLeast: number;
  /** Classes behind the bars: where each begins, and its name. */
  readonly classes?: readonly (readonly [from: number, name: string])[];
}

/** What is dissolved in a water, end to end on one scale, row above row. */
export function IonBars({ title, caption, rows, atLeast, classes = [] }: Props) {
  const sum = (row: IonRow) => row.parts.reduce((total, { amount }) => total + amount, 0);
  const top = Math.max(atLeast, ...rows.map((row) => sum(row) * 1.04));
  const x = scaleLinear([0, top], [LEFT, WIDTH - RIGHT]);
  const head = classes.length > 0 ? 24 : 4;
  const foot = head + rows.length * ROW;
  const words = rows
    .map((row) => `${row.name}: ${row.parts.map(({ label }) => label).join(', ') || 'nothing'}`)
    .join('; ');
  return (
    <figure class="fig">
      <svg viewBox={`0 0 ${WIDTH} ${foot + 30}`} role="img" aria-label={`${title}. ${words}.`}>
        {classes.map(([from, name], i) => {
          const to = classes[i + 1]?.[0] ?? top;
          return (
            <g>
              <rect
                class={i % 2 ? 'class-b' : 'class-a'}
                x={x(from)}
                width={Math.max(0, x(to) - x(from))}
                y="2"
                height={foot - 2}
              />
              {x(to) - x(from) > name.length * LETTER && (
                <text class="soft" x={x(from) + 4} y="17">
                  {name}
                </text>
              )}
            </g>
          );
        })}
        {rows.map((row, i) => (
          <g transform={`translate(0 ${head + i * ROW})`}>
            <text class="strong" x={LEFT + 2} y="15">
              {row.name}
            </text>
            {pieces(row, x).map(({ label, tone, from, to, at }) => (
              <g>
                <rect class={`${tone} segment`} x={from} width={to - from} y="21" height={BAR} />
                <text x={at} y={21 + BAR + 16}>
                  {label}
                </text>
              </g>
            ))}
          </g>
        ))}
        <Axis x={x} y={foot + 2} />
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

/** Where each piece lies, and where its name can stand without touching the next. */
function pieces(row: IonRow, x: (value: number) => number) {
  let sum = 0;
  let free = LEFT;
  const placed = row.parts
    .filter(({ amount }) => amount > 0)
    .map((part) => {
      const from = x(sum);
      sum += part.amount;
      const at = Math.max(from + 1, free);
      free = at + part.label.length * LETTER + 6;
      return { ...part, from, to: Math.max(from + 1.5, x(sum)), at };
    });
  // Names pushed past the edge are pushed back from the right.
  let edge = WIDTH - 4;
  return placed
    .reverse()
    .map((piece) => {
      const at = Math.min(piece.at, edge - piece.label.length * LETTER);
      edge = at - 6;
      return { ...piece, at };
    })
    .reverse();
}
