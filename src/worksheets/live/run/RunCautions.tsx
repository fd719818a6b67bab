import { pageAt } from '../../../bench/page-at.ts';

/** A caution as a step shows it: the harm and the precaution in one line. */
export interface RunCaution {
  readonly id: string;
  readonly title: string;
  readonly short: string;
}

export function RunCautions({ cautions }: { readonly cautions: readonly RunCaution[] }) {
  return cautions.map(({ id, title, short }) => (
    <div key={id} class="caution short" data-caution={id}>
      <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
        <path d="M12 2 23 21.5H1Z" />
        <path class="sign" d="M12 9v6M12 18v.2" />
      </svg>
      <p>
        {short}{' '}
        <a
          href={pageAt(`safety/#caution-${id}`)}
          aria-label={`If it happens, and who decides: ${title}`}
        >
          If it happens, and who decides
        </a>
      </p>
    </div>
  ));
}
