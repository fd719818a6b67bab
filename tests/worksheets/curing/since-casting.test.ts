import { h, type VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import type { LinesReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { InputProps } from '../../../src/islands/fields.ts';
import { temperatureFields } from '../../../src/worksheets/curing/curing-fields.ts';

const { readings } = temperatureFields;
const from = '2026-05-08T14:00';
/** The box with such an entry, and what it hands on of what is typed. */
function box(entry: Entry) {
  const handed: Entry[] = [];
  const props: InputProps<LinesReading> = {
    ...{ id: 'readings', entry, system: 'metric', typing: undefined },
    reading: readings.as.read(readings, entry, speaker('metric')),
    problemAt: () => undefined,
    onEntry: (typed) => void handed.push(typed),
    onLeave: () => {},
  };
  return {
    html: () => renderToString(h(readings.as.Input, props)),
    /** What the box of lines within says was typed. */
    type: (t: string) => {
      const drawn = (readings.as.Input as (given: typeof props) => VNode)(props);
      const { children, onEntry } = drawn.props as { children?: unknown; onEntry?: unknown };
      const inner = children ? (children as VNode<typeof props>[])[0]!.props.onEntry : onEntry;
      (inner as typeof props.onEntry)({ t });
      return handed.at(-1);
    },
  };
}

test('a casting moment in a link without lines is accepted', () => {
  expect(box({ from }).html()).toContain('>example</p>');
  expect(box({ from }).type('0\t20')).toEqual({ t: '0\t20' });
});

test('an added line counts from the same casting as those above it', () => {
  const logged = box({ t: '0\t20\n6\t22', from });
  expect(logged.type('0\t20\n6\t22\n12\t19')).toEqual({ t: '0\t20\n6\t22\n12\t19', from });
  expect(logged.type('1\t18')).toEqual({ t: '1\t18' });
  // Every text begins with an empty line.
  expect(box({ t: '\n0\t20', from }).type('1\t18')).toEqual({ t: '1\t18' });
  expect(box({ t: '', from }).type('1\t18')).toEqual({ t: '1\t18' });
});
