import { beforeEach, describe, expect, test } from 'vitest';
import { Editor, type World } from '../../../src/bench/records/editor.ts';
import { LIMITS } from '../../../src/bench/records/limits.ts';
import { type BatchRecord, blankRecord, nameBeside } from '../../../src/bench/records/record.ts';

/** A store of one record in memory that behaves as the browser's does, and can be made to fail. */
class Fake implements World {
  stored: BatchRecord | undefined;
  drafts = new Map<string, BatchRecord>();
  full = false;
  /** Whether drafts are kept. */
  drafting = true;
  /** Why what is stored cannot be read. */
  unreadable = '';
  pauses: (() => void)[] = [];
  save: World['save'] = async (record) => {
    if (this.unreadable) return { ok: false, because: 'unreadable', say: this.unreadable };
    if (this.full) return { ok: false, because: 'refused', say: 'no room' };
    if ((this.stored?.revision ?? 0) !== record.revision)
      return { ok: false, because: 'conflict', theirs: this.stored };
    this.stored = { ...record, revision: record.revision + 1, changed: 'later' };
    return { ok: true, record: this.stored };
  };
  read: World['read'] = async () => {
    if (this.unreadable) return { is: 'unreadable', say: this.unreadable };
    return this.stored ? { is: 'there', record: this.stored } : { is: 'none' };
  };
  keepDraft: World['keepDraft'] = (record) => {
    if (!this.drafting) return false;
    this.drafts.set(record.id, record);
    return true;
  };
  dropDraft: World['dropDraft'] = (id, saved) => {
    if (saved && this.drafts.get(id) !== saved) return;
    this.drafts.delete(id);
  };
  /** The batch of each photo stored for a copy. */
  photos = new Map<string, string>();
  doublePhotos: World['doublePhotos'] = async ({ photos }, copy) =>
    photos.map((note) => {
      const id = `${copy}-${note.id}`;
      this.photos.set(id, copy);
      return { ...note, id };
    });
  removePhoto: World['removePhoto'] = async (id, batch) => {
    if (this.photos.get(id) === batch) this.photos.delete(id);
  };
  pause: World['pause'] = () => new Promise((done) => this.pauses.push(done));
  settle() {
    for (const done of this.pauses.splice(0)) done();
  }
}

let world: Fake;
let editor: Editor;
const first = blankRecord({ id: 'a', name: 'Slabs' });

beforeEach(() => {
  world = new Fake();
  editor = new Editor(first, () => {}, world);
});

/** Lets the save under way come to its end. */
async function done() {
  world.settle();
  await editor.store();
}

test('a change is a draft at once and stored after a pause', async () => {
  editor.change({ notes: 'x' });
  expect(world.drafts.get('a')?.notes).toBe('x');
  expect(world.stored).toBeUndefined();
  await done();
  expect(world.stored).toMatchObject({ notes: 'x', revision: 1 });
  expect(world.drafts.size).toBe(0);
  expect(editor.state.is).toBe('saved');
});

test('text that is neither stored nor a draft counts as not held', async () => {
  world.drafting = false;
  editor.change({ notes: 'x' });
  expect(editor.held).toBe(false);
  await done();
  expect(editor.held).toBe(true);
  world.full = true;
  editor.change({ notes: 'xy' });
  await done();
  expect(editor.held).toBe(false);
  world.drafting = true;
  editor.change({ notes: 'xyz' });
  await done();
  expect(editor.state.is).toBe('refused');
  expect(editor.held).toBe(true);
});

test('a draft that finds room only after a save is held from then on', async () => {
  const save = world.save;
  world.save = async (record) => {
    const saved = await save(record);
    if (!world.full) {
      world.drafting = false;
      editor.change({ notes: 'xy' });
      world.drafting = true;
      world.full = true;
    }
    return saved;
  };
  editor.change({ notes: 'x' });
  await done();
  expect(editor.state.is).toBe('refused');
  expect(world.drafts.get('a')?.notes).toBe('xy');
  expect(editor.held).toBe(true);
});

test('a draft that cannot be rewritten after a save is still there, and held', async () => {
  const save = world.save;
  world.save = async (record) => {
    const saved = await save(record);
    if (!world.full) {
      editor.change({ notes: 'xy' });
      world.drafting = false;
      world.full = true;
    }
    return saved;
  };
  editor.change({ notes: 'x' });
  await done();
  expect(editor.state.is).toBe('refused');
  expect(world.drafts.get('a')?.notes).toBe('xy');
  expect(editor.held).toBe(true);
});

test('an impossible date changes nothing', async () => {
  for (const date of ['20266-11-28', '2026-02-30', '']) editor.change({ date });
  expect(editor.record).toBe(first);
  expect(world.drafts.size).toBe(0);
  editor.change({ date: '2026-11-28' });
  await done();
  expect(world.stored?.date).toBe('2026-11-28');
});

test('what is typed while a save is under way is saved too', async () => {
  const save = world.save;
  let typed = false;
  world.save = async (record) => {
    const saved = await save(record);
    if (!typed) {
      typed = true;
      editor.change({ notes: 'second' });
    }
    return saved;
  };
  editor.change({ notes: 'first' });
  await done();
  expect(world.stored?.notes).toBe('second');
  expect(editor.record.notes).toBe('second');
  expect(world.drafts.size).toBe(0);
});

describe('saved elsewhere meanwhile', () => {
  beforeEach(async () => {
    editor.change({ notes: 'mine' });
    await done();
    editor.change({ notes: 'mine again' });
    world.stored = { ...world.stored!, revision: 2, notes: 'theirs' };
    await done();
  });

  test('nothing is overwritten, and both versions can be shown', () => {
    expect(world.stored?.notes).toBe('theirs');
    expect(editor.state).toMatchObject({ is: 'conflict', theirs: { notes: 'theirs' } });
    expect(editor.record.notes).toBe('mine again');
    expect(world.drafts.get('a')?.notes).toBe('mine again');
  });

  test('typing goes on in the draft and still writes nothing', async () => {
    editor.change({ notes: 'mine, longer' });
    await Promise.resolve();
    expect(world.stored?.notes).toBe('theirs');
    expect(world.drafts.get('a')?.notes).toBe('mine, longer');
  });

  test('whether it is a draft is known, for the page to say', () => {
    expect(editor.drafted).toBe(true);
    world.drafting = false;
    editor.change({ notes: 'mine, longer' });
    expect(editor.state.is).toBe('conflict');
    expect(editor.drafted).toBe(false);
    world.drafting = true;
    editor.change({ notes: 'mine' });
    expect(editor.drafted).toBe(true);
  });

  test('mine can be kept', async () => {
    await editor.keepMine();
    expect(world.stored).toMatchObject({ notes: 'mine again', revision: 3 });
    expect(editor.state.is).toBe('saved');
  });

  test('theirs can be taken', async () => {
    await editor.takeTheirs();
    expect(editor.record.notes).toBe('theirs');
    expect(world.drafts.size).toBe(0);
  });

  describe('and once more since', () => {
    beforeEach(() => {
      world.stored = { ...world.stored!, revision: 3, notes: 'theirs, later' };
    });

    test('taking theirs takes the latest, heard of or not', async () => {
      await editor.takeTheirs();
      expect(editor.record).toMatchObject({ notes: 'theirs, later', revision: 3 });
      expect(editor.state.is).toBe('saved');
    });

    test('the latest is shown once heard of, and can be replaced by mine', async () => {
      await editor.heard();
      expect(editor.state).toMatchObject({ is: 'conflict', theirs: { notes: 'theirs, later' } });
      await editor.keepMine();
      expect(world.stored).toMatchObject({ notes: 'mine again', revision: 4 });
      expect(editor.state.is).toBe('saved');
    });

    test('mine does not replace a version that was not shown', async () => {
      await editor.keepMine();
      expect(world.stored).toMatchObject({ notes: 'theirs, later' });
      expect(editor.state).toMatchObject({ is: 'conflict', theirs: { notes: 'theirs, later' } });
    });

    test('a version that was removed is not taken', async () => {
      world.stored = undefined;
      await editor.takeTheirs();
      expect(editor.state).toEqual({ is: 'conflict', theirs: undefined });
      expect(world.drafts.get('a')?.notes).toBe('mine again');
    });
  });

  test('both can be kept', async () => {
    const theirs = world.stored;
    world.stored = undefined;
    editor.change({ photos: [{ id: 'p1', caption: 'Edge' }] });
    expect(await editor.keepBoth()).toBeUndefined();
    const { id } = editor.record;
    expect(world.stored).toMatchObject({ photos: [{ id: `${id}-p1`, caption: 'Edge' }] });
    expect(id).not.toBe('a');
    expect(world.stored).toMatchObject({ id, name: 'Slabs (my copy)', notes: 'mine again' });
    expect(theirs?.notes).toBe('theirs');
    expect(world.drafts.size).toBe(0);
  });

  test.each([true, false])(
    'where the copy cannot be stored, mine stays a draft (room for another: %s)',
    async (drafting) => {
      editor.change({ photos: [{ id: 'p1', caption: 'Edge' }] });
      const met = editor.state;
      const mine = editor.record;
      world.full = true;
      world.drafting = drafting;
      expect(await editor.keepBoth()).toBe(drafting ? undefined : 'no room');
      expect([...world.drafts.values()].map(({ notes }) => notes)).toEqual(['mine again']);
      expect([...world.drafts.keys()]).toEqual([editor.record.id]);
      expect(editor.held).toBe(drafting);
      // No photo is kept under a batch that there is not.
      expect(world.photos.size).toBe(drafting ? 1 : 0);
      // It is neither's copy, and the choice is still there.
      if (!drafting) expect([editor.record, editor.state]).toEqual([mine, met]);
    },
  );

  test('a draft of a copy that could not be stored does not stay as a batch of its own', async () => {
    world.full = true;
    const save = world.save;
    world.save = async (record) => {
      // Typed while the copy is being stored, when no draft finds room any more.
      await Promise.resolve();
      world.drafting = false;
      if (editor.record === record) editor.change({ notes: 'mine at last' });
      return save(record);
    };
    expect(await editor.keepBoth()).toBe('no room');
    expect([...world.drafts.keys()]).toEqual(['a']);
    expect(editor.record).toMatchObject({ id: 'a', notes: 'mine at last' });
    expect(editor.held).toBe(false);
  });
});

test('a copy of a batch with the longest name is told apart from it', () => {
  const longest = 'x'.repeat(LIMITS.name);
  expect(nameBeside(longest, 'my copy')).toMatch(/^x{110} \(my copy\)$/);
  expect(nameBeside('Slabs', 'my copy')).toBe('Slabs (my copy)');
});

test('a change made elsewhere is taken over while nothing is unsaved here', async () => {
  world.stored = { ...first, revision: 1, notes: 'theirs' };
  await editor.heard();
  expect(editor.record).toMatchObject({ notes: 'theirs', revision: 1 });
});

test('a batch removed elsewhere is a conflict, not written again', async () => {
  editor.change({ notes: 'x' });
  await done();
  world.stored = undefined;
  await editor.heard();
  expect(editor.state).toEqual({ is: 'conflict', theirs: undefined });
  await editor.keepMine();
  expect(world.stored).toMatchObject({ notes: 'x' });
});

describe('what is stored cannot be read', () => {
  beforeEach(async () => {
    editor.change({ notes: 'x' });
    await done();
    world.unreadable = 'of a later version';
  });

  test('it is reported, not taken for a removal, and keeping mine writes nothing', async () => {
    const before = world.stored;
    editor.change({ notes: 'xy' });
    await done();
    expect(editor.state).toEqual({ is: 'refused', say: 'of a later version' });
    await editor.keepMine();
    expect(editor.state.is).toBe('refused');
    expect(world.stored).toBe(before);
    expect(world.drafts.get('a')?.notes).toBe('xy');
  });

  test('it is reported when heard of from another tab, too', async () => {
    await editor.heard();
    expect(editor.state).toEqual({ is: 'refused', say: 'of a later version' });
  });

  test('set aside, it can be stored again', async () => {
    editor.change({ notes: 'xy' });
    await done();
    world.unreadable = '';
    world.stored = undefined;
    await editor.store();
    expect(editor.state).toEqual({ is: 'conflict', theirs: undefined });
    await editor.keepMine();
    expect(world.stored).toMatchObject({ notes: 'xy' });
  });
});

test.each(['before', 'while'])(
  'a batch removed by this page, told %s reading again, is no conflict',
  async (when) => {
    editor.change({ notes: 'x' });
    await done();
    world.stored = undefined;
    editor.removed = when === 'before';
    const hearing = editor.heard();
    editor.removed = true;
    await hearing;
    expect(editor.state).toEqual({ is: 'saved' });
    // Typed in all the same, it is not brought back unasked.
    editor.change({ notes: 'y' });
    await done();
    expect(editor.state).toEqual({ is: 'conflict', theirs: undefined });
  },
);

test('the same content saved twice is no conflict', async () => {
  editor.change({ notes: 'x' });
  world.stored = { ...editor.record, revision: 4 };
  await done();
  expect(editor.state.is).toBe('saved');
  expect(editor.record.revision).toBe(4);
});

test('what was refused here and stored by another tab meanwhile is no conflict', async () => {
  world.full = true;
  editor.change({ notes: 'x' });
  await done();
  world.full = false;
  world.stored = { ...editor.record, revision: 1 };
  await editor.heard();
  expect(editor.state.is).toBe('saved');
  expect(editor.record.revision).toBe(1);
  expect(world.drafts.size).toBe(0);
});

test('a refused save keeps the draft and is reported', async () => {
  world.full = true;
  editor.change({ notes: 'x' });
  await done();
  expect(editor.state).toEqual({ is: 'refused', say: 'no room' });
  expect(world.drafts.get('a')?.notes).toBe('x');
  world.full = false;
  editor.change({ notes: 'xy' });
  await done();
  expect(world.stored?.notes).toBe('xy');
  expect(world.drafts.size).toBe(0);
});
