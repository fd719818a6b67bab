import { afterAll } from 'vitest';
import { closeLent } from './windows.ts';

// Files share a worker, and so its browser: none begins beside windows that another has left open.
afterAll(closeLent);
