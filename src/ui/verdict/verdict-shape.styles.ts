import { css } from 'lit';

export const verdictShapeStyles = css`
  .shape {
    fill: var(--dc-ink-soft);
    stroke: none;
  }

  .shape-line {
    fill: none;
    stroke: var(--dc-ink-soft);
    stroke-width: 1.75;
  }

  .shape.settles,
  .shape.short {
    fill: var(--dc-duct);
  }

  .shape-line.settles,
  .shape-line.short {
    stroke: var(--dc-duct);
  }

  .shape.tight {
    fill: var(--dc-air);
  }
`;
