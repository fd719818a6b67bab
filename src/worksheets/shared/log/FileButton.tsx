import type { ComponentChildren } from 'preact';

/** Asks for a file, or for several. The same may be chosen again, and is read anew. */
export function FileButton({
  id,
  accept,
  multiple,
  children,
  onFiles,
}: {
  readonly id?: string;
  readonly accept: string;
  readonly multiple?: true;
  readonly children: ComponentChildren;
  /** One at least. */
  readonly onFiles: (files: readonly File[]) => void;
}) {
  return (
    <label class="file-button">
      {children}
      <input
        id={id}
        type="file"
        accept={accept}
        multiple={multiple}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // Or the same file chosen again would be no change.
          currentTarget.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </label>
  );
}
