const DRAWN = /\s(?:d|points|x|y|x1|x2|y1|y2|cx|cy|r|rx|ry|dx|dy|width|height|transform)="[^"]*"/g;
const LONG = /\d+\.\d{3,}(?!\d*e)/gi;
const SHAPE = /<(path|rect|circle|line)([^<>]*)><\/\1>/g;

/**
 * Markup with the coordinates of its drawings rounded to hundredths, which no screen can show finer
 * (sixteen digits each are a fifth of a long page), and with empty shapes self-closed. Text and all
 * other markup are unchanged.
 */
export const shortNumbers = (html: string): string =>
  html.replace(/<svg[\s>].*?<\/svg>/gs, (svg) =>
    svg
      .replace(/<[a-z][^>]*>/gi, (tag) =>
        tag.replace(DRAWN, (attribute) =>
          attribute.replace(LONG, (number) => String(Math.round(Number(number) * 100) / 100)),
        ),
      )
      .replace(SHAPE, '<$1$2/>'),
  );
