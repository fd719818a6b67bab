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

/** What an editor needs of the world; the real one unless a test says otherwise. */
export interface World {
  readonly save: (record: BatchRecord) => Promise<Saved>;
  readonly read: (id: string) => Promise<Found>;
  readonly keepDraft: (record: BatchRecord) => boolean;
  readonly dropDraft: (id: string, saved?: BatchRecord) => void;
  /** Stores the photos a second time for a copy of their batch; what the copy calls them. */
  readonly doublePhotos: (record: BatchRecord, copy: string) => Promise<readonly PhotoNote[]>;
  /** Removes one of them again. */
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
  /** Saved elsewhere meanwhile, or removed there; nothing is written until the reader chooses. */
  | { readonly is: 'conflict'; readonly theirs: BatchRecord | undefined }
  | { readonly is: 'refused'; readonly say: string };

/**
 * One record being written in. Each change is kept as a draft at once and stored when typing pauses;
 * a record saved elsewhere meanwhile is shown beside this one and never overwritten unasked.
 */
export class Editor {
  record: BatchRecord;
  state: State = { is: 'saved' };
  /** Whether what was typed last is a draft, should nothing store it. */
  drafted = true;
  /** Whether it is there again when the page has been left. */
  get held(): boolean {
    return this.drafted || this.state.is === 'saved';
  }
  /** Set once this page has removed the record itself: what is heard of that is no other tab's doing. */
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
    // A date box gives years of six digits too; the box then shows what is kept.
    if (patch.date !== undefined && !isDay(patch.date)) {
      this.#hear();
      return;
    }
    this.record = { ...this.record, ...patch, changed: new Date().toISOString() };
    this.drafted = this.#world.keepDraft(this.record);
    // Without a draft the database must have it now.
    if (this.state.is !== 'conflict') {
      this.state = { is: 'saving' };
      this.store(this.drafted);
    }
    this.#hear();
  }

  /** Stores what is typed so far, after a pause unless told otherwise; one save at a time. */
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
        // Refused, the draft of the key itself stays.
        this.drafted = this.#world.keepDraft(this.record) || this.drafted;
        continue;
      }
      if (saved.because !== 'conflict') this.state = { is: 'refused', say: saved.say };
      else this.#meet(saved.theirs);
      this.#hear();
      return;
    }
  }

  /** Another tab, or this one, says that the record was changed. */
  async heard(): Promise<void> {
    // A save under way finds out by itself.
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
    // In a conflict what is shown beside this one is the latest.
    if (this.state.is !== 'conflict' && (stored?.revision ?? 0) === this.record.revision) return;
    if (stored && this.state.is === 'saved') this.#adopt(stored);
    else this.#meet(stored);
    this.#hear();
  }

  /** What is unsaved here meets what was saved elsewhere: the same content is no conflict. */
  #meet(theirs: BatchRecord | undefined): void {
    if (theirs && content(theirs) === content(this.record)) this.#adopt(theirs);
    else this.state = { is: 'conflict', theirs };
  }

  #adopt(theirs: BatchRecord): void {
    this.record = theirs;
    this.state = { is: 'saved' };
    this.#world.dropDraft(theirs.id);
  }

  /** After a conflict: what stands here replaces what was saved elsewhere. */
  async keepMine(): Promise<void> {
    if (this.state.is !== 'conflict') return;
    this.record = { ...this.record, revision: this.state.theirs?.revision ?? 0 };
    this.state = { is: 'saving' };
    await this.store();
  }

  /** After a conflict: what is saved elsewhere by now replaces what stands here. */
  async takeTheirs(): Promise<void> {
    await this.heard();
    if (this.state.is !== 'conflict' || !this.state.theirs) return;
    this.#adopt(this.state.theirs);
    this.#hear();
  }

  /**
   * After a conflict: what stands here becomes a batch of its own. Where the browser has no room for one, the
   * conflict stays, with its draft, and why is answered.
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
