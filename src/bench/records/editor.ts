import { isDay } from './day.ts';
import { dropDraft, keepDraft } from './drafts.ts';
import { type BatchRecord, content, nameBeside, newId, type PhotoNote } from './record.ts';
import {
  doublePhotos,
  type Found,
  readRecord,
  removePhoto,
  type Saved,
  saveRecord,
} from './store.ts';

/** What an editor needs from outside; tests may replace it. */
export interface World {
  readonly save: (record: BatchRecord) => Promise<Saved>;
  readonly read: (id: string) => Promise<Found>;
  readonly keepDraft: (record: BatchRecord) => boolean;
  readonly dropDraft: (id: string, saved?: BatchRecord) => void;
  /** Duplicates the photos for a copy of their batch; returns the copy's list of them. */
  readonly doublePhotos: (record: BatchRecord, copy: string) => Promise<readonly PhotoNote[]>;
  /** Removes one of these copies. */
  readonly removePhoto: (id: string, batch: string) => Promise<unknown>;
  /** Waits until typing has paused. */
  readonly pause: () => Promise<void>;
}

const browser: World = {
  save: saveRecord,
  read: readRecord,
  keepDraft: (record) => keepDraft(record),
  dropDraft: (id, saved) => dropDraft(id, saved),
  doublePhotos,
  removePhoto,
  pause: () => new Promise((done) => setTimeout(done, 400)),
};

export type State =
  | { readonly is: 'saved' | 'saving' }
  /** Saved or removed elsewhere meanwhile; nothing is written until the reader chooses. */
  | { readonly is: 'conflict'; readonly theirs: BatchRecord | undefined }
  | { readonly is: 'refused'; readonly say: string };

/**
 * One record being edited. Each change is stored as a draft at once, and saved when typing pauses.
 * If the record was saved elsewhere meanwhile, that version is shown beside this one and never
 * overwritten without asking.
 */
export class Editor {
  record: BatchRecord;
  state: State = { is: 'saved' };
  /** Whether the latest text is in a draft, in case the save fails. */
  drafted = true;
  /** Whether the text survives leaving the page. */
  get held(): boolean {
    return this.drafted || this.state.is === 'saved';
  }
  /**
   * Set once this page itself has removed the record, so that the change event is not taken for
   * another tab's.
   */
  removed = false;
  #world: World;
  #hear: () => void;
  #busy: Promise<void> | undefined;

  constructor(record: BatchRecord, hear: () => void, world: World = browser) {
    this.record = record;
    this.#hear = hear;
    this.#world = world;
  }

  change(patch: Partial<BatchRecord>): void {
    // A date input also gives years of six digits; the box then shows the stored date.
    if (patch.date !== undefined && !isDay(patch.date)) {
      this.#hear();
      return;
    }
    this.record = { ...this.record, ...patch, changed: new Date().toISOString() };
    this.drafted = this.#world.keepDraft(this.record);
    // Without a draft the record must be saved now.
    if (this.state.is !== 'conflict') {
      this.state = { is: 'saving' };
      this.store(this.drafted);
    }
    this.#hear();
  }

  /** Saves what has been typed so far, after a pause if `pause` is set; one save at a time. */
  store(pause = false): Promise<void> {
    this.#busy ??= this.#store(pause).finally(() => {
      this.#busy = undefined;
    });
    return this.#busy;
  }

  async #store(pause: boolean): Promise<void> {
    if (pause) await this.#world.pause();
    for (;;) {
      const sent = this.record;
      const saved = await this.#world.save(sent);
      if (saved.ok) {
        const { revision, changed } = saved.record;
        const same = this.record === sent;
        this.record = { ...this.record, revision, ...(same && { changed }) };
        if (same) {
          this.#world.dropDraft(sent.id, sent);
          this.state = { is: 'saved' };
          this.#hear();
          return;
        }
        // If refused, the draft written at the key press remains.
        this.drafted = this.#world.keepDraft(this.record) || this.drafted;
        continue;
      }
      if (saved.because !== 'conflict') this.state = { is: 'refused', say: saved.say };
      else this.#meet(saved.theirs);
      this.#hear();
      return;
    }
  }

  /** Another tab, or this one, announced that the record changed. */
  async heard(): Promise<void> {
    // A save in progress will notice by itself.
    const deaf = () => this.#busy || this.removed;
    if (deaf()) return;
    const found = await this.#world.read(this.record.id);
    if (deaf()) return;
    if (found.is === 'unreadable') {
      this.state = { is: 'refused', say: found.say };
      this.#hear();
      return;
    }
    const stored = found.is === 'there' ? found.record : undefined;
    // In a conflict, always show the latest version beside this one.
    if (this.state.is !== 'conflict' && (stored?.revision ?? 0) === this.record.revision) return;
    if (stored && this.state.is === 'saved') this.#adopt(stored);
    else this.#meet(stored);
    this.#hear();
  }

  /** Compares unsaved text with what was saved elsewhere: the same content is no conflict. */
  #meet(theirs: BatchRecord | undefined): void {
    if (theirs && content(theirs) === content(this.record)) this.#adopt(theirs);
    else this.state = { is: 'conflict', theirs };
  }

  #adopt(theirs: BatchRecord): void {
    this.record = theirs;
    this.state = { is: 'saved' };
    this.#world.dropDraft(theirs.id);
  }

  /** Resolves a conflict: this version replaces what was saved elsewhere. */
  async keepMine(): Promise<void> {
    if (this.state.is !== 'conflict') return;
    this.record = { ...this.record, revision: this.state.theirs?.revision ?? 0 };
    this.state = { is: 'saving' };
    await this.store();
  }

  /** Resolves a conflict: what is now saved elsewhere replaces this version. */
  async takeTheirs(): Promise<void> {
    await this.heard();
    if (this.state.is !== 'conflict' || !this.state.theirs) return;
    this.#adopt(this.state.theirs);
    this.#hear();
  }

  /**
   * Resolves a conflict: this version becomes a batch of its own. If the browser has no room for
   * it, the conflict and its draft remain, and the reason is returned.
   */
  async keepBoth(): Promise<string | undefined> {
    const { id, revision, name, photos } = this.record;
    const met = this.state;
    const copy = newId();
    const doubled = await this.#world.doublePhotos(this.record, copy);
    this.record = {
      ...this.record,
      id: copy,
      revision: 0,
      name: nameBeside(this.record.name, 'my copy'),
      photos: doubled,
    };
    this.drafted = this.#world.keepDraft(this.record);
    this.state = { is: 'saving' };
    await this.store();
    const now: State = this.state as State;
    if (this.held || now.is !== 'refused') {
      this.#world.dropDraft(id);
      return undefined;
    }
    this.#world.dropDraft(copy);
    await Promise.all(doubled.map((photo) => this.#world.removePhoto(photo.id, copy)));
    this.record = { ...this.record, id, revision, name, photos };
    this.drafted = this.#world.keepDraft(this.record);
    this.state = met;
    this.#hear();
    return now.say;
  }
}
