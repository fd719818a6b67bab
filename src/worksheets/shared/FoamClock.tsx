import { useEffect, useState } from 'preact/hooks';

const SECOND = 1000;

/** Minutes and seconds since the foam left the lance; it goes on through reloads. */
export function FoamClock({ since }: { readonly since: string }) {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), SECOND);
    return () => clearInterval(timer);
  }, []);
  const seconds = Math.max(0, Math.floor((now - Date.parse(since)) / SECOND));
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const two = (n: number) => String(n).padStart(2, '0');
  if (hours >= 12) return <p class="foam-clock">Foam made {since.slice(0, 10)}</p>;
  return (
    // A timer is announced by nobody: it would never be quiet.
    <p class="foam-clock" role="timer" aria-live="off">
      Foam:{' '}
      <strong>{`${hours > 0 ? `${hours}:` : ''}${hours > 0 ? two(minutes) : minutes}:${two(seconds % 60)}`}</strong>
    </p>
  );
}
