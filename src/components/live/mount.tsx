import { type ComponentType, hydrate } from 'preact';
import { WorksheetView } from '../../islands/WorksheetView.tsx';
import type { AnyWorksheet } from '../../islands/worksheet.ts';

/** Takes over the markup of a live part. */
export function mount(
  place: HTMLElement,
  kind: 'worksheet' | 'live',
  part: AnyWorksheet & ComponentType,
): void {
  const Part = part as ComponentType;
  hydrate(
    kind === 'live' ? <Part /> : <WorksheetView sheet={part} formulas={formulas(place)} />,
    place,
  );
}

/** The formulas were typeset at build time; what stands in the page is what is kept. */
const formulas = (place: HTMLElement) =>
  Array.from(place.querySelectorAll('[data-formula]'), (element) => element.innerHTML);
