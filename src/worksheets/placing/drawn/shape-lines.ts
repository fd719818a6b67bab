import type { Shape } from '../../../core/placing/shapes.ts';
import { BACK, box, type Drawing, dome, type Point, round } from './drawn-solids.ts';

/** The lines of a shape and the measures that stand beside them. */
export function drawingOf(shape: Shape): Drawing {
  switch (shape.shape) {
    case 'slab':
      return box('slab', [shape.length, shape.width], [shape.length, shape.width], shape.thickness);
    case 'block':
      return box('block', [shape.length, shape.width], [shape.length, shape.width], shape.height);
    case 'box-frustum':
      return box(
        'box with sloping sides',
        [shape.length, shape.width],
        [shape.topLength, shape.topWidth],
        shape.height,
      );
    case 'cylinder':
      return round('cylinder', shape.diameter, shape.diameter, shape.height);
    case 'ring':
      return round(
        'ring',
        shape.outerDiameter,
        shape.outerDiameter,
        shape.height,
        shape.innerDiameter,
      );
    case 'cone-frustum':
      return round('tapered cylinder', shape.bottomDiameter, shape.topDiameter, shape.height);
    case 'cap':
      return dome(
        shape.baseDiameter > 0 ? 'slice of a ball' : 'ball',
        shape.baseDiameter,
        shape.height,
      );
    case 'shell':
      return dome('bowl', shape.baseDiameter, shape.height, shape.thickness);
    case 'wedge': {
      const { length: l, width: w, thickness: thick, thinEnd: thin } = shape;
      const [dx, dy] = [BACK * w * 0.7, BACK * w * 0.5];
      const front: Point[] = [
        [0, 0],
        [l, 0],
        [l, -thin],
        [0, -thick],
      ];
      const back = front.map(([x, y]) => [x + dx, y - dy] as const);
      return {
        name: 'wedge',
        lines: [
          { points: [...front, front[0]!] },
          { points: [front[3]!, back[3]!, back[2]!, front[2]!] },
          { points: [back[2]!, back[1]!, front[1]!] },
          { points: [back[3]!, back[0]!, back[1]!], hidden: true },
          { points: [front[0]!, back[0]!], hidden: true },
        ],
        measures: [
          { of: 'length', from: front[0]!, to: front[1]!, size: l, side: 'below' },
          { of: 'width', from: front[1]!, to: back[1]!, size: w, side: 'right' },
          { of: 'thick end', from: front[3]!, to: front[0]!, size: thick, side: 'left' },
          ...(thin > 0
            ? [{ of: 'thin end', from: back[2]!, to: back[1]!, size: thin, side: 'right' as const }]
            : []),
        ],
      };
    }
    case 'prism': {
      // Seen from above: its height is told in words.
      const points = shape.corners.map(([x, y]) => [x, -y] as const);
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
      return {
        name: 'outline from above',
        lines: [{ points: [...points, points[0]!] }],
        measures: [
          { of: 'along', from: [x0, y1], to: [x1, y1], size: x1 - x0, side: 'below' },
          { of: 'across', from: [x0, y0], to: [x0, y1], size: y1 - y0, side: 'left' },
        ],
      };
    }
  }
}
