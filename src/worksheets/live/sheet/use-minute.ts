import { useEffect, useReducer } from 'preact/hooks';

const MINUTE = 60_000;

/** Draws again each minute, and at once when the page is seen again: what goes by the time of day is asked anew. */
export function useMinute(): void {
  const [, look] = useReducer<number, unknown>((n) => n + 1, 0);
  useEffect(() => {
    const timer = setInterval(look, MINUTE);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
}
