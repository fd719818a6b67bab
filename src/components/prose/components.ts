import Amount from './Amount.astro';
import Aside from './Aside.astro';
import Caution from './Caution.astro';
import Decide from './Decide.astro';
import Live from './Live.astro';
import Next from './Next.astro';
import Pairs from './Pairs.astro';
import Source from './Source.astro';
import Table from './Table.astro';
import Worksheet from './Worksheet.astro';

/** The components a chapter may use beside Markdown: a closed set, so that chapters stay alike. */
export const components = {
  Amount,
  Aside,
  Caution,
  Decide,
  Live,
  Next,
  Pairs,
  Source,
  Table,
  Worksheet,
};
