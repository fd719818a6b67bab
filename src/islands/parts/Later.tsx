import { type ComponentChild, hydrate, render } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { drawAsLeft } from '../as-left.ts';

/**
 * Explains a result. Hydrated after the result, and after a change redrawn one task later, so that
 * nobody waits for a figure before seeing the number.
 */
export function Later({ draw }: { readonly draw: () => ComponentChild }) {
  const place = useRef<HTMLDivElement>(null);
  const built = useRef<(() => ComponentChild) | undefined>(draw);
  useLayoutEffect(() => {
    const timer = setTimeout(() => {
      const first = built.current;
      built.current = undefined;
      drawAsLeft([place.current], () => {
        try {
          if (first) hydrate(first(), place.current!);
          if (first !== draw) render(draw(), place.current!);
        } catch (error) {
          // Replace the old figure, which shows the earlier numbers. What was begun of the new one is
          // in no tree, and goes with it.
          render(null, place.current!);
          place.current!.replaceChildren();
          render(
            <p class="withheld">This could not be drawn with these numbers.</p>,
            place.current!,
          );
          reportError(error);
        }
      });
    });
    return () => clearTimeout(timer);
  }, [draw]);
  // In the browser the markup is already in the page: a separate tree, which this one leaves alone.
  return typeof document === 'undefined' ? (
    <div>{draw()}</div>
  ) : (
    <div ref={place} dangerouslySetInnerHTML={{ __html: '' }} />
  );
}
