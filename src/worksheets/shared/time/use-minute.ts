import { useEffect, useReducer } from 'preact/hooks';

const MINUTE = 60_000;

/**
 * Renders again every minute, and at once when the page is shown again, for content that depends on
 * the time of day.
 */
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
