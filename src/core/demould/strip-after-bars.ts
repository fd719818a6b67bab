import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { type StripWindow, stripWindow } from './strip-window.ts';

interface Band {
  readonly low: number;
  readonly high: number;
}

/**
 * When is the part strong enough, once bars of its batch have been broken? The tested strength takes the
 * place of the estimate: each growth curve is drawn through it, strength(t) = tested · gain(age of t) ÷
 * gain(age of the test), and the window spans what both curves say. Past the test the slower cement gains
 * more, before it less, so neither curve is the cautious one throughout. A bar cured with the part tells of
 * the part; one kept warmer does not. Other things, the range too, as
 * `stripWindow`.
 * @param asked stress Pa, with its factors; tested flexural strength Pa (low: what the next bar should
 *   exceed); testedAt time after casting, s, above 0; the rest as `stripWindow`
 * @returns times s and strength Pa, as `stripWindow`
 * @throws {DomainError} as `stripWindow`, and for a growth curve that is nought at the time of the test
 * @source common-practice
 */
export function stripAfterBars(asked: {
  readonly stress: Band;
  readonly tested: Band;
  readonly testedAt: number;
  readonly gain: Record<'slow' | 'fast', (adjustedAge: number) => number>;
  readonly adjustedAge: Record<'slow' | 'fast', (elapsed: number) => number>;
  readonly share?: number;
  readonly floor?: number;
  readonly within: number;
}): StripWindow {
  const { tested, testedAt, gain, adjustedAge, ...rest } = asked;
  demand('testedAt', testedAt, 'time', { min: 0, aboveMin: true });
  const windows = (['slow', 'fast'] as const).map((pace) => {
    const then = gain[pace](adjustedAge[pace](testedAt));
    demand('gain', then, 'ratio', { min: 0, aboveMin: true });
    return stripWindow({
      ...rest,
      strength28: { low: tested.low / then, high: tested.high / then },
      gain: { slow: gain[pace], fast: gain[pace] },
      adjustedAge: { slow: adjustedAge[pace], fast: adjustedAge[pace] },
    });
  });
  const [slow, fast] = windows as [StripWindow, StripWindow];
  const starts = windows.flatMap(({ earliest }) => earliest ?? []);
  const latest = slow.latest !== undefined && fast.latest !== undefined;
  return {
    ...(starts.length > 0 ? { earliest: Math.min(...starts) } : {}),
    ...(latest ? { latest: Math.max(slow.latest, fast.latest) } : {}),
    needed: slow.needed,
    notes: distinct([...slow.notes, ...fast.notes]),
  };
}

function distinct(notes: readonly Note[]): readonly Note[] {
  return notes.filter((n, i) => notes.findIndex((m) => m.code === n.code && m.of === n.of) === i);
}
