import { markUnstored, UNSTORED } from '../../bench/local-store.ts';
import { notify, withdraw } from '../../bench/notices.ts';
import { batchAt } from '../../bench/page-at.ts';
import { recordFromBench } from '../../bench/records/from-bench.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { listRecords, saveRecord } from '../../bench/records/store.ts';
import { tellRefused } from '../../worksheets/live/records/refused-notice.ts';
import { named } from '../../worksheets/live/run/run-name.ts';

const MARKUP = `<form method="dialog">
<h2 id="save-batch-title">Save the bench as a batch</h2>
<label for="save-batch-name">Name</label>
<div class="search-line">
<input id="save-batch-name" type="text" maxlength="120" autocomplete="off">
<button value="save" class="main">Save</button>
<button value="close" formnovalidate>Close</button>
</div>
<p id="save-batch-how">All your readings on the bench go with it, kept in this browser. Its days are written up under Batch records.</p>
</form>`;
let dialog: HTMLDialogElement | undefined;

/** Asks for the batch's name and saves it. A name that was not saved is kept in the box. */
export function openSaveBatch(): void {
  dialog ??= makeDialog();
  if (!dialog.open) dialog.showModal();
}

function makeDialog(): HTMLDialogElement {
  const dialog = document.createElement('dialog');
  dialog.id = 'save-batch';
  dialog.setAttribute('aria-labelledby', 'save-batch-title');
  dialog.innerHTML = MARKUP;
  document.body.append(dialog);
  const name = dialog.querySelector('input')!;
  dialog.addEventListener('close', async () => {
    if (dialog.returnValue !== 'save') return;
    dialog.returnValue = '';
    if (await saveBench(name.value.trim())) name.value = '';
  });
  return dialog;
}

/**
 * Saves the bench as a new batch, from any page, and offers a link to its record. Resolves to
 * whether it was saved.
 */
async function saveBench(name: string): Promise<boolean> {
  // If the other records cannot be read, saving will say why.
  const others = await listRecords().catch(() => ({ records: [] }));
  const record = named(recordFromBench(name), others.records);
  const saved = await saveRecord(record);
  if (!saved.ok) {
    tellRefused(record, saved.because === 'refused' ? saved.say : 'The batch was not saved.');
    return false;
  }
  // Everything that the browser did not store is now in the batch, until the next reading.
  markUnstored(UNSTORED, false);
  withdraw('not-stored');
  // Ask now, because the reader has just shown that it matters; most browsers answer by themselves.
  askToPersist().catch(() => {});
  notify('saved-batch', `“${record.name}” is saved in this browser.`, [
    { label: 'Open its record', run: () => location.assign(batchAt(record.id)) },
  ]);
  return true;
}
