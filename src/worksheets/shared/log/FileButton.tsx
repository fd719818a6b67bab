import type { ComponentChildren } from 'preact';

/** A button that asks for one file or several. Choosing the same file again reads it again. */
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
  /** Called with at least one file. */
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
          // Otherwise choosing the same file again would not fire a change.
          currentTarget.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </label>
  );
}
