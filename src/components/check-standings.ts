import type { Row } from '../../tests/published/rows.ts';
import { sourceOf } from './library.ts';

/** What a figure is worth, given how it was obtained. */
const STANDINGS: Readonly<Record<Row['standing'], string>> = {
  published: 'Published.',
  'reference program': 'Another program’s answer.',
  'common practice': 'Common practice, no source.',
  'from memory': 'From memory: no evidence.',
  regression: 'Worked out by us: shows stability only.',
};

/** A source that is itself common practice says so by its name. */
export const standingOf = ({
  standing,
  source,
  id,
}: Pick<Row, 'standing' | 'source' | 'id'>): string =>
  standing === 'common practice' && sourceOf(source, id).standing === standing
    ? ''
    : STANDINGS[standing];

/** What is shown beside a figure that differs from ours. Only a misprint is called wrong. */
export const markOf = ({ differs }: Pick<Row, 'differs'>): string =>
  differs ? `, ${differs === 'misprint' ? 'known wrong' : 'not reproduced, see note'}` : '';
