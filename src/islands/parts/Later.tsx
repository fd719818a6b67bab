import { type ComponentChild, hydrate, render } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { drawAsLeft } from '../as-left.ts';

/**
 * What explains a result: taken over from the page once the result is, and drawn again, after a change,
 * once the result stands; so that nobody waits for a figure before they see the number.
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
          // What stands there is of the numbers before.
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
  // In the browser it stands in the page already: a tree of its own, which this one leaves alone.
  return typeof document === 'undefined' ? (
    <div>{draw()}</div>
  ) : (
    <div ref={place} dangerouslySetInnerHTML={{ __html: '' }} />
  );
}
