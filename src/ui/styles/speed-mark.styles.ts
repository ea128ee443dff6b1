// The two marks on a scale of speeds: the drop's own pipe, and the slowest on its way.

import { css } from 'lit';

export const speedMarkStyles = css`
  .own {
    fill: var(--dc-ink);
    stroke: var(--dc-paper);
    stroke-width: 1.5;
    paint-order: stroke;
  }

  .own.settles {
    fill: var(--dc-duct);
  }

  .own.tight {
    fill: var(--dc-air);
  }

  .slowest {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.25;
  }

  .slowest.settles {
    stroke: var(--dc-duct);
    stroke-width: 1.75;
  }
`;
